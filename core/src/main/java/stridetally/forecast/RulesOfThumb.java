package stridetally.forecast;

import java.util.List;
import java.util.Optional;
import stridetally.model.Direction;
import stridetally.model.GoalAim;
import stridetally.scoring.Bound;
import stridetally.stats.Estimate;
import stridetally.stats.Interval;
import stridetally.trend.AimLine;
import stridetally.trend.Point;
import stridetally.trend.TrendLine;
import stridetally.units.Amount;

/**
 * Two rules of thumb, said beside a judgement for those who must show them; they never change it. One looks whether the
 * last sessions all lie on one side of the aim line, each on its own day; a session on the line, or a capped one that may
 * lie on either side, ends the run. The other looks whether the student's own line is steeper or flatter than the aim line.
 * On caseloads with known truth the first calls about half of all goals wrong ({@code simulate}).
 *
 * @param worse so many sessions on the worse side ask for a change
 * @param better so many on the better side ask for a harder target
 * @source common-practice (three or four below, four or six above, a trend from six)
 */
public record RulesOfThumb(int worse, int better) {
    private static final int FEWEST_FOR_TREND = 6;
    private static final String CHANGE = "; the rule asks for a change of teaching";
    private static final String HARDER = "; the rule asks for a harder target";

    public RulesOfThumb {
        if (worse < 1 || better < 1) {
            throw new IllegalArgumentException("worse " + worse + ", better " + better);
        }
    }

    /** What both rules say of one side of a goal, a sentence each; one that says why where there is no aim line. */
    List<String> sentences(GoalAim aim, Optional<Direction> way, TrendLine trend) {
        Optional<String> whyNot = whyNot(aim, way, trend.aim());
        if (whyNot.isPresent()) {
            return List.of("rules of thumb: " + whyNot.get());
        }
        int sign = way.orElseThrow().sign();
        return List.of(
                "rule of the last sessions: " + lastSessions(sign, trend), "rule of the trend: " + trend(sign, trend));
    }

    private static Optional<String> whyNot(GoalAim aim, Optional<Direction> way, AimLine line) {
        if (aim == GoalAim.KEEP) {
            return Optional.of("none, the target is to be held");
        }
        if (way.isEmpty()) {
            return Optional.of("none, neither way is better");
        }
        Estimate<Double> needed = line.neededPerWeek();
        return needed.isEstimated() ? Optional.empty() : Optional.of("none, " + needed.reason());
    }

    private String lastSessions(int sign, TrendLine trend) {
        List<Point> points = trend.series().points();
        if (points.size() < Math.min(worse, better)) {
            return "cannot be said, " + points.size() + " of " + Math.min(worse, better) + " sessions with a value";
        }
        if (run(points, -sign, trend.aim()) >= worse) {
            return "the last " + worse + " are all worse than the aim line" + CHANGE;
        }
        if (run(points, sign, trend.aim()) >= better) {
            return "the last " + better + " are all better than the aim line" + HARDER;
        }
        return "the last " + Math.min(worse, better) + " are not all for certain on one side of the aim line;"
                + " the rule asks for nothing";
    }

    /** How many of the last points lie higher (1) or lower (-1) than the aim line without a break. */
    private static int run(List<Point> points, int side, AimLine aim) {
        int length = 0;
        while (length < points.size() && side(points.get(points.size() - 1 - length), aim) == side) {
            length++;
        }
        return length;
    }

    /** 1 above the line, -1 below; 0 on it to the billionth, or where the cap leaves it open. */
    private static int side(Point point, AimLine aim) {
        double off = point.value() - aim.on(point.date()).orElseThrow();
        int side = (int) Math.signum((double) Math.round(off * Amount.ONE));
        int open = point.bound().map(bound -> bound == Bound.AT_LEAST ? 1 : -1).orElse(side);
        return open == side ? side : 0;
    }

    private static String trend(int sign, TrendLine trend) {
        if (trend.sessions() < FEWEST_FOR_TREND) {
            return "cannot be said, " + trend.sessions() + " of " + FEWEST_FOR_TREND + " sessions with a value";
        }
        Estimate<Double> slope = trend.own().slopePerWeek();
        if (!slope.isEstimated()) {
            return "cannot be said, " + slope.reason();
        }
        double needed = trend.neededPerWeek().orElseThrow();
        long ahead = Math.round(sign * (slope.orElseThrow() - needed) * Amount.ONE);
        if (ahead == 0) {
            return "the own line changes as fast as the aim line; the rule asks for nothing";
        }
        return (ahead > 0
                        ? "the own line changes faster than the aim line"
                        : "the own line changes more slowly than" + " the aim line, or the wrong way")
                + (ahead > 0 ? HARDER : CHANGE)
                + perhapsByChance(trend.slopeInterval(), needed);
    }

    private static String perhapsByChance(Estimate<Interval> slope, double needed) {
        if (!slope.isEstimated()) {
            return "";
        }
        Interval ends = slope.orElseThrow();
        return ends.low() <= needed && needed <= ends.high()
                ? ", though the 95 % interval of the own slope holds that of the aim line"
                : "";
    }
}
