package stridetally.logbook;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import stridetally.problem.OutputRefused;

/**
 * The whole way of a file into a logbook, stopped or refused at every step, for a first import and for one that mends. The
 * rule is ours: the logbook reads whole, with or without the entry, and a repeat ends where an undisturbed run would.
 */
class ImportCrashTest {
    private static final String LOG = """
            student,date,measure,trial,value,unit,help
            S01,2025-10-06,line-steps,1,4,steps,independent
            S01,2025-10-06,line-steps,2,many,steps,independent
            S01,2025-10-06,line-steps,3,6,steps,sort of
            """;

    @TempDir
    @SuppressWarnings("NullAway.Init")
    private Path folder;

    /** A machine that refuses one step. */
    private record Refusal(WriteStep step, IOException why) implements StepWatch {
        @Override
        public void before(WriteStep taken) throws IOException {
            if (taken == step) {
                throw why;
            }
        }

        @Override
        public String toString() {
            return why.getClass().getSimpleName() + " at " + step;
        }
    }

    static Stream<Arguments> stops() {
        List<Arguments> stops = new ArrayList<>();
        for (boolean mending : new boolean[] {false, true}) {
            CommitCrashTest.commitSteps().forEach(crash -> stops.add(Arguments.of(mending, crash)));
        }
        return stops.stream();
    }

    static Stream<Arguments> refusals() {
        List<Arguments> refusals = new ArrayList<>();
        for (boolean mending : new boolean[] {false, true}) {
            for (WriteStep step : WriteStep.values()) {
                if (step.compareTo(WriteStep.JOURNAL_FORCED) <= 0) {
                    refusals.add(Arguments.of(mending, new Refusal(step, new IOException("No space left on device"))));
                    refusals.add(Arguments.of(mending, new Refusal(step, new AccessDeniedException("entries"))));
                }
            }
        }
        return refusals.stream();
    }

    @ParameterizedTest(name = "mending {0}, stopped {1}")
    @MethodSource("stops")
    void aStoppedImportIsThereWholeOrNotAtAll(boolean mending, Crash crash) {
        Notebook undisturbed = prepared("undisturbed", mending);
        bring(undisturbed, mending, StepWatch.NONE);
        Map<String, String> done = undisturbed.content();

        Notebook book = prepared("stopped", mending);
        List<String> before = standing(book);
        if (!happens(mending, crash)) {
            return;
        }
        assertThrows(Crash.Stopped.class, () -> bring(book, mending, crash));
        List<String> after = standing(book);
        assertTrue(after.equals(before) || after.equals(standing(undisturbed)), after.toString());
        bring(book, mending, StepWatch.NONE);
        assertEquals(done, book.content());
    }

    @ParameterizedTest(name = "mending {0}, {1}")
    @MethodSource("refusals")
    void aRefusedImportLeavesWhatWasThere(boolean mending, Refusal refusal) {
        Notebook book = prepared("refused", mending);
        List<String> before = standing(book);
        if (mending && refusal.step().compareTo(WriteStep.SET_ASIDE_FOLDER_FORCED) <= 0) {
            bring(book, mending, refusal);
            return;
        }
        OutputRefused refused = assertThrows(OutputRefused.class, () -> bring(book, mending, refusal));
        assertTrue(String.valueOf(refused.getMessage()).contains("cannot be written"), refused.getMessage());
        assertEquals(before, standing(book));
        bring(book, mending, StepWatch.NONE);
        Notebook undisturbed = prepared("undisturbed", mending);
        bring(undisturbed, mending, StepWatch.NONE);
        assertEquals(undisturbed.content(), book.content());
    }

    /** The mending import sets nothing aside anew, so it has no set-aside steps. */
    private static boolean happens(boolean mending, Crash crash) {
        return !mending || !crash.toString().contains("SET_ASIDE");
    }

    private Notebook prepared(String name, boolean mending) {
        Notebook book = Notebook.create(folder.resolve(name));
        if (mending) {
            Bench.trials(book, StepWatch.NONE, "log.csv", LOG);
        }
        return book;
    }

    /** One row of the two is mended, the other stays as bad as it was. */
    private static void bring(Notebook book, boolean mending, StepWatch watch) {
        if (mending) {
            String mended =
                    book.content().getOrDefault("set-aside/0001.csv", "").replace(",many,", ",5,");
            Bench.trials(book, watch, "mended.csv", mended);
        } else {
            Bench.trials(book, watch, "log.csv", LOG);
        }
    }

    /** Tries that stand and rows that are open. */
    private static List<String> standing(Notebook book) {
        List<String> all = new ArrayList<>();
        Logbook open = book.open();
        open.trials().forEach((entry, line, cells) -> all.add(entry + ":" + line + " " + cells.get(6)));
        open.openSetAside().forEach(row -> all.add("open " + row.id()));
        return all;
    }
}
