package stridetally.forecast;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import stridetally.model.DateRange;
import stridetally.model.Thresholds;
import stridetally.trend.MadeGoal;

/** What a person reads beside the figures of a forecast: when, how far moved, and what would change the word. */
class ForecastNotesTest {
    private static final LocalDate AS_OF = LocalDate.parse("2026-12-04");
    private static final HyperPosterior.Place STRAIGHT =
            HyperPosterior.Place.of(new Hyper(0, 0.15, 0.7, 0.5, -1, 0.3, 0, 0), new LearningCurve(0, 0));
    private static final Pattern LEVEL = Pattern.compile("3 more sessions at about (\\d+) or (better|worse)");

    /** A hundred days from baseline to due date, asked after fifty of them. */
    private static ForecastCase hundredDays(SchoolClock clock) {
        return new MadeCase(
                        new MadeGoal()
                                .baselineDate("2026-10-15")
                                .due("2027-01-23")
                                .noCriterion()
                                .made(),
                        AS_OF)
                .clock(clock)
                .weekly("5", "6", "7", "6")
                .made();
    }

    /** Lines that start at the baseline and come to the target at these times; 1 is the due date. */
    private static List<LineDraw> reaching(double... times) {
        List<LineDraw> draws = new ArrayList<>();
        for (double time : times) {
            draws.add(new LineDraw(0, 1 / time, 0.3, STRAIGHT, DrawnNumbers.of(1)));
        }
        return draws;
    }

    private static Forecast.Outlook only(Forecaster forecaster, ForecastCase goal) {
        return assertInstanceOf(
                Forecast.Outlook.class, forecaster.forecast(List.of(goal)).get(0));
    }

    private static String note(Forecast.Outlook outlook, String part) {
        return outlook.notes().stream()
                .filter(note -> note.contains(part))
                .findFirst()
                .orElseThrow(() -> new AssertionError(part + " in " + outlook.notes()));
    }

    @Test
    void theDayOfTheTargetIsTheMiddleOfTheDrawsWithItsRange() {
        // of ten draws the sixth is the middle, the second and the tenth are the ends: days 110, 70 and 190 after 15
        // October
        String said = ReachDate.note(
                hundredDays(SchoolClock.REAL_DAYS), reaching(0.6, 0.695, 0.8, 0.9, 1.0, 1.095, 1.2, 1.3, 1.5, 1.895));
        assertEquals(
                "if change goes on as it has, the line comes to the target about 2027-02-02"
                        + " (80 % range 2026-12-24 to 2027-04-23)",
                said);
    }

    @Test
    void aLongBreakPutsTheDayOff() {
        // 42 days of break begin behind today: day 110 of the clock is 42 days later, and so is the earliest; the clock
        // of
        // the whole way has 58 days then, so day 1.1 x 58 = 63.8 counts, 64 days and 42 after 15 October
        SchoolClock clock = new SchoolClock(
                List.of(), List.of(new DateRange(LocalDate.parse("2026-12-07"), LocalDate.parse("2027-01-17"))));
        assertEquals(
                "if change goes on as it has, the line comes to the target about 2027-01-29"
                        + " (80 % range 2027-01-29 to 2027-01-29)",
                ReachDate.note(hundredDays(clock), reaching(1.1, 1.1, 1.1)));
    }

    @Test
    void aTargetFurtherThanAYearIsSaidToBe() {
        // a year from 4 December is 415 days after 15 October
        assertEquals(
                "if change goes on as it has, the line does not come to the target within the year",
                ReachDate.note(hundredDays(SchoolClock.REAL_DAYS), reaching(4.2, 4.3, 5, 9)));
        assertEquals(
                "if change goes on as it has, the line does not come to the target within the year; at the earliest end of"
                        + " its 80 % range 2027-08-11",
                ReachDate.note(hundredDays(SchoolClock.REAL_DAYS), reaching(3, 5, 5, 5)));
        assertTrue(ReachDate.note(hundredDays(SchoolClock.REAL_DAYS), reaching(1, 1, 1, 1, 1, 1, 1, 1, 1, 8))
                .endsWith("(80 % range 2027-01-23 to not within the year)"));
        assertEquals(
                "the line is at the target already",
                ReachDate.note(hundredDays(SchoolClock.REAL_DAYS), reaching(0.2, 0.4, 0.9)));
    }

    @Test
    void threeSessionsAtTheLevelThatIsSaidTakeTheChanceAcrossTheLimit() {
        Hyper hyper = new Hyper(0, 0.15, 0.75, 0.5, Math.log(0.3), 0.3, 0, 0);
        KnownCaseload known = new KnownCaseload(Thresholds.USUAL, hyper, 0);
        MadeGoal goal =
                new MadeGoal().baseline("0").target("100").due("2027-03-05").noCriterion();
        String[] soFar = {"20", "35", "30", "50", "45"};
        Forecast.Outlook now =
                only(known, new MadeCase(goal.made(), AS_OF).weekly(soFar).made());
        assertTrue(now.chanceLine() > 0.3 && now.chanceLine() < 0.7, () -> "chance " + now.chanceLine());
        Matcher levels = LEVEL.matcher(note(now, "3 more sessions"));
        assertTrue(levels.find(), () -> now.notes().toString());
        assertEquals("at about " + levels.group(1) + " or worse would lower the chance to 30 %", words(now, 0));
        int worse = Integer.parseInt(levels.group(1));
        Matcher second = Pattern.compile("at about (\\d+) or better").matcher(note(now, "3 more sessions"));
        assertTrue(second.find());
        int better = Integer.parseInt(second.group(1));
        // the level is found to about 4 of the way of 100
        assertTrue(after(known, goal, soFar, worse - 5) < 0.3 && after(known, goal, soFar, worse + 5) > 0.3);
        assertTrue(after(known, goal, soFar, better - 5) < 0.7 && after(known, goal, soFar, better + 5) > 0.7);
    }

    private static String words(Forecast.Outlook outlook, int part) {
        return note(outlook, "3 more sessions")
                .substring("3 more sessions ".length())
                .split("; ", -1)[part];
    }

    /** The chance three weeks later, with three sessions of one value. */
    private static double after(Forecaster forecaster, MadeGoal goal, String[] soFar, int level) {
        MadeCase later = new MadeCase(goal.made(), AS_OF.plusWeeks(3));
        for (int i = 0; i < soFar.length; i++) {
            later.on(AS_OF.minusWeeks(soFar.length - 1 - i), soFar[i]);
        }
        for (int week = 1; week <= 3; week++) {
            later.on(AS_OF.plusWeeks(week), Integer.toString(level));
        }
        return only(forecaster, later.made()).chanceLine();
    }

    @Test
    void withoutRoomForThreeSessionsNothingIsSaidOfThem() {
        Forecast.Outlook last = only(
                new PooledForecaster(Thresholds.USUAL),
                new MadeCase(new MadeGoal().due("2026-12-18").noCriterion().made(), AS_OF)
                        .weekly("5", "6", "7", "6")
                        .made());
        assertTrue(
                last.notes().stream().noneMatch(note -> note.contains("more sessions")),
                () -> last.notes().toString());
    }

    @Test
    void ownLineAndCaseloadAreBothSaidWhereTheirWordsDiffer() {
        // five sessions that climb steeply by chance, in a caseload that stands still
        List<ForecastCase> cases = new ArrayList<>();
        for (int i = 0; i < 8; i++) {
            cases.add(new MadeCase(new MadeGoal().noCriterion().made(), AS_OF)
                    .weekly("4", "5", "3", "4", "5", "4", "3", "4", "4", Integer.toString(3 + i % 3))
                    .made());
        }
        cases.add(new MadeCase(new MadeGoal().noCriterion().made(), AS_OF)
                .weekly("3", "4", "4", "5")
                .made());
        Forecast.Outlook both = assertInstanceOf(
                Forecast.Outlook.class,
                new PooledForecaster(Thresholds.USUAL).forecast(cases).get(8));
        assertEquals(
                "the two disagree: by this student's line alone on course, with the caseload off course",
                note(both, "the two disagree"));
        double own = only(new OwnLineForecaster(Thresholds.USUAL), cases.get(8)).chanceLine();
        assertEquals(
                "chance of the line from this student's sessions alone " + PlainFigures.percent(own)
                        + ", with what the caseload shows " + PlainFigures.percent(both.chanceLine()),
                note(both, "chance of the line"));
    }

    @Test
    void notesThatAreReadFromSeveralThreadsAreWrittenOnce() {
        int[] written = new int[1];
        NotesWhenRead notes = new NotesWhenRead(() -> {
            written[0]++;
            return List.of("one");
        });
        Thread[] readers = new Thread[4];
        for (int i = 0; i < readers.length; i++) {
            readers[i] = new Thread(() -> assertEquals(1, notes.size()));
            readers[i].start();
        }
        for (Thread reader : readers) {
            try {
                reader.join();
            } catch (InterruptedException interrupted) {
                throw new AssertionError(interrupted);
            }
        }
        assertEquals(List.of("one"), notes);
        assertEquals(1, written[0]);
    }
}
