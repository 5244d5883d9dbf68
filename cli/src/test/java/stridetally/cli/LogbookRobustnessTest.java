package stridetally.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.time.OffsetDateTime;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import stridetally.logbook.LogbookWriter;

/** What a logbook meets on a real machine, through the command line. Exit codes as the help lists them. */
final class LogbookRobustnessTest {
    private static final String DAY = "2026-01-16";
    private static final String LOG = """
                student,date,measure,trial,value,unit,help
                s-01,2026-01-12,line-steps,1,4,steps,stand-by
                s-01,2026-01-12,line-steps,1,5,steps,stand-by
                s-01,2026-01-12,line-steps,2,many,steps,stand-by
                """;

    @TempDir
    private Path folder;

    private Path log = Path.of("");
    private Path book = Path.of("");

    @BeforeEach
    void begin() throws IOException {
        log = Files.writeString(folder.resolve("log.csv"), LOG);
        book = folder.resolve("book");
        assertEquals(1, bring("--new").exitCode());
    }

    @Test
    void whoHoldsTheLockIsToldAndNothingIsWritten() {
        try (LogbookWriter other = LogbookWriter.open(book, OffsetDateTime.parse("2026-01-16T09:30:00Z"))) {
            Run run = bring("--replace");
            assertEquals(4, run.exitCode());
            assertTrue(run.err().contains("in use by another run since 2026-01-16T09:30Z"), run.err());
            long process = ProcessHandle.current().pid();
            assertTrue(run.err().contains("(process " + process + ")"), run.err());
            assertEquals(0, status().exitCode(), "readers do not wait");
            assertTrue(other.entryOf("no such hash").isEmpty());
        }
    }

    @Test
    void whatAKilledRunLeftIsClearedByTheNext() throws IOException {
        String before = Files.readString(book.resolve("entries/journal.csv"));
        Files.writeString(book.resolve("entries/.entry.part"), "half a row");
        Files.writeString(book.resolve("entries/0002-trials.csv"), "never journalled");
        Files.writeString(book.resolve("set-aside/0002.csv"), "never journalled");
        Files.writeString(book.resolve("entries/journal.csv"), "0002,trials,torn", StandardOpenOption.APPEND);
        assertEquals(
                1,
                status().out().lines().filter(line -> line.startsWith("entry,")).count());
        assertEquals(1, bring().exitCode(), "open rows are told again");
        assertEquals(before, Files.readString(book.resolve("entries/journal.csv")));
        assertFalse(Files.exists(book.resolve("entries/.entry.part")));
        assertFalse(Files.exists(book.resolve("entries/0002-trials.csv")));
        assertFalse(Files.exists(book.resolve("set-aside/0002.csv")));
    }

    @ParameterizedTest
    @ValueSource(strings = {"entries/0001-trials.csv", "set-aside/0001.csv"})
    void anEditedOrTruncatedFileIsNamed(String name) throws IOException {
        byte[] whole = Files.readAllBytes(book.resolve(name));
        Files.writeString(
                book.resolve(name), new String(whole, StandardCharsets.UTF_8).replace("line-steps", "beam-steps"));
        refusesToRead(name);
        Files.write(book.resolve(name), java.util.Arrays.copyOf(whole, whole.length / 2));
        refusesToRead(name);
        Files.delete(book.resolve(name));
        refusesToRead(name);
        Files.write(book.resolve(name), whole);
        assertEquals(0, status().exitCode());
    }

    @Test
    void aNewerLogbookIsLeftAlone() throws IOException {
        Files.writeString(book.resolve("logbook.toml"), "id = \"x\"\nversion = 99\n");
        Run run = bring();
        assertEquals(3, run.exitCode());
        assertTrue(run.err().contains("version 99") && run.err().contains("newer program"), run.err());
    }

    @Test
    void aFolderThatIsNoLogbookIsLeftAlone() throws IOException {
        Path other = Files.createDirectory(folder.resolve("holiday pictures"));
        Files.writeString(other.resolve("list.txt"), "x");
        Run run = Run.of("import", log.toString(), "--logbook", other.toString(), "--as-of", DAY);
        assertEquals(3, run.exitCode());
        assertTrue(run.err().contains("is not a logbook"), run.err());
        Run begun = Run.of("import", log.toString(), "--new", "--logbook", other.toString(), "--as-of", DAY);
        assertEquals(4, begun.exitCode(), begun.err());
        try (var files = Files.list(other)) {
            assertEquals(1, files.count());
        }
    }

    @Test
    void aPlaceWhereNothingCanBeWrittenIsToldInASentence() throws IOException {
        Path file = Files.writeString(folder.resolve("a file"), "x");
        Run run = Run.of(
                "import",
                log.toString(),
                "--new",
                "--logbook",
                file.resolve("book").toString(),
                "--as-of",
                DAY);
        assertEquals(4, run.exitCode(), run.err());
        assertEquals(
                1, run.err().lines().filter(line -> line.contains("a file")).count(), run.err());
    }

    @Test
    void spacesForeignLettersAndLinksAreNoMatter() throws IOException {
        Path strange = folder.resolve("Übung – жизнь 1");
        Path source = Files.writeString(folder.resolve("ñandú log.csv"), LOG);
        assertEquals(
                1,
                Run.of("import", source.toString(), "--new", "--logbook", strange.toString(), "--as-of", DAY)
                        .exitCode());
        Path link = Files.createSymbolicLink(folder.resolve("link"), strange);
        Run known =
                Run.of("import", source.toString(), "--logbook", link.toString(), "--as-of", DAY, "--format", "csv");
        assertTrue(
                known.out().contains(",trials,3,1,0,2,0,0,") || known.out().contains(",trials,3,0,1,2,0,0,"),
                known.out());
        assertEquals(
                0,
                Run.of("import", "--status", "--logbook", link.toString(), "--as-of", DAY)
                        .exitCode());
    }

    @Test
    void replaceUndoAndDismissAreSeenInTheTrials() throws IOException {
        Path right = Files.writeString(
                folder.resolve("right.csv"),
                LOG.lines().limit(1).toList().get(0) + "\ns-01,2026-01-12,line-steps,1,7,steps,stand-by\n");
        assertEquals(0, bring(right, "--replace").exitCode());
        String replaced = trials();
        assertEquals(
                1, replaced.lines().filter(line -> line.startsWith("book,s-01")).count(), replaced);
        assertTrue(replaced.contains("line-steps,1,7,") && replaced.contains("replaces 0001:2"), replaced);
        assertTrue(status().out().contains("1 replaced since"), status().out());
        assertEquals(0, act("--undo", "0002").exitCode());
        assertTrue(trials().contains("line-steps,1,4,"), trials());
        assertEquals(0, act("--dismiss", "0001:2").exitCode());
        String status = status().out();
        assertTrue(status.contains("conflict,0001:1,"), status);
        assertTrue(status.contains("open rows,s-01,1,"), status);
        assertTrue(status.contains("1 dismissed") && !status.contains("0001:2,"), status);
    }

    @Test
    void studentsWithoutATryAreNamedAfterAsManyDaysAsAsked() throws IOException {
        Files.writeString(book.resolve("students.csv"), "student,grade\ns-01,2\ns-02,2\n");
        assertTrue(status().out().contains("student,s-02,,no try yet"), status().out());
        assertFalse(status("--quiet-days", "5").out().contains("student,s-01"));
        // From 12 to 16 January are 4 days.
        assertTrue(status("--quiet-days", "4").out().contains("student,s-01,,no try since 2026-01-12"));
        assertEquals(2, status("--quiet-days", "0").exitCode());
    }

    private void refusesToRead(String name) {
        Run run = status();
        assertEquals(3, run.exitCode(), run.err());
        assertTrue(run.err().contains(name), run.err());
    }

    private Run bring(String... more) {
        return bring(log, more);
    }

    private Run bring(Path file, String... more) {
        return with(new String[] {"import", file.toString(), "--logbook", book.toString(), "--as-of", DAY}, more);
    }

    private Run act(String... more) {
        return with(new String[] {"import", "--logbook", book.toString(), "--as-of", DAY, "--why", "a reason"}, more);
    }

    private Run status(String... more) {
        return with(
                new String[] {"import", "--status", "--logbook", book.toString(), "--as-of", DAY, "--format", "csv"},
                more);
    }

    private String trials() {
        return Run.of("score", book.toString(), "--by", "trial", "--as-of", DAY).out();
    }

    private static Run with(String[] first, String... more) {
        return Run.of(java.util.stream.Stream.concat(java.util.Arrays.stream(first), java.util.Arrays.stream(more))
                .toArray(String[]::new));
    }
}
