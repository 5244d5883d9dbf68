package stridetally.table;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import stridetally.problem.At;
import stridetally.problem.InputRefused;

class HeaderTest {
    @Test
    void findsColumnsByNameInAnyOrder() {
        Header header = header("Value", " Student ", "");
        Cells cells = header.cells(new Row(7, List.of(" 4 ", "S01")));
        assertEquals("4", cells.text("value"));
        assertEquals(" 4 ", cells.raw("value"));
        assertEquals("S01", cells.text("student"));
        assertEquals("", cells.text("note"));
        assertFalse(header.has("note"));
        assertEquals(new At("log.csv", 7, 1, "Value"), cells.at("value"));
        assertEquals(At.row("log.csv", 7), cells.at("note"));
    }

    @Test
    void takesTheGuardOffACell() {
        assertEquals("=1+1", header("note").cells(new Row(2, List.of("'=1+1"))).text("note"));
    }

    @Test
    void namesBothColumnsOfAHeadingThatStandsTwice() {
        Header header = header("student", "date", "Student");
        assertEquals(List.of(new Header.Twice("student", 1, 3)), header.twice());
        InputRefused refused = assertThrows(InputRefused.class, header::withoutTwice);
        assertTrue(String.valueOf(refused.getMessage()).contains("columns 1 and 3"));
    }

    private static Header header(String... headings) {
        return Header.of("log.csv", new Row(1, List.of(headings)), one -> one.toLowerCase(Locale.ROOT));
    }
}
