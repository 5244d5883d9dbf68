package stridetally.report;

import java.time.LocalDate;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import stridetally.forecast.GoalReview;
import stridetally.forecast.SideReview;
import stridetally.model.Goal;
import stridetally.model.MeasureId;
import stridetally.model.Side;
import stridetally.model.StudentCode;
import stridetally.model.Summary;
import stridetally.scoring.BaselineSessions;
import stridetally.stats.WithinGroupSpread;

/**
 * The spread between the sessions of all students, within each student, by measure, protocol and session summary. A day
 * that two goals share is taken once.
 */
final class SpreadPool {
    private final Map<Kind, Pooled> pools = new HashMap<>();
    private final Set<Taken> taken = new HashSet<>();

    /** What may be pooled: a best of three wavers otherwise than a mean, and one protocol otherwise than another. */
    private record Kind(MeasureId measure, String protocol, Summary summary) {
        static Kind of(GoalReview review) {
            Goal goal = review.goal();
            return new Kind(
                    goal.measure(),
                    goal.protocol().text(),
                    goal.summary().orElse(review.score().measure().orElseThrow().summary()));
        }

        @Override
        public boolean equals(@Nullable Object other) {
            return other instanceof Kind kind
                    && measure.equals(kind.measure)
                    && protocol.equals(kind.protocol)
                    && summary == kind.summary;
        }

        @Override
        public int hashCode() {
            return (31 * measure.hashCode() + protocol.hashCode()) * 31
                    + summary.word().hashCode();
        }
    }

    private record Taken(Kind kind, StudentCode student, Side side, LocalDate day) {
        @Override
        public boolean equals(@Nullable Object other) {
            return other instanceof Taken taken
                    && day.equals(taken.day)
                    && student.equals(taken.student)
                    && side == taken.side
                    && kind.equals(taken.kind);
        }

        @Override
        public int hashCode() {
            return (31 * kind.hashCode() + student.hashCode()) * 31 + day.hashCode();
        }
    }

    /**
     * A pooled spread.
     *
     * @param students that it comes from
     */
    record Pooled(WithinGroupSpread spread, Set<StudentCode> students) {
        static final Pooled NONE = new Pooled(WithinGroupSpread.NONE, Set.of());

        Pooled {
            students = Set.copyOf(students);
        }

        private Pooled plus(Pooled other) {
            Set<StudentCode> all = new HashSet<>(students);
            all.addAll(other.students);
            return new Pooled(spread.plus(other.spread), all);
        }
    }

    /** Over every goal of a caseload, whichever of them are shown. */
    SpreadPool(List<GoalReview> reviews, BaselineSessions baselines) {
        for (GoalReview review : reviews) {
            for (SideReview side : review.sides()) {
                add(review, side.side(), SideDays.of(review.goal(), side, baselines));
            }
        }
    }

    /** The pooled spread for a goal. */
    Pooled of(GoalReview review) {
        return pools.getOrDefault(Kind.of(review), Pooled.NONE);
    }

    private void add(GoalReview review, Side side, SideDays days) {
        Kind kind = Kind.of(review);
        StudentCode student = review.goal().student();
        WithinGroupSpread fresh = days.without(day -> !taken.add(new Taken(kind, student, side, day)))
                .spread();
        if (fresh.degreesOfFreedom() > 0) {
            pools.merge(kind, new Pooled(fresh, Set.of(student)), Pooled::plus);
        }
    }
}
