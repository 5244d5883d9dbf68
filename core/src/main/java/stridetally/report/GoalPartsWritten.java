package stridetally.report;

import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import stridetally.measures.Measure;
import stridetally.model.Criterion;
import stridetally.model.Goal;
import stridetally.model.Level;
import stridetally.report.GoalCheck.Finding;
import stridetally.report.GoalCheck.Part;
import stridetally.report.GoalCheck.State;
import stridetally.units.Amount;

/** What stands in the parts of a goal. The free words of a goal are not repeated: that they are there is what is said. */
final class GoalPartsWritten {
    private GoalPartsWritten() {}

    static Map<Part, Finding> of(Goal goal, Optional<Measure> measure) {
        Map<Part, Finding> parts = new EnumMap<>(Part.class);
        String unit = measure.map(one -> " " + one.unit().symbol()).orElse("");
        parts.put(Part.REFERENCES, fine(""));
        parts.put(Part.CIRCUMSTANCES, circumstances(goal));
        parts.put(
                Part.BEHAVIOUR,
                goal.statement().isBlank() ? missing("The goal is not written in words.") : fine("written"));
        parts.put(Part.MEASURE, fine(goal.measure().text()));
        parts.put(
                Part.SIDE,
                fine(
                        goal.side().word().isEmpty()
                                ? "the measure has no sides"
                                : goal.side().word()));
        parts.put(Part.BASELINE, fine(baseline(goal, unit)));
        parts.put(Part.CRITERION, fine(criterion(goal.criterion())));
        parts.put(Part.HELP, fine(goal.help().map(Level::word).orElse("")));
        parts.put(Part.TARGET, fine(goal.target().map(Amount::text).orElse("") + unit));
        parts.put(Part.DUE, fine(goal.due().map(Object::toString).orElse("")));
        return parts;
    }

    private static Finding circumstances(Goal goal) {
        String protocol = goal.protocol().text();
        if (goal.routine().isBlank() && protocol.isEmpty()) {
            return missing("Neither the routine in which it matters nor how it is measured is written.");
        }
        return fine(protocol.isEmpty() ? "routine written" : protocol);
    }

    private static String baseline(Goal goal, String unit) {
        return goal.baseline().map(Amount::text).orElse("")
                + unit
                + goal.baselineDate().map(day -> " on " + day).orElse("");
    }

    private static String criterion(Criterion criterion) {
        String tries = criterion.byTries()
                ? number(criterion.triesMet()) + " of " + number(criterion.triesGiven()) + " tries in "
                : "";
        return tries + number(criterion.sessionsMet()) + " sessions running";
    }

    private static String number(OptionalInt number) {
        return number.isPresent() ? Integer.toString(number.getAsInt()) : "";
    }

    private static Finding fine(String says) {
        return new Finding(State.FINE, says);
    }

    private static Finding missing(String says) {
        return new Finding(State.MISSING, says);
    }
}
