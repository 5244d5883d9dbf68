package stridetally.report;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import stridetally.forecast.CaseloadReview;
import stridetally.forecast.GoalReview;
import stridetally.measures.Measure;
import stridetally.model.Caseload;
import stridetally.model.Goal;
import stridetally.model.MeasureId;
import stridetally.scoring.GoalGap;
import stridetally.scoring.GoalGaps;

/**
 * How a goal is written, part by part: what is missing, what is doubtful beside the log and the rest of the caseload, and
 * what is fine. Nothing is filled in or corrected; a doubt is a question to whoever wrote the goal.
 */
public record GoalCheck(Goal goal, Map<Part, Finding> parts) {

    /** What a goal should say. */
    public enum Part {
        REFERENCES,
        /** Under which circumstances: the routine in which it matters, or how the measure is taken. */
        CIRCUMSTANCES,
        BEHAVIOUR,
        MEASURE,
        SIDE,
        BASELINE,
        CRITERION,
        HELP,
        TARGET,
        DUE;

        /** As printed. */
        public String word() {
            return name().toLowerCase(Locale.ROOT);
        }
    }

    /** How a part is; the later, the graver. */
    public enum State {
        FINE,
        DOUBTFUL,
        MISSING;

        /** As printed. */
        public String word() {
            return name().toLowerCase(Locale.ROOT);
        }
    }

    /** What is found of one part; {@code says} is what is written there, or what is wrong with it. */
    public record Finding(State state, String says) {}

    public GoalCheck {
        parts = java.util.Collections.unmodifiableMap(new EnumMap<>(parts));
    }

    /** Every goal of a caseload, in the order of the review. */
    public static List<GoalCheck> of(
            CaseloadReview review, Caseload caseload, Function<MeasureId, Optional<Measure>> measures) {
        GoalDoubts doubts = new GoalDoubts(review);
        List<GoalCheck> checks = new ArrayList<>();
        for (GoalReview one : review.goals()) {
            Goal goal = one.goal();
            Map<Part, Finding> parts = GoalPartsWritten.of(goal, measures.apply(goal.measure()));
            for (GoalGap gap : GoalGaps.of(goal, caseload, measures, one.score().highestCap())) {
                tell(parts, part(gap.code()), state(gap.code()), gap.sentence());
            }
            doubts.rate(one).ifPresent(says -> tell(parts, Part.TARGET, State.DOUBTFUL, says));
            doubts.baseline(one).ifPresent(says -> tell(parts, Part.BASELINE, State.DOUBTFUL, says));
            checks.add(new GoalCheck(goal, parts));
        }
        return List.copyOf(checks);
    }

    /** How many parts are in a state. */
    public long count(State state) {
        return parts.values().stream().filter(one -> one.state() == state).count();
    }

    /** The graver state stands; of two that are alike, both sentences. */
    private static void tell(Map<Part, Finding> parts, Part part, State state, String says) {
        parts.merge(part, new Finding(state, says), (before, now) -> {
            if (before.state() == State.FINE || before.state().compareTo(now.state()) < 0) {
                return new Finding(now.state(), before.state() == State.FINE ? now.says() : joined(now, before));
            }
            return new Finding(before.state(), joined(before, now));
        });
    }

    private static String joined(Finding one, Finding other) {
        return one.says() + " " + other.says();
    }

    private static Part part(GoalGap.Code code) {
        return switch (code) {
            case STUDENT_UNKNOWN, FOLLOWS_UNKNOWN -> Part.REFERENCES;
            case PROTOCOL_KEY_UNKNOWN, PLACES_MISSING -> Part.CIRCUMSTANCES;
            case MEASURE_UNKNOWN, NO_BETTER_WAY -> Part.MEASURE;
            case SIDE_MISSING, SIDE_WITHOUT_SIDES -> Part.SIDE;
            case BASELINE_MISSING, BASELINE_UNDATED -> Part.BASELINE;
            case CRITERION_MISSING, CRITERION_HALF_WRITTEN, CRITERION_IMPOSSIBLE -> Part.CRITERION;
            case HELP_MISSING -> Part.HELP;
            case TARGET_MISSING, TARGET_EQUALS_BASELINE, TARGET_ON_WRONG_SIDE, TARGET_IMPOSSIBLE, TARGET_ABOVE_CAP ->
                Part.TARGET;
            case DUE_MISSING, DUE_BEFORE_BASELINE, UNTIL_BEFORE_FROM -> Part.DUE;
        };
    }

    private static State state(GoalGap.Code code) {
        return switch (code) {
            case TARGET_MISSING,
                    DUE_MISSING,
                    BASELINE_MISSING,
                    BASELINE_UNDATED,
                    SIDE_MISSING,
                    CRITERION_MISSING,
                    HELP_MISSING,
                    PLACES_MISSING -> State.MISSING;
            default -> State.DOUBTFUL;
        };
    }
}
