package stridetally.ingest;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.dhatim.fastexcel.reader.Cell;
import org.dhatim.fastexcel.reader.ReadableWorkbook;
import org.dhatim.fastexcel.reader.ReadingOptions;
import org.dhatim.fastexcel.reader.Row;
import org.dhatim.fastexcel.reader.Sheet;
import org.dhatim.fastexcel.reader.SheetVisibility;
import stridetally.Exempt;
import stridetally.Exempt.Fence;
import stridetally.problem.InputRefused;

/** The sheets of an {@code .xlsx} workbook as tables of text, behind {@link WorkbookGuard}. The only home of its reader. */
@Exempt(
        from = Fence.GENERAL_EXCEPTION,
        reason =
                "The reader of workbooks throws exceptions of many kinds on a damaged file; here they become a refusal.")
final class Workbook {
    /** The format's own most columns (from memory). */
    private static final int MOST_COLUMNS = 16_384;

    /** The format's own longest cell (from memory). */
    private static final int LONGEST_CELL = 32_767;

    private final ByteSource book;
    private final List<TextSource> tables = new ArrayList<>();
    private final List<String> hidden = new ArrayList<>();

    private final InputTables.SheetNames shown;

    private Workbook(ByteSource book, InputTables.SheetNames shown) {
        this.book = book;
        this.shown = shown;
    }

    /**
     * Its visible sheets that hold anything, in their order; or the one named, which may be hidden. Refuses a workbook
     * without any.
     */
    static InputTables read(
            ByteSource book, Optional<String> sheet, WorkbookGuard guard, InputTables.SheetNames shown) {
        Map<String, byte[]> parts = guard.unpack(book);
        Workbook reading = new Workbook(book, shown);
        List<String> names = reading.tables(parts, sheet);
        if (reading.tables.isEmpty()) {
            String found = names.isEmpty() ? "none" : String.join(", ", names);
            throw new InputRefused(book.name() + ": "
                    + sheet.map(name -> "no sheet \"" + name + "\" with anything in it; its sheets: " + found)
                            .orElse("no visible sheet with anything in it; its sheets: " + found));
        }
        return new InputTables(reading.tables, reading.hidden);
    }

    private List<String> tables(Map<String, byte[]> parts, Optional<String> wanted) {
        List<String> names = new ArrayList<>();
        try (ReadableWorkbook workbook =
                new ReadableWorkbook(WorkbookGuard.packed(parts), new ReadingOptions(true, true))) {
            for (Sheet sheet : workbook.getSheets().toList()) {
                String name = shown.shown(sheet.getName(), names.size() + 1);
                names.add(name);
                boolean visible = sheet.getVisibility() == SheetVisibility.VISIBLE;
                if (wanted.map(one -> one.equals(sheet.getName())).orElse(visible)) {
                    table(sheet, name, workbook.isDate1904()).ifPresent(tables::add);
                } else if (!visible) {
                    hidden.add(name);
                }
            }
            return names;
        } catch (InputRefused refused) {
            throw refused;
        } catch (IOException | RuntimeException broken) {
            throw new InputRefused(
                    book.name() + ": this workbook is damaged ("
                            + broken.getClass().getSimpleName()
                            + "); open it, save it as .xlsx or CSV, and import that",
                    broken);
        }
    }

    private Optional<TextSource> table(Sheet sheet, String name, boolean from1904) throws IOException {
        List<List<String>> rows = new ArrayList<>();
        Notes notes = new Notes();
        try (Stream<Row> stream = sheet.openStream()) {
            stream.forEach(row -> {
                List<String> cells = cells(row, from1904, notes);
                while (!cells.isEmpty() && rows.size() < row.getRowNum() - 1) {
                    rows.add(List.of());
                }
                if (!cells.isEmpty()) {
                    rows.add(cells);
                }
            });
        }
        if (rows.isEmpty()) {
            return Optional.empty();
        }
        SheetSource source = new SheetSource(book, name, rows);
        return Optional.of(new TextSource(source, StandardCharsets.UTF_8, notes.text()));
    }

    /** The cells up to the last one that holds anything. */
    private List<String> cells(Row row, boolean from1904, Notes notes) {
        List<String> cells = new ArrayList<>();
        for (Cell cell : row) {
            if (cell == null) {
                continue;
            }
            SheetCell read = SheetCell.of(cell, from1904);
            int column = cell.getColumnIndex();
            if (read.text().isEmpty()) {
                continue;
            }
            if (column >= MOST_COLUMNS || read.text().length() > LONGEST_CELL) {
                throw new InputRefused(book.name() + ": row " + row.getRowNum()
                        + " is wider or longer than a workbook can be; save the sheet as CSV and import that");
            }
            while (cells.size() < column) {
                cells.add("");
            }
            cells.add(read.text());
            notes.look(read, column);
        }
        return cells;
    }

    /** What is told of a sheet. */
    private static final class Notes {
        private final Map<Integer, Long> formulas = new TreeMap<>();
        private final Map<Integer, Long> clocks = new TreeMap<>();

        void look(SheetCell cell, int column) {
            if (cell.formula()) {
                formulas.merge(column, 1L, Long::sum);
            }
            if (cell.clock()) {
                clocks.merge(column, 1L, Long::sum);
            }
        }

        String text() {
            List<String> notes = new ArrayList<>();
            if (!formulas.isEmpty()) {
                notes.add("computed in the sheet, the saved values taken: " + columns(formulas));
            }
            if (!clocks.isEmpty()) {
                notes.add("times shown as hours:minutes are read as minutes:seconds: " + columns(clocks));
            }
            return String.join("; ", notes);
        }

        private static String columns(Map<Integer, Long> counts) {
            List<String> text = new ArrayList<>();
            counts.forEach(
                    (column, count) -> text.add("column " + new stridetally.problem.At("", 0, column + 1, "").letters()
                            + " (" + count + (count == 1 ? " cell)" : " cells)")));
            return String.join(", ", text);
        }
    }
}
