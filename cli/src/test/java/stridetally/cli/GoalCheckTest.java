package stridetally.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What is said of goals when they come in. Which parts a goal should have is the trade's common practice, no source. */
final class GoalCheckTest {
    private static final String DAY = "2026-03-31";
    private static final String HEADINGS =
            "goal,student,measure,side,protocol,statement,routine,baseline,baseline_date,"
                    + "target,due,trials_met,trials_given,sessions_met,help\n";

    @TempDir
    private Path folder;

    private Path book = Path.of("");

    @BeforeEach
    void begin() {
        book = folder.resolve("book");
        assertEquals(0, Run.of("import", "--new", "--logbook", book.toString()).exitCode());
    }

    @Test
    void aWholeGoalIsFineInEveryPart() throws IOException {
        Run run = check("g,s-1,line-steps,,,Walks 8 steps.,to lunch,2,2026-01-05,8,2026-06-01,4,5,2,stand-by\n");
        List<String> rows = run.out().lines().skip(1).toList();
        assertEquals(10, rows.size());
        assertTrue(rows.stream().allMatch(row -> row.contains(",fine,")), run.out());
        assertTrue(run.err().contains("1 goal: 0 parts are missing, 0 doubtful"), run.err());
        assertTrue(run.err().contains("1 row = 1 taken + 0 known + 0 set aside + 0 blank"), run.err());
    }

    @Test
    void everyMissingPartIsNamed() throws IOException {
        Run run = check("g,s-1,single-leg-stance,,,,,,,,,,,,\n");
        for (String part :
                List.of("circumstances", "behaviour", "side", "baseline", "criterion", "help", "target", "due")) {
            assertTrue(run.out().contains("g,s-1," + part + ",missing,"), part + ": " + run.out());
        }
    }

    @Test
    void aTargetMetAtBaselineAndADueDateBeforeItAreDoubtful() throws IOException {
        Run run = check("g,s-1,line-steps,,,Walks.,to lunch,9,2026-01-05,8,2025-12-01,4,5,2,stand-by\n");
        assertTrue(run.out().contains("g,s-1,target,doubtful,"), run.out());
        assertTrue(run.out().contains("g,s-1,due,doubtful,"), run.out());
    }

    @Test
    void aBaselineFarFromTheLogIsDoubtful() throws IOException {
        // Logged within 14 days of the baseline date: 6. Written: 2, with 8 to reach; a quarter of the way is 1.5, and
        // 6 is 4 off.
        bring("s-1,2026-01-08,line-steps,1,6,steps,stand-by\n");
        Run far = check("g,s-1,line-steps,,,Walks.,to lunch,2,2026-01-05,8,2026-06-01,1,1,2,stand-by\n");
        assertTrue(far.out().contains("g,s-1,baseline,doubtful,\"Written is 2, logged within 14 days"), far.out());
        // Written 5: a quarter of the way is 0.75, and 6 is 1 off. Written 5.5: 0.625, and 0.5 off.
        Run near = check("g,s-1,line-steps,,,Walks.,to lunch,5.5,2026-01-05,8,2026-06-01,1,1,2,stand-by\n");
        assertTrue(near.out().contains("g,s-1,baseline,fine,"), near.out());
    }

    @Test
    void aPaceThatNobodyKeepsIsDoubtful() throws IOException {
        // Three students gain exactly 1 step a week over 5 weeks, so the fastest line of the three is 1 a week.
        StringBuilder rows = new StringBuilder();
        StringBuilder goals = new StringBuilder();
        String[] days = {"2026-01-12", "2026-01-19", "2026-01-26", "2026-02-02", "2026-02-09", "2026-02-16"};
        for (int student = 1; student <= 3; student++) {
            for (int week = 0; week < days.length; week++) {
                rows.append("s-").append(student).append(',').append(days[week]).append(",line-steps,1,");
                rows.append(3 + week).append(",steps,stand-by\n");
            }
        }
        bring(rows.toString());
        // From 2 on 5 January to the target on 16 March are 10 weeks: 12 asks for 1 a week, 13 for 1.1, 11 for 0.9.
        String[] targets = {"11", "11", "13"};
        for (int student = 1; student <= 3; student++) {
            goals.append('g').append(student).append(",s-").append(student).append(",line-steps,,,Walks.,to lunch,2,");
            goals.append("2026-01-05,").append(targets[student - 1]).append(",2026-03-16,1,1,2,stand-by\n");
        }
        Run run = check(goals.toString());
        assertTrue(run.out().contains("g1,s-1,target,fine,"), run.out());
        assertTrue(
                run.out().contains("g3,s-3,target,doubtful,It asks for 1.1 a week; the fastest of the 3 lines"),
                run.out());
        Run again = Run.of("import", "--check-goals", "--logbook", book.toString(), "--as-of", DAY, "--format", "csv");
        assertEquals(run.out(), again.out());
    }

    private Run check(String goals) throws IOException {
        Path file = Files.writeString(folder.resolve("goals.csv"), HEADINGS + goals);
        Run run = Run.of(
                "import",
                file.toString(),
                "--kind",
                "goals",
                "--logbook",
                book.toString(),
                "--as-of",
                DAY,
                "--format",
                "csv");
        assertEquals(0, run.exitCode(), run.err());
        return run;
    }

    private void bring(String rows) throws IOException {
        Path log = Files.writeString(folder.resolve("log.csv"), "student,date,measure,trial,value,unit,help\n" + rows);
        Run run = Run.of("import", log.toString(), "--logbook", book.toString(), "--as-of", DAY);
        assertEquals(0, run.exitCode(), run.err());
    }
}
