package stridetally.table;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStreamReader;
import java.io.Reader;
import java.io.StringReader;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import stridetally.problem.InputRefused;
import stridetally.problem.ProblemCode;

/** Expected rows are read off the inputs by eye. */
class TableReaderTest {
    @ParameterizedTest
    @ValueSource(strings = {"\n", "\r\n", "\r"})
    void readsRowsUnderEveryLineEndAndCountsPhysicalLines(String end) {
        Collected collected = Collected.from("a,b" + end + "\"x" + end + "y\",2" + end + end + "3,4");
        assertEquals(List.of(List.of("a", "b"), List.of("x" + end + "y", "2"), List.of("3", "4")), collected.cells());
        // The quoted cell covers lines 2 and 3, line 4 is blank.
        assertEquals(List.of(1L, 2L, 5L), collected.lines());
    }

    @Test
    void keepsAQuoteInsideAnUnquotedCell() {
        assertEquals(
                List.of(List.of("5'10\"", "a\"b", "")),
                Collected.from("5'10\",a\"b,\n").cells());
    }

    @Test
    void countsBlankLinesAndRowsOfBlankCells() {
        TableReader reader = new TableReader(new StringReader("a,b\n\n  \n,,\n\"\",\n1,2\n"), "log.csv", Dialect.COMMA);
        assertEquals(
                List.of("a", "b"),
                reader.next().orElseThrow().value().orElseThrow().cells());
        assertEquals(6, reader.next().orElseThrow().value().orElseThrow().line());
        assertTrue(reader.next().isEmpty());
        assertEquals(4, reader.blankLines());
    }

    @Test
    void dropsAByteOrderMarkBeforeAQuotedHeading() {
        assertEquals(
                List.of(List.of("student", "date")),
                Collected.from("\uFEFF\"student\",date\n").cells());
    }

    @Test
    void setsOnlyTheRecordWithTextAfterAClosingQuoteAside() throws IOException {
        Collected collected = malformed("QUOTE_BROKEN-text-after-the-closing-quote.csv");
        assertEquals(List.of(1L, 3L), collected.lines());
        assertEquals("log.csv:2:4", collected.problems.get(0).at().text());
        assertEquals(ProblemCode.QUOTE_BROKEN, collected.problems.get(0).code());
        assertEquals(List.of("S01,line-steps,4,\"steady\"er"), collected.written);
    }

    @Test
    void saysWhereAQuoteIsNeverClosedAndReadsTheLinesAfterIt() throws IOException {
        Collected collected = malformed("QUOTE_BROKEN-never-closed.csv");
        assertEquals(List.of(1L, 3L, 4L), collected.lines());
        assertEquals(
                List.of("S01", "line-steps", "6", "quoted, fine"),
                collected.cells().get(2));
        assertEquals(1, collected.problems.size());
        assertEquals("log.csv:2:4", collected.problems.get(0).at().text());
        assertEquals(List.of("S01,line-steps,4,\"never closed"), collected.written);
    }

    @Test
    void goesOnAtTheLineAfterTheStartWhenAQuotedLineBreakIsFollowedByText() throws IOException {
        Collected collected = malformed("QUOTE_BROKEN-after-a-quoted-line-break.csv");
        assertEquals(2, collected.problems.get(0).at().line());
        assertEquals(List.of(1L, 3L, 4L), collected.lines());
        assertEquals(1, collected.written.size());
        assertTrue(!collected.written.get(0).isBlank());
    }

    @Test
    void neverShowsACellWithABrokenQuote() {
        Collected collected = Collected.from("a,\"Private words\"x\n");
        assertTrue(!collected.problems.get(0).sentence().contains("Private"));
    }

    @Test
    void refusesWhatIsNotText() {
        InputRefused refused = assertThrows(InputRefused.class, () -> malformed("refused-not-text.csv"));
        assertTrue(String.valueOf(refused.getMessage()).contains("not text"));
    }

    @Test
    void refusesAWrongEncodingWithoutReplacementCharacters() {
        byte[] latin = "naïve".getBytes(StandardCharsets.ISO_8859_1);
        Reader strict =
                new InputStreamReader(new java.io.ByteArrayInputStream(latin), StandardCharsets.UTF_8.newDecoder());
        assertThrows(InputRefused.class, () -> Collected.from(strict, Dialect.COMMA));
    }

    @Test
    void skipsALineThatIsTooLongAndReadsTheNext() {
        String text = "a,b\n" + "x".repeat(100_000) + "\n1,2\n\"" + "y\n".repeat(40_000) + "3,4\n";
        LineFraming framing = new LineFraming(new StringReader(text), "log.csv", ',', 50_000);
        Collected collected = new Collected();
        new TableReader(framing, "log.csv", Dialect.COMMA).forEach(collected);
        assertEquals(ProblemCode.ROW_TOO_LONG, collected.problems.get(0).code());
        assertEquals(2, collected.problems.get(0).at().line());
        assertEquals(3, collected.rows.get(1).line());
        assertEquals(ProblemCode.QUOTE_BROKEN, collected.problems.get(1).code());
        assertEquals(4, collected.problems.get(1).at().line());
        // 4 lines before, 40,000 of "y" of which the first is line 4 itself, then the last.
        assertEquals(40_004, collected.rows.get(collected.rows.size() - 1).line());
    }

    @Test
    void readsACrlfThatFallsOnTheEdgeOfTheBuffer() {
        for (int padding = (1 << 15) - 4; padding < (1 << 15) + 4; padding++) {
            Collected collected = Collected.from("x".repeat(padding) + "\r\n1,\"2\r\n\"\r\n5\r\n");
            assertEquals(List.of(1L, 2L, 4L), collected.lines(), "padding " + padding);
        }
    }

    @Test
    void honoursASepLine() {
        TableReader reader = TableReader.sniffing(
                new StringReader("\uFEFFsep=;\r\nstudent;value\r\nS01;1,5\r\n"), "log.csv", "student"::equals);
        Row heading = reader.next().orElseThrow().value().orElseThrow();
        assertEquals(List.of("student", "value"), heading.cells());
        assertEquals(2, heading.line());
        assertEquals(
                List.of("S01", "1,5"),
                reader.next().orElseThrow().value().orElseThrow().cells());
    }

    private static Collected malformed(String name) throws IOException {
        try (Reader reader = new InputStreamReader(
                Objects.requireNonNull(TableReaderTest.class.getResourceAsStream("/malformed/" + name)),
                StandardCharsets.UTF_8)) {
            return Collected.from(reader, Dialect.COMMA);
        }
    }
}
