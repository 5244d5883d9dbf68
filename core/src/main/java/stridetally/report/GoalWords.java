package stridetally.report;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
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
        Optional<Direction> better = measure.flatMap(Measure::better);
        String target = goal.target()
                .map(amount -> target(goal, unit.text(amount.value()), better))
                .orElse(NOT_WRITTEN);
        return new GoalWords(
                measure.map(one -> one.plain() + " (" + one.name() + ")")
                        .orElse("the measure " + goal.measure() + " is not in the catalogue"),
                ChartData.better(measure),
                side(goal),
                protocol(goal),
                places(goal),
                measure.map(one -> valued(goal, one)).orElse("not valued: the measure is not in the catalogue"),
                help(goal, settings),
                goal.prompt().map(level -> upTo(level, "none", "no prompt")).orElse("any prompt (the goal names none)"),
                target,
                goal.due().map(day -> day.toString()).orElse(NOT_WRITTEN),
                criterion(goal, target, settings));
    }

    private static String target(Goal goal, String amount, Optional<Direction> better) {
        String keep = goal.aim() == GoalAim.KEEP ? " (to be held)" : "";
        return better.map(way -> amount + (way == Direction.HIGHER ? " or more" : " or less"))
                        .orElse(amount)
                + keep;
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
        return goal.protocol().keys().isEmpty()
                ? "not stated; tries taken in any way count"
                : goal.protocol().keys().entrySet().stream()
                        .map(pair -> pair.getKey().replace('_', ' ') + ": " + pair.getValue())
                        .collect(Collectors.joining(", "));
    }

    private static String places(Goal goal) {
        return goal.places().isEmpty()
                ? "no place is named"
                : String.join(
                        ", ",
                        goal.places().stream()
                                .sorted(Comparator.naturalOrder())
                                .map(TrialPlace::word)
                                .toList());
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
        String unsaid = settings.help()
                .find("stand-by")
                .map(Level::word)
                .orElse(settings.help().words().get(0));
        return goal.help()
                .map(level -> upTo(level, "independent", "none (independent)"))
                .orElse(NOT_WRITTEN + "; tries up to " + unsaid + " count");
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
