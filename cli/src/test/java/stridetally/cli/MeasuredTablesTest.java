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

/** The tables of help, sides, exposure and published values of a small logbook; numbers by hand. */
class MeasuredTablesTest {
    @TempDir
    private Path folder;

    private String book = "";

    @BeforeEach
    void logbook() throws IOException {
        book = folder.resolve("book").toString();
        Path log = write(
                "log.csv",
                "student,date,measure,trial,value,help,prompt,side,protocol,use,place",
                "s-1,2026-01-12,stairs-time,1,9.5,independent,none,,step_count=10,probe,school",
                "s-1,2026-01-12,stairs-time,2,9.0,independent,none,,step_count=10,probe,school",
                "s-1,2026-01-12,single-leg-stance,1,4,stand-by,none,left,,probe,school",
                "s-1,2026-01-12,single-leg-stance,1,6,stand-by,none,right,,probe,school",
                "s-1,2026-01-13,single-leg-stance,1,>10,stand-by,none,left,,probe,school",
                "s-1,2026-01-13,single-leg-stance,1,6,stand-by,none,right,,practice,school",
                "s-1,2026-01-13,single-leg-stance,2,5,minimal,verbal,right,,probe,school",
                "s-1,2026-01-12,independent-share,1,3/4,stand-by,none,,task=stairs,probe,school",
                "s-1,2026-01-12,falls,1,3,independent,none,,,probe,school",
                "s-1,2026-01-12,timed-up-and-go,1,6.3,independent,none,,target=wall,probe,school",
                "s-1,2026-01-12,timed-up-and-go,1,6.3,independent,none,,,probe,home");
        run("import", "--new", "--logbook", book, log.toString());
        append("students.csv", "student,birth_month,sex", "s-1,2018-01,m");
        append("bodies.csv", "student,date,height_cm,weight_kg", "s-1,2025-12-01,130,28");
        append(
                "goals.csv",
                "goal,student,measure,side,baseline,baseline_date,target,due,help,trials_met,trials_given,sessions_met",
                "s-1-stance,s-1,single-leg-stance,each,2,2026-01-05,6,2026-06-01,stand-by,1,1,1",
                "s-1-own,s-1,independent-share,,0.25,2026-01-05,0.75,2026-06-01,dependent,,,1");
        append(
                "logbook.toml",
                "id = \"book\"",
                "[[period]]",
                "name = \"winter\"",
                "from = 2026-01-05",
                "to = 2026-01-30");
        Path visits = write("visits.csv", "student,date,minutes,status", "s-1,2026-01-12,30,held");
        run("import", "--logbook", book, "--kind", "visits", visits.toString());
    }

    private Path write(String name, String... lines) throws IOException {
        return Files.write(folder.resolve(name), List.of(lines));
    }

    private void append(String name, String... lines) throws IOException {
        Files.write(Path.of(book).resolve(name), List.of(lines));
    }

    private static Run run(String... arguments) {
        String[] dated = java.util.Arrays.copyOf(arguments, arguments.length + 2);
        dated[arguments.length] = "--as-of";
        dated[arguments.length + 1] = "2026-01-16";
        return Run.of(dated);
    }

    private List<String> table(String by) {
        Run run = run("score", book, "--by", by);
        assertEquals(0, run.exitCode(), run.err());
        return run.out().lines().skip(1).toList();
    }

    /** 5.9012 s: equation of del Corral 2021 for a boy of 8 years, 1.30 m, 28 kg; better of two tries. */
    @Test
    void publishedValuesStandBesideTheLatestTestAndHomeStaysOut() {
        List<String> rows = table("reference");
        assertEquals(2, rows.size(), rows::toString);
        assertTrue(
                rows.get(0)
                        .startsWith("s-1,,stairs-time,,step_count=10,school,2026-01-12,9.0,s,"
                                + "boys 6 to 14 years (equation),5.901"),
                rows.get(0));
        assertTrue(rows.get(0).contains("del Corral et al. 2021"), rows.get(0));
        // Williams 2005: -(6.3 - 5.1) / 0.8 = -1.5.
        assertTrue(rows.get(1).contains(",6.3,s,Australia 6 to 9 years,5.1,0.8,-1.5"), rows.get(1));
    }

    @Test
    void sidesAreKeptApartAndACappedOneIsNotCompared() {
        List<String> rows = table("sides");
        // By hand: 6 - 4 = 2, 100 * 2 / 5 = 40, 100 ln 1.5 = 40.5465.
        assertTrue(
                rows.get(0)
                        .startsWith(
                                "book,s-1,s-1-stance,single-leg-stance,,school clinic,2026-01-12,,s,4.0,6.0,2.0,40.0,40.546"),
                rows.get(0));
        assertTrue(rows.get(1).contains(",>=10.0,,,,,"), rows.get(1));
    }

    @Test
    void fallsAreARateOverTheHeldVisit() {
        List<String> rows = table("exposure");
        assertEquals(6, rows.size(), rows::toString);
        // 3 falls in 30 minutes.
        assertTrue(
                rows.stream().anyMatch(row -> row.contains(",winter,2026-01-05,2026-01-30,3,minutes,30.0,0.1,")),
                rows::toString);
        assertTrue(rows.stream().anyMatch(row -> row.contains(",metres,,,,,1,1,no walk-distance")), rows::toString);
    }

    @Test
    void helpIsCountedByLevelWithProbeAndPracticeSideBySide() {
        List<String> rows = table("help").stream()
                .filter(row -> row.startsWith("s-1,s-1-stance,"))
                .toList();
        String start = "s-1,s-1-stance,single-leg-stance,winter,2026-01-05,2026-01-30,";
        // Probes: 3 stand-by, 1 minimal; practice: 1 stand-by.
        assertTrue(rows.get(0).startsWith(start + "help,stand-by,3,0.75,0.75,1,1.0,1.0,,,"), rows.get(0));
        assertTrue(
                rows.get(1).startsWith(start + "help,minimal,1,0.25,1.0,0,0.0,1.0,,,most help of a probe"),
                rows.get(1));
        assertTrue(rows.get(2).startsWith(start + "prompt,none,3,0.75,"), rows.get(2));
    }

    @Test
    void aLogWithoutALogbookHasSidesAndExposureButNoPublishedValues() throws IOException {
        Path log = write(
                "bare.csv",
                "student,date,measure,value,side,protocol",
                "s-1,2026-01-12,hop-count,4,left,",
                "s-1,2026-01-12,hop-count,5,right,",
                "s-1,2026-01-12,step-offs,2,,line_length=4m",
                "s-1,2026-01-12,step-offs,0,,line_length=4m",
                "s-1,2026-01-12,step-offs,NaN,,line_length=4m");
        Run sides = run("score", log.toString(), "--by", "sides");
        assertTrue(sides.out().contains(",hop-count,,school,2026-01-12,,count,4.0,5.0,1.0,22.2222"), sides.out());
        Run exposure = run("score", log.toString(), "--by", "exposure");
        // NaN is set aside; the rest is 2 step-offs over 8 m.
        assertEquals(1, exposure.exitCode());
        assertTrue(exposure.out().contains(",2,metres,8.0,0.25,"), exposure.out());
        assertEquals(2, run("score", log.toString(), "--by", "reference").exitCode());
    }

    /** 3 of 4 stairs without help: 0.75; the way is (0.75 - 0.25) / (0.75 - 0.25) = 1. */
    @Test
    void aGoalMayBeWrittenOnTheShareDoneWithoutHelp() {
        assertTrue(
                table("goal").stream()
                        .anyMatch(row -> row.startsWith(
                                "s-1,s-1-own,independent-share,,0.25,0.75,2026-06-01,0.75,2026-01-12,1.0,")),
                () -> table("goal").toString());
    }

    @Test
    void theTeamsPageShowsLeftBesideRight() {
        Run page = run("report", book, "--student", "s-1", "--period", "winter");
        assertTrue(page.out().contains("### Left and right"), page.out());
        assertTrue(page.out().contains("left 4.0 s, right 6.0 s"), page.out());
        assertTrue(page.out().contains("symmetry index 40 %"), page.out());
    }

    @Test
    void everyColumnCanBeCited() {
        String columns = Run.of("measures", "--columns").out();
        assertTrue(columns.startsWith("table,column,definition,source\n"), columns);
        assertTrue(columns.contains("score --by sides,symmetry_index,"), columns);
    }
}
