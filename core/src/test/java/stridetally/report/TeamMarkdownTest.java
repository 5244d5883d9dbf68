package stridetally.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import stridetally.model.GoalAim;
import stridetally.model.GoalId;
import stridetally.model.GoalSide;
import stridetally.model.Remark;
import stridetally.model.Side;
import stridetally.model.TrialPlace;
import stridetally.model.Use;

/** The team's page as a whole. The golden pages hold wording and order; numbers are checked where they are computed. */
class TeamMarkdownTest {

    @Test
    void aRichGoalReadsAsItShould() throws IOException {
        assertEquals(golden("team-rich.md"), page(MadeCaseload.rich()));
    }

    @Test
    void withItsTriesARichGoalHasEveryFigure() throws IOException {
        assertEquals(golden("team-rich-explained.md"), explained(MadeCaseload.rich()));
    }

    @Test
    void aPoorGoalSaysWhatIsMissing() throws IOException {
        assertEquals(golden("team-poor.md"), page(MadeCaseload.poor()));
    }

    @Test
    void theTherapistsOwnWordIsTheDecisionAndTheComputedOneStandsBeside() {
        MadeCaseload made = MadeCaseload.rich();
        made.remarks.clear();
        made.remarks.add(new Remark(
                new GoalId("G-1"), "winter", "en", "", "", Optional.of("off course"), "The times alone hide it."));
        String page = page(made);
        int decision = page.indexOf("- **Decision of the therapist:** off course\n");
        int computed = page.indexOf("- **Computed beside it:** on course. Why: ");
        assertTrue(decision > 0 && computed > decision);
        assertTrue(page.contains("- **The therapist's reason:** The times alone hide it.\n"));
        assertTrue(page.contains("- **At school:** not written yet: ______\n"));
    }

    @Test
    void aRemarkOfAnotherPeriodIsNotPrinted() {
        MadeCaseload made = MadeCaseload.rich();
        made.period = new ReportInput.PeriodChoice.Named("autumn");
        assertFalse(page(made).contains("Decision of the therapist"));
    }

    @Test
    void bothSidesOfAGoalHaveTheirPart() {
        MadeCaseload made = new MadeCaseload();
        MadeCaseload.Draft draft = new MadeCaseload.Draft();
        draft.measure = MadeCaseload.STANCE;
        draft.side = GoalSide.EACH;
        made.goals.add(draft.goal());
        made.tries(MadeCaseload.STANCE, Side.LEFT, TrialPlace.SCHOOL, Use.PROBE, "2026-12-01", "supervision", "5.2 6");
        made.tries(MadeCaseload.STANCE, Side.RIGHT, TrialPlace.SCHOOL, Use.PROBE, "2026-12-01", "supervision", "7 8.4");
        String page = explained(made);
        assertTrue(page.contains("### From the start to now, left side\n"));
        assertTrue(page.contains("### From the start to now, right side\n"));
        // Means of the two tries: (5.2 + 6) / 2 and (7 + 8.4) / 2.
        assertTrue(page.contains("- **Latest:** 5.6 s on 2026-12-01\n"));
        assertTrue(page.contains("- **Latest:** 7.7 s on 2026-12-01\n"));
        assertTrue(page(made).contains("; latest 5.6 s on 2026-12-01"));
        assertTrue(page(made).contains("; latest 7.7 s on 2026-12-01"));
        assertTrue(page(made).contains("| left 5.6 s on 2026-12-01; right 7.7 s on 2026-12-01 |"));
    }

    @Test
    void aTargetToBeHeldHasNoLineTowardsIt() {
        MadeCaseload made = MadeCaseload.rich();
        MadeCaseload.Draft draft = new MadeCaseload.Draft();
        draft.aim = GoalAim.KEEP;
        made.goals.set(0, draft.goal());
        assertFalse(page(made).contains("; needed from baseline"));
        assertFalse(page(made).contains("of the way to the target"));
        assertTrue(page(made).contains("chance that the target is still held "));
        String page = explained(made);
        assertTrue(page.contains("- **Aim line:** none: the target is to be held, not reached\n"));
        assertFalse(page.contains("Needed per week"));
        assertFalse(page.contains("Share of the way"));
        assertFalse(page.contains("+ aim line"));
        assertTrue(page.contains("- **Chance that the target is still held on 2027-06-04:**"));
    }

    /** A sheet is copied alone: it says whose it is and when to stop. What is alike for all goals stands once, behind them. */
    @Test
    void eachGoalCanBeCopiedAloneAndNothingIsSaidTwice() {
        MadeCaseload made = MadeCaseload.rich();
        MadeCaseload.Draft draft = new MadeCaseload.Draft();
        draft.id = "G-2";
        made.goals.add(draft.goal());
        String page = page(made);
        String[] goals = page.split("\n## Goal ", -1);
        assertEquals(3, goals.length);
        for (String goal : List.of(goals[1], goals[2].substring(0, goals[2].indexOf("\n## ")))) {
            assertTrue(goal.contains("**Student:** S-1; period: winter, 2026-11-23 to 2027-03-05\n"), goal);
            assertTrue(goal.contains("**Before anyone practises:** "));
            assertTrue(goal.contains("Stop now and tell the therapist"));
            assertTrue(goal.contains("Therapist, medical orders and school rules come first."));
            assertTrue(goal.contains("Precautions on file: seizures"));
            assertFalse(goal.contains("Judgement: on course from"));
        }
        assertEquals(2, page.split("## Before anyone practises\n|## How the figures are computed\n").length - 1);
        assertEquals(1, page.split("Judgement: on course from", -1).length - 1);
        assertTrue(page.contains("## The goals at a glance\n"));
    }

    @Test
    void aMeasureOutsideTheCatalogueIsSaid() {
        MadeCaseload made = new MadeCaseload();
        MadeCaseload.Draft draft = new MadeCaseload.Draft();
        draft.measure = MadeCaseload.measure(
                "unheard-of",
                stridetally.units.Unit.COUNT,
                stridetally.measures.MeasureKind.COUNT,
                stridetally.model.Direction.HIGHER,
                0,
                stridetally.measures.Sidedness.NONE);
        made.goals.add(draft.goal());
        assertTrue(page(made).contains("the measure unheard-of is not in the catalogue"));
    }

    static String page(MadeCaseload made) {
        StringBuilder out = new StringBuilder();
        TeamMarkdown.write(made.team(), out);
        return out.toString();
    }

    /** With the tries behind its figures asked for; the made-up goals have none to list. */
    static String explained(MadeCaseload made) {
        Map<GoalId, GoalPast> past = new HashMap<>();
        made.goals.forEach(goal -> past.put(goal.id(), new GoalPast(Optional.empty(), Optional.of(List.of()))));
        StringBuilder out = new StringBuilder();
        TeamMarkdown.write(made.team().with(past), out);
        return out.toString();
    }

    private static String golden(String name) throws IOException {
        try (InputStream in =
                Objects.requireNonNull(TeamMarkdownTest.class.getResourceAsStream("/report/" + name), name)) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        }
    }
}
