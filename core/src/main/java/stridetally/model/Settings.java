package stridetally.model;

import java.util.List;
import java.util.Map;

/**
 * What {@code logbook.toml} says, with our choices where it is silent.
 *
 * @param id the logbook's id, the {@code source} of its rows
 * @param shownUnits measure id to the symbol of the unit that people want to see
 */
public record Settings(
        String id,
        List<Period> periods,
        List<SchoolBreak> breaks,
        Map<String, String> shownUnits,
        WordScale help,
        WordScale prompt,
        Thresholds thresholds,
        List<String> languages) {

    public Settings {
        periods = List.copyOf(periods);
        breaks = List.copyOf(breaks);
        shownUnits = Map.copyOf(shownUnits);
        languages = List.copyOf(languages);
    }

    /** A logbook of which nothing is known, and the settings of a bare log. */
    public static Settings usual(String id) {
        return new Settings(
                id, List.of(), List.of(), Map.of(), WordScale.HELP, WordScale.PROMPT, Thresholds.USUAL, List.of("en"));
    }
}
