package stridetally.table;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.io.StringReader;
import java.time.LocalDate;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/** Expected text after RFC 4180, RFC 8259 and the pipe tables of GitHub Flavored Markdown, by eye. */
class TableWriterTest {
    private static final List<String> HEADINGS = List.of("note", "value", "day");
    private static final List<Cell> FIRST =
            List.of(Cell.text("=1|\"two\"\n<b>"), Cell.number(-1.25, 1), Cell.date(LocalDate.of(2025, 9, 2)));
    private static final List<Cell> SECOND = List.of(Cell.blank(), Cell.whole(12), Cell.code("-x"));

    @Test
    void writesCsvThatASpreadsheetOpensSafely() {
        StringBuilder out = new StringBuilder();
        CsvTable table = new CsvTable(out, HEADINGS);
        write(table);
        assertEquals("note,value,day\n\"'=1|\"\"two\"\"\n<b>\",-1.25,2025-09-02\n,12,-x\n", out.toString());
        assertEquals(1, table.guardedCells());
    }

    @Test
    void leavesTheGuardOutForMachines() {
        StringBuilder out = new StringBuilder();
        new CsvTable(out, List.of("note"), CsvTable.Guard.OFF).row(List.of(Cell.text("=1")));
        assertEquals("note\n=1\n", out.toString());
    }

    @Test
    void neverWritesABlankLineForARowOfOneBlankCell() {
        StringBuilder out = new StringBuilder();
        new CsvTable(out, List.of("note")).row(List.of(Cell.blank()));
        assertEquals("note\n\"\"\n", out.toString());
    }

    @Test
    void writesJson() {
        StringBuilder out = new StringBuilder();
        write(new JsonTable(out, HEADINGS));
        assertEquals("""
                [
                {"note":"=1|\\"two\\"\\n<b>","value":-1.25,"day":"2025-09-02"},
                {"note":null,"value":12,"day":"-x"}
                ]
                """, out.toString());
    }

    @Test
    void writesAnEmptyJsonArray() {
        StringBuilder out = new StringBuilder();
        new JsonTable(out, HEADINGS).finish();
        assertEquals("[]\n", out.toString());
    }

    @Test
    void writesAlignedMarkdownWithItsMarksEscaped() {
        StringBuilder out = new StringBuilder();
        write(new MarkdownTable(out, HEADINGS));
        // The longest note cell is 15 characters with its marks escaped.
        assertEquals("""
                | note            | value | day        |
                | --------------- | ----: | ---------- |
                | \\=1\\|"two" \\<b> |  -1.3 | 2025-09-02 |
                |                 |    12 | \\-x        |
                """, out.toString());
    }

    // Half up on the decimal text: 1.005 is 1.00499999999999989... as a double, and its text says 1.005.
    @ParameterizedTest
    @CsvSource({"1.005,2,1.01", "2.5,0,3", "-2.5,0,-3", "-0.04,1,0.0", "1.0E-7,2,0.00", "1.2E10,1,12000000000.0"})
    void roundsHalfUpOnTheDecimalText(double value, int decimals, String expected) {
        assertEquals(expected, MarkdownTable.shown(Cell.number(value, decimals)));
    }

    @ParameterizedTest
    @CsvSource({"12.0,12", "0.5,0.5", "1.2E10,12000000000", "-0.0,0"})
    void showsANumberWithoutAHintPlainly(double value, String expected) {
        assertEquals(expected, MarkdownTable.shown(Cell.number(value)));
    }

    @ParameterizedTest
    @CsvSource({
        "# head,\\# head",
        "> quote,\\> quote",
        "- item,\\- item",
        "1. item,1\\. item",
        "1.5 s,1.5 s",
        "a*b*,a\\*b\\*",
        "`x`,\\`x\\`",
        "[a](b),\\[a\\](b)",
        "&lt;,\\&lt;",
        "a_b,a_b",
        "_a_,\\_a\\_",
        "a\\|b,a\\\\\\|b"
    })
    void escapesWhatMarkdownWouldActOn(String text, String expected) {
        assertEquals(expected, MarkdownText.escape(text));
    }

    @Test
    void refusesWhatIsNotANumber() {
        assertThrows(IllegalArgumentException.class, () -> Cell.number(Double.NaN));
        assertThrows(IllegalArgumentException.class, () -> Cell.number(Double.NEGATIVE_INFINITY, 2));
    }

    @Test
    void refusesARowOfAnotherWidth() {
        CsvTable table = new CsvTable(new StringBuilder(), HEADINGS);
        assertThrows(IllegalArgumentException.class, () -> table.row(List.of(Cell.blank())));
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("stridetally.table.Generators#seeds")
    void readsBackExactlyWhatItWrote(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        for (int round = 0; round < 20; round++) {
            List<Cell> cells = List.of(Cell.text(words(random)), Cell.text(words(random)), Cell.code("x"));
            StringBuilder out = new StringBuilder();
            new CsvTable(out, HEADINGS).row(cells);
            TableReader reader = new TableReader(new StringReader(out.toString()), "log.csv", Dialect.COMMA);
            Header header = Header.of("log.csv", row(reader), one -> one);
            Cells read = header.cells(row(reader));
            for (int column = 0; column < 3; column++) {
                assertEquals(cells.get(column).plain(), read.raw(HEADINGS.get(column)));
            }
        }
    }

    private static String words(SplittableRandom random) {
        return Generators.text(random, "'=,;\"\n\r -@\uFEFFa|", 8);
    }

    private static Row row(TableReader reader) {
        return reader.next().orElseThrow().value().orElseThrow();
    }

    private static void write(TableWriter table) {
        table.row(FIRST);
        table.row(SECOND);
        table.finish();
    }
}
