package stridetally.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static stridetally.cli.Csv.cell;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * A fact of the trade (common practice, no source): 6 or more steps in a row on a floor line, or most of its length, without
 * help is a usual sign that a child is ready for a harder task. Written as goals, the command must see it, and must not take
 * a held hand for it.
 */
final class UnaidedStepsTest {
    private static final String GOALS = """
            goal,student,measure,statement,baseline,baseline_date,target,due,trials_met,trials_given,sessions_met,help,summary
            steps,s-1,line-steps,Six steps in a row on the line without help.,2,2026-09-01,6,2026-12-18,1,1,1,independent,best
            share,s-1,line-share,Three quarters of the line without help.,0.2,2026-09-01,0.75,2026-12-18,,,1,independent,mean
            """;

    /** Most of the line is taken as three quarters of it: our reading. */
    private static final String LOG = """
            student,date,measure,trial,value,unit,help
            s-1,2026-09-07,line-steps,1,5,steps,independent
            s-1,2026-09-14,line-steps,1,6,steps,hand-held one
            s-1,2026-09-21,line-steps,1,6,steps,independent
            s-1,2026-09-28,line-steps,1,7,steps,independent
            s-1,2026-10-05,line-steps,1,6,steps,
            s-1,2026-09-07,line-share,1,74,%,independent
            s-1,2026-09-14,line-share,1,100,%,hand-held one
            s-1,2026-09-21,line-share,1,75,%,independent
            s-1,2026-09-28,line-share,1,80,%,independent
            s-1,2026-10-05,line-share,1,75,%,
            """;

    @TempDir
    Path folder;

    private String book = "";

    @BeforeEach
    void write() throws IOException {
        Path goals = Files.writeString(folder.resolve("goals.csv"), GOALS);
        Path log = Files.writeString(folder.resolve("log.csv"), LOG);
        book = folder.resolve("book").toString();
        Run run =
                Run.of("import", "--new", "--logbook", book, goals.toString(), log.toString(), "--as-of", "2026-10-09");
        assertEquals(0, run.exitCode(), run.err());
    }

    @Test
    void sixUnaidedStepsMeetAndSixWithAHeldHandDoNotCount() {
        check("steps", List.of("5.0", "", "6.0", "7.0", ""));
    }

    @Test
    void threeQuartersOfTheLineLikewise() {
        check("share", List.of("0.74", "", "0.75", "0.8", ""));
    }

    @Test
    void bothGoalsAreMetOnTheFirstSuchDay() {
        Csv goals = table("score", "--by", "goal");
        assertEquals("2026-09-21", cell(goals.where("goal", "steps").get(0), "met_on"));
        assertEquals("2026-09-21", cell(goals.where("goal", "share").get(0), "met_on"));
        table("trend").rows().forEach(row -> assertEquals("met", cell(row, "judgement")));
    }

    private void check(String goal, List<String> values) {
        List<Map<String, String>> sessions = table("score").where("goal", goal);
        assertEquals(values, sessions.stream().map(row -> cell(row, "value")).toList());
        assertEquals(
                List.of("1", "0", "1", "1", "0"),
                sessions.stream().map(row -> cell(row, "counted")).toList());
        List<String> met = sessions.stream().map(row -> cell(row, "met")).toList();
        assertEquals(List.of("no", "no", "yes", "yes"), met.subList(0, 4));
        assertTrue(!met.get(4).equals("yes"), "help that nobody wrote down is not silently independent: " + met);
        assertEquals("0.0", cell(sessions.get(1), "permitted_share"));
        assertTrue(
                cell(sessions.get(1), "reason").contains("more help than permitted"), cell(sessions.get(1), "reason"));
    }

    private Csv table(String command, String... more) {
        String[] arguments = new String[more.length + 4];
        arguments[0] = command;
        arguments[1] = book;
        System.arraycopy(more, 0, arguments, 2, more.length);
        arguments[more.length + 2] = "--as-of";
        arguments[more.length + 3] = "2026-10-09";
        Run run = Run.of(arguments);
        assertEquals(0, run.exitCode(), run.err());
        return Csv.of(run.out());
    }
}
