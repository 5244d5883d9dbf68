package stridetally.table;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Set;
import java.util.function.Predicate;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class DialectTest {
    private static final Predicate<String> KNOWN = Set.of("student", "date", "value")::contains;

    @ParameterizedTest
    @CsvSource(
            delimiter = '~',
            value = {"','~','", "';'~';'", "'|'~'|'"})
    void choosesTheDelimiterThatShowsKnownHeadings(char delimiter, char expected) {
        String heading = String.join(String.valueOf(delimiter), "student", "date", "value");
        assertEquals(Dialect.of(expected), Dialect.sniff(List.of(heading), KNOWN));
    }

    @Test
    void choosesTabs() {
        assertEquals(Dialect.of('\t'), Dialect.sniff(List.of("student\tdate"), KNOWN));
    }

    @Test
    void isNotMisledByDecimalCommasOrByATitleLine() {
        List<String> lines = List.of("Autumn log, room 4, table 2, hall", "student;date;value", "S01;2025-09-02;1,5");
        assertEquals(Dialect.of(';'), Dialect.sniff(lines, KNOWN));
    }

    @Test
    void countsTheCellsOfTheFirstLineWhenNoHeadingIsKnown() {
        assertEquals(Dialect.of(';'), Dialect.sniff(List.of("kind;zweite, dritte;wert"), KNOWN));
        assertEquals(Dialect.COMMA, Dialect.sniff(List.of("one"), KNOWN));
        assertEquals(Dialect.COMMA, Dialect.sniff(List.of(), KNOWN));
    }

    /** A line break typed into a heading leaves its quote open in the first line. */
    @Test
    void aHeadingOfTwoLinesHidesNoDelimiter() {
        assertEquals(
                Dialect.COMMA,
                Dialect.sniff(List.of("student,date,\"Single leg", "stance\",value", "S1,x,3,4"), KNOWN));
    }

    @Test
    void takesTheWordOfASepLine() {
        assertEquals(new Dialect('|', true), Dialect.sniff(List.of("sep=|", "student,date,value"), KNOWN));
        assertEquals(new Dialect('\t', true), Dialect.sniff(List.of("sep=\t", "student\tdate"), KNOWN));
    }
}
