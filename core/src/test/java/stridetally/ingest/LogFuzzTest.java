package stridetally.ingest;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.code_intelligence.jazzer.junit.FuzzTest;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import stridetally.measures.Catalogue;
import stridetally.problem.InputRefused;
import stridetally.problem.RowProblem;

/** Whatever the bytes, a log is refused with its name, or every try of it is counted and every problem has a place. */
final class LogFuzzTest {
    private static final HeadingReader HEADINGS = new HeadingReader(Catalogue.standard());

    @FuzzTest(maxDuration = "60s")
    void aHeadingSaysSomethingOrNothing(byte[] input) {
        for (String heading : new String(input, StandardCharsets.UTF_8).split("\n", -1)) {
            Optional<ColumnMeaning> meaning = HEADINGS.read(heading);
            assertEquals(meaning, HEADINGS.read(heading), "and always the same");
            meaning.ifPresent(
                    said -> assertTrue(!said.words().isBlank() && !said.why().isBlank(), heading));
        }
    }

    @FuzzTest(maxDuration = "60s")
    void everyTryOfALogIsCounted(byte[] input) {
        read("log.csv", input);
    }

    /** The input is what lies in the sheet's part of a sound workbook. */
    @FuzzTest(maxDuration = "60s")
    void everySheetIsReadOrRefused(byte[] input) throws java.io.IOException {
        Map<String, String> parts = new LinkedHashMap<>();
        byte[] sound = new MadeWorkbook().sheet("Log", List.of()).bytes();
        try (ZipInputStream zip = new ZipInputStream(new java.io.ByteArrayInputStream(sound))) {
            for (ZipEntry part = zip.getNextEntry(); part != null; part = zip.getNextEntry()) {
                parts.put(part.getName(), new String(zip.readAllBytes(), StandardCharsets.UTF_8));
            }
        }
        parts.put("xl/worksheets/sheet1.xml", new String(input, StandardCharsets.UTF_8));
        read("book.xlsx", MadeWorkbook.zip(parts));
    }

    /** The input is the whole file. */
    @FuzzTest(maxDuration = "60s")
    void everyWorkbookIsReadOrRefused(byte[] input) {
        read("book.xlsx", input);
    }

    private static void read(String name, byte[] bytes) {
        try {
            ReadLog log = ReadLog.bytes(name, bytes, FormMapping.NONE);
            assertTrue(log.adds(), "rows = taken + set aside + blank");
            for (RowProblem problem : log.problems) {
                assertTrue(problem.at().line() > 0, problem.sentence());
                assertTrue(problem.sentence().startsWith(name), problem.sentence());
            }
        } catch (InputRefused refused) {
            assertTrue(String.valueOf(refused.getMessage()).startsWith(name), refused.getMessage());
        }
    }
}
