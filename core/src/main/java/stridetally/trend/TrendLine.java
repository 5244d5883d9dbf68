package stridetally.trend;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import stridetally.model.Goal;
import stridetally.stats.Estimate;
import stridetally.stats.ExactMeans;
import stridetally.stats.Interval;
import stridetally.stats.RankedPoints;
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
        AimLine none = new AimLine.Undefined("no goal");
        return of(series, Optional.empty(), Optional.empty(), Optional.empty(), none, Estimate.notEstimable("no goal"));
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
        Optional<String> noLine = LineCheck.whyNot(series);
        OwnLine own;
        Estimate<RankedPoints> ranked;
        if (noLine.isPresent()) {
            own = OwnLine.none(noLine.get());
            ranked = Estimate.notEstimable(noLine.get());
        } else {
            double[] days = series.days();
            ExactMeans values = series.values();
            own = OwnLine.of(days, values.values());
            ranked = Estimate.of(RankedPoints.of(days, values));
        }
        RobustLine robust = RobustLine.of(ranked, LEVEL);
        RankTrend rank = RankTrend.of(ranked);
        Estimate<Double> latestMinusAim = series.latest()
                .map(point -> aim.on(point.date()).map(line -> point.value() - line))
                .orElse(Estimate.notEstimable("no session with a value"));
        Set<String> reasons = new LinkedHashSet<>(cautions(series));
        addReasons(reasons, noLine, own, robust, rank);
        addReason(reasons, "aim line", aimToday);
        addReason(reasons, "aim line", aim.neededPerWeek());
        return new TrendLine(
                series,
                baseline,
                target,
                due,
                own,
                robust,
                rank,
                aim,
                aimToday,
                latestMinusAim,
                new ArrayList<>(reasons));
    }

    private static List<String> cautions(Series series) {
        int bounded = series.bounded();
        int n = series.points().size();
        return bounded == 0 || bounded == n
                ? List.of()
                : List.of(bounded + " of " + n + " values are capped (censored): the slope is biased");
    }

    /** A series that allows no line says so once, not once for each figure. */
    private static void addReasons(
            Set<String> reasons, Optional<String> noLine, OwnLine own, RobustLine robust, RankTrend rank) {
        if (noLine.isPresent()) {
            reasons.add("line: " + noLine.get());
            return;
        }
        addReason(reasons, "interval of the slope", own.slopeInterval(LEVEL));
        addReason(reasons, "share explained", own.rSquared());
        addReason(reasons, "lag-1", own.lagOne());
        addReason(reasons, "interval of the robust slope", robust.interval());
        addReason(reasons, "rank trend", rank.p());
    }

    private static void addReason(Set<String> reasons, String of, Estimate<?> figure) {
        if (!figure.isEstimated()) {
            reasons.add(of + ": " + figure.reason());
        }
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
