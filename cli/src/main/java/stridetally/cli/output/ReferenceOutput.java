package stridetally.cli.output;

import java.util.List;
import java.util.function.Predicate;
import stridetally.cli.files.Content;
import stridetally.cli.input.ScoredLogbook;
import stridetally.cli.options.Format;
import stridetally.measures.Catalogue;
import stridetally.model.StudentCode;
import stridetally.report.ReferenceRows;
import stridetally.report.ReferenceTable;
import stridetally.table.Cell;
import stridetally.table.TableWriter;

/** The table of {@code score --by reference}. */
public final class ReferenceOutput {
    private ReferenceOutput() {}

    /** The latest session of every series that has published values, beside them. */
    public static Content of(ScoredLogbook book, Predicate<StudentCode> shown, Format format) {
        return Content.text(out -> {
            TableWriter table = Tables.open(format, out, ReferenceRows.HEADINGS);
            ReferenceRows rows = new ReferenceRows(Catalogue.citations());
            ReferenceTable lines =
                    new ReferenceTable(book.scorer(), book.open().caseload(), ScoredLogbook.measures(book.open()));
            for (ReferenceTable.Line line : lines.lines()) {
                if (shown.test(line.key().student())) {
                    for (List<Cell> row : rows.rows(line)) {
                        table.row(row);
                    }
                }
            }
            table.finish();
        });
    }
}
