package stridetally.forecast;

import java.util.ArrayList;
import java.util.List;
import stridetally.model.Criterion;
import stridetally.trend.HelpShare;

/**
 * The chance that the written criterion is satisfied on some day up to the due date. Possible truths are drawn, each is
 * carried forward from the present streak over sessions in the student's own rhythm, outside breaks, with the day-to-day
 * carry-over from the last session; in each session the tries are as many as usual, and the chances of meeting, missing and
 * not known are computed, not drawn. Sessions in which every try needs more help come as often as of late, and miss.
 */
final class CriterionChance {
    private static final double FADING = Math.pow(0.5, 1 / 5.0);

    private final ScaledSeries series;
    private final SessionRhythm rhythm;
    private final double[] times;
    private final SessionChance sessions;
    private final int streak;
    private final int needed;
    private final MeetingTally tally;
    private final List<CurveHeights> made = new ArrayList<>();

    /** For a goal of which it can be asked. */
    CriterionChance(ForecastCase goal, ScaledSeries series) {
        this.series = series;
        this.rhythm = SessionRhythm.of(goal);
        this.times = times(goal, rhythm);
        this.sessions =
                SessionChance.of(goal, series, assistedShare(goal.series().help()));
        this.streak = goal.streak();
        this.needed = goal.criterion().sessionsMet().orElseThrow();
        this.tally = new MeetingTally(needed);
    }

    /** Whether there is a criterion to carry forward and a day left for it. */
    static boolean isAsked(ForecastCase goal) {
        Criterion criterion = goal.criterion();
        boolean told = criterion.byTries() || criterion.triesMet().isEmpty();
        return criterion.written()
                && told
                && goal.series().points().size() > 1
                && goal.due().orElseThrow().isAfter(goal.asOf());
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

    private static double[] times(ForecastCase goal, SessionRhythm rhythm) {
        long start = goal.baselineDate().orElseThrow().toEpochDay();
        double all = goal.clock().runningDays(start, goal.due().orElseThrow().toEpochDay());
        double[] times = new double[rhythm.days()];
        for (int i = 0; i < times.length; i++) {
            times[i] = goal.clock().runningDays(start, rhythm.day(i)) / all;
        }
        return times;
    }

    /** The chance over possible truths, 0 to 1. */
    double of(List<LineDraw> draws) {
        return after(draws, new int[0], 0);
    }

    /**
     * The same after more sessions of one value.
     *
     * @param more places of these sessions among the days of the rhythm, in order
     * @param value on the scale of the series
     */
    double after(List<LineDraw> draws, int[] more, double value) {
        if (streak >= needed) {
            return 1;
        }
        double sum = 0;
        for (int i = 0; i < draws.size(); i++) {
            tally.start(streak);
            carry(draws.get(i), more, value);
            sum += tally.done();
        }
        return Math.min(1, Math.max(0, sum / draws.size()));
    }

    private void carry(LineDraw draw, int[] more, double value) {
        CurveHeights heights = heights(draw.place().curve());
        double[] curve = heights.coming;
        CarryTable carry = draw.place().carry();
        int last = series.size() - 1;
        double noise = (series.value(last) - draw.at(heights.last)) / series.spread(last);
        int day = 0;
        for (int index : more) {
            double line = draw.at(curve[index]);
            noise = value - line;
            sessions.add(tally, draw, line, noise);
            day = rhythm.daysSinceLast(index);
        }
        DrawnNumbers numbers = draw.path();
        int index = more.length == 0 ? rhythm.first(numbers) : rhythm.after(more[more.length - 1], numbers);
        for (; index < curve.length && !tally.isSettled(); index = rhythm.after(index, numbers)) {
            int since = rhythm.daysSinceLast(index);
            int gap = carry.place(since - day);
            noise = carry.correlationAt(gap) * noise + draw.spread() / carry.scaleAt(gap) * numbers.normal();
            day = since;
            sessions.add(tally, draw, draw.at(curve[index]), noise);
        }
    }

    /** Draws come a curve after the other, so that the last one made is nearly always the one that is asked for. */
    private CurveHeights heights(LearningCurve curve) {
        for (int i = made.size() - 1; i >= 0; i--) {
            if (made.get(i).curve.bend() == curve.bend()) {
                return made.get(i);
            }
        }
        CurveHeights heights = new CurveHeights(curve, series.time(series.size() - 1), times);
        made.add(heights);
        return heights;
    }

    /** A curve on the day of the last session and on the days to come. */
    private static final class CurveHeights {
        private final LearningCurve curve;
        private final double last;
        private final double[] coming;

        private CurveHeights(LearningCurve curve, double last, double[] times) {
            this.curve = curve;
            this.last = curve.at(last);
            this.coming = new double[times.length];
            for (int i = 0; i < coming.length; i++) {
                coming[i] = curve.at(times[i]);
            }
        }
    }
}
