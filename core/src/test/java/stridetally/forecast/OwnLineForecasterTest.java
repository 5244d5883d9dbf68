package stridetally.forecast;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;
import stridetally.model.DateRange;
import stridetally.model.Direction;
import stridetally.model.Goal;
import stridetally.model.SchoolBreak;
import stridetally.model.Thresholds;
import stridetally.trend.MadeGoal;
import stridetally.trend.MadeSession;

/**
 * The made-up series {@code stance} of the reference files: R 4.2.2, {@code m <- lm(y ~ week)},
 * {@code predict(m, data.frame(week = 84/7), interval = "confidence")} gives 7.49196499886747, 6.93307713371151,
 * 8.05085286402343 at day 84 (df 10). A target on an end of the 95 % interval therefore has a chance of 0.025 or 0.975.
 */
class OwnLineForecasterTest {

    private static final double FIT = 7.49196499886747;
    private static final double HIGH_95 = 8.05085286402343;
    private static final int[] DAYS = {0, 7, 14, 21, 30, 35, 42, 50, 56, 63, 70, 77};
    private static final String[] SECONDS = {
        "3.2", "3.8", "3.1", "4.5", "4.9", "4.4", "5.6", "5.2", "6.3", "6.1", "6.8", "7.4"
    };
    private static final LocalDate DAY_ZERO = LocalDate.parse("2026-09-18");
    private static final LocalDate AS_OF = DAY_ZERO.plusDays(77);
    private static final OwnLineForecaster FORECASTER = new OwnLineForecaster(Thresholds.USUAL);

    private static Goal goal(String target) {
        return new MadeGoal()
                .baselineDate(DAY_ZERO.minusDays(1).toString())
                .baseline("3")
                .target(target)
                .due(DAY_ZERO.plusDays(84).toString())
                .made();
    }

    private static MadeCase stance(Goal goal) {
        MadeCase made = new MadeCase(goal, AS_OF);
        for (int i = 0; i < DAYS.length; i++) {
            made.on(DAY_ZERO.plusDays(DAYS[i]), SECONDS[i]);
        }
        return made;
    }

    private static Forecast.Outlook outlook(MadeCase made) {
        return assertInstanceOf(
                Forecast.Outlook.class,
                FORECASTER.forecast(List.of(made.made())).get(0));
    }

    private static String reason(MadeCase made) {
        return assertInstanceOf(
                        Forecast.NoOutlook.class,
                        FORECASTER.forecast(List.of(made.made())).get(0))
                .reason();
    }

    private static double chance(String target) {
        return outlook(stance(goal(target))).chanceLine();
    }

    @Test
    void theLineAndItsIntervalAtTheDueDateAreRs() {
        Forecast.Outlook outlook = outlook(stance(goal("8")));
        assertEquals(FIT, outlook.value(), 1e-12);
        // t quantiles for df 10, R qt: 0.975 is 2.22813885198627, 0.90 is 1.37218364111034 (published tables: 2.228,
        // 1.372)
        double half = (HIGH_95 - FIT) / 2.22813885198627 * 1.37218364111034;
        assertEquals(FIT - half, outlook.low80(), 1e-11);
        assertEquals(FIT + half, outlook.high80(), 1e-11);
    }

    @Test
    void theChanceIsThatOfTWithTenDegreesOfFreedom() {
        assertEquals(0.025, chance("8.050852864"), 1e-9);
        assertEquals(0.975, chance("6.933077134"), 1e-9);
        assertEquals(0.5, chance("7.491964999"), 1e-9);
        // SciPy 1.17.1: t.sf((8 - 7.49196499886747) / 0.2508317040734419, 10)
        assertEquals(0.03517144671267763, chance("8"), 1e-10);
    }

    @Test
    void whereLessIsBetterTheOtherTailCounts() {
        MadeCase made = stance(goal("8.050852864")).better(Direction.LOWER);
        // a target above its baseline is refused where less is better, so the baseline is moved above it
        Goal above = new MadeGoal()
                .baselineDate(DAY_ZERO.minusDays(1).toString())
                .baseline("9")
                .target("8.050852864")
                .due(DAY_ZERO.plusDays(84).toString())
                .made();
        assertEquals("the goal has a target that is worse than its baseline", reason(made));
        assertEquals(0.975, outlook(stance(above).better(Direction.LOWER)).chanceLine(), 1e-9);
    }

    @Test
    void theChanceIsSaidToBeThatOfTheLine() {
        Forecast.Outlook outlook = outlook(stance(goal("8")));
        assertEquals(outlook.chanceLine(), outlook.chance());
        assertEquals(
                List.of(
                        "chance is that of the line",
                        "the chance of the written criterion is not computed from the own line"),
                outlook.notes());
    }

    @Test
    void aLongBreakBetweenTheSessionsMovesNothing() {
        // the same series with 60 days of break after day 42: on the clock that stands still it is the same line
        LocalDate breakFirst = DAY_ZERO.plusDays(43);
        SchoolClock clock = SchoolClock.of(
                List.of(new SchoolBreak("summer", new DateRange(breakFirst, breakFirst.plusDays(59)), "")), "", 4);
        Goal goal = new MadeGoal()
                .baselineDate(DAY_ZERO.minusDays(1).toString())
                .baseline("3")
                .target("8")
                .due(DAY_ZERO.plusDays(144).toString())
                .made();
        MadeCase made = new MadeCase(goal, AS_OF.plusDays(60)).clock(clock);
        for (int i = 0; i < DAYS.length; i++) {
            made.on(DAY_ZERO.plusDays(DAYS[i] + (DAYS[i] > 42 ? 60 : 0)), SECONDS[i]);
        }
        Forecast.Outlook outlook = outlook(made);
        assertEquals(FIT, outlook.value(), 1e-12);
        assertEquals(0.03517144671267763, outlook.chanceLine(), 1e-10);
        assertTrue(
                outlook.notes().contains("60 days of long school breaks do not count in the forecast"),
                outlook.notes().toString());
    }

    @Test
    void aLineWithoutSpreadIsTakenAsExactAndSaysSo() {
        // 4, 5, 6, 7 in the last four weeks: 8 a week after the report, 9 after two
        Goal goal =
                new MadeGoal().target("9").due(AS_OF.plusWeeks(2).toString()).made();
        Forecast.Outlook reached = outlook(new MadeCase(goal, AS_OF).weekly("4", "5", "6", "7"));
        assertEquals(9.0, reached.value(), 1e-12);
        assertEquals(1.0, reached.chance());
        assertEquals(reached.low80(), reached.high80());
        assertTrue(reached.notes()
                .contains("all points lie exactly on the line, which is taken as exact; so sure nobody can be"));
        Forecast.Outlook missed = outlook(new MadeCase(goal, AS_OF).weekly("3", "4", "5", "6"));
        assertEquals(0.0, missed.chance());
    }

    @Test
    void aDueDateGoneByIsSaid() {
        Goal goal = new MadeGoal().due(AS_OF.minusDays(10).toString()).made();
        Forecast.Outlook outlook = outlook(new MadeCase(goal, AS_OF).weekly("4", "6", "5", "7"));
        assertTrue(
                outlook.notes()
                        .contains(
                                "the due date has passed; the figures are those of the line on " + AS_OF.minusDays(10)),
                outlook.notes().toString());
    }

    @Test
    void threePointsAreTooFewAndFourAreNot() {
        Goal goal = new MadeGoal().made();
        assertEquals(
                "3 of 4 sessions with a value that a forecast needs",
                reason(new MadeCase(goal, AS_OF).weekly("4", "6", "5")));
        outlook(new MadeCase(goal, AS_OF).weekly("4", "6", "5", "7"));
    }

    @Test
    void aSettingOfTwoStillNeedsThreeForTheErrorOfALine() {
        OwnLineForecaster eager = new OwnLineForecaster(new Thresholds(0.7, 0.3, 2, 6, 4, 0.2));
        ForecastCase two =
                new MadeCase(new MadeGoal().made(), AS_OF).weekly("4", "6").made();
        assertEquals(
                new Forecast.NoOutlook("2 sessions with a value; the error of a line needs 3"),
                eager.forecast(List.of(two)).get(0));
    }

    @Test
    void sixWeeksWithoutASessionAreAllowedAndADayMoreIsNot() {
        Goal goal = new MadeGoal().made();
        LocalDate last = AS_OF.minusDays(42);
        outlook(sparse(goal, last));
        assertEquals(
                "no session with a value in the last 6 weeks outside school breaks; the last was on "
                        + last.minusDays(1),
                reason(sparse(goal, last.minusDays(1))));
        SchoolClock oneDayOff = SchoolClock.of(
                List.of(new SchoolBreak("day", new DateRange(AS_OF.minusDays(9), AS_OF.minusDays(9)), "")), "", 4);
        outlook(sparse(goal, last.minusDays(1)).clock(oneDayOff));
    }

    private static MadeCase sparse(Goal goal, LocalDate last) {
        return new MadeCase(goal, AS_OF)
                .on(last.minusDays(9), "4")
                .on(last.minusDays(6), "6")
                .on(last.minusDays(3), "5")
                .on(last, "7");
    }

    @Test
    void capsAloneGiveNoForecast() {
        MadeCase made = new MadeCase(new MadeGoal().made(), AS_OF);
        for (int week = 0; week < 4; week++) {
            made.session(MadeSession.atLeast(AS_OF.minusWeeks(week), "10").made());
        }
        assertEquals("all 4 values are capped; caps alone show no change", reason(made));
    }

    @Test
    void whatTheGoalLacksIsNamed() {
        assertEquals(
                "the goal has no target and no due date",
                reason(new MadeCase(new MadeGoal().noTarget().noDue().made(), AS_OF).weekly("4", "6", "5", "7")));
        assertEquals(
                "the goal has a measure of which neither way is better",
                reason(new MadeCase(new MadeGoal().made(), AS_OF).noBetter().weekly("4", "6", "5", "7")));
        assertEquals(
                "the goal has a due date that is not after its baseline date",
                reason(new MadeCase(new MadeGoal().due("2026-09-18").made(), AS_OF).weekly("4", "6", "5", "7")));
    }

    @Test
    void aMeasureTakenAFewTimesAYearGivesItsGainInstead() {
        // 20 days of 50 gone is 40 %; from 4 to 6 of the way from 4 to 10
        Goal goal = new MadeGoal()
                .target("10")
                .due(LocalDate.parse("2026-09-18").plusDays(50).toString())
                .made();
        LocalDate asOf = LocalDate.parse("2026-09-18").plusDays(20);
        String rest = " with 40 % of the time gone; measured a few times a year, so no chance is computed";
        assertEquals(
                "gained 2 of 6" + rest, reason(new MadeCase(goal, asOf).review().on(asOf, "6")));
        assertEquals(
                "lost 1 where 6 is to be gained" + rest,
                reason(new MadeCase(goal, asOf).review().on(asOf, "3")));
        assertEquals("not measured since the baseline" + rest, reason(new MadeCase(goal, asOf).review()));
        assertEquals(
                "gained 2 of 6 with all of the time gone; measured a few times a year, so no chance is computed",
                reason(new MadeCase(goal, asOf.plusDays(30)).review().on(asOf, "6")));
    }

    @Test
    void eachCaseOfACaseloadHasItsForecastInItsPlace() {
        ForecastCase few =
                new MadeCase(new MadeGoal().made(), AS_OF).weekly("4").made();
        List<Forecast> forecasts =
                FORECASTER.forecast(List.of(few, stance(goal("8")).made(), few));
        assertInstanceOf(Forecast.NoOutlook.class, forecasts.get(0));
        assertInstanceOf(Forecast.Outlook.class, forecasts.get(1));
        assertInstanceOf(Forecast.NoOutlook.class, forecasts.get(2));
    }
}
