package stridetally.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Goals about which little or nothing can be computed: each says why, in words, and no number stands in for it. */
class ThinEvidenceTest {
    private static final String GOALS =
            "goal,student,measure,side,baseline,baseline_date,target,due,trials_met,trials_given,"
                    + "sessions_met,help\n";

    @TempDir
    @SuppressWarnings("NullAway.Init")
    private Path folder;

    @ParameterizedTest(name = "{0}")
    @CsvSource(
            delimiter = '|',
            value = {
                "goal without trials | line-steps | '' | 4 | 10 | 2026-06-01 | '' | '' | not begun | no session with a value",
                "one trial | line-steps | '' | 4 | 10 | 2026-06-01 | 5 | '' | too few sessions | 1 session with a value; a line needs 2",
                "all equal | line-steps | '' | 4 | 10 | 2026-06-01 | 5 5 5 5 5 5 | '' | off course | all values are equal",
                "all capped | single-leg-stance | left | 4 | 40 | 2026-06-01 | >30 >30 >30 >30 >30 | left | '' | all 5 values are capped",
                "target on the wrong side of the baseline | line-steps | '' | 10 | 4 | 2026-06-01 | 4 5 6 7 8 | '' | '' | a target that is worse than its baseline",
                "due before baseline | line-steps | '' | 4 | 10 | 2025-08-01 | 4 5 6 7 8 | '' | '' | a due date that is not after its baseline date",
                "sided measure without a side | single-leg-stance | left | 4 | 40 | 2026-06-01 | 4 5 6 7 8 | '' | not begun | no session with a value",
                "all refused | line-steps | '' | 4 | 10 | 2026-06-01 | refused refused | '' | '' | no session with a value",
                "all absent | line-steps | '' | 4 | 10 | 2026-06-01 | absent absent | '' | '' | no session with a value"
            })
    void saysWhyAndComputesNothing(
            String what,
            String measure,
            String goalSide,
            String baseline,
            String target,
            String due,
            String values,
            String side,
            String judgement,
            String reason) {
        Desk desk = Desk.withLogbook(folder)
                .file(
                        "goals.csv",
                        GOALS
                                + String.join(
                                        ",",
                                        "g1",
                                        "S01",
                                        measure,
                                        goalSide,
                                        baseline,
                                        "2025-09-01",
                                        target,
                                        due,
                                        "1",
                                        "1",
                                        "2",
                                        "independent")
                                + "\n");
        assertEquals(0, desk.imported("@goals.csv").exitCode());
        if (!values.isEmpty()) {
            desk.file("a.csv", log(measure, side, values));
            Run run = desk.imported("@a.csv");
            assertEquals(0, run.exitCode(), run.err());
        }
        Run trend = desk.run("trend @book --format json --as-of 2026-01-16");
        assertEquals(0, trend.exitCode());
        assertTrue(trend.out().contains(reason), what + ": " + trend.out());
        if (!judgement.isEmpty()) {
            assertTrue(
                    trend.out().contains("\"judgement\": \"" + judgement + "\"")
                            || trend.out().contains("\"judgement\":\"" + judgement + "\""),
                    trend.out());
        }
        for (String command : List.of(
                "score @book",
                "score @book --by goal",
                "score @book --by period",
                "score @book --by student",
                "trend @book",
                "report @book --from 2025-09-01 --to 2026-01-16")) {
            Run run = desk.run(command);
            assertEquals(0, run.exitCode(), command + ": " + run.err());
            assertFalse(run.out().contains("Infinity") || run.out().contains("null,"), run.out());
        }
    }

    @Test
    void tooFewRowsGiveALineOnlyWhenThereIsOne() {
        Desk desk = Desk.withLogbook(folder).file("a.csv", log("line-steps", "", "4 5"));
        desk.imported("@a.csv");
        String line = desk.run("trend @book --as-of 2026-01-16")
                .out()
                .lines()
                .skip(1)
                .findFirst()
                .orElseThrow();
        // Two points a week apart, one step more: one step a week by hand.
        assertTrue(line.contains(",1.0,"), line);
    }

    private static String log(String measure, String side, String values) {
        StringBuilder log = new StringBuilder("student,date,measure,trial,value,help,prompt,side,place\n");
        LocalDate day = LocalDate.of(2025, 11, 3);
        for (String value : values.split(" ", -1)) {
            log.append(String.join(
                            ",", "S01", day.toString(), measure, "1", value, "independent", "none", side, "school"))
                    .append('\n');
            day = day.plusWeeks(1);
        }
        return log.toString();
    }
}
