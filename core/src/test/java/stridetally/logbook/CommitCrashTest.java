package stridetally.logbook;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The rule tested is ours: a complete journal line is the commit, and a repeat ends where an undisturbed run would. */
class CommitCrashTest {
    @TempDir
    @SuppressWarnings("NullAway.Init")
    private Path folder;

    static Stream<Crash> commitSteps() {
        return Stream.of(WriteStep.values())
                .filter(step -> step.compareTo(WriteStep.JOURNAL_FORCED) <= 0)
                .flatMap(step -> Stream.of(Crash.atStartOf(step), Crash.atEndOf(step)));
    }

    static Stream<Crash> fileSteps() {
        return Stream.of(WriteStep.values())
                .filter(step -> step.compareTo(WriteStep.JOURNAL_FORCED) > 0)
                .flatMap(step -> Stream.of(Crash.atStartOf(step), Crash.atEndOf(step)));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("commitSteps")
    void readsWholeWithOrWithoutTheEntryAndARepeatEndsInTheSameState(Crash crash) {
        Notebook undisturbed = Notebook.create(folder.resolve("undisturbed"));
        undisturbed.commit(Notebook.MONDAY, List.of(), "1");
        undisturbed.commit(Notebook.MONDAY, List.of(LineRange.line(1, 2)), "2", "3");

        Notebook book = Notebook.create(folder.resolve("stopped"));
        book.commit(Notebook.MONDAY, List.of(), "1");
        try (LogbookWriter writer = LogbookWriter.open(book.root, Notebook.MONDAY, crash)) {
            assertThrows(Crash.Stopped.class, () -> Notebook.commit(writer, List.of(LineRange.line(1, 2)), "2", "3"));
        }

        List<String> read = book.standing();
        boolean committed = read.equals(List.of("2:2 2", "2:3 3"));
        if (!committed) {
            assertEquals(List.of("1:2 1"), read);
        }
        try (LogbookWriter writer = book.writer(Notebook.MONDAY)) {
            assertEquals(committed, writer.entryOf("hash of 2 3").isPresent());
            if (!committed) {
                Notebook.commit(writer, List.of(LineRange.line(1, 2)), "2", "3");
            }
        }
        assertEquals(undisturbed.content(), book.content());
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("commitSteps")
    void theNextWriterClearsWhatWasNotCommitted(Crash crash) {
        Notebook book = Notebook.create(folder.resolve("stopped"));
        book.commit(Notebook.MONDAY, List.of(), "1");
        Map<String, String> before = book.content();
        try (LogbookWriter writer = LogbookWriter.open(book.root, Notebook.MONDAY, crash)) {
            assertThrows(Crash.Stopped.class, () -> Notebook.commit(writer, List.of(), "2"));
        }
        book.writer(Notebook.MONDAY).close();
        if (book.open().entries().size() == 1) {
            assertEquals(before, book.content());
        } else {
            assertEquals(List.of("1:2 1", "2:2 2"), book.standing());
        }
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("fileSteps")
    void replacesAHandKeptFileWholeOrNotAtAll(Crash crash) {
        List<List<String>> old = List.of(List.of("g1", "2026-01-15", "3"));
        List<List<String>> fresh = List.of(List.of("g1", "2026-01-15", "5"));
        Notebook undisturbed = Notebook.create(folder.resolve("undisturbed"));
        replace(undisturbed, old);
        replace(undisturbed, fresh);

        Notebook book = Notebook.create(folder.resolve("stopped"));
        replace(book, old);
        try (LogbookWriter writer = LogbookWriter.open(book.root, Notebook.MONDAY.plusDays(1), crash)) {
            assertThrows(Crash.Stopped.class, () -> writer.replaceFile(KeptKind.BENCHMARKS, fresh));
        }
        String now = book.content().get("benchmarks.csv");
        if (!KeptKind.BENCHMARKS.text(fresh).equals(now)) {
            assertEquals(KeptKind.BENCHMARKS.text(old), now);
        }
        replace(book, fresh);
        assertEquals(undisturbed.content(), book.content());
    }

    private static void replace(Notebook book, List<List<String>> rows) {
        try (LogbookWriter writer = book.writer(Notebook.MONDAY.plusDays(1))) {
            writer.replaceFile(KeptKind.BENCHMARKS, rows);
        }
    }
}
