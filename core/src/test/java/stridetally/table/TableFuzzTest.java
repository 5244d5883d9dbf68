package stridetally.table;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.code_intelligence.jazzer.junit.FuzzTest;
import java.io.StringReader;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Set;
import stridetally.problem.InputRefused;
import stridetally.problem.RowProblem;

/** Whatever the text, framing loses no letter of it, and every row or problem has its own line. */
final class TableFuzzTest {
    private static final String FILE = "log.csv";
    private static final Set<String> KNOWN = Set.of("student", "date", "measure", "value");

    @FuzzTest(maxDuration = "60s")
    void framingLosesNothing(byte[] input) {
        String text = new String(input, StandardCharsets.UTF_8);
        for (char delimiter : new char[] {',', ';', '\t', '|'}) {
            StringBuilder seen = new StringBuilder();
            long line = 0;
            try {
                LineFraming framing = new LineFraming(new StringReader(text), FILE, delimiter);
                for (LineFraming.Found found = framing.next(); found != LineFraming.Found.END; found = framing.next()) {
                    assertTrue(framing.startLine() > line, "lines go up");
                    line = framing.startLine();
                    seen.append(found == LineFraming.Found.RECORD ? framing.text() : framing.written());
                }
            } catch (InputRefused refused) {
                assertPlaced(refused);
                continue;
            }
            assertEquals(letters(text), letters(seen.toString()), "every letter is in one record");
        }
    }

    @FuzzTest(maxDuration = "60s")
    void everyRowOrProblemHasItsPlace(byte[] input) {
        String text = new String(input, StandardCharsets.UTF_8);
        try {
            TableReader reader =
                    TableReader.sniffing(new StringReader(text), FILE, heading -> KNOWN.contains(heading.strip()));
            long[] line = {0};
            reader.forEach(new RowSink() {
                @Override
                public void row(Row row) {
                    next(row.line());
                }

                @Override
                public void blank(long at) {
                    next(at);
                }

                @Override
                public void problem(RowProblem problem, String written) {
                    assertTrue(problem.at().column() >= 0 && !problem.expected().isBlank(), problem.sentence());
                    next(problem.at().line());
                }

                private void next(long at) {
                    assertTrue(at > line[0], "lines go up");
                    line[0] = at;
                }
            });
        } catch (InputRefused refused) {
            assertPlaced(refused);
        }
    }

    @FuzzTest(maxDuration = "60s")
    void aDialectIsAlwaysChosen(byte[] input) {
        List<String> lines = new String(input, StandardCharsets.UTF_8).lines().toList();
        Dialect dialect = Dialect.sniff(lines, KNOWN::contains);
        assertEquals(dialect, Dialect.sniff(lines, KNOWN::contains), "and always the same");
        if (lines.stream().noneMatch(one -> one.indexOf(';') >= 0 || one.indexOf('\t') >= 0 || one.indexOf('|') >= 0)) {
            assertEquals(',', dialect.delimiter(), "a sign that is not there separates nothing");
        }
    }

    private static void assertPlaced(InputRefused refused) {
        assertTrue(String.valueOf(refused.getMessage()).startsWith(FILE), refused.getMessage());
    }

    private static String letters(String text) {
        StringBuilder letters = new StringBuilder();
        text.chars()
                .filter(one -> one != '\n' && one != '\r' && one != '\uFEFF')
                .forEach(one -> letters.append((char) one));
        return letters.toString();
    }
}
