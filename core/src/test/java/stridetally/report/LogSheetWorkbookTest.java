package stridetally.report;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.dhatim.fastexcel.reader.ReadableWorkbook;
import org.dhatim.fastexcel.reader.Row;
import org.dhatim.fastexcel.reader.Sheet;
import org.junit.jupiter.api.Test;
import stridetally.measures.Catalogue;
import stridetally.measures.Measure;
import stridetally.model.Goal;
import stridetally.model.MeasureId;
import stridetally.model.Side;
import stridetally.model.StudentCode;
import stridetally.model.WordScale;
import stridetally.plan.LogLine;
import stridetally.plan.LogSheet;

/** A blank log as a workbook, read back by a reader that did not write it. */
class LogSheetWorkbookTest {
    private static final LocalDate DAY = LocalDate.of(2027, 3, 8);

    @Test
    void theSheetHoldsWhatTheTableHoldsAndEveryCellIsText() throws IOException {
        LogSheet sheet = sheet("North Hall");
        try (ReadableWorkbook book = read(write(sheet))) {
            Sheet page = book.getFirstSheet();
            assertEquals("2027-03-08 North Hall", page.getName());
            List<Row> rows = page.read();
            assertEquals(LogSheetCsv.headings(List.of(sheet)), texts(rows.get(0)));
            StringBuilder csv = new StringBuilder();
            LogSheetCsv.write(List.of(sheet), csv);
            String line = csv.toString().lines().toList().get(1);
            assertEquals(line.replaceAll(",+$", ""), String.join(",", texts(rows.get(1))));
        }
    }

    @Test
    void theSameLogsGiveTheSameBytes() throws IOException, InterruptedException {
        byte[] first = write(sheet("North Hall"));
        Thread.sleep(5);
        assertArrayEquals(first, write(sheet("North Hall")));
    }

    @Test
    void sheetsOfAlikeNamesAreToldApartAndNoSignOfASchoolBreaksAName() throws IOException {
        String school = "The/very:long [name] of a school * with ? signs";
        try (ReadableWorkbook book = read(write(sheet(school), sheet(school)));
                Stream<Sheet> sheets = book.getSheets()) {
            List<String> names = sheets.map(Sheet::getName).toList();
            assertEquals(List.of("2027-03-08 The very long  name", "2027-03-08 The very long  nam 2"), names);
            assertTrue(names.stream().allMatch(name -> name.length() <= 31));
        }
    }

    @Test
    void wordsFromOutsideAreGuardedAsInTheTable() throws IOException {
        MadeCaseload.Draft draft = new MadeCaseload.Draft();
        draft.student = new StudentCode("=HYPERLINK(1)");
        LogSheet sheet = new LogSheet("", DAY, List.of(new LogLine(draft.goal(), measure(), Side.NONE, 3)));
        try (ReadableWorkbook book = read(write(sheet))) {
            assertEquals(
                    "'=HYPERLINK(1)", texts(book.getFirstSheet().read().get(1)).get(0));
        }
    }

    private static Measure measure() {
        return Catalogue.standard().find(new MeasureId("line-steps")).orElseThrow();
    }

    private static List<String> texts(Row row) {
        return row.stream()
                .map(cell -> Optional.ofNullable(cell).map(one -> one.getText()).orElse(""))
                .toList();
    }

    private static ReadableWorkbook read(byte[] bytes) throws IOException {
        return new ReadableWorkbook(new ByteArrayInputStream(bytes));
    }

    private static byte[] write(LogSheet... sheets) throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        LogSheetWorkbook.write(List.of(sheets), WordScale.HELP, WordScale.PROMPT, out);
        return out.toByteArray();
    }

    private static LogSheet sheet(String school) {
        Goal goal = new MadeCaseload.Draft().goal();
        return new LogSheet(school, DAY, List.of(new LogLine(goal, measure(), Side.NONE, 3)));
    }
}
