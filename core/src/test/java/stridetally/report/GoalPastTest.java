package stridetally.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import stridetally.logbook.ReportLine;
import stridetally.model.GoalId;

/** What was told before a page, and what the page says of it. The made-up goal stood at 7 steps, the
 * middle one of 7, 6 and 8, on 2026-11-10. */
class GoalPastTest {
    private static final GoalId GOAL = new GoalId("G-1");
    private static final ReportLine AUTUMN = line("autumn", "2026-11-20", "7.0", "on course", 5);
    private static final ReportLine WINTER = line("winter", "2027-03-05", "12.0", "on course", 12);
    private static final ReportLine SPRING = line("spring", "2027-06-11", "13.0", "met", 18);

    @Test
    void aPageTellsTheLastThatWasToldBeforeIt() {
        assertEquals(Optional.of(AUTUMN), GoalPast.before(List.of(AUTUMN), WINTER));
        assertEquals(Optional.of(WINTER), GoalPast.before(List.of(AUTUMN, WINTER), SPRING));
        assertEquals(Optional.empty(), GoalPast.before(List.of(), WINTER));
    }

    @Test
    void anOldPageComesBackAsItWas() {
        assertEquals(Optional.of(AUTUMN), GoalPast.before(List.of(AUTUMN, WINTER, SPRING), WINTER));
        assertEquals(Optional.empty(), GoalPast.before(List.of(AUTUMN, WINTER, SPRING), AUTUMN));
        // Told later about earlier days: not before this page.
        assertEquals(Optional.empty(), GoalPast.before(List.of(WINTER, AUTUMN), WINTER));
    }

    @Test
    void theSamePeriodToldAnewAfterAMendingTellsTheFirst() {
        ReportLine anew = line("winter", "2027-03-05", "13.0", "on course", 13);
        assertEquals(Optional.of(WINTER), GoalPast.before(List.of(AUTUMN, WINTER), anew));
    }

    @Test
    void anotherGoalIsNotThisOne() {
        ReportLine other = new ReportLine(new GoalId("G-2"), "autumn", LocalDate.parse("2026-11-20"), "1", "met", 5);
        assertEquals(Optional.empty(), GoalPast.before(List.of(other), WINTER));
    }

    @Test
    void whatIsAsItWasToldIsSaidToBe() {
        String page = page(AUTUMN, 0);
        assertTrue(
                page.contains("- **Told last time:** autumn, as of 2026-11-20: on course, latest value 7 steps; mended"
                        + " since: nothing of the days up to 2026-11-20\n"),
                page);
    }

    @Test
    void whatCameLaterIsCountedAndTheValueOfThoseDaysToldAnew() {
        assertTrue(page(line("autumn", "2026-11-20", "6.0", "on course", 5), 2)
                .contains(
                        "2 tries of the days up to 2026-11-20 came in or were corrected later; the latest value of those"
                                + " days is now 7 steps\n"));
        assertTrue(page(AUTUMN, 1)
                .contains("1 try of the days up to 2026-11-20 came in or was corrected later; the latest value of those"
                        + " days is the same\n"));
        assertTrue(page(line("autumn", "2026-11-20", "", "not begun", 5), 0)
                .contains("not begun, no value; mended since: tries of the days up to 2026-11-20 were taken back, or"
                        + " the goal was changed; the latest value of those days is now 7 steps\n"));
    }

    @Test
    void aPageSaysNothingOfItWhenNothingWasTold() {
        assertFalse(TeamMarkdownTest.page(MadeCaseload.rich()).contains("Told last time"));
        assertFalse(TeamMarkdownTest.page(MadeCaseload.rich()).contains("Behind the figures"));
    }

    @Test
    void everyTryBehindTheFiguresIsListedWithItsPlace() {
        GoalPast.TrialLine one = new GoalPast.TrialLine(
                LocalDate.parse("2026-12-01"),
                "",
                1,
                "8 steps",
                "supervision",
                "",
                "",
                "school",
                "probe",
                true,
                "",
                4,
                17,
                "winter.csv:17");
        GoalPast.TrialLine other = new GoalPast.TrialLine(
                LocalDate.parse("2026-12-02"),
                "",
                0,
                "9|9",
                "",
                "",
                "",
                "home",
                "probe",
                false,
                "at home",
                4,
                18,
                "winter.csv:18");
        String page = page(new GoalPast(Optional.empty(), Optional.of(List.of(one, other))));
        assertTrue(page.contains("### Behind the figures\n"));
        // The five sessions of the winter with a value, as they were made up: their middle tries; of 9, 11 and a try
        // stopped
        // at 10, the middle one is 10 at least.
        assertTrue(
                page.contains("- **Median of this period is of:** 8 steps on 2026-12-01 (3 of 3 tries); 8.5 steps on"
                        + " 2026-12-15 (2 of 3 tries); 10 steps on 2027-01-19 (3 of 3 tries); >= 10 steps on 2027-02-02 (3 of"
                        + " 3 tries); 12 steps on 2027-03-02 (3 of 3 tries)\n"),
                page);
        String cells = page.replaceAll(" +", " ");
        assertTrue(
                cells.contains("| 2026-12-01 | 1 | 8 steps | none | supervision | not written | school | probe | yes |"
                        + " winter.csv:17 | 4 | 17 |"));
        assertTrue(
                cells.contains("| 2026-12-02 | not numbered | 9\\|9 | none | not written | not written | home | probe |"
                        + " no: at home | winter.csv:18 | 4 | 18 |"));
    }

    private static ReportLine line(String period, String asOf, String value, String judgement, int lastEntry) {
        return new ReportLine(GOAL, period, LocalDate.parse(asOf), value, judgement, lastEntry);
    }

    private static String page(ReportLine told, int triesSince) {
        return page(new GoalPast(Optional.of(new GoalPast.Told(told, triesSince)), Optional.empty()));
    }

    private static String page(GoalPast past) {
        StringBuilder out = new StringBuilder();
        TeamMarkdown.write(MadeCaseload.rich().team().with(Map.of(GOAL, past)), out);
        return out.toString();
    }
}
