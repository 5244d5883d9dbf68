package stridetally.forecast;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import stridetally.trend.HelpShare;

/**
 * The chance that the written criterion is satisfied on some day up to the due date. Possible truths are drawn, each is
 * carried forward from the present streak over sessions in the student's own rhythm, outside breaks, with the day-to-day
 * carry-over from the last session; in each session the tries are as many as usual, and the chances of meeting, missing and
 * not known are computed, not drawn. Sessions in which every try needs more help
 * come as often as of late, and miss.
 */
final class CriterionChance {
    private static final double FADING = Math.pow(0.5, 1 / 5.0);

    private final ForecastCase goal;
    private final ScaledSeries series;
    private final List<LineDraw> draws;
    private final SessionRhythm rhythm;
    private final TryModel tries;
    private final double assisted;
    private final Map<LearningCurve, double[]> heights = new HashMap<>();

    private CriterionChance(ForecastCase goal, ScaledSeries series, List<LineDraw> draws) {
        this.goal = goal;
        this.series = series;
        this.draws = draws;
        this.rhythm = SessionRhythm.of(goal);
        this.tries = TryModel.of(goal, series);
        this.assisted = assistedShare(goal.series().help());
    }

    /** Share of sessions in which every try needed more help; one five sessions ago counts half. */
    private static double assistedShare(List<HelpShare> sessions) {
        double assisted = 0;
        double all = 0;
        double weight = 1;
        for (int i = sessions.size() - 1; i >= 0; i--) {
            all += weight;
            assisted += sessions.get(i).assistedOnly() ? weight : 0;
            weight *= FADING;
        }
        return all == 0 ? 0 : assisted / all;
    }

    /** Whether there is a criterion to carry forward and a day left for it. */
    static boolean isAsked(ForecastCase goal) {
        boolean told = goal.criterion().byTries() || goal.criterion().triesMet().isEmpty();
        return goal.criterion().written()
                && told
                && goal.series().points().size() > 1
                && goal.due().orElseThrow().isAfter(goal.asOf());
    }

    /** The chance, 0 to 1. */
    static double of(ForecastCase goal, ScaledSeries series, List<LineDraw> draws) {
        int needed = goal.criterion().sessionsMet().orElseThrow();
        return goal.streak() >= needed ? 1 : new CriterionChance(goal, series, draws).chance(needed);
    }

    private double chance(int needed) {
        MeetingTally tally = new MeetingTally(needed);
        double sum = 0;
        for (LineDraw draw : draws) {
            tally.start(goal.streak());
            carry(draw, tally);
            sum += tally.done();
        }
        return Math.min(1, Math.max(0, sum / draws.size()));
    }

    private void carry(LineDraw draw, MeetingTally tally) {
        double[] curve = heights.computeIfAbsent(draw.place().curve(), this::heights);
        CarryTable carry = draw.place().carry();
        int last = series.size() - 1;
        double noise = (series.value(last) - draw.at(draw.place().curve().at(series.time(last)))) / series.spread(last);
        DrawnNumbers numbers = draw.path();
        int day = 0;
        for (int index = rhythm.first(numbers); index < curve.length; index = rhythm.after(index, numbers)) {
            int since = rhythm.daysSinceLast(index);
            double correlation = carry.correlation(since - day);
            noise = correlation * noise + Math.sqrt(1 - correlation * correlation) * draw.spread() * numbers.normal();
            day = since;
            session(tally, draw, curve[index], noise);
        }
    }

    private void session(MeetingTally tally, LineDraw draw, double height, double noise) {
        double line = draw.at(height);
        if (!goal.criterion().byTries()) {
            double meets = line + noise >= 1 ? 1 - assisted : 0;
            tally.session(meets, 1 - meets);
            return;
        }
        int needed = goal.criterion().triesMet().orElseThrow();
        int offered = goal.criterion().triesGiven().orElseThrow();
        int made = Math.min(offered, Math.max(1, goal.tries().perSession()));
        double one = tries.isShare() ? share(draw, line, noise, made) : tries.chance(line + noise);
        double meets = (1 - assisted) * atLeast(needed, made, one);
        double open = made == offered ? meets : (1 - assisted) * atLeast(needed - (offered - made), made, one);
        tally.session(meets, 1 - Math.max(meets, open));
    }

    /** The share of a session beyond what chance does to so few tries, which is in the noise already. */
    private double share(LineDraw draw, double line, double noise, int made) {
        double middle = clipped(series.inUnits(line));
        double byChance = middle * (1 - middle) / made / (series.way() * series.way());
        double left = Math.sqrt(Math.max(0, 1 - byChance / (draw.spread() * draw.spread())));
        return clipped(series.inUnits(line + left * noise));
    }

    private static double clipped(double share) {
        return Math.min(1, Math.max(0, share));
    }

    /** The chance of so many successes or more. */
    private static double atLeast(int needed, int tries, double chance) {
        if (needed <= 0) {
            return 1;
        }
        double sum = 0;
        double ways = 1;
        for (int met = tries; met >= needed; met--) {
            sum += ways * power(chance, met) * power(1 - chance, tries - met);
            ways = ways * met / (tries - met + 1);
        }
        return Math.min(1, sum);
    }

    /** Of few tries, so that multiplying out is quicker than a logarithm. */
    private static double power(double base, int exponent) {
        double product = 1;
        for (int i = 0; i < exponent; i++) {
            product *= base;
        }
        return product;
    }

    private double[] heights(LearningCurve curve) {
        List<Double> at = new ArrayList<>();
        double all = goal.clock()
                .runningDays(goal.baselineDate().orElseThrow(), goal.due().orElseThrow());
        rhythm.days()
                .forEach(day -> at.add(
                        curve.at(goal.clock().runningDays(goal.baselineDate().orElseThrow(), day) / all)));
        return at.stream().mapToDouble(Double::doubleValue).toArray();
    }
}
