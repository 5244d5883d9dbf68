package stridetally.forecast;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import stridetally.model.Direction;
import stridetally.model.Thresholds;
import stridetally.trend.MadeGoal;
import stridetally.trend.MadeSession;

/** What the pooled forecast says of made caseloads: baseline 4 on 2026-09-18, target 12, due 2027-06-04. */
class PooledForecasterTest {
    private static final LocalDate AS_OF = LocalDate.parse("2026-12-04");
    private static final Forecaster POOLED = new PooledForecaster(Thresholds.USUAL);

    private static Forecast.Outlook outlook(Forecast forecast) {
        return assertInstanceOf(Forecast.Outlook.class, forecast);
    }

    private static ForecastCase weekly(String... values) {
        return new MadeCase(new MadeGoal().made(), AS_OF).weekly(values).made();
    }

    /** Eight goals that all climb about half a step a week. */
    private static List<ForecastCase> climbing() {
        List<ForecastCase> cases = new ArrayList<>();
        SplittableRandom random = new SplittableRandom(7);
        for (int goal = 0; goal < 8; goal++) {
            String[] values = IntStream.range(0, 10)
                    .mapToObj(week -> Integer.toString((int) (4 + week * 0.5 + random.nextInt(3) - 0.5)))
                    .toArray(String[]::new);
            cases.add(weekly(values));
        }
        return cases;
    }

    @Test
    void theOrderOfTheCasesChangesNoDigit() {
        List<ForecastCase> cases = climbing();
        List<Forecast> forward = POOLED.forecast(cases);
        Collections.reverse(cases);
        List<Forecast> backward = new ArrayList<>(POOLED.forecast(cases));
        Collections.reverse(backward);
        assertEquals(forward, backward);
        assertEquals(forward, POOLED.forecast(climbing()));
    }

    @Test
    void aCaseloadThatClimbsLiftsTheChanceOfAShortSeries() {
        ForecastCase few = weekly("5", "4", "6", "5");
        double alone = outlook(POOLED.forecast(List.of(few)).get(0)).chanceLine();
        List<ForecastCase> cases = climbing();
        cases.add(few);
        Forecast.Outlook pooled = outlook(POOLED.forecast(cases).get(8));
        assertTrue(pooled.chanceLine() > alone, alone + " to " + pooled.chanceLine());
        assertTrue(
                pooled.notes().stream().anyMatch(note -> note.startsWith("chance of the line from this student's")),
                () -> pooled.notes().toString());
    }

    @Test
    void aSeriesThatStartsElsewhereAndStandsStillIsNotForecastToClimb() {
        List<ForecastCase> cases = new ArrayList<>();
        SplittableRandom random = new SplittableRandom(7);
        for (int goal = 0; goal < 8; goal++) {
            double perWeek = 0.5 * (goal % 3);
            cases.add(weekly(IntStream.range(0, 10)
                    .mapToObj(week -> Integer.toString((int) (4 + week * perWeek + random.nextInt(3) - 0.5)))
                    .toArray(String[]::new)));
        }
        cases.add(weekly("9", "9", "10", "9", "8", "9", "9", "9", "10", "9"));
        Forecast.Outlook standing = outlook(POOLED.forecast(cases).get(8));
        // its own line stays at 9; a line that has to begin at the baseline of 4 comes through these points to 13 and
        // more
        assertTrue(standing.value() < 12, () -> "comes to " + standing.value());
    }

    @Test
    void lowerIsBetterMirrorsHigherIsBetter() {
        // 4 to 12 mirrored about 8 is 12 to 4
        ForecastCase up = weekly("5", "6", "5", "7", "6", "8");
        ForecastCase down = new MadeCase(
                        new MadeGoal().baseline("12").target("4").made(), AS_OF)
                .better(Direction.LOWER)
                .weekly("11", "10", "11", "9", "10", "8")
                .made();
        Forecast.Outlook higher = outlook(POOLED.forecast(List.of(up)).get(0));
        Forecast.Outlook lower = outlook(POOLED.forecast(List.of(down)).get(0));
        assertEquals(higher.chanceLine(), lower.chanceLine(), 1e-12);
        assertEquals(16 - higher.value(), lower.value(), 1e-9);
        assertEquals(16 - higher.low80(), lower.high80(), 1e-9);
    }

    @Test
    void aCapIsEvidenceOfMoreAndNotOfStandingStill() {
        ForecastCase exact = weekly("6", "7", "8", "8", "8", "8");
        MadeCase made = new MadeCase(new MadeGoal().made(), AS_OF);
        made.on(AS_OF.minusWeeks(5), "6").on(AS_OF.minusWeeks(4), "7");
        for (int week = 3; week >= 0; week--) {
            made.session(MadeSession.atLeast(AS_OF.minusWeeks(week), "8").made());
        }
        Forecast.Outlook capped = outlook(POOLED.forecast(List.of(made.made())).get(0));
        assertTrue(
                capped.value() > outlook(POOLED.forecast(List.of(exact)).get(0)).value());
        assertTrue(capped.notes().stream().anyMatch(note -> note.contains("4 of 6 values are capped")));
    }

    private static MadeCase made(MadeGoal goal) {
        return new MadeCase(goal.made(), AS_OF);
    }

    private static String refused(ForecastCase odd) {
        List<ForecastCase> cases = climbing();
        cases.add(odd);
        return assertInstanceOf(Forecast.NoOutlook.class, POOLED.forecast(cases).get(8))
                .reason();
    }

    /** The records refuse a NaN, a chance outside 0 to 1 and a value outside its range. */
    private static Forecast.Outlook answered(ForecastCase odd) {
        List<ForecastCase> cases = climbing();
        cases.add(odd);
        Forecast.Outlook answer = outlook(POOLED.forecast(cases).get(8));
        assertTrue(answer.notes().size() > 1, () -> answer.notes().toString());
        return answer;
    }

    @Test
    void aBaselineThatIsTheTargetHasNoWayToGo() {
        assertEquals(
                "the goal has a target that is its baseline, so there is no way to go",
                refused(made(new MadeGoal().target("4"))
                        .weekly("4", "5", "4", "5")
                        .made()));
    }

    @Test
    void aDueDateThatHasPassedIsForecastOnThatDay() {
        Forecast.Outlook passed = answered(made(new MadeGoal().due("2026-11-20"))
                .weekly("5", "6", "5", "7", "8")
                .made());
        assertTrue(passed.notes().contains("the due date has passed; the figures are those of the line on 2026-11-20"));
    }

    @Test
    void twoGoalsOnOneSeriesGetTheSameAnswer() {
        List<ForecastCase> cases = climbing();
        cases.add(weekly("5", "6", "7", "6"));
        cases.add(weekly("5", "6", "7", "6"));
        List<Forecast> forecasts = POOLED.forecast(cases);
        assertEquals(outlook(forecasts.get(8)), outlook(forecasts.get(9)));
    }

    @Test
    void noSessionAndOneSessionAreTooFew() {
        assertEquals("0 of 4 sessions with a value that a forecast needs", refused(weekly()));
        assertEquals("1 of 4 sessions with a value that a forecast needs", refused(weekly("5")));
        assertEquals(
                "0 of 4 sessions with a value that a forecast needs",
                assertInstanceOf(
                                Forecast.NoOutlook.class,
                                POOLED.forecast(List.of(weekly())).get(0))
                        .reason());
        assertEquals(List.of(), POOLED.forecast(List.of()));
    }

    @Test
    void sessionsThatAllStoppedAtTheCapShowNoChange() {
        MadeCase capped = made(new MadeGoal());
        for (int week = 5; week >= 0; week--) {
            capped.session(MadeSession.atLeast(AS_OF.minusWeeks(week), "10").made());
        }
        assertEquals("all 6 values are capped; caps alone show no change", refused(capped.made()));
    }

    @Test
    void equalSessionsAreNotTakenForCertainty() {
        Forecast.Outlook equal = answered(weekly("6", "6", "6", "6", "6"));
        assertTrue(equal.low80() < equal.value() && equal.value() < equal.high80(), equal::toString);
    }

    @Test
    void twoThousandSessionsAreAnswered() {
        MadeCase daily = made(new MadeGoal().baselineDate("2010-01-01"));
        for (int i = 0; i < 2000; i++) {
            daily.on(AS_OF.minusDays(2000 - i), Integer.toString(4 + i % 5));
        }
        Forecast.Outlook many = answered(daily.made());
        // five values in turn about 6: the line stands there, and 2,000 sessions leave little doubt
        assertEquals(6, many.value(), 0.5);
    }

    @Test
    void datesADecadeApartAreAnswered() {
        answered(made(new MadeGoal().baselineDate("2010-01-01"))
                .on(LocalDate.parse("2016-12-04"), "5")
                .weekly("6", "7", "8")
                .made());
    }

    @Test
    void aTargetInAnotherUnitThanTheSessionsIsForecastAsItIsWritten() {
        // a way too small for a scale falls back on the own line and says so; a huge one is simply far
        Forecast.Outlook tiny = answered(made(new MadeGoal().target("4.000000001"))
                .weekly("5", "6", "5", "7")
                .made());
        assertTrue(
                tiny.notes()
                        .contains("from this student's own line alone, without the caseload: values further from the"
                                + " baseline than 12 times the way to the target"),
                () -> tiny.notes().toString());
        Forecast.Outlook huge = answered(made(new MadeGoal().target("4000000000"))
                .weekly("5", "6", "5", "7")
                .made());
        // as the climbing caseload goes its way; the sessions of this child go nowhere on that scale
        assertTrue(huge.chanceLine() < 0.5, huge::toString);
    }

    @Test
    void aLevelToKeepIsForecastFromTheOwnLine() {
        Forecast.Outlook kept =
                answered(made(new MadeGoal().keep()).weekly("5", "6", "5", "7").made());
        assertTrue(
                kept.notes()
                        .contains(
                                "from this student's own line alone, without the caseload: a level to keep is not a way to go"));
    }
}
