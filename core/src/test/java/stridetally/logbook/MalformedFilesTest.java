package stridetally.logbook;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import stridetally.ingest.KnownTrials;
import stridetally.problem.ProblemCode;
import stridetally.problem.Severity;

/**
 * One file a problem code: a heading row, a good row, and a row with that one fault. What the codes mean is our rule; the
 * rows are made by hand.
 */
class MalformedFilesTest {
    private static final Path FILES = Path.of("src/test/resources/malformed/trials");

    /** Codes that no log of trials can raise, or not in a file of sane size, with the test that holds them. */
    private static final Map<ProblemCode, String> ELSEWHERE = Map.ofEntries(
            Map.entry(ProblemCode.ROW_TOO_LONG, "stridetally.table.TableReaderTest"),
            Map.entry(ProblemCode.FIELD_MISSING, "stridetally.logbook.CaseloadTest"),
            Map.entry(ProblemCode.FIELD_UNREADABLE, "stridetally.logbook.CaseloadTest"),
            Map.entry(ProblemCode.COLUMN_UNKNOWN, "stridetally.logbook.CaseloadTest"),
            Map.entry(ProblemCode.GOAL_STUDENT_UNKNOWN, "stridetally.logbook.CaseloadTest"),
            Map.entry(ProblemCode.GOAL_UNCLEAR, "stridetally.logbook.CaseloadTest"),
            Map.entry(ProblemCode.PRECAUTION_UNKNOWN, "stridetally.logbook.CaseloadTest"),
            Map.entry(ProblemCode.SAMPLE_TIME, "stridetally.recordings.BadRecordingsTest"),
            Map.entry(ProblemCode.SAMPLE_UNREADABLE, "stridetally.recordings.BadRecordingsTest"),
            Map.entry(ProblemCode.STRIDE_DROPPED, "stridetally.recordings.BadRecordingsTest"),
            Map.entry(ProblemCode.RECORDING_DOUBTFUL, "stridetally.recordings.BadRecordingsTest"),
            Map.entry(ProblemCode.RECORDING_REFUSED, "stridetally.recordings.BadRecordingsTest"));

    static Stream<Path> files() throws IOException {
        try (Stream<Path> files = Files.list(FILES)) {
            return files.sorted().toList().stream();
        }
    }

    @ParameterizedTest
    @MethodSource("files")
    void theOneFaultIsNamedAndTheGoodRowIsTaken(Path file) throws IOException {
        ProblemCode code = codeOf(file);
        ReadLog log = ReadLog.of(
                Files.readAllBytes(file), ReadLog.rules(), new KnownTrials(), 1, TrialImport.Clash.SET_ASIDE);
        boolean aside = code.severity() == Severity.SET_ASIDE;
        List<ProblemCode> raised = Arrays.stream(ProblemCode.values())
                .filter(one -> log.outcome().problems().count(one) > 0)
                .toList();
        assertEquals(List.of(code), raised);
        assertEquals(1, log.outcome().problems().count(code));
        assertEquals(2, log.outcome().rows());
        assertEquals(aside ? 1 : 2, log.outcome().taken());
        assertEquals(
                aside ? List.of(code.name()) : List.of(),
                log.setAside().stream().map(SetAsideRow::codes).toList());
        assertEquals(log.outcome().rows(), log.read());
    }

    @ParameterizedTest
    @MethodSource("files")
    void theSentenceSaysWhereWhatAndWhatToDo(Path file) throws IOException {
        ReadLog log = ReadLog.of(Files.readString(file));
        String sentence = log.outcome().problems().sentences().get(0);
        assertTrue(sentence.startsWith("log.csv:3"), sentence);
        assertTrue(sentence.contains(codeOf(file).name()), sentence);
        assertTrue(sentence.contains("; expected "), sentence);
        assertTrue(sentence.indexOf("; ", sentence.indexOf("; expected ") + 2) > 0, "what to do: " + sentence);
        assertFalse(sentence.contains("S0l"), "a cell that may hold a name is not shown: " + sentence);
    }

    @Test
    void everyCodeHasAFileOrATestElsewhere() throws IOException, ClassNotFoundException {
        Set<ProblemCode> covered = EnumSet.noneOf(ProblemCode.class);
        files().map(MalformedFilesTest::codeOf).forEach(code -> assertTrue(covered.add(code), code + " has two files"));
        for (Map.Entry<ProblemCode, String> other : ELSEWHERE.entrySet()) {
            assertTrue(covered.add(other.getKey()), other.getKey() + " has a file and a place elsewhere");
            String source =
                    Files.readString(Path.of("src/test/java", other.getValue().replace('.', '/') + ".java"));
            assertTrue(source.contains(other.getKey().name()), other.getValue() + " says nothing of " + other.getKey());
        }
        assertEquals(EnumSet.allOf(ProblemCode.class), covered);
    }

    private static ProblemCode codeOf(Path file) {
        String name = String.valueOf(file.getFileName());
        return ProblemCode.valueOf(name.substring(0, name.indexOf('-')));
    }
}
