package stridetally.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Names stay out, a second observer's tries are never counted, and home logs stay home. All names are invented. */
final class ImportPrivacyTest {
    private static final String DAY = "2026-01-16";

    @TempDir
    private Path folder;

    private Path book = Path.of("");

    @BeforeEach
    void begin() throws IOException {
        book = folder.resolve("book");
        assertEquals(0, Run.of("import", "--new", "--logbook", book.toString()).exitCode());
        write("book/students.csv", "student,grade\ns-01,2\ns-02,2\ns-03,3\n");
        write("book/names.csv", "student,name\ns-01,Quillova\ns-02,Tavrinko\ns-03,Tavrinko\n");
        write("book/goals.csv", """
                goal,student,measure,baseline,baseline_date,target,due,help
                g1,s-01,line-steps,2,2026-01-01,8,2026-06-01,stand-by
                """);
    }

    @Test
    void noByteOfANameReachesTheLogbookOrAMessage() throws IOException {
        Path log = write("Quillova January.csv", """
                student,date,measure,trial,value,unit,help,note
                Quillova,2026-01-12,line-steps,1,4,steps,stand-by,Quillova laughed
                Tavrinko,2026-01-12,line-steps,1,5,steps,stand-by,
                Quilova,2026-01-12,line-steps,2,5,steps,stand-by,
                quillova,2026-01-12,line-steps,3,5,steps,stand-by,
                Zibbethan,2026-01-99,line-steps,4,5,steps,stand-by,"x
                s-02,2026-01-12,line-steps,1,6,steps,stand-by,
                """);
        Run run = Run.of("import", log.toString(), "--names", "--logbook", book.toString(), "--as-of", DAY);
        assertEquals(1, run.exitCode(), run.err());
        // By hand: two rows with a code (one of them by its name), four whose name tells no student.
        assertTrue(run.out().contains("|    6 |     2 |     0 |         4 |     0 |"), run.out());
        assertTrue(run.err().contains(":3:1: STUDENT_UNKNOWN"), run.err());
        String entry = Files.readString(book.resolve("entries/0001-trials.csv"));
        assertTrue(entry.contains("s-01,2026-01-12,,line-steps,1,4,"), entry);
        for (String name : List.of("Quillova", "Tavrinko", "Quilova", "quillova", "Zibbethan")) {
            assertFalse((run.out() + run.err()).contains(name), "a message holds a name");
            assertEquals(List.of(), holding(name));
        }
        var before = Files.readString(book.resolve("entries/journal.csv"));
        Run.of("import", log.toString(), "--names", "--logbook", book.toString(), "--as-of", DAY);
        assertEquals(before, Files.readString(book.resolve("entries/journal.csv")), "the same log came in twice");
    }

    @Test
    void aNameAboveTheHeadingsOfAFormIsNotKeptEither() throws IOException {
        String tries = "Date,Line steps 1,Line steps 2,Help\n2026-01-12,4,5,stand-by\n";
        Run known = bring("known.csv", "Student:,Quillova\n" + tries, "--names");
        assertEquals(0, known.exitCode(), known.err());
        // By hand: two tries side by side of the student of the title.
        assertTrue(known.out().contains("|    2 |     2 |     0 |         0 |     0 |"), known.out());
        Run unknown = bring("unknown.csv", "Student:,Zibbethan\n" + tries, "--names");
        assertEquals(1, unknown.exitCode(), unknown.err());
        assertTrue(unknown.out().contains("|    2 |     0 |     0 |         2 |     0 |"), unknown.out());
        for (String name : List.of("Quillova", "Zibbethan")) {
            assertFalse((known.err() + unknown.out() + unknown.err()).contains(name), unknown.err());
            assertEquals(List.of(), holding(name));
        }
        String before = Files.readString(book.resolve("entries/journal.csv"));
        bring("unknown.csv", "Student:,Zibbethan\n" + tries, "--names");
        assertEquals(before, Files.readString(book.resolve("entries/journal.csv")), "the same form came in twice");
    }

    @Test
    void rowsOfAStudentWhoCameToTheRosterLaterAreTakenAndClosed() throws IOException {
        String log = rows("4", "5").replace("s-01", "s-09") + "s-01,2026-01-12,line-steps,1,6,steps,stand-by\n";
        // By hand: two rows of a student whom the roster has not, one of a student whom it has.
        assertTrue(bring("first.csv", log).out().contains("|    3 |     1 |     0 |         2 |     0 |"));
        write("book/students.csv", "student,grade\ns-01,2\ns-02,2\ns-03,3\ns-09,1\n");
        Run again = bring("first.csv", log);
        assertEquals(0, again.exitCode(), again.err());
        assertTrue(again.out().contains("|    3 |     2 |     1 |         0 |     0 |"), again.out());
        assertTrue(again.err().contains("2 rows that had been set aside are mended and closed"), again.err());
        String status = status();
        assertFalse(status.contains("set aside |"), status);
        assertTrue(status.contains("2 mended since"), status);
    }

    @Test
    void theStatusOfADayStaysWhatItWas() throws IOException {
        bring("first.csv", rows("4", "many", "6"));
        String before = status("--known", DAY);
        assertTrue(before.contains("0001:1"), before);
        assertEquals(before, status());
        Run later = Run.of(
                "import",
                "--dismiss",
                "0001:1",
                "--why",
                "not legible",
                "--logbook",
                book.toString(),
                "--as-of",
                "2026-01-19");
        assertEquals(0, later.exitCode(), later.err());
        assertEquals(before, status("--known", DAY));
        assertFalse(status().contains("0001:1"));
        assertEquals(
                2,
                Run.of("import", "--known", DAY, "--logbook", book.toString(), "x.csv")
                        .exitCode());
    }

    private String status(String... more) {
        Run run = Run.of(Stream.concat(
                        Stream.of("import", "--status", "--logbook", book.toString(), "--as-of", DAY), Stream.of(more))
                .toArray(String[]::new));
        assertEquals(0, run.exitCode(), run.err());
        return run.out();
    }

    @Test
    void aHandKeptTableWithANameThatTellsNobodyIsRefused() throws IOException {
        Path goals =
                write("g.csv", "goal,student,measure,target\ng1,Quillova,line-steps,8\ng2,Nobodyova,line-steps,8\n");
        Run run = Run.of(
                "import", goals.toString(), "--kind", "goals", "--names", "--logbook", book.toString(), "--as-of", DAY);
        assertEquals(3, run.exitCode(), run.err());
        assertTrue(run.err().contains("row 2"), run.err());
        assertFalse(run.err().contains("Nobodyova"), run.err());
    }

    @Test
    void aSecondObserversTriesChangeNoNumber() throws IOException {
        bring("first.csv", rows("4", "5", "6"));
        String[] before = {out("score", "--by", "session"), out("score", "--by", "trial"), out("trend")};
        Run run = bring("second.csv", rows("9", "9", "9"), "--second-observer");
        assertEquals(0, run.exitCode(), run.err());
        assertTrue(Files.exists(book.resolve("entries/0002-second-observer.csv")));
        String[] after = {out("score", "--by", "session"), out("score", "--by", "trial"), out("trend")};
        assertEquals(List.of(before), List.of(after));
        assertEquals(
                0, bring("second.csv", rows("9", "9", "9"), "--second-observer").exitCode());
        assertFalse(Files.exists(book.resolve("entries/0003-second-observer.csv")), "known already");
        Run asOwn = bring("second.csv", rows("9", "9", "9"));
        assertEquals(3, asOwn.exitCode(), "the same file as the person's own would count it");
        assertEquals(
                3, bring("first.csv", rows("4", "5", "6"), "--second-observer").exitCode());
    }

    @Test
    void homeLogsStayHome() throws IOException {
        bring("school.csv", rows("4", "5", "6"));
        String before = out("score", "--by", "goal");
        bring("home.csv", """
                student,date,measure,trial,value,unit,help,place
                s-01,2026-01-13,line-steps,1,8,steps,stand-by,home
                """);
        assertEquals(before, out("score", "--by", "goal"));
        List<String> home = out("score", "--by", "trial")
                .lines()
                .filter(line -> line.contains(",home,"))
                .toList();
        assertEquals(1, home.size());
        assertTrue(home.get(0).contains("no goal takes it"), home.get(0));
    }

    private Run bring(String name, String text, String... more) throws IOException {
        Path log = write(name, text);
        return Run.of(Stream.concat(
                        Stream.of("import", log.toString(), "--logbook", book.toString(), "--as-of", DAY),
                        Stream.of(more))
                .toArray(String[]::new));
    }

    private String out(String command, String... more) {
        Run run = Run.of(Stream.concat(Stream.of(command, book.toString(), "--as-of", DAY), Stream.of(more))
                .toArray(String[]::new));
        assertEquals(0, run.exitCode(), run.err());
        return run.out();
    }

    private static String rows(String... values) {
        StringBuilder text = new StringBuilder("student,date,measure,trial,value,unit,help\n");
        for (int trial = 1; trial <= values.length; trial++) {
            text.append("s-01,2026-01-12,line-steps,").append(trial).append(',');
            text.append(values[trial - 1]).append(",steps,stand-by\n");
        }
        return text.toString();
    }

    private Path write(String name, String text) throws IOException {
        return Files.writeString(folder.resolve(name), text);
    }

    private List<Path> holding(String name) throws IOException {
        try (Stream<Path> files = Files.walk(book)) {
            return files.filter(Files::isRegularFile)
                    .filter(file -> !file.endsWith("names.csv"))
                    .filter(file -> file.toString().contains(name)
                            || new String(bytes(file), StandardCharsets.ISO_8859_1).contains(name))
                    .toList();
        }
    }

    private static byte[] bytes(Path file) {
        try {
            return Files.readAllBytes(file);
        } catch (IOException failed) {
            throw new java.io.UncheckedIOException(failed);
        }
    }
}
