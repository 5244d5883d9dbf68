package stridetally.logbook;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import stridetally.problem.OutputRefused;

class WriterLockTest {
    @TempDir
    @SuppressWarnings("NullAway.Init")
    private Path folder;

    /** Another program that writes until it is killed. */
    static final class Other {
        private Other() {}

        public static void main(String[] arguments) throws IOException {
            try (LogbookWriter writer = LogbookWriter.open(Path.of(arguments[0]), Notebook.MONDAY)) {
                writer.draft(EntryKind.TRIALS, Notebook.COLUMNS, List.of()).row(Notebook.row("1"));
                System.out.println("writing");
                System.in.read();
            }
        }
    }

    @Test
    void letsOneRunWriteAndTellsTheOtherSinceWhen() {
        Notebook book = Notebook.create(folder);
        try (LogbookWriter first = book.writer(Notebook.MONDAY)) {
            String sentence = refusal(book);
            assertTrue(sentence.contains("in use by another run since 2025-10-06T15:30-05:00"), sentence);
            Notebook.commit(first, List.of(), "1");
            assertEquals(List.of("1:2 1"), book.standing());
        }
        book.commit(Notebook.MONDAY, List.of(), "2");
        assertEquals(List.of("1:2 1", "2:2 2"), book.standing());
    }

    @Test
    void aKilledRunLeavesNoLock() throws IOException, InterruptedException {
        Notebook book = Notebook.create(folder);
        Process other = new ProcessBuilder(
                        Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                        "-cp",
                        System.getProperty("java.class.path"),
                        Other.class.getName(),
                        book.root.toString())
                .redirectError(ProcessBuilder.Redirect.INHERIT)
                .start();
        try {
            assertEquals(
                    "writing",
                    new BufferedReader(new InputStreamReader(other.getInputStream(), StandardCharsets.UTF_8))
                            .readLine());
            assertTrue(refusal(book).contains("in use"));
        } finally {
            other.destroyForcibly().waitFor();
        }
        book.commit(Notebook.MONDAY, List.of(), "2");
        assertEquals(List.of("1:2 2"), book.standing());
    }

    private static String refusal(Notebook book) {
        return String.valueOf(assertThrows(OutputRefused.class, () -> book.writer(Notebook.MONDAY))
                .getMessage());
    }
}
