package stridetally.logbook;

import java.io.Reader;
import java.time.LocalDate;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import stridetally.model.Visit;
import stridetally.problem.Checked;
import stridetally.problem.InputRefused;
import stridetally.problem.RowProblem;
import stridetally.table.Header;
import stridetally.table.Row;
import stridetally.table.RowSink;
import stridetally.table.TableReader;

/** An attendance log: {@code student, date, minutes, status, kind, make_up_for, reason}, columns in any order, ISO days. */
public final class VisitLog {
    private static final List<String> REQUIRED = List.of("student", "date", "status");

    /** Takes the rows of a log in file order. */
    public interface Taker {
        /** Takes nothing: for a first look at whether a log can be read. */
        Taker NOBODY = new Taker() {
            @Override
            public void taken(Visit visit, Row row) {}

            @Override
            public void setAside(Row row, List<RowProblem> problems) {}
        };

        /** A visit. */
        void taken(Visit visit, Row row);

        /** A row that was not taken, and why. */
        void setAside(Row row, List<RowProblem> problems);
    }

    /** How many rows were read, blank ones too, and the headings as written. */
    public record Count(long rows, long blank, List<String> headings) {}

    private VisitLog() {}

    /** The headings of a log, for rows that will be set aside; refuses a log without the required ones. */
    public static List<String> headings(Reader reader, String file) {
        return header(sniffing(reader, file), file).headings();
    }

    /** Pushes every row. */
    public static Count read(Reader reader, String file, Taker taker) {
        TableReader table = sniffing(reader, file);
        Header header = header(table, file);
        Rows rows = new Rows(header, taker);
        table.forEach(rows);
        if (rows.count == 0) {
            throw new InputRefused(file + ": a heading row and no rows below it; nothing to read");
        }
        return new Count(rows.count + rows.blank, rows.blank, header.headings());
    }

    /** A visit as the cells of an entry, in {@link EntryKind#VISIT_COLUMNS}. */
    public static List<String> cells(Visit visit) {
        return List.of(
                visit.student().text(),
                visit.date().toString(),
                visit.minutes().isPresent() ? Integer.toString(visit.minutes().getAsInt()) : "",
                visit.status().word(),
                visit.kind(),
                visit.makeUpFor().map(LocalDate::toString).orElse(""),
                visit.reason());
    }

    private static TableReader sniffing(Reader reader, String file) {
        Set<String> known = new HashSet<>(EntryKind.VISIT_COLUMNS);
        return TableReader.sniffing(reader, file, heading -> known.contains(KeptTable.fold(heading)));
    }

    private static Header header(TableReader table, String file) {
        Row first = table.next()
                .flatMap(Checked::value)
                .orElseThrow(() -> new InputRefused(file + ": expected a heading row such as "
                        + String.join(", ", EntryKind.VISIT_COLUMNS) + "; found none"));
        Header header = Header.of(file, first, KeptTable::fold).withoutTwice();
        for (String column : REQUIRED) {
            if (!header.has(column)) {
                throw new InputRefused(file + ":" + header.line() + ": there is no column \"" + column
                        + "\"; add it or correct its heading");
            }
        }
        return header;
    }

    private static final class Rows implements RowSink {
        private final Header header;
        private final Taker taker;
        private long count;
        private long blank;

        Rows(Header header, Taker taker) {
            this.header = header;
            this.taker = taker;
        }

        @Override
        public void row(Row row) {
            count++;
            Checked<Visit> visit = KeptRows.visit(header.cells(row));
            visit.value().ifPresentOrElse(one -> taker.taken(one, row), () -> taker.setAside(row, visit.problems()));
        }

        @Override
        public void problem(RowProblem problem, String written) {
            count++;
            taker.setAside(new Row(problem.at().line(), List.of(written)), List.of(problem));
        }

        @Override
        public void blank(long line) {
            blank++;
        }
    }
}
