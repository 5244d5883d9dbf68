package stridetally.forecast;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import org.junit.jupiter.api.Test;
import stridetally.model.DateRange;
import stridetally.model.Direction;
import stridetally.model.Thresholds;
import stridetally.trend.MadeGoal;

/** What must hold of the pooled forecast whatever the figures are. */
class CaseloadInvariantsTest {
    private static final LocalDate AS_OF = LocalDate.parse("2026-12-04");
    private static final Forecaster POOLED = new PooledForecaster(Thresholds.USUAL);

    private static Forecast.Outlook outlook(Forecast forecast) {
        return assertInstanceOf(Forecast.Outlook.class, forecast);
    }

    private static List<ForecastCase> mixed() {
        List<ForecastCase> cases = new ArrayList<>();
        SplittableRandom random = new SplittableRandom(3);
        for (int goal = 0; goal < 9; goal++) {
            String[] values = new String[4 + goal];
            for (int i = 0; i < values.length; i++) {
                values[i] = Integer.toString(4 + i / 2 + random.nextInt(4));
            }
            cases.add(new MadeCase(new MadeGoal().made(), AS_OF).weekly(values).made());
        }
        return cases;
    }

    @Test
    void theNumberOfThreadsChangesNoDigit() throws InterruptedException, ExecutionException {
        List<Forecast> alone = POOLED.forecast(mixed());
        ExecutorService four = Executors.newFixedThreadPool(4);
        try {
            List<Future<List<Forecast>>> together = new ArrayList<>();
            for (int i = 0; i < 4; i++) {
                together.add(four.submit(() -> POOLED.forecast(mixed())));
            }
            for (Future<List<Forecast>> one : together) {
                assertEquals(alone, one.get());
            }
        } finally {
            four.shutdown();
        }
    }

    @Test
    void anotherUnitChangesNoChance() {
        // the same children in tenths of the unit: all amounts ten times as many
        MadeCase one = new MadeCase(new MadeGoal().noCriterion().made(), AS_OF);
        MadeCase tenths = new MadeCase(
                new MadeGoal().baseline("40").target("120").noCriterion().made(), AS_OF);
        String[] values = {"5", "6.5", "5", "7", "6", "8"};
        for (int i = 0; i < values.length; i++) {
            one.on(AS_OF.minusWeeks(5 - i), values[i]);
            tenths.on(AS_OF.minusWeeks(5 - i), Double.toString(10 * Double.parseDouble(values[i])));
        }
        // rounding to whole units matters less in tenths; known values of the caseload leave nothing else to differ
        KnownCaseload known = new KnownCaseload(Thresholds.USUAL, new Hyper(0, 0.15, 0.7, 0.5, -1, 0.3, 0.2, 0.08), 1);
        Forecast.Outlook whole = outlook(known.forecast(List.of(one.made())).get(0));
        Forecast.Outlook small = outlook(known.forecast(List.of(tenths.made())).get(0));
        assertEquals(whole.chanceLine(), small.chanceLine(), 0.01);
        assertEquals(10 * whole.value(), small.value(), 0.5);
    }

    @Test
    void aLongBreakIsAsIfItHadNotBeen() {
        // without carry-over only the clock counts: a break of 35 days, and the same weeks 35 days earlier
        KnownCaseload known = new KnownCaseload(Thresholds.USUAL, new Hyper(0, 0.15, 0.7, 0.5, -1, 0.3, 0, 0.08), 0);
        DateRange rest = new DateRange(LocalDate.parse("2026-10-24"), LocalDate.parse("2026-11-27"));
        SchoolClock clock = new SchoolClock(List.of(rest), List.of(rest));
        MadeCase broken =
                new MadeCase(new MadeGoal().due("2027-06-04").noCriterion().made(), AS_OF).clock(clock);
        MadeCase whole =
                new MadeCase(new MadeGoal().due("2027-04-30").noCriterion().made(), AS_OF.minusDays(35));
        String[] values = {"5", "6", "5", "7"};
        for (int i = 0; i < values.length; i++) {
            LocalDate before = LocalDate.parse("2026-09-25").plusWeeks(i);
            broken.on(before, values[i]);
            whole.on(before, values[i]);
        }
        broken.on(AS_OF, "8");
        whole.on(AS_OF.minusDays(35), "8");
        Forecast.Outlook withBreak =
                outlook(known.forecast(List.of(broken.made())).get(0));
        Forecast.Outlook without = outlook(known.forecast(List.of(whole.made())).get(0));
        assertEquals(without.chanceLine(), withBreak.chanceLine(), 1e-12);
        assertEquals(without.low80(), withBreak.low80(), 1e-9);
        assertTrue(withBreak.notes().contains("35 days of long school breaks do not count in the forecast"));
        assertTrue(without.notes().stream().noneMatch(note -> note.contains("breaks")));
    }

    @Test
    void aMissingRunWidensTheRange() {
        MadeCase every = new MadeCase(new MadeGoal().noCriterion().made(), AS_OF);
        MadeCase some = new MadeCase(new MadeGoal().noCriterion().made(), AS_OF);
        for (int week = 0; week < 10; week++) {
            String value = Integer.toString(4 + week / 2 + week % 2);
            every.on(AS_OF.minusWeeks(9 - week), value);
            if (week < 2 || week > 6) {
                some.on(AS_OF.minusWeeks(9 - week), value);
            }
        }
        // with the day-to-day spread as good as known, only the number of sessions and their places are left
        KnownCaseload known = new KnownCaseload(Thresholds.USUAL, new Hyper(0, 0.15, 0.7, 0.5, -1.5, 0.01, 0.1, 0), 0);
        Forecast.Outlook narrow = outlook(known.forecast(List.of(every.made())).get(0));
        Forecast.Outlook wide = outlook(known.forecast(List.of(some.made())).get(0));
        assertTrue(
                wide.high80() - wide.low80() > narrow.high80() - narrow.low80(),
                () -> "missing " + wide + ", whole " + narrow);
    }

    @Test
    void goalsOfBothWaysAndMoreThanOneOfAStudentShareAPool() {
        // two goals on the same sessions, once up and once mirrored, each seen beside the other
        ForecastCase up = new MadeCase(new MadeGoal().made(), AS_OF)
                .weekly("5", "6", "5", "7", "6", "8")
                .made();
        ForecastCase down = new MadeCase(
                        new MadeGoal().baseline("12").target("4").made(), AS_OF)
                .better(Direction.LOWER)
                .weekly("11", "10", "11", "9", "10", "8")
                .made();
        List<Forecast> both = POOLED.forecast(List.of(up, down));
        assertEquals(outlook(both.get(0)).chance(), outlook(both.get(1)).chance(), 1e-9);
        double alone = outlook(POOLED.forecast(List.of(up)).get(0)).chanceLine();
        assertTrue(Math.abs(alone - outlook(both.get(0)).chanceLine()) > 1e-4, "the other goal is evidence");
    }

    @Test
    void whatIsForecastOfAGoalDoesNotDependOnWhichOthersAreShown() {
        List<ForecastCase> cases = mixed();
        cases.add(new MadeCase(new MadeGoal().made(), AS_OF).weekly("5", "6").made());
        List<Forecast> all = POOLED.forecast(cases);
        // too few sessions for a forecast of its own, yet it feeds the pool
        assertInstanceOf(Forecast.NoOutlook.class, all.get(9));
        List<Forecast> without = POOLED.forecast(cases.subList(0, 9));
        assertTrue(Math.abs(outlook(all.get(0)).chanceLine()
                        - outlook(without.get(0)).chanceLine())
                > 1e-9);
    }

    @Test
    void moreOfTheSameEvidenceIsSurer() {
        Forecast.Outlook few = outlook(POOLED.forecast(mixed()).get(0));
        Forecast.Outlook alone = outlook(POOLED.forecast(mixed().subList(0, 1)).get(0));
        assertTrue(alone.high80() - alone.low80() > few.high80() - few.low80(), "one goal alone is wider");
    }
}
