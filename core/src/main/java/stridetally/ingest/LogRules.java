package stridetally.ingest;

import java.time.LocalDate;
import java.util.Optional;
import java.util.Set;
import stridetally.measures.Catalogue;
import stridetally.model.Level;
import stridetally.model.Settings;
import stridetally.model.StudentCode;
import stridetally.problem.InputRefused;
import stridetally.units.DecimalMark;

/**
 * What a log is read by.
 *
 * @param roster the known students; empty = every code is taken
 * @param asOf rows of a later day are set aside
 * @param order how {@code a/b/yyyy} is written
 * @param blankHelp what a blank help cell means, declared for the whole form; empty = not recorded
 * @param source the logbook's id, for rows that name none
 */
public record LogRules(
        Settings settings,
        Catalogue catalogue,
        Optional<Set<StudentCode>> roster,
        LocalDate asOf,
        DateOrder order,
        DecimalMark decimals,
        Optional<Level> blankHelp,
        String source) {

    public LogRules {
        if (roster.isPresent()) {
            roster = Optional.of(Set.copyOf(roster.get()));
        }
    }

    /** The same rules with a proven date order. */
    public LogRules with(DateOrder proven) {
        return new LogRules(settings, catalogue, roster, asOf, proven, decimals, blankHelp, source);
    }

    /** The same rules with a proven decimal mark. */
    LogRules with(DecimalMark proven) {
        return new LogRules(settings, catalogue, roster, asOf, order, proven, blankHelp, source);
    }

    /** The same rules with what a form's mapping says where nothing was said for this run. */
    LogRules with(FormMapping mapping) {
        return new LogRules(
                settings,
                catalogue,
                roster,
                asOf,
                order == DateOrder.UNPROVEN ? mapping.order().orElse(order) : order,
                decimals == DecimalMark.POINT ? mapping.decimals().orElse(decimals) : decimals,
                blankHelp.isPresent() || mapping.blankHelp().isEmpty() ? blankHelp : Optional.of(help(mapping)),
                source);
    }

    private Level help(FormMapping mapping) {
        String word = mapping.blankHelp().orElseThrow();
        return settings.help()
                .find(word)
                .orElseThrow(() -> new InputRefused(mapping.name() + ": blank_help \"" + word
                        + "\" is not a word of the help scale: "
                        + String.join(", ", settings.help().words())));
    }
}
