package stridetally.cli.options;

import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;
import picocli.CommandLine.TypeConversionException;
import stridetally.model.Level;
import stridetally.model.Summary;
import stridetally.model.TrialPlace;
import stridetally.model.Use;
import stridetally.model.WordScale;

/** What of a bare log counts, and how a session is valued. A logbook's goals say so themselves. */
public final class NarrowOptions {
    @Option(
            names = "--help-up-to",
            paramLabel = "WORD",
            description = "Bare log: count tries with at most this help, such as stand-by.")
    private @Nullable String help;

    @Option(
            names = "--places",
            split = ",",
            paramLabel = "PLACE",
            description = "Bare log: only school, home, clinic (several with commas).")
    private List<String> places = List.of();

    @Option(names = "--use", paramLabel = "USE", description = "Bare log: only probe or only practice.")
    private @Nullable String use;

    @Option(
            names = "--session-value",
            paramLabel = "SUMMARY",
            description = "Value a session by best, mean, median or last instead of as the measure is usually valued.")
    private @Nullable String summary;

    /** The most help that counts. */
    public Optional<Level> helpUpTo() {
        return Optional.ofNullable(help)
                .map(word -> WordScale.HELP
                        .find(word)
                        .orElseThrow(() -> new TypeConversionException(
                                "'" + word + "' is none of: " + String.join(", ", WordScale.HELP.words()))));
    }

    /** The places that count; all when none was said. */
    public Set<TrialPlace> places() {
        EnumSet<TrialPlace> chosen = EnumSet.noneOf(TrialPlace.class);
        for (String word : places) {
            chosen.add(find(word, TrialPlace.class, "school, home, clinic"));
        }
        return chosen.isEmpty() ? EnumSet.allOf(TrialPlace.class) : chosen;
    }

    /** The use that counts; both when none was said. */
    public Set<Use> uses() {
        return use == null ? EnumSet.allOf(Use.class) : EnumSet.of(find(use, Use.class, "probe, practice"));
    }

    /** The summary that values a session. */
    public Optional<Summary> summary() {
        return Optional.ofNullable(summary).map(word -> {
            Summary found = find(word, Summary.class, "best, mean, median, last");
            if (found == Summary.TOTAL) {
                throw new TypeConversionException("'" + word + "' is none of: best, mean, median, last");
            }
            return found;
        });
    }

    /** Whether anything was said that only a bare log can heed. */
    public boolean narrows() {
        return help != null || !places.isEmpty() || use != null;
    }

    private static <E extends Enum<E>> E find(String word, Class<E> list, String words) {
        for (E one : list.getEnumConstants()) {
            if (one.name().equals(word.toUpperCase(Locale.ROOT))) {
                return one;
            }
        }
        throw new TypeConversionException("'" + word + "' is none of: " + words);
    }
}
