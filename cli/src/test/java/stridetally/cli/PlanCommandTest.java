package stridetally.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import java.util.zip.ZipOutputStream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** {@code plan} through the command line: what it refuses, what it writes, and that import takes its logs back. */
final class PlanCommandTest {
    private static final String GOALS = """
            goal,student,measure,side,protocol,baseline,baseline_date,target,due,trials_met,trials_given,sessions_met,help,prompt
            S01-line,S01,line-steps,,line_length=3m;shoes=on,3,2026-09-14,8,2026-12-18,2,3,2,stand-by,
            S01-leg,S01,single-leg-stance,each,,2,2026-09-14,6,2026-12-18,,,2,stand-by,
            S02-ok,S02,success,,,0.2,2026-09-14,0.8,2026-12-18,4,5,2,stand-by,verbal
            S02-jump,S02,jump-count,,,1,2026-09-14,5,2026-12-18,,,2,stand-by,
            S02-far,S02,walk-6min,,,100,2026-09-14,200,2026-12-18,,,2,stand-by,
            """;
    private static final String APPROVED = "student,rung,approved,until,help\nS01,line-turn,2026-10-05,,stand-by\n";

    @TempDir
    private Path folder;

    private Desk desk = new Desk(Path.of(""));

    @BeforeEach
    void begin() throws IOException {
        desk = new Desk(folder)
                .file("students.csv", "student,grade,school,precautions\nS01,2,Ost/le,none\nS02,3,Ost le,no-jumps\n")
                .file("goals.csv", GOALS);
        assertEquals(
                0,
                desk.run("import @students.csv @goals.csv --logbook @book --new --as-of 2026-10-09")
                        .exitCode());
        Files.writeString(folder.resolve("book/approved.csv"), APPROVED);
    }

    private Run plan(String more) {
        return desk.run("plan @book --as-of 2026-10-09 " + more);
    }

    @Test
    void aHomeSheetPrintsOnlyWhatIsApprovedAndSaysWhyOthersHaveNone() {
        Run run = plan("--for home");
        assertEquals(0, run.exitCode(), run.err());
        assertTrue(run.out().contains("### Turn at the end of the line"));
        assertTrue(run.out().contains("### Dar la vuelta al final de la línea"));
        assertFalse(run.out().contains("Walk the whole line"));
        assertTrue(run.err().contains("no home sheet for S02: no rung is approved in approved.csv"));
        assertEquals(run.out(), plan("--for home").out(), "the same bytes twice");
    }

    @Test
    void aRungThatIsBarredOrStaysAtSchoolNeverComesHomeThoughApproved() throws IOException {
        Files.writeString(folder.resolve("book/approved.csv"), APPROVED + """
                        S02,two-foot-jumps,2026-10-05,,stand-by
                        S01,low-beam,2026-10-05,,stand-by
                        S01,line-two-hands,2026-10-05,,stand-by
                        """);
        Run run = plan("--for home");
        assertTrue(run.err().contains("S02: two-foot-jumps is barred by no-jumps"), run.err());
        assertFalse(run.out().contains("low beam\n") || run.out().contains("two hands held"), run.out());
        Run alone = plan("--for home --student S02");
        assertEquals(3, alone.exitCode());
        assertEquals("", alone.out());
        String next = plan("--student S02").out();
        assertTrue(next.contains("| barred"), next);
    }

    @Test
    void aWronglyEditedLadderOrApprovalIsToldWithItsPlaceAndNothingIsMade() throws IOException {
        String head =
                "rung,task,measure,ready_when,ready_help,ready_sessions,least_help,not_with,home,name_en,do_en,help_en,"
                        + "fade_en,caution_en,name_es,do_es,help_es,fade_es,caution_es\n";
        String words = ",a,b,c,d,e,f,g,h,i,j\n";
        String sound = "line-turn,forward,line-steps,,,,,,yes" + words;
        for (String[] one : List.<String[]>of(
                new String[] {"x,forward,line-stepps,,,,,,yes" + words, "ladder.csv:3:3: FIELD_UNREADABLE"},
                new String[] {"x,forward,line-steps,,,,,hipp,yes" + words, "ladder.csv:3:8: FIELD_UNREADABLE"},
                new String[] {"x,jump,jump-count,,,,,,yes" + words, "ladder.csv:3:9: FIELD_UNREADABLE"},
                new String[] {"x,forward,\"line-steps,,,,,,yes" + words, "ladder.csv:3"})) {
            Files.writeString(folder.resolve("book/ladder.csv"), head + sound + one[0]);
            for (String what : List.of("home", "next")) {
                Run run = plan("--for " + what + " --out @made");
                assertEquals(3, run.exitCode(), one[1]);
                assertTrue(run.err().contains(one[1]), run.err());
                assertFalse(Files.exists(folder.resolve("made")), "nothing is made");
            }
        }
        Files.writeString(folder.resolve("book/ladder.csv"), head + sound);
        assertEquals(0, plan("--for home").exitCode());
        Files.writeString(folder.resolve("book/ladder.csv"), head);
        assertEquals(3, plan("--for home").exitCode());
        Files.delete(folder.resolve("book/ladder.csv"));
        Files.writeString(folder.resolve("book/approved.csv"), APPROVED + "S01,line-turn,2026-13-05,,stand-by\n");
        Run run = plan("--for home");
        assertEquals(3, run.exitCode());
        assertTrue(run.err().contains("approved.csv:3:3: FIELD_UNREADABLE"), run.err());
    }

    @Test
    void importTakesABlankLogBackUntouchedAndFilledIn() throws IOException {
        assertEquals(0, plan("--for log --out @logs").exitCode());
        List<Path> logs = SampleLogbook.list(folder.resolve("logs"), "log-").stream()
                .filter(one -> one.toString().endsWith(".csv"))
                .toList();
        // Two schools whose names differ only in a sign that no file bears, five days each, as no day is usual yet.
        assertEquals(10, logs.size());
        for (Path log : logs) {
            Run blank = Run.of(
                    "import", "--logbook", folder.resolve("book").toString(), log.toString(), "--as-of", "2026-10-16");
            assertEquals(0, blank.exitCode(), blank.err());
        }
        String monday = Files.readString(folder.resolve("logs/log-Ost_le-monday-2.csv"));
        assertEquals("""
                student,date,measure,side,protocol,use,place,unit,value 1,help 1,value 2,help 2,value 3,help 3
                S01,2026-10-12,line-steps,,line_length=3m;shoes=on,probe,school,steps,,,,,,
                S01,2026-10-12,single-leg-stance,left,,probe,school,s,,,,,,
                S01,2026-10-12,single-leg-stance,right,,probe,school,s,,,,,,
                """, monday);
        desk.file(
                "one.csv",
                monday.replace("steps,,,,,,\n", "steps,6,independent,>8,stand-by,unable,stand-by\n")
                        .replace("right,,probe,school,s,,,,,,\n", "right,,probe,school,s,4.5,stand-by,,,,\n"));
        Run filled = desk.imported("@one.csv --as-of 2026-10-16");
        assertEquals(0, filled.exitCode(), filled.err());
        assertEquals(
                List.of("9", "4", "0", "0", "5"),
                desk.counts(filled, "one.csv").subList(0, 5),
                "rows, taken, known, set aside, blank");
        assertTrue(filled.out().contains("one.csv"));
    }

    @Test
    void importTakesAWorkbookBackUntouchedAndFilledIn() throws IOException {
        assertEquals(0, plan("--for log --student S01 -o @blank.xlsx").exitCode());
        Run blank = desk.imported("@blank.xlsx --as-of 2026-10-16");
        assertEquals(0, blank.exitCode(), blank.err());
        fill(folder.resolve("blank.xlsx"), folder.resolve("filled.xlsx"));
        Run filled = desk.imported("@filled.xlsx --as-of 2026-10-16");
        assertEquals(0, filled.exitCode(), filled.err());
        assertTrue(filled.out().contains("filled.xlsx"), filled.out());
        Run score = Run.of("score", folder.resolve("book").toString(), "--by", "trial", "--as-of", "2026-10-16");
        assertTrue(
                score.out().lines().anyMatch(line -> line.contains("2026-10-12") && line.contains(",independent,")),
                score.out());
    }

    @Test
    void onlyABlankLogIsWrittenAsAWorkbook() {
        Run run = plan("--for next -o @next.xlsx");
        assertEquals(3, run.exitCode());
        assertTrue(run.err().contains("only blank logs are written as a workbook"), run.err());
        assertFalse(Files.exists(folder.resolve("next.xlsx")));
    }

    /** Types 6 steps without help into the first line, as a spreadsheet would save them. */
    private static void fill(Path blank, Path filled) throws IOException {
        try (ZipInputStream in = new ZipInputStream(Files.newInputStream(blank));
                ZipOutputStream out = new ZipOutputStream(Files.newOutputStream(filled))) {
            for (ZipEntry part = in.getNextEntry(); part != null; part = in.getNextEntry()) {
                String text = new String(in.readAllBytes(), StandardCharsets.UTF_8);
                if (part.getName().equals("xl/worksheets/sheet1.xml")) {
                    int end = text.indexOf("</row>", text.indexOf("r=\"2\""));
                    text = text.substring(0, end)
                            + "<c r=\"I2\"><v>6</v></c><c r=\"J2\" t=\"inlineStr\"><is><t>independent</t></is></c>"
                            + text.substring(end);
                }
                out.putNextEntry(new ZipEntry(part.getName()));
                out.write(text.getBytes(StandardCharsets.UTF_8));
            }
        }
    }

    @Test
    void triesMetAndPromptsComeBackToo() throws IOException {
        assertEquals(0, plan("--for log --student S02 -o @s.csv").exitCode());
        String log = desk.text("s.csv");
        assertFalse(log.contains("jump-count"), "barred by no-jumps");
        assertFalse(log.contains("walk-6min"), "measured a few times a year");
        assertEquals(6, log.lines().count(), log);
        desk.file(
                "t.csv",
                log.replaceFirst("school,,,,", "school,,1,stand-by,verbal")
                        .replaceFirst(",,,,,,,,,,,,\n", ",0,independent,none,,,,,,,,,\n"));
        Run run = desk.imported("@t.csv --as-of 2026-10-16");
        assertEquals(0, run.exitCode(), run.err());
        assertEquals(
                List.of("25", "2", "0", "0", "23"), desk.counts(run, "t.csv").subList(0, 5));
    }

    @Test
    void filesAreTheOwnersOnlyAndAFolderOfOthersIsRefused() throws IOException {
        for (String what : List.of("next", "home", "log")) {
            assertEquals(0, plan("--for " + what + " --out @out").exitCode());
        }
        for (String name : List.of("S01-next.md", "S01-home.md", "log-Ost_le-monday.html")) {
            assertEquals(
                    "rw-------",
                    PosixFilePermissions.toString(
                            Files.getPosixFilePermissions(folder.resolve("out").resolve(name))));
        }
        desk.file("other/mine.txt", "mine");
        assertEquals(4, plan("--for home --out @other").exitCode());
        assertFalse(Files.exists(folder.resolve("other/S01-home.md")));
    }

    @Test
    void aNameIsPrintedOnlyWhenAskedFor() throws IOException {
        Files.writeString(folder.resolve("book/names.csv"), "student,name\nS01,Quillo\n");
        assertFalse(plan("--for home").out().contains("Quillo"));
        assertTrue(plan("--for home --names").out().contains("- **Student:** Quillo"));
    }

    @Test
    void theNextPageAndTheLogPageCarryCautionsAndDefer() {
        for (String what : List.of("next --format html", "log --format html")) {
            String page = plan("--for " + what).out();
            for (String must : List.of(
                    "The treating therapist decides", "rules of the school", "Stop now and tell the therapist")) {
                assertTrue(page.contains(must), what + ": " + must);
            }
        }
        assertTrue(plan("--for log --format html").out().contains("Whom to ask"));
        assertTrue(plan("--format csv").out().startsWith("student,rung,name,measure,standing,why,ready_when"));
        assertEquals(3, plan("--for home --format csv").exitCode());
        assertEquals(3, plan("--for log --format json").exitCode());
        assertEquals(3, plan("--student S99").exitCode());
    }

    @Test
    void hostileCellsStayCells() throws IOException {
        desk.file(
                "book/students.csv",
                "student,grade,school,precautions\nS01,2,\"=cmd|x <script> | \n# a\",none\nS02,3,B,\"<b>[x](y)\"\n");
        String page = plan("--for log --format html").out();
        assertFalse(page.contains("<script>") || page.contains("<b>"), page);
        String next = plan("--student S02").out();
        assertFalse(next.replace("\\<", "").contains("<b>"), next);
        Run run = plan("--for log --out @logs");
        assertEquals(0, run.exitCode(), run.err());
        List<String> names = new ArrayList<>();
        for (Path log : SampleLogbook.list(folder.resolve("logs"), "log-")) {
            names.add(log.getFileName().toString());
        }
        assertEquals(30, names.size());
        names.forEach(name -> assertTrue(name.matches("[A-Za-z0-9._-]+"), name));
    }

    /** Nothing reads as a promise or a diagnosis; common practice, no source. */
    @Test
    void aSheetHoldsNoPromiseAndNoJargon() {
        String page = plan("--for home").out().toLowerCase(Locale.ROOT);
        for (String word : List.of(
                "diagnos",
                "guarantee",
                "will improve",
                "promise",
                "baseline",
                "probe",
                "trial",
                "criterion",
                "%",
                " he ",
                " she ",
                " his ",
                " her ")) {
            assertFalse(page.contains(word), word);
        }
    }
}
