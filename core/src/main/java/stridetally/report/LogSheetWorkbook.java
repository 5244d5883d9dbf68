package stridetally.report;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.Collections;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import org.apache.commons.compress.archivers.zip.ZipArchiveEntry;
import org.apache.commons.compress.archivers.zip.ZipFile;
import org.dhatim.fastexcel.Workbook;
import org.dhatim.fastexcel.Worksheet;
import stridetally.model.WordScale;
import stridetally.plan.LogLine;
import stridetally.plan.LogSheet;
import stridetally.table.Cell;
import stridetally.table.FormulaGuard;

/**
 * Blank logs as a workbook, a sheet each, with the columns of {@link LogSheetCsv}: the words of help and prompt are offered in
 * their cells, and {@code import} takes the filled workbook back. Every cell is text, so that no program turns a day or a code
 * into something else. The same logs give the same bytes: the writer notes the moment of writing, which is put back to the
 * day of the log.
 */
public final class LogSheetWorkbook {
    private static final String APPLICATION = "stridetally";

    /** The format's own limits of a sheet's name and of a list of words (from memory). */
    private static final int LONGEST_NAME = 31;

    private static final int LONGEST_LIST = 255;
    private static final int WIDTH = 14;
    private static final LocalDateTime PACKED = LocalDateTime.of(1980, 1, 1, 0, 0);
    private static final String PROPERTIES = "docProps/core.xml";

    private LogSheetWorkbook() {}

    /** Writes one or more logs; {@code help} and {@code prompt} are the logbook's words. */
    public static void write(List<LogSheet> sheets, WordScale help, WordScale prompt, OutputStream out)
            throws IOException {
        ByteArrayOutputStream written = new ByteArrayOutputStream();
        try (Workbook book = new Workbook(written, APPLICATION, null)) {
            Set<String> names = new HashSet<>();
            for (LogSheet sheet : sheets) {
                Worksheet page = book.newWorksheet(name(sheet, names));
                fill(page, sheet, help, prompt);
                page.finish();
            }
        }
        pack(written.toByteArray(), sheets.get(0).date(), out);
    }

    private static void fill(Worksheet page, LogSheet sheet, WordScale help, WordScale prompt) {
        List<String> headings = LogSheetCsv.headings(List.of(sheet));
        int last = sheet.lines().size();
        for (int column = 0; column < headings.size(); column++) {
            String heading = headings.get(column);
            page.value(0, column, heading);
            page.style(0, column).bold().set();
            page.width(column, WIDTH);
            if (heading.startsWith(LogSheetCsv.HELP)) {
                offer(page, column, last, help);
            } else if (heading.startsWith(LogSheetCsv.PROMPT)) {
                offer(page, column, last, prompt);
            }
        }
        for (int row = 0; row < last; row++) {
            LogLine line = sheet.lines().get(row);
            int column = 0;
            for (Cell cell : LogSheetCsv.filled(sheet, line)) {
                if (cell instanceof Cell.Text words) {
                    // As in the CSV: a sheet may be saved as one, and import takes the guard off.
                    page.value(row + 1, column, FormulaGuard.guard(words.text()));
                } else if (!(cell instanceof Cell.Blank)) {
                    page.value(row + 1, column, cell.plain());
                }
                column++;
            }
        }
        page.freezePane(1, 1);
    }

    /** The words stand in a list to choose from; another way of writing one may still be typed. */
    private static void offer(Worksheet page, int column, int rows, WordScale scale) {
        String words = String.join(",", scale.words());
        if (words.length() <= LONGEST_LIST && !words.contains("\"")) {
            page.range(1, column, rows, column)
                    .validateWithListByFormula('"' + words + '"')
                    .showErrorMessage(false);
        }
    }

    private static String name(LogSheet sheet, Set<String> taken) {
        StringBuilder plain = new StringBuilder(sheet.date().toString());
        for (int place = 0; place < sheet.school().length(); place++) {
            char one = sheet.school().charAt(place);
            plain.append(place == 0 ? " " : "").append(Character.isLetterOrDigit(one) ? one : ' ');
        }
        String name = cut(plain.toString().strip(), "");
        for (int number = 2; !taken.add(name.toLowerCase(Locale.ROOT)); number++) {
            name = cut(plain.toString().strip(), " " + number);
        }
        return name;
    }

    private static String cut(String name, String end) {
        int room = LONGEST_NAME - end.length();
        return (name.length() <= room ? name : name.substring(0, room).strip()) + end;
    }

    private static void pack(byte[] written, LocalDate day, OutputStream out) throws IOException {
        ZipOutputStream packed = new ZipOutputStream(out);
        // The writer's own packing can be read by its directory only, which the JDK does for files alone.
        try (ZipFile parts = ZipFile.builder().setByteArray(written).get()) {
            for (ZipArchiveEntry part : Collections.list(parts.getEntriesInPhysicalOrder())) {
                byte[] bytes;
                try (InputStream in = parts.getInputStream(part)) {
                    bytes = in.readAllBytes();
                }
                ZipEntry entry = new ZipEntry(part.getName());
                entry.setTimeLocal(PACKED);
                packed.putNextEntry(entry);
                packed.write(part.getName().equals(PROPERTIES) ? dated(bytes, day) : bytes);
                packed.closeEntry();
            }
        }
        packed.finish();
    }

    private static byte[] dated(byte[] properties, LocalDate day) {
        String text = new String(properties, StandardCharsets.UTF_8);
        int start = text.indexOf('>', text.indexOf("<dcterms:created")) + 1;
        int end = text.indexOf('<', start);
        return (text.substring(0, start) + day + "T00:00:00Z" + text.substring(end)).getBytes(StandardCharsets.UTF_8);
    }
}
