package stridetally.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import stridetally.forecast.ReachableTarget;
import stridetally.logbook.ReportLine;
import stridetally.model.GoalAim;
import stridetally.model.GoalEnd;
import stridetally.model.GoalId;

/** The year of one goal: what was reached, with what help, and what a next target may be. */
class AnnualReviewTest {

    /**
     * The sessions of {@link MadeCaseload#rich}: medians 4 5 6 7 in autumn; 8, 8.5 (of 9 and 8, the third try had more help), 10, at
     * least 10 (of 9, 11 and one stopped at 10) and 12 in winter.
     */
    @Test
    void theYearIsToldPeriodByPeriod() {
        YearOfGoal.YearOfSide side = year(rich()).sides().get(0);
        assertEquals(
                List.of("autumn", "winter"),
                side.periods().stream().map(YearOfGoal.OfPeriod::name).toList());
        PeriodFigures autumn = side.periods().get(0).figures().orElseThrow();
        assertEquals(4, autumn.withValue());
        assertEquals(5.5, autumn.median().orElseThrow().value(), 1e-12);
        assertEquals(
                10,
                side.periods()
                        .get(1)
                        .figures()
                        .orElseThrow()
                        .median()
                        .orElseThrow()
                        .value(),
                1e-12);
        // The last three sessions with a value: 10 (19 January), at least 10 (2 February), 12 (2 March).
        PeriodFigures present = side.present().orElseThrow();
        assertEquals(MadeCaseload.range("2027-01-19", "2027-03-02"), present.days());
        assertEquals(10, present.median().orElseThrow().value(), 1e-12);
    }

    @Test
    void theRangeStartsFromThePresentLevelAndGrowsWithTheYear() {
        ReachableTarget next = year(rich()).sides().get(0).next().orElseThrow();
        assertEquals(32 / 3.0, next.present(), 1e-12, "the mean of 10, 10 and 12");
        assertEquals(1, next.bounds());
        assertEquals(LocalDate.parse("2028-03-05"), next.by());
        assertTrue(next.near() >= next.present() && next.far() > next.near());
        assertEquals(9, next.own().orElseThrow().sessions());
        assertFalse(next.others().isEstimated(), "there is nobody else");
        String page = page(rich());
        assertTrue(page.contains("- **The other students:** not known: fewer than 3 other students"), page);
        assertTrue(page.contains("- **What it means for the school day and the general curriculum:**"));
        assertTrue(page.contains("- **The team's next target, by which date, with which help:** ______"));
        assertTrue(page.contains("most tries in these days had supervision; the next word with less is modified"));
    }

    /** The rich caseload's last three sessions have the mean 32/3; 2.4 m hold 12 small steps of 20 cm, and 2 m fewer than were counted. */
    @Test
    void noNextTargetLiesBeyondTheEndOfTheLine() {
        MadeCaseload open = with(draft -> draft.protocol = Map.of());
        MadeCaseload line = with(draft -> draft.protocol = Map.of("line_length", "2.4m"));
        ReachableTarget far = year(open).sides().get(0).next().orElseThrow();
        assertTrue(far.far() > 12 && far.ceiling().isEmpty(), "the line must bind for this test to say something");
        ReachableTarget next = year(line).sides().get(0).next().orElseThrow();
        assertEquals(12, next.far());
        assertTrue(next.near() <= 12);
        assertTrue(
                page(line)
                        .contains(
                                "- **The ceiling is near:** at 12 steps the way is at its end (2.4m long, about 12 small steps"));
        assertTrue(page(line).contains("a harder task is the way on"));
        assertFalse(page(open).contains("ceiling"));
    }

    /** A child at the cap is told of a harder task, not of a number that nobody could see. */
    @Test
    void noNextTargetLiesBeyondACap() {
        MadeCaseload made = new MadeCaseload();
        made.goals.add(new MadeCaseload.Draft().goal());
        int day = 1;
        for (String steps : List.of("4 4", "5 5", "7 7", "8 8", "10 10", ">10 >10", ">10 >10", ">10 >10")) {
            made.steps("2026-11-0" + day, "supervision", steps);
            day++;
        }
        assertTrue(
                page(made).contains("none is suggested: the ceiling is reached: tries are stopped there"), page(made));
    }

    @Test
    void aClosedGoalAGoalToHoldAndAGoalWithoutSessionsGetNoRange() {
        assertEquals(
                "the goal is closed",
                year(with(draft -> draft.ended = Optional.of(GoalEnd.MET)))
                        .sides()
                        .get(0)
                        .next()
                        .reason());
        assertEquals(
                "the target is to be held, not reached",
                year(with(draft -> draft.aim = GoalAim.KEEP))
                        .sides()
                        .get(0)
                        .next()
                        .reason());
        MadeCaseload none = new MadeCaseload();
        none.goals.add(new MadeCaseload.Draft().goal());
        YearOfGoal.YearOfSide side = year(none).sides().get(0);
        assertEquals(
                "no session with a value after the baseline date", side.next().reason());
        assertFalse(side.present().isEstimated());
        assertTrue(page(none).contains("none is suggested: no session with a value"));
    }

    @Test
    void aLossPointsToNoGain() {
        MadeCaseload made = new MadeCaseload();
        made.goals.add(new MadeCaseload.Draft().goal());
        int day = 1;
        for (String steps : List.of("12 12", "11 11", "9 9", "8 8", "6 6", "5 5")) {
            made.steps("2026-11-0" + day, "supervision", steps);
            day++;
        }
        assertEquals(
                "the rates point to no gain by 2028-03-05",
                year(made).sides().get(0).next().reason());
    }

    @Test
    void whatWasToldInTheseDaysIsThere() {
        List<ReportLine> told = List.of(
                line("autumn", "2026-11-20", "off course", 5),
                line("winter", "2027-03-05", "on course", 12),
                line("winter", "2027-03-05", "on course", 12),
                line("later", "2027-03-04", "met", 13),
                line("before", "2026-02-01", "met", 1));
        AnnualReview review =
                AnnualReview.all(input(rich()), told, everybody -> true).get(0);
        assertEquals(
                List.of("autumn", "winter", "winter"),
                review.goals().get(0).told().stream().map(ReportLine::period).toList());
        StringBuilder out = new StringBuilder();
        AnnualMarkdown.write(review, PageDetail.SUMMARY, out);
        assertTrue(
                out.toString()
                        .contains(
                                "- **Told in these days:** autumn, as of 2026-11-20: off course, latest value 7 steps;"
                                        + " winter, as of 2027-03-05: on course, latest value 7 steps\n"),
                out.toString());
        assertTrue(page(rich()).contains("- **Told in these days:** no report was written into a folder"));
    }

    /** A meeting reads one or two sheets of paper a goal: no table of sessions, and what holds of all goals said once. */
    @Test
    void theSummaryHasEachChartWithItsPeriodsAndNoTableOfSessions() {
        MadeCaseload made = MadeCaseload.rich();
        MadeCaseload.Draft second = new MadeCaseload.Draft();
        second.id = "G-2";
        made.goals.add(second.goal());
        String summary = html(made, PageDetail.SUMMARY);
        String everything = html(made, PageDetail.EVERYTHING);
        String sessions = "the sessions of the chart";
        assertFalse(summary.contains(sessions));
        assertEquals(2, everything.split(sessions, -1).length - 1);
        for (String page : List.of(summary, everything)) {
            assertEquals(2, page.split("Beyond the measure's own wavering", -1).length - 1);
            assertEquals(2, page.split("a suggestion, no promise", -1).length - 1);
            assertEquals(1, page.split("4 of 5 children with such a record", -1).length - 1);
            assertEquals(1, page.split("Judgement: on course from", -1).length - 1);
        }
        assertFalse(summary.contains("robust against odd sessions"));
        assertTrue(everything.contains("robust against odd sessions"));
        assertTrue(summary.contains("report --for review --explain"));
    }

    private static String html(MadeCaseload made, PageDetail detail) {
        StringBuilder out = new StringBuilder();
        AnnualHtml.write(AnnualReview.all(input(made), List.of(), everybody -> true), detail, out);
        return out.toString();
    }

    private static ReportLine line(String period, String asOf, String word, int lastEntry) {
        return new ReportLine(new GoalId("G-1"), period, LocalDate.parse(asOf), "7.0", word, lastEntry);
    }

    private static MadeCaseload rich() {
        return MadeCaseload.rich();
    }

    private interface Change {
        void on(MadeCaseload.Draft draft);
    }

    private static MadeCaseload with(Change change) {
        MadeCaseload made = MadeCaseload.rich();
        MadeCaseload.Draft draft = new MadeCaseload.Draft();
        change.on(draft);
        made.goals.clear();
        made.goals.add(draft.goal());
        return made;
    }

    private static ReportInput input(MadeCaseload made) {
        made.period = new ReportInput.PeriodChoice.Dates(MadeCaseload.range("2026-03-06", "2027-03-05"));
        return made.input();
    }

    private static YearOfGoal year(MadeCaseload made) {
        return AnnualReview.all(input(made), List.of(), everybody -> true)
                .get(0)
                .goals()
                .get(0);
    }

    private static String page(MadeCaseload made) {
        StringBuilder out = new StringBuilder();
        AnnualReview.all(input(made), List.of(), everybody -> true)
                .forEach(review -> AnnualMarkdown.write(review, PageDetail.SUMMARY, out));
        return out.toString();
    }
}
