package stridetally.ingest;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static stridetally.ingest.MadeWorkbook.error;
import static stridetally.ingest.MadeWorkbook.formula;
import static stridetally.ingest.MadeWorkbook.number;
import static stridetally.ingest.MadeWorkbook.text;
import static stridetally.ingest.MadeWorkbook.texts;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import stridetally.model.StudentCode;
import stridetally.problem.InputRefused;

/** The sheets of a workbook. Day numbers: 45717 is 2025-03-01 in the 1900 system and 2029-03-02 in the 1904 one, measured with a spreadsheet. */
final class WorkbookTest {
    private static final List<String> HEADINGS = texts("student", "date", "measure", "value", "help", "place");

    private static List<String> row(String date, String measure, String value) {
        return List.of(text("S1"), date, text(measure), value, text("SBA"), text("gym"));
    }

    private static ReadLog read(MadeWorkbook book) {
        return ReadLog.of(
                InputTables.of(book.source("book.xlsx"), Optional.empty()).only(), FormMapping.NONE);
    }

    @Test
    void aDateCellIsADay() {
        ReadLog log = read(new MadeWorkbook()
                .sheet(
                        "Log",
                        List.of(HEADINGS, row(number("45717", MadeWorkbook.DATE), "line-steps", number("6", 0)))));
        assertEquals(List.of("S1 | 2025-03-01 | line-steps |  | 1 | 6 | stand-by"), log.lines());
        assertEquals("book.xlsx[Log]!2", log.trials.get(0).at());
    }

    @Test
    void theSystemOf1904IsItsOwn() {
        TextSource table = InputTables.of(
                        new MadeWorkbook()
                                .from1904()
                                .sheet("Log", List.of(List.of(number("45717", MadeWorkbook.DATE))))
                                .source("book.xlsx"),
                        Optional.empty())
                .only();
        assertEquals(List.of("2029-03-02"), FirstRows.of(table).get(0).cells());
    }

    @Test
    void theDayThatNeverWasIsSetAside() {
        // Day 60 of the 1900 system is 29 February 1900, which the calendar has not; day 59 is the 28th, 61 the 1
        // March.
        TextSource table = InputTables.of(
                        new MadeWorkbook()
                                .sheet(
                                        "Log",
                                        List.of(List.of(
                                                number("59", MadeWorkbook.DATE),
                                                number("60", MadeWorkbook.DATE),
                                                number("61", MadeWorkbook.DATE))))
                                .source("book.xlsx"),
                        Optional.empty())
                .only();
        assertEquals(
                List.of("1900-02-28", "1900-02-29", "1900-03-01"),
                FirstRows.of(table).get(0).cells());
    }

    @Test
    void timesAreDurations() {
        // 65 s / 86400 s = 0.000752314814814815; 1 h 5 min / 24 h = 0.0451388888888889, typed as 1:05 for 65 s.
        ReadLog log = read(new MadeWorkbook()
                .sheet(
                        "Log",
                        List.of(
                                HEADINGS,
                                row(
                                        text("2027-01-14"),
                                        "stairs-time",
                                        number("0.000752314814814815", MadeWorkbook.MINUTES_SECONDS)),
                                row(
                                        text("2027-01-15"),
                                        "stairs-time",
                                        number("0.0451388888888889", MadeWorkbook.HOURS_MINUTES)))));
        assertEquals(
                List.of(
                        "S1 | 2027-01-14 | stairs-time |  | 1 | 65 | stand-by",
                        "S1 | 2027-01-15 | stairs-time |  | 1 | 65 | stand-by"),
                log.lines());
    }

    @Test
    void numbersAreWrittenAsTheyLook() {
        TextSource table = InputTables.of(
                        new MadeWorkbook()
                                .sheet(
                                        "Log",
                                        List.of(List.of(
                                                number("8.4000000000000004", 0),
                                                number("0.8", MadeWorkbook.PERCENT),
                                                number("7", MadeWorkbook.ZEROS),
                                                number("1E-3", 0))))
                                .source("book.xlsx"),
                        Optional.empty())
                .only();
        assertEquals(
                List.of("8.4", "80%", "007", "0.001"),
                FirstRows.of(table).get(0).cells());
    }

    @Test
    void aFormulaGivesItsSavedValueAndIsTold() {
        TextSource table = InputTables.of(
                        new MadeWorkbook()
                                .sheet(
                                        "Log",
                                        List.of(
                                                HEADINGS,
                                                row(text("2027-01-14"), "line-steps", formula("2+4", "6")),
                                                row(text("2027-01-15"), "line-steps", formula("2+4", "")),
                                                row(text("2027-01-16"), "line-steps", error("#DIV/0!"))))
                                .source("book.xlsx"),
                        Optional.empty())
                .only();
        ReadLog log = ReadLog.of(table, FormMapping.NONE);
        assertEquals(List.of("S1 | 2027-01-14 | line-steps |  | 1 | 6 | stand-by"), log.lines());
        assertEquals(
                List.of("book.xlsx[Log]!3", "book.xlsx[Log]!4"),
                log.setAside.stream().map(row -> row.kept().text()).toList());
        assertTrue(
                log.problems.stream().anyMatch(problem -> problem.at().text().equals("book.xlsx[Log]!D4")),
                log.problems.toString());
        assertTrue(table.note().contains("column D (2 cells)"), table.note());
    }

    @Test
    void hiddenSheetsAreNamedAndNotRead() {
        ByteSource book = new MadeWorkbook()
                .sheet("Log", List.of(HEADINGS))
                .hiddenSheet("Old", List.of(HEADINGS))
                .source("book.xlsx");
        InputTables tables = InputTables.of(book, Optional.empty());
        assertEquals(List.of("Old"), tables.hidden());
        assertEquals(1, tables.tables().size());
        assertEquals(
                "book.xlsx[Old]!",
                InputTables.of(book, Optional.of("Old")).only().bytes().name());
        InputRefused refused = assertThrows(InputRefused.class, () -> InputTables.of(book, Optional.of("New")));
        assertTrue(String.valueOf(refused.getMessage()).contains("its sheets: Log, Old"), refused.getMessage());
    }

    @Test
    void aSheetThatMayBearANameIsToldByItsPlaceWhenNamesAreTurnedIntoCodes() {
        NamesToCodes names = new NamesToCodes(Map.of(new StudentCode("S014"), "Quillova"));
        ByteSource book = new MadeWorkbook()
                .sheet("Quillova", List.of(HEADINGS))
                .sheet("Zibbethan", List.of(HEADINGS))
                .hiddenSheet("Tavrinko", List.of(HEADINGS))
                .source("book.xlsx");
        InputTables tables = InputTables.of(book, Optional.empty(), names::sheet);
        assertEquals(
                List.of("book.xlsx[S014]!", "book.xlsx[sheet 2]!"),
                tables.tables().stream().map(table -> table.bytes().name()).toList());
        assertEquals(List.of("sheet 3"), tables.hidden());
    }

    @Test
    void aSheetNamedAfterAStudentOfTheRosterNeedsNoStudentColumn() {
        ByteSource book = new MadeWorkbook()
                .sheet(
                        "S014",
                        List.of(
                                texts("date", "measure", "value", "help"),
                                texts("2027-01-14", "line steps", "6", "SBA")))
                .source("book.xlsx");
        TextSource table = InputTables.of(book, Optional.empty()).only();
        assertEquals(
                List.of("S014 | 2027-01-14 | line-steps |  | 1 | 6 | stand-by"),
                ReadLog.of(table, FormMapping.NONE, "S014").lines());
        assertThrows(InputRefused.class, () -> ReadLog.of(table, FormMapping.NONE, "S015"));
    }

    @Test
    void aSmallFileOfManyBlanksIsRefused() {
        Map<String, String> parts = new LinkedHashMap<>();
        parts.put("xl/workbook.xml", " ".repeat(3 << 20));
        refused(MadeWorkbook.zip(parts), "times its size");
    }

    @Test
    void aLargeOneIsRefused() {
        WorkbookGuard small = new WorkbookGuard(10, 1000, 1_000_000, 1_000_000);
        ByteSource book = new MadeWorkbook().sheet("Log", List.of(HEADINGS)).source("book.xlsx");
        InputRefused refused = assertThrows(InputRefused.class, () -> small.unpack(book));
        assertTrue(String.valueOf(refused.getMessage()).contains("larger than"), refused.getMessage());
    }

    @Test
    void oneOfManyPartsIsRefused() {
        Map<String, String> parts = new LinkedHashMap<>();
        for (int part = 0; part <= 2_000; part++) {
            parts.put("part" + part, "");
        }
        refused(MadeWorkbook.zip(parts), "more than 2000 parts");
    }

    @Test
    void otherArchivesAreNamed() {
        refused(MadeWorkbook.zip(Map.of("mimetype", "x")), "no .xlsx workbook");
        refused(MadeWorkbook.zip(Map.of("xl/workbook.bin", "x")), "binary workbook");
    }

    @Test
    void oldAndProtectedOnesAreNamed() {
        byte[] old = new byte[512];
        byte[] start = {(byte) 0xd0, (byte) 0xcf, 0x11, (byte) 0xe0};
        System.arraycopy(start, 0, old, 0, start.length);
        refused(old, "behind a password");
    }

    @Test
    void aDamagedOneIsRefusedWhereverItIsCut() {
        byte[] whole = new MadeWorkbook()
                .sheet("Log", List.of(HEADINGS, row(text("2027-01-14"), "line-steps", number("6", 0))))
                .bytes();
        for (int length = 4; length < whole.length - 800; length += 37) {
            byte[] cut = Arrays.copyOf(whole, length);
            assertThrows(
                    InputRefused.class, () -> InputTables.of(MadeWorkbook.source("cut.xlsx", cut), Optional.empty()));
        }
    }

    @Test
    void aBrokenSheetIsRefused() {
        Map<String, String> parts = new LinkedHashMap<>();
        parts.put("xl/workbook.xml", "<workbook><sheets><sheet name=\"a\" sheetId=\"1\"/></workbook>");
        refused(MadeWorkbook.zip(parts), "damaged");
    }

    @Test
    void theNotesOfASheetKeepTheirSigns() {
        List<List<String>> rows = new ArrayList<>();
        rows.add(texts("student", "date", "measure", "value", "help", "place", "note"));
        rows.add(texts("S1", "2027-01-14", "line-steps", "6", "SBA", "gym", "he said \"go\", then\nstopped"));
        ReadLog log = read(new MadeWorkbook().sheet("Log", rows));
        assertEquals("he said \"go\", then stopped", log.trials.get(0).note());
    }

    private static void refused(byte[] bytes, String words) {
        ByteSource book = MadeWorkbook.source("book.xlsx", bytes);
        InputRefused refused = assertThrows(InputRefused.class, () -> InputTables.of(book, Optional.empty()));
        assertTrue(String.valueOf(refused.getMessage()).contains(words), refused.getMessage());
    }
}
