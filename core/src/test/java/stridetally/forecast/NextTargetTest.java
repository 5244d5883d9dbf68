package stridetally.forecast;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import stridetally.model.DateRange;
import stridetally.model.MeasureId;
import stridetally.model.SchoolBreak;
import stridetally.model.StudentCode;
import stridetally.stats.Estimate;
import stridetally.trend.Point;

/** The rates behind a next target, against arithmetic by hand and against made-up children whose next year is known. */
class NextTargetTest {
    private static final MeasureId STEPS = new MeasureId("line-steps");
    private static final MeasureId STANCE = new MeasureId("single-leg-stance");

    /**
     * By hand: weeks 0 to 4, values 0 1 1 2 3: Sxy 7, Sxx 10, slope 0.7; residuals 0 .3 -.4 -.1 .2, their squares .30 over 3
     * degrees of freedom .1, so s = .316228 and the standard error of the slope .1, widened by sqrt(3 / 1) to .173205. Ten
     * weeks of summer lie between the third and the fourth session and do not count.
     */
    @Test
    void theRateStandsStillInALongBreak() {
        LocalDate start = LocalDate.parse("2026-06-01");
        SchoolClock clock = SchoolClock.of(
                List.of(new SchoolBreak(
                        "summer", new DateRange(LocalDate.parse("2026-06-16"), LocalDate.parse("2026-08-24")), "")),
                "",
                4);
        List<Point> points = List.of(
                point(start, 0),
                point(start.plusWeeks(1), 1),
                point(start.plusWeeks(2), 1),
                point(start.plusWeeks(13), 2),
                point(start.plusWeeks(14), 3));
        SchoolRate rate = SchoolRate.of(points, clock).orElseThrow();
        assertEquals(0.7, rate.perWeek(), 1e-12);
        assertEquals(Math.sqrt(0.1), rate.scatter(), 1e-12);
        assertEquals(0.1 * Math.sqrt(3), rate.error(), 1e-12);
        assertEquals(5, rate.sessions());
        assertEquals(
                "4 sessions with a value; a rate needs 5",
                SchoolRate.of(points.subList(0, 4), clock).reason());
    }

    /** By hand: rates .1 .2 .3 have S^2 = .01. Errors .05: t^2 = .01 - .0025, and .01 / 3 more for the mean: .0108333. */
    @Test
    void whatOthersDoIsSpreadByStudentsAndNotByTheirErrors() {
        CaseloadRates known = new CaseloadRates(List.of(
                side("A", STEPS, 10, 0.1, 0.05), side("B", STEPS, 10, 0.2, 0.05), side("C", STEPS, 10, 0.3, 0.05)));
        CaseloadRates.Others others =
                known.beside(new StudentCode("D"), STEPS, 8).orElseThrow();
        assertEquals(CaseloadRates.Kin.SAME_MEASURE, others.kin());
        assertEquals(3, others.students());
        assertEquals(0.2, others.mean(), 1e-12);
        assertEquals(Math.sqrt(0.0075 + 0.01 / 3), others.spread(), 1e-12);
        // Errors above the spread: a quarter of S^2 is kept, .0025 + .01 / 3.
        CaseloadRates vague = new CaseloadRates(List.of(
                side("A", STEPS, 10, 0.1, 0.2), side("B", STEPS, 10, 0.2, 0.2), side("C", STEPS, 10, 0.3, 0.2)));
        assertEquals(
                Math.sqrt(0.0025 + 0.01 / 3),
                vague.beside(new StudentCode("D"), STEPS, 8).orElseThrow().spread(),
                1e-12);
        // One's own rate is no other's.
        assertFalse(known.beside(new StudentCode("A"), STEPS, 8).isEstimated());
    }

    /** By hand: shares of the way .01 .02 .03 .02 .02 have the mean .02 and S^2 = .0002 / 4; a way of -8 turns the sign. */
    @Test
    void otherMeasuresCountAsSharesOfTheWay() {
        CaseloadRates known = new CaseloadRates(List.of(
                side("A", STANCE, 10, 0.1, 0),
                side("B", STANCE, 5, 0.1, 0),
                side("C", STEPS, 10, 0.3, 0),
                side("D", STEPS, -10, -0.2, 0),
                side("E", STEPS, 20, 0.4, 0)));
        CaseloadRates.Others others = known.beside(new StudentCode("F"), new MeasureId("stairs-time"), -8)
                .orElseThrow();
        assertEquals(CaseloadRates.Kin.ALL_MEASURES, others.kin());
        assertEquals(5, others.students());
        assertEquals(-0.16, others.mean(), 1e-12);
        assertEquals(8 * Math.sqrt(0.00005 + 0.00005 / 5), others.spread(), 1e-12);
        assertFalse(known.beside(new StudentCode("F"), new MeasureId("stairs-time"), 0)
                .isEstimated());
    }

    /**
     * By hand: own .35 with error .02, others .14 with spread .07: weights 1 / (.0004 + .0049) = 188.6792 and 1 / .0049 =
     * 204.0816, so (66.0377 + 28.5714) / 392.7609 = .240882, error .0504587.
     */
    @Test
    void ownAndOthersAreWeighedByWhatTheySayOfTheNextYear() {
        NextRate next = NextRate.of(own(0.35, 0.02), others(0.14, 0.07));
        assertEquals(0.240882, next.perWeek(), 1e-6);
        assertEquals(0.0504587, next.error(), 1e-7);
        NextRate alone = NextRate.of(own(0.4, 0.15), Estimate.notEstimable("nobody else"));
        assertEquals(0.4, alone.perWeek());
        assertEquals(0.25, alone.error(), 1e-12, "root of .15^2 + .2^2");
        NextRate unknown = NextRate.of(Estimate.notEstimable("too few"), others(0.14, 0.07));
        assertEquals(0.14, unknown.perWeek());
        assertEquals(0.07, unknown.error());
    }

    /** Made-up children as the rule takes them: 4 of 5 reach the near end and 1 of 5 the far end. 20,000 of them: within 1 %. */
    @Test
    void fourOfFiveReachTheNearEndAndOneOfFiveTheFarEnd() {
        SplittableRandom random = new SplittableRandom(20_270_611);
        double between = 0.1;
        double error = 0.05;
        double presentError = 0.6;
        int near = 0;
        int far = 0;
        int children = 20_000;
        for (int child = 0; child < children; child++) {
            double nextYear = 0.2 + between * random.nextGaussian();
            double thisYear = nextYear + between * random.nextGaussian();
            NextRate rate = NextRate.of(own(thisYear + error * random.nextGaussian(), error), others(0.2, between));
            ReachableTarget.Gains gains = ReachableTarget.Gains.of(rate, 1, 40, presentError);
            double gained = 40 * nextYear + presentError * random.nextGaussian();
            near += gained >= gains.near() ? 1 : 0;
            far += gained >= gains.far() ? 1 : 0;
        }
        assertEquals(0.8, near / (double) children, 0.01);
        assertEquals(0.2, far / (double) children, 0.01);
    }

    @Test
    void whatIsBetterWhenLessGainsDownwards() {
        ReachableTarget.Gains gains = ReachableTarget.Gains.of(new NextRate(-0.3, 0), -1, 40, 0);
        assertEquals(12, gains.near(), 1e-12);
        assertEquals(12, gains.far(), 1e-12);
        assertTrue(ReachableTarget.Gains.of(new NextRate(0.3, 0), -1, 40, 0).far() < 0);
    }

    private static Estimate<SchoolRate> own(double perWeek, double error) {
        return Estimate.of(new SchoolRate(perWeek, error, 1, 12));
    }

    private static Estimate<CaseloadRates.Others> others(double mean, double spread) {
        return Estimate.of(new CaseloadRates.Others(CaseloadRates.Kin.SAME_MEASURE, 9, mean, spread));
    }

    private static CaseloadRates.OfSide side(String student, MeasureId measure, double way, double rate, double error) {
        return new CaseloadRates.OfSide(new StudentCode(student), measure, way, new SchoolRate(rate, error, 1, 9));
    }

    private static Point point(LocalDate day, long value) {
        return new Point(day, "", value * 1_000_000_000L, 1, Optional.empty(), 0, 0, 0, 1, 1, 1);
    }

    /** Nothing is made of an empty caseload. */
    @Test
    void nobodySaysNothing() {
        assertFalse(new CaseloadRates(new ArrayList<>())
                .beside(new StudentCode("A"), STEPS, 8)
                .isEstimated());
    }
}
