package stridetally.report;

import java.util.List;
import java.util.Optional;
import stridetally.forecast.GoalReview;
import stridetally.forecast.SideReview;
import stridetally.measures.PublishedError;
import stridetally.model.Caseload;
import stridetally.model.Goal;
import stridetally.model.Student;
import stridetally.scoring.BaselineSessions;
import stridetally.scoring.Bound;
import stridetally.stats.Descriptive;
import stridetally.stats.Estimate;
import stridetally.stats.WithinGroupSpread;
import stridetally.trend.Point;
import stridetally.trend.TrendLine;

/**
 * The latest session value against the baseline. The limit is t * s * sqrt(1/m + 1/1), where m is the number of sessions
 * behind the baseline and s the spread between sessions: of the baseline sessions about their mean and of the later ones,
 * but the latest, about their own line. It is the student's own from {@link #OWN} degrees of freedom on, else pooled within
 * all students of the same measure, protocol and summary from {@link #POOLED} on, else a published value for the same test
 * and population, else the answer is unknown. Sessions that carry over from day to day make s too small, a bent course
 * makes it too large.
 */
public final class SpreadError implements MeasurementError {
    /** Degrees of freedom from which a student's own baseline is enough. */
    static final int OWN = 4;

    /** Degrees of freedom from which the pool is enough. */
    static final int POOLED = 10;

    private final List<Student> students;
    private final BaselineSessions baselines;
    private final SpreadPool pool;

    /**
     * Over a caseload.
     *
     * @param reviews of all its goals, whatever part is shown
     */
    public SpreadError(Caseload caseload, List<GoalReview> reviews, BaselineSessions baselines) {
        this.students = caseload.students();
        this.baselines = baselines;
        this.pool = new SpreadPool(reviews, baselines);
    }

    @Override
    public Finding beyond(GoalReview review, SideReview side) {
        Goal goal = review.goal();
        if (goal.baseline().isEmpty() || goal.baselineDate().isEmpty()) {
            return Finding.unknown("the goal has no baseline with a date");
        }
        Optional<Point> latest = side.trend().latest();
        if (latest.isEmpty()) {
            return Finding.unknown("no session with a value after the baseline date");
        }
        BaselineSessions.Days days = baselines.of(goal, side.side());
        Start start = Start.of(goal.baseline().get().value(), days);
        Estimate<Limit> limit = limit(review, SideDays.of(goal, side, baselines), start, latest.get());
        return limit.isEstimated()
                ? compare(latest.get(), start, limit.orElseThrow())
                : Finding.unknown(limit.reason());
    }

    /**
     * What the change is counted from. The mean of the logged baseline sessions where the written baseline lies among
     * them; else the written one, as of one session, which asks for the larger change.
     */
    private record Start(double value, int sessions, String text) {
        static Start of(double written, BaselineSessions.Days days) {
            double[] values = days.inOrder();
            double low = Double.POSITIVE_INFINITY;
            double high = Double.NEGATIVE_INFINITY;
            for (double value : values) {
                low = Math.min(low, value);
                high = Math.max(high, value);
            }
            boolean among = days.capped() == 0 && low <= written && written <= high;
            if (!among) {
                return new Start(written, 1, "the written baseline, taken as one session");
            }
            String text =
                    values.length == 1 ? "the baseline session" : "the mean of " + values.length + " baseline sessions";
            return new Start(Descriptive.mean(values).orElseThrow(), values.length, text);
        }
    }

    private record Limit(double size, Optional<Integer> degreesOfFreedom, String source) {}

    private Estimate<Limit> limit(GoalReview review, SideDays side, Start start, Point latest) {
        WithinGroupSpread own = side.spread();
        if (own.degreesOfFreedom() >= OWN && own.sd().isEstimated()) {
            return spread(own, start, "spread between the student's own sessions");
        }
        SpreadPool.Pooled all = pool.of(review);
        if (all.spread().degreesOfFreedom() >= POOLED && all.spread().sd().isEstimated()) {
            return spread(
                    all.spread(),
                    start,
                    "spread between sessions within "
                            + Counted.of(all.students().size(), "student") + " of the same measure and protocol");
        }
        PublishedError.Found found = PublishedError.find(
                review.goal().measure(), review.goal().protocol(), student(review.goal()), latest.date());
        if (found instanceof PublishedError.Found.Serves serves) {
            return Estimate.of(new Limit(serves.error().detectable95(), Optional.empty(), source(serves.error())));
        }
        String why = found instanceof PublishedError.Found.None none ? none.why() : "";
        return Estimate.notEstimable(tooLittle(side, all.spread()) + "; " + why);
    }

    private static Estimate<Limit> spread(WithinGroupSpread spread, Start start, String source) {
        Estimate<Double> size = spread.limit(TrendLine.LEVEL, start.sessions(), 1);
        if (!size.isEstimated()) {
            return Estimate.notEstimable(size.reason());
        }
        return Estimate.of(new Limit(
                size.orElseThrow(),
                Optional.of(spread.degreesOfFreedom()),
                source + ", " + Counted.of(spread.degreesOfFreedom(), "degree") + " of freedom"));
    }

    private static String source(PublishedError error) {
        String level = error.functionLevel().isBlank() ? "" : " level " + error.functionLevel();
        return "published for " + error.population() + level + ": " + error.source()
                + "; it holds only if the test was taken as in the study";
    }

    private static String tooLittle(SideDays side, WithinGroupSpread all) {
        if (all.degreesOfFreedom() >= POOLED) {
            return "the sessions of each student are all equal or on a line, so nothing shows how much the measure wavers";
        }
        String capped = side.capped() == 0 ? "" : "sessions stopped at a cap hide how much the measure wavers; ";
        return capped + "sessions give "
                + Counted.of(side.spread().degreesOfFreedom(), "degree")
                + " of freedom for this student (" + OWN + " needed) and " + all.degreesOfFreedom()
                + " within all students of the same measure and protocol (" + POOLED + " needed)";
    }

    private Optional<Student> student(Goal goal) {
        for (Student student : students) {
            if (student.code().equals(goal.student())) {
                return Optional.of(student);
            }
        }
        return Optional.empty();
    }

    private static Finding compare(Point latest, Start start, Limit limit) {
        double change = latest.value() - start.value();
        boolean beyond = Math.abs(change) > limit.size();
        Optional<Bound> bound = latest.bound();
        Compared compared = new Compared(
                new Measured(change, bound), start.value(), start.sessions(), limit.size(), limit.degreesOfFreedom());
        String reason = "latest session against " + start.text() + "; " + limit.source();
        boolean trueIsFarther = bound.isEmpty() || (bound.get() == Bound.AT_LEAST) == (change > 0);
        if (bound.isPresent() && !(beyond && trueIsFarther)) {
            return new Finding(
                    Answer.UNKNOWN,
                    "the latest value is capped and the true one lies beyond; " + reason,
                    Optional.of(compared));
        }
        return new Finding(beyond ? Answer.YES : Answer.NO, reason, Optional.of(compared));
    }
}
