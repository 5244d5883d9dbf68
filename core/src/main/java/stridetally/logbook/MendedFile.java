package stridetally.logbook;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.Reader;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import stridetally.ingest.ByteSource;
import stridetally.ingest.TextSource;
import stridetally.problem.At;
import stridetally.problem.Checked;
import stridetally.problem.InputRefused;
import stridetally.table.Cell;
import stridetally.table.CsvTable;
import stridetally.table.Row;
import stridetally.table.TableReader;

/**
 * A set-aside file that a person corrected in a spreadsheet, as the log that it came from: original headings, original
 * cells, each row on the line where it stands in the corrected file. Rows that were closed meanwhile are left out. Held
 * whole: a set-aside file is what a person looks through by hand.
 *
 * @param rows that are left to read
 * @param kind of the entry that set the rows aside; empty when all its rows were added by hand
 */
record MendedFile(TextSource text, Mends mends, long rows, Optional<EntryKind> kind) {

    /** The bytes of the log, under the name of the corrected file. */
    private record Bytes(String name, String content) implements ByteSource {
        @Override
        public long size() {
            return -1;
        }

        @Override
        public InputStream open() {
            return new ByteArrayInputStream(content.getBytes(StandardCharsets.UTF_8));
        }
    }

    /** What a file is: the log in a corrected set-aside file, or any other file as it is. */
    static MendedFile of(TextSource text, Mends mends) {
        String name = text.bytes().name();
        try (Reader reader = text.open()) {
            TableReader table = TableReader.sniffing(reader, name, SetAsideText::isOurs);
            Optional<Row> heading = table.next().flatMap(Checked::value);
            Optional<List<String>> original = heading.map(Row::cells).flatMap(SetAsideText::original);
            return original.isEmpty()
                    ? new MendedFile(text, mends, 1, Optional.empty())
                    : new Reading(name, table, heading.get(), mends).file(original.get());
        } catch (IOException failed) {
            throw new InputRefused(name + ": could not be read to its end; check the disk and try again", failed);
        }
    }

    /** One pass over the rows. */
    private static final class Reading {
        private final String name;
        private final TableReader table;
        private final Row heading;
        private final Mends mends;
        private final StringBuilder text = new StringBuilder();
        private Optional<EntryKind> kind = Optional.empty();
        private long line = 1;
        private long written;

        Reading(String name, TableReader table, Row heading, Mends mends) {
            this.name = name;
            this.table = table;
            this.heading = heading;
            this.mends = mends;
        }

        MendedFile file(List<String> headings) {
            line = heading.line();
            text.append("\n".repeat(Math.toIntExact(line - 1)));
            CsvTable rows = new CsvTable(text, headings, CsvTable.Guard.OFF);
            line += 1 + breaks(headings);
            long blankBefore = table.blankLines();
            for (Optional<Checked<Row>> next = table.next(); next.isPresent(); next = table.next()) {
                Checked<Row> checked = next.get();
                Row row = checked.value()
                        .orElseThrow(
                                () -> new InputRefused(checked.problems().get(0).sentence()));
                if (isWanted(row)) {
                    write(rows, row, headings.size());
                }
            }
            mends.blankRows(table.blankLines() - blankBefore);
            TextSource source = new TextSource(new Bytes(name, text.toString()), StandardCharsets.UTF_8, "");
            return new MendedFile(source, mends, written, kind);
        }

        private boolean isWanted(Row row) {
            Optional<LineRange> named = SetAsideText.named(row.cells());
            if (named.isEmpty()) {
                return true;
            }
            String at = At.row(name, row.line()).text();
            EntryKind its = mends.kindOf(named.get(), at);
            if (kind.isPresent() && kind.get() != its) {
                throw new InputRefused(at + ": this row comes from an entry of " + its.word() + " and those above from "
                        + kind.get().word() + "; import them as two files");
            }
            kind = Optional.of(its);
            return mends.begin(named.get(), SetAsideText.at(row.cells()), at, Math.max(line, row.line()));
        }

        private void write(CsvTable rows, Row row, int width) {
            List<String> cells = SetAsideText.original(heading.cells(), row.cells()).stream()
                    .map(cell -> cell.replace("\r\n", "\n").replace('\r', '\n'))
                    .toList();
            if (line < row.line()) {
                text.append("\n".repeat(Math.toIntExact(row.line() - line)));
                line = row.line();
            }
            rows.row(cells.stream().limit(width).map(Cell::text).toList());
            if (cells.size() > width) {
                text.setLength(text.length() - 1);
                cells.subList(width, cells.size())
                        .forEach(cell -> text.append(",\"")
                                .append(cell.replace("\"", "\"\""))
                                .append('"'));
                text.append('\n');
            }
            line += 1 + breaks(cells);
            written++;
        }

        private static long breaks(List<String> cells) {
            return cells.stream()
                    .mapToLong(cell -> cell.chars().filter(one -> one == '\n').count())
                    .sum();
        }
    }
}
