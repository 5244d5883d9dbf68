package stridetally.trend;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import stridetally.model.Goal;
import stridetally.stats.Estimate;
import stridetally.stats.Interval;
import stridetally.stats.StraightLine;
import stridetally.units.Amount;

/**
 * Everything that the points of one goal side, or of one bare series, say before any forecast: own line, robust line, rank
 * trend, and where the student is against the aim line. Amounts are in the measure's unit, slopes per week of 7 real days.
 *
 * @param baseline of the goal
 * @param target of the goal
 * @param due of the goal
 * @param aimToday where the aim line is on the day of the report
 * @param latestMinusAim the latest value less the aim line on its own date; above 0 is higher, not better
 * @param reasons why something is missing or to be read with care; never blank, none twice
 */
public record TrendLine(
        Series series,
        Optional<Amount> baseline,
        Optional<Amount> target,
        Optional<LocalDate> due,
        OwnLine own,
        RobustLine robust,
        RankTrend rank,
        AimLine aim,
        Estimate<Double> aimToday,
        Estimate<Double> latestMinusAim,
        List<String> reasons) {

    /** The level of the intervals of this page. */
    public static final double LEVEL = 0.95;

    private static final String NO_GOAL = "no goal";

    /** Why a series without a goal has no aim line. */
    public static final String NO_AIM = whyNoAim(Estimate.notEstimable(NO_GOAL));

    public TrendLine {
        reasons = List.copyOf(reasons);
    }

    /** The line of a goal's side. */
    public static TrendLine of(Goal goal, Series series, LocalDate asOf) {
        AimLine aim = AimLine.of(goal);
        Estimate<Double> aimToday = asOf.isBefore(goal.baselineDate().orElse(asOf))
                ? Estimate.notEstimable("the baseline date is after " + asOf)
                : aim.on(asOf);
        return of(series, goal.baseline(), goal.target(), goal.due(), aim, aimToday);
    }

    /** The line of a series without a goal: no aim line, and the intercept is at the first session. */
    public static TrendLine bare(Series series) {
        AimLine none = new AimLine.Undefined(NO_GOAL);
        return of(series, Optional.empty(), Optional.empty(), Optional.empty(), none, Estimate.notEstimable(NO_GOAL));
    }

    /** How many points. */
    public int sessions() {
        return series.points().size();
    }

    /** Date of the first point. */
    public Optional<LocalDate> first() {
        return series.first();
    }

    /** The last point: its date is the column {@code last}, its value {@code latest}. */
    public Optional<Point> latest() {
        return series.latest();
    }

    /** What the goal asks for, per week. */
    public Estimate<Double> neededPerWeek() {
        return aim.neededPerWeek();
    }

    /** The interval of the own slope. */
    public Estimate<Interval> slopeInterval() {
        return own.slopeInterval(LEVEL);
    }

    /** The reasons as one text. */
    public String reason() {
        return String.join("; ", reasons);
    }

    private static TrendLine of(
            Series series,
            Optional<Amount> baseline,
            Optional<Amount> target,
            Optional<LocalDate> due,
            AimLine aim,
            Estimate<Double> aimToday) {
        PointLines lines = PointLines.of(series.days(), series.values(), series.bounded());
        Estimate<Double> latestMinusAim = series.latest()
                .map(point -> aim.on(point.date()).map(line -> point.value() - line))
                .orElse(Estimate.notEstimable("no session with a value"));
        Set<String> reasons = new LinkedHashSet<>(lines.reasons());
        reasons.add(whyNoAim(aimToday));
        reasons.add(whyNoAim(aim.neededPerWeek()));
        reasons.remove("");
        return new TrendLine(
                series,
                baseline,
                target,
                due,
                lines.own(),
                lines.robust(),
                lines.rank(),
                aim,
                aimToday,
                latestMinusAim,
                new ArrayList<>(reasons));
    }

    private static String whyNoAim(Estimate<?> figure) {
        return figure.isEstimated() ? "" : "aim line: " + figure.reason();
    }

    /**
     * Change per week of the share of probes at permitted help, over all sessions with recorded probes, also those without
     * a value. Only pages of a goal ask for it.
     */
    public Estimate<Double> permittedSharePerWeek() {
        List<HelpShare> known = new ArrayList<>();
        for (HelpShare share : series.help()) {
            if (share.share().isPresent()) {
                known.add(share);
            }
        }
        if (known.isEmpty()) {
            return Estimate.notEstimable("no session with a recorded probe whose help is known");
        }
        double[] days = new double[known.size()];
        double[] shares = new double[known.size()];
        for (int i = 0; i < days.length; i++) {
            days[i] = series.day(known.get(i).date());
            shares[i] = known.get(i).share().orElseThrow();
        }
        if (days[0] == days[days.length - 1]) {
            return Estimate.notEstimable("all probes are of one day; a line needs 2 days");
        }
        return StraightLine.fit(days, shares).flatMap(fit -> Estimate.finite(fit.slope() * 7));
    }
}
