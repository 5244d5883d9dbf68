package stridetally.scoring;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.IntUnaryOperator;
import org.jspecify.annotations.Nullable;
import stridetally.ingest.SeriesNumbers;
import stridetally.measures.Measure;
import stridetally.measures.Sidedness;
import stridetally.model.Goal;
import stridetally.model.GoalSide;
import stridetally.model.MeasureId;
import stridetally.model.Protocol;
import stridetally.model.SeriesKey;
import stridetally.model.Side;
import stridetally.model.StudentCode;
import stridetally.model.Use;

/** Which series a goal takes its tries from, settled once per series and never per try. */
public final class GoalMatch {

    /** A series whose tries the goal takes, and the side it is looked at on; {@code NONE} when sides play no part. */
    public record Taken(int series, Side side) {}

    /** A series of the goal's student and measure that it does not take. */
    public record NotTaken(int series, WhyNotUsed why, String detail) {}

    /** What was found for one goal. */
    public record Found(List<Taken> taken, List<NotTaken> notTaken) {
        public Found {
            taken = List.copyOf(taken);
            notTaken = List.copyOf(notTaken);
        }
    }

    /** A key: equals and hashCode by hand, since those of a record are slow while cold. */
    private record StudentMeasure(StudentCode student, MeasureId measure) {
        @Override
        public boolean equals(@Nullable Object other) {
            return other instanceof StudentMeasure key && student.equals(key.student) && measure.equals(key.measure);
        }

        @Override
        public int hashCode() {
            return 31 * student.hashCode() + measure.hashCode();
        }
    }

    private final String logbook;
    private final SeriesNumbers numbers;
    private final IntUnaryOperator lastDay;
    private final Map<StudentMeasure, List<Integer>> seriesOf = new HashMap<>();

    /**
     * Over all series of a log.
     *
     * @param logbook the logbook's id: a series of another source is another child, even under the same code
     * @param asOf the last day that counts
     */
    public GoalMatch(String logbook, SessionIndex index, LocalDate asOf) {
        this(logbook, index.numbers(), series -> index.lastDay(series, asOf));
    }

    GoalMatch(String logbook, SeriesNumbers numbers, IntUnaryOperator lastDay) {
        this.logbook = logbook;
        this.numbers = numbers;
        this.lastDay = lastDay;
        for (int series = 0; series < numbers.size(); series++) {
            SeriesKey key = numbers.key(series);
            seriesOf.computeIfAbsent(new StudentMeasure(key.student(), key.measure()), any -> new ArrayList<>())
                    .add(series);
        }
    }

    /** The series of a goal's student and measure, taken and not taken. */
    public Found find(Goal goal, Measure measure) {
        List<Taken> taken = new ArrayList<>();
        List<NotTaken> notTaken = new ArrayList<>();
        for (int series : seriesOf.getOrDefault(new StudentMeasure(goal.student(), goal.measure()), List.of())) {
            SeriesKey key = numbers.key(series);
            if (!key.source().isEmpty() && !key.source().equals(logbook)) {
                continue;
            }
            Optional<Reason> reason = whyNot(goal, measure, key);
            if (reason.isPresent()) {
                notTaken.add(new NotTaken(series, reason.get().why, reason.get().detail));
            } else {
                taken.add(new Taken(series, sidesMatter(goal, measure) ? key.side() : Side.NONE));
            }
        }
        if (taken.size() > 1 && LikeRecordings.matter(measure)) {
            return alike(goal, taken, notTaken);
        }
        return new Found(taken, notTaken);
    }

    private Found alike(Goal goal, List<Taken> taken, List<NotTaken> notTaken) {
        SeriesKey latest = LikeRecordings.latest(taken, numbers, lastDay);
        List<Taken> alike = new ArrayList<>();
        for (Taken one : taken) {
            List<String> unlike = LikeRecordings.unlike(goal, numbers.key(one.series()), latest);
            if (unlike.isEmpty()) {
                alike.add(one);
            } else {
                notTaken.add(new NotTaken(one.series(), WhyNotUsed.PROTOCOL, String.join(" ", unlike)));
            }
        }
        return new Found(alike, notTaken);
    }

    /** The sides that a goal is looked at on. */
    static List<Side> sides(Goal goal, Measure measure) {
        if (!sidesMatter(goal, measure)) {
            return List.of(Side.NONE);
        }
        return switch (goal.side()) {
            case NONE -> List.of(Side.NONE);
            case LEFT -> List.of(Side.LEFT);
            case RIGHT -> List.of(Side.RIGHT);
            case EACH, EITHER -> List.of(Side.LEFT, Side.RIGHT);
        };
    }

    /** A reason why a series is not taken. */
    record Reason(WhyNotUsed why, String detail) {}

    /** Why a goal does not take a series of its student and measure; empty when it does. */
    static Optional<Reason> whyNot(Goal goal, Measure measure, SeriesKey key) {
        if (key.use() != Use.PROBE) {
            return Optional.of(new Reason(WhyNotUsed.PRACTICE, ""));
        }
        if (!goal.places().contains(key.place())) {
            return Optional.of(new Reason(WhyNotUsed.ANOTHER_PLACE, key.place().word()));
        }
        Optional<Reason> otherSide = otherSide(goal, measure, key.side());
        return otherSide.isPresent() ? otherSide : otherProtocol(goal, key);
    }

    /** Whether a series is on a side of the goal: for practice too, which is counted by help and by nothing else. */
    static boolean onSide(Goal goal, Measure measure, SeriesKey key) {
        return otherSide(goal, measure, key.side()).isEmpty();
    }

    private static boolean sidesMatter(Goal goal, Measure measure) {
        return measure.sidedness() == Sidedness.REQUIRED
                || (measure.sidedness() == Sidedness.OPTIONAL && goal.side() != GoalSide.NONE);
    }

    private static Optional<Reason> otherSide(Goal goal, Measure measure, Side side) {
        if (measure.sidedness() == Sidedness.NONE) {
            return Optional.empty();
        }
        boolean sided = sidesMatter(goal, measure);
        if (sided && side == Side.NONE) {
            return Optional.of(new Reason(WhyNotUsed.SIDE_MISSING, ""));
        }
        return sides(goal, measure).contains(side)
                ? Optional.empty()
                : Optional.of(new Reason(WhyNotUsed.OTHER_SIDE, side.word()));
    }

    private static Optional<Reason> otherProtocol(Goal goal, SeriesKey key) {
        // The goal states the usual once and a trial types only departures, so a silent key is the goal's.
        Protocol taken = key.protocol().over(goal.protocol());
        List<String> differing = new ArrayList<>();
        for (Map.Entry<String, String> named : goal.protocol().keys().entrySet()) {
            if (!named.getValue().equals(taken.keys().get(named.getKey()))) {
                differing.add(named.getKey());
            }
        }
        return differing.isEmpty()
                ? Optional.empty()
                : Optional.of(new Reason(WhyNotUsed.PROTOCOL, String.join(" ", differing)));
    }
}
