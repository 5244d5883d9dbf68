package stridetally.model;

import java.time.LocalDate;
import java.util.Optional;
import stridetally.units.Reading;

/**
 * One attempt, for people: import, {@code score --by trial} and explanations. Scoring never collects these; it takes
 * trials from the stream.
 *
 * @param session the label that splits a day; blank as a rule
 * @param number the trial number within its session; 0 = not written
 * @param reading in the measure's unit
 * @param help blank = not recorded, never silently independent
 * @param at where the row stands in what was imported: line, or sheet cell
 * @param asWritten the value cell as it was written, with its unit and {@code of}
 */
public record Trial(
        SeriesKey key,
        LocalDate date,
        String session,
        int number,
        Reading reading,
        Optional<Level> help,
        Optional<Level> prompt,
        String observer,
        String activity,
        String note,
        String at,
        String asWritten) {

    /** The same trial under a number. */
    public Trial withNumber(int other) {
        return new Trial(key, date, session, other, reading, help, prompt, observer, activity, note, at, asWritten);
    }
}
