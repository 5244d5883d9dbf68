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

    @Test
    void everyOddCaseGetsAnAnswerOrAReason() {
        LocalDate decade = LocalDate.parse("2016-12-04");
        String[] many = IntStream.range(0, 2000)
                .mapToObj(i -> Integer.toString(4 + i % 5))
                .toArray(String[]::new);
        MadeCase daily = new MadeCase(new MadeGoal().baselineDate("2010-01-01").made(), AS_OF);
        for (int i = 0; i < many.length; i++) {
            daily.on(AS_OF.minusDays(many.length - i), many[i]);
        }
        MadeCase capped = new MadeCase(new MadeGoal().made(), AS_OF);
        for (int week = 5; week >= 0; week--) {
            capped.session(MadeSession.atLeast(AS_OF.minusWeeks(week), "10").made());
        }
        List<ForecastCase> cases = List.of(
                new MadeCase(new MadeGoal().target("4").made(), AS_OF)
                        .weekly("4", "5", "4", "5")
                        .made(),
                new MadeCase(new MadeGoal().due("2026-11-20").made(), AS_OF)
                        .weekly("5", "6", "5", "7", "8")
                        .made(),
                weekly("5", "6", "7", "6"),
                weekly("5", "6", "7", "6"),
                weekly(),
                weekly("5"),
                capped.made(),
                weekly("6", "6", "6", "6", "6"),
                daily.made(),
                new MadeCase(new MadeGoal().baselineDate("2010-01-01").made(), AS_OF)
                        .on(decade, "5")
                        .weekly("6", "7", "8")
                        .made(),
                new MadeCase(new MadeGoal().target("4.000000001").made(), AS_OF)
                        .weekly("5", "6", "5", "7")
                        .made(),
                new MadeCase(new MadeGoal().target("4000000000").made(), AS_OF)
                        .weekly("5", "6", "5", "7")
                        .made(),
                new MadeCase(new MadeGoal().keep().made(), AS_OF)
                        .weekly("5", "6", "5", "7")
                        .made());
        List<Forecast> forecasts = POOLED.forecast(cases);
        assertEquals(cases.size(), forecasts.size());
        String reason =
                assertInstanceOf(Forecast.NoOutlook.class, forecasts.get(0)).reason();
        assertEquals("the goal has a target that is its baseline, so there is no way to go", reason);
        // the records refuse a NaN and a blank reason; so many answers there must be at least
        assertEquals(forecasts.get(2), forecasts.get(3));
        assertInstanceOf(Forecast.NoOutlook.class, forecasts.get(4));
        assertInstanceOf(Forecast.NoOutlook.class, forecasts.get(5));
        assertInstanceOf(Forecast.NoOutlook.class, forecasts.get(6));
        for (int i : new int[] {1, 2, 7, 8, 9, 10, 11, 12}) {
            assertInstanceOf(Forecast.Outlook.class, forecasts.get(i), "case " + i + ": " + forecasts.get(i));
        }
    }
}
