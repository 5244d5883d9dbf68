package stridetally.report;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.StringJoiner;
import java.util.TreeSet;
import stridetally.measures.Measure;
import stridetally.measures.MeasureKind;
import stridetally.model.Criterion;
import stridetally.model.Direction;
import stridetally.model.Goal;
import stridetally.model.GoalAim;
import stridetally.model.Level;
import stridetally.model.Settings;
import stridetally.model.TrialPlace;

/**
 * A goal in plain words, the same words every period. What the goal leaves open is said as such.
 *
 * @param measured what is measured, for a family
 * @param better which way is better
 * @param taken how it is measured (protocol)
 * @param valued how a session gets its value
 * @param target with the unit and the direction
 */
public record GoalWords(
        String measured,
        String better,
        String side,
        String taken,
        String places,
        String valued,
        String help,
        String prompt,
        String target,
        String due,
        String criterion) {
    private static final String NOT_WRITTEN = "not written";

    /** The words of a goal. */
    static GoalWords of(Goal goal, Optional<Measure> measure, ShownUnit unit, Settings settings) {
        String target = goal.target().isPresent()
                ? target(goal, unit.text(goal.target().get().value()), measure)
                : NOT_WRITTEN;
        return new GoalWords(
                measure.isPresent()
                        ? measure.get().plain() + " (" + measure.get().name() + ")"
                        : "the measure " + goal.measure() + " is not in the catalogue",
                ChartData.better(measure),
                side(goal),
                protocol(goal),
                places(goal),
                measure.isPresent() ? valued(goal, measure.get()) : "not valued: the measure is not in the catalogue",
                help(goal, settings),
                goal.prompt().isPresent()
                        ? upTo(goal.prompt().get(), "none", "no prompt")
                        : "any prompt (the goal names none)",
                target,
                goal.due().isPresent() ? goal.due().get().toString() : NOT_WRITTEN,
                criterion(goal, target, settings));
    }

    private static String target(Goal goal, String amount, Optional<Measure> measure) {
        String keep = goal.aim() == GoalAim.KEEP ? " (to be held)" : "";
        if (measure.isEmpty() || measure.get().better().isEmpty()) {
            return amount + keep;
        }
        boolean higher = measure.get().better().get() == Direction.HIGHER;
        return amount + (higher ? " or more" : " or less") + keep;
    }

    private static String side(Goal goal) {
        return switch (goal.side()) {
            case NONE -> "";
            case LEFT -> "left";
            case RIGHT -> "right";
            case EACH -> "left and right, and both must hold; the weaker side is judged";
            case EITHER -> "left or right, and one is enough";
        };
    }

    private static String protocol(Goal goal) {
        if (goal.protocol().keys().isEmpty()) {
            return "not stated; tries taken in any way count";
        }
        StringJoiner stated = new StringJoiner(", ");
        for (Map.Entry<String, String> pair : goal.protocol().keys().entrySet()) {
            stated.add(pair.getKey().replace('_', ' ') + ": " + pair.getValue());
        }
        return stated.toString();
    }

    private static String places(Goal goal) {
        if (goal.places().isEmpty()) {
            return "no place is named";
        }
        StringJoiner places = new StringJoiner(", ");
        for (TrialPlace place : new TreeSet<>(goal.places())) {
            places.add(place.word());
        }
        return places.toString();
    }

    private static String valued(Goal goal, Measure measure) {
        int tries = goal.criterion().triesGiven().orElse(measure.usualTrials());
        String usual = "; usually " + Counted.of(tries, "try");
        if (measure.kind() == MeasureKind.TRIES) {
            return "tries met out of tries given" + usual;
        }
        return switch (goal.summary().orElse(measure.summary())) {
            case BEST -> "the best of the first " + Counted.of(tries, "try") + " that count";
            case MEAN -> "the mean of the tries that count" + usual;
            case MEDIAN -> "the middle one (median) of the tries that count" + usual;
            case LAST -> "the last try that counts" + usual;
            case TOTAL -> "all tries that count, added up" + usual;
        };
    }

    private static String help(Goal goal, Settings settings) {
        if (goal.help().isPresent()) {
            return upTo(goal.help().get(), "independent", "none (independent)");
        }
        Optional<Level> standBy = settings.help().find("stand-by");
        String unsaid = standBy.isPresent()
                ? standBy.get().word()
                : settings.help().words().get(0);
        return NOT_WRITTEN + "; tries up to " + unsaid + " count";
    }

    private static String upTo(Level level, String least, String leastWords) {
        return level.word().equals(least) ? leastWords : "up to " + level.word();
    }

    private static String criterion(Goal goal, String target, Settings settings) {
        Criterion criterion = goal.criterion();
        if (criterion.equals(Criterion.NONE)) {
            return NOT_WRITTEN;
        }
        String session = criterion.byTries()
                ? criterion.triesMet().getAsInt() + " of "
                        + Counted.of(criterion.triesGiven().getAsInt(), "try")
                : criterion.triesMet().isPresent() || criterion.triesGiven().isPresent()
                        ? "tries (only one of tries met and tries given is written)"
                        : "the value of the session";
        String reach = goal.target().isEmpty() ? " met" : " at " + target;
        String sessions = criterion.sessionsMet().isPresent()
                ? Counted.of(criterion.sessionsMet().getAsInt(), "session") + " in a row"
                : "how many sessions in a row is " + NOT_WRITTEN;
        String help = goal.help().isEmpty() ? "help not written" : "help: " + help(goal, settings);
        return String.join(", ", List.of(session + reach, sessions, help));
    }
}
