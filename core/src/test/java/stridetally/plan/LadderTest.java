package stridetally.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import stridetally.model.Precaution;
import stridetally.model.WordScale;
import stridetally.problem.Checked;
import stridetally.problem.RowProblem;

/** The ladder that comes along, and what a wrongly edited one is told. */
class LadderTest {
    /** Check values: common practice, no source. Six steps in a row or most of the line, help by hand first, then faded. */
    @Test
    void theShippedLadderClimbsFromHandHeldForwardStepsAsPracticeHasIt() {
        Ladder ladder = MadeLadder.shipped();
        assertEquals("line-two-hands", ladder.rungs().get(0).id());
        assertEquals(Set.of(Task.FORWARD), ladder.rungs().get(0).tasks());
        assertTrue(ladder.rungs().get(0).ready().isEmpty());
        assertEquals(List.of("hand-held two", "hand-held one"), readyHelp(ladder, "line-one-hand", "line-whole"));
        for (String id : List.of("line-small-steps", "line-turn", "line-sideways")) {
            Ready ready = ladder.find(id).orElseThrow().ready().orElseThrow();
            assertEquals("line-steps>=6", ready.bars().get(0).text());
            assertTrue(ready.bars().get(1).text().startsWith("line-share>=0."), "most of the line");
            assertEquals("stand-by", ready.help().word(), "unaided");
        }
        assertEquals(
                List.of(false, false, true, true, true),
                Stream.of("line-two-hands", "line-whole", "line-turn", "line-sideways", "long-chain")
                        .map(id -> ladder.find(id).orElseThrow().tasks().stream()
                                .anyMatch(task -> task == Task.TURN || task == Task.SIDEWAYS))
                        .toList());
        Set<Task> all = EnumSet.noneOf(Task.class);
        ladder.rungs().forEach(rung -> all.addAll(rung.tasks()));
        assertEquals(EnumSet.allOf(Task.class), all, "every task has a rung");
        assertTrue(ladder.find("long-chain").orElseThrow().tasks().size() >= 4, "several directions");
        String sideways = ladder.find("line-sideways").orElseThrow().words().toString();
        assertTrue(sideways.contains("left and right") && sideways.contains("izquierda y derecha"), "both directions");
    }

    @Test
    void everyShippedRungAsksForTwoSessionsAndNamesWhatBarsIt() {
        for (Rung rung : MadeLadder.shipped().rungs()) {
            rung.ready().ifPresent(ready -> assertTrue(ready.sessions() >= 2, rung.id()));
            assertEquals(Task.barring(rung.tasks()), rung.notWith(), rung.id() + ": written as well as built in");
            assertEquals(rung.tasks().stream().allMatch(Task::comesHome), rung.home() == Rung.Home.YES, rung.id());
        }
    }

    /** Line 2 of the file; columns: rung 1, task 2, measure 3, ready_when 4, help 5, sessions 6, least 7, not_with 8, home 9. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '!',
            value = {
                "r,forward,line-stepps,,,,,,yes ! ladder.csv:2:3 FIELD_UNREADABLE",
                "r,forward,,,,,,,yes ! ladder.csv:2:3 FIELD_MISSING",
                "r,forward,line-steps,,,,,nek,yes ! ladder.csv:2:8 FIELD_UNREADABLE",
                "r,forward,line-steps,,,,,none,yes ! ladder.csv:2:8 FIELD_UNREADABLE",
                "r,jump,jump-count,,,,,,yes ! ladder.csv:2:9 FIELD_UNREADABLE",
                "r,beam,beam-steps,,,,,,yes ! ladder.csv:2:9 FIELD_UNREADABLE",
                "r,backward,back-steps,,,,,,yes ! ladder.csv:2:9 FIELD_UNREADABLE",
                "r,stairs,stairs-time,,,,,,yes ! ladder.csv:2:9 FIELD_UNREADABLE",
                "r,eyes-closed,tandem-stance,,,,,,yes ! ladder.csv:2:9 FIELD_UNREADABLE",
                "r,forward,jump-count,,,,,,no ! ladder.csv:2:2 FIELD_UNREADABLE",
                "r,forwards,line-steps,,,,,,yes ! ladder.csv:2:2 FIELD_UNREADABLE",
                "r,,line-steps,,,,,,yes ! ladder.csv:2:2 FIELD_MISSING",
                "r,forward,line-steps,,,,,,maybe ! ladder.csv:2:9 FIELD_UNREADABLE",
                "r,forward,line-steps,,,,,, ! ladder.csv:2:9 FIELD_MISSING",
                "r,forward,line-steps,line-steps>6,stand-by,2,,,yes ! ladder.csv:2:4 FIELD_UNREADABLE",
                "r,forward,line-steps,line-stepps>=6,stand-by,2,,,yes ! ladder.csv:2:4 FIELD_UNREADABLE",
                "r,forward,line-steps,step-offs>=6,stand-by,2,,,yes ! ladder.csv:2:4 FIELD_UNREADABLE",
                "r,forward,line-steps,cadence>=6,stand-by,2,,,yes ! ladder.csv:2:4 FIELD_UNREADABLE",
                "r,forward,line-steps,line-steps>=6,a lot,2,,,yes ! ladder.csv:2:5 FIELD_UNREADABLE",
                "r,forward,line-steps,line-steps>=6,,2,,,yes ! ladder.csv:2:5 FIELD_MISSING",
                "r,forward,line-steps,line-steps>=6,stand-by,1,,,yes ! ladder.csv:2:6 FIELD_UNREADABLE",
                "r,forward,line-steps,,stand-by,,,,yes ! ladder.csv:2:5 FIELD_UNREADABLE",
                "r,forward,line-steps,,,,a lot,,yes ! ladder.csv:2:7 FIELD_UNREADABLE",
                ",forward,line-steps,,,,,,yes ! ladder.csv:2:1 FIELD_MISSING"
            })
    void aWrongCellIsToldWithItsPlaceAndThereIsNoLadder(String row, String expected) {
        Checked<Ladder> read = MadeLadder.of(row.strip());
        assertEquals(Optional.empty(), read.value());
        assertTrue(told(read).contains(expected), () -> told(read).toString());
        read.problems().forEach(problem -> assertFalse(problem.mend().isBlank()));
    }

    @Test
    void aSoundRowStandsAndTheSameRungTwiceDoesNot() {
        String row = "r,forward,line-steps,line-steps>=6 or line-share>=0.75,stand-by,2,,neck,yes";
        Rung rung = MadeLadder.of(row).value().orElseThrow().rungs().get(0);
        assertEquals(Set.of(Precaution.NECK), rung.notWith());
        assertEquals(Rung.Home.YES, rung.home());
        Checked<Ladder> twice = MadeLadder.of(row, row);
        assertEquals(List.of("ladder.csv:3:1 FIELD_UNREADABLE"), told(twice));
    }

    @Test
    void wordsThatNameAnotherTaskOrAreMissingInALanguageAreTold() {
        String row = "r,forward,line-steps,,,,,,yes";
        String jump = row + MadeLadder.WORDS.replace("Walk on.", "Jump along the tape.");
        assertEquals(
                List.of("ladder.csv:2:2 FIELD_UNREADABLE", "ladder.csv:2:9 FIELD_UNREADABLE"),
                told(MadeLadder.read(MadeLadder.cells("ladder.csv", MadeLadder.HEAD + jump))));
        String bare = row + MadeLadder.WORDS.replace("Despacio.", "");
        assertEquals(
                List.of("ladder.csv:2:19 FIELD_MISSING"),
                told(MadeLadder.read(MadeLadder.cells("ladder.csv", MadeLadder.HEAD + bare))));
    }

    @Test
    void approvalsAreReadWholeOrNotAtAll() {
        String head = "student,rung,approved,until,help\n";
        List<String> told = new ArrayList<>();
        for (String row : List.of(
                "S02,one-leg,2027-01-04,,stand-by",
                "S01,one-legg,2027-01-04,,stand-by",
                "S01,one-leg,4/1/2027,,stand-by",
                "S01,one-leg,,,stand-by",
                "S01,one-leg,2027-01-04,2027-01-03,stand-by",
                "S01,one-leg,2027-01-04,,",
                "S01,one-leg,2027-01-04,,a lot")) {
            Checked<Approvals> read = approvals(head + "S01,line-turn,2027-01-04,,stand-by\n" + row + "\n");
            assertEquals(Optional.empty(), read.value(), row);
            told.add(read.problems().get(0).at().text());
        }
        assertEquals(
                List.of(
                        "approved.csv:3:1",
                        "approved.csv:3:2",
                        "approved.csv:3:3",
                        "approved.csv:3:3",
                        "approved.csv:3:4",
                        "approved.csv:3:5",
                        "approved.csv:3:5"),
                told);
    }

    @Test
    void theLatestApprovalCountsAndAnEarlierOneNeverComesBack() {
        Rung leg = MadeLadder.shipped().find("one-leg").orElseThrow();
        Approvals approvals = approvals("""
                        student,rung,approved,until,help
                        S01,one-leg,2027-02-01,2027-02-20,hand-held one
                        S01,one-leg,2027-01-04,2027-06-11,stand-by
                        S01,one-leg,2027-04-01,,stand-by
                        """).value().orElseThrow();
        Approval latest =
                approvals.latest(MadeLadder.STUDENT, leg, MadeLadder.DAY).orElseThrow();
        assertEquals("hand-held one", latest.help().word());
        assertFalse(latest.holds(MadeLadder.DAY));
    }

    private static Checked<Approvals> approvals(String file) {
        return Approvals.read(
                MadeLadder.cells("approved.csv", file),
                MadeLadder.shipped(),
                WordScale.HELP,
                Set.of(MadeLadder.STUDENT));
    }

    private static List<String> readyHelp(Ladder ladder, String... ids) {
        return Stream.of(ids)
                .map(id -> ladder.find(id)
                        .orElseThrow()
                        .ready()
                        .orElseThrow()
                        .help()
                        .word())
                .toList();
    }

    private static List<String> told(Checked<?> read) {
        return read.problems().stream()
                .map((RowProblem one) -> one.at().text() + " " + one.code())
                .toList();
    }
}
