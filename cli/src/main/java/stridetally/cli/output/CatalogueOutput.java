package stridetally.cli.output;

import stridetally.cli.files.Content;
import stridetally.cli.options.Format;
import stridetally.measures.Catalogue;
import stridetally.measures.ColumnDefinition;
import stridetally.report.CatalogueRows;
import stridetally.report.ColumnRows;
import stridetally.table.TableWriter;

/** The table of {@code measures}. */
public final class CatalogueOutput {
    private CatalogueOutput() {}

    /** A row a measure, in the order of the catalogue. */
    public static Content of(Catalogue catalogue, Format format) {
        return Content.text(out -> {
            TableWriter table = Tables.open(format, out, CatalogueRows.HEADINGS);
            CatalogueRows rows = new CatalogueRows(Catalogue.citations());
            catalogue.all().forEach(measure -> table.row(rows.row(measure)));
            table.finish();
        });
    }

    /** A row a column of the flat tables. */
    public static Content columns(Format format) {
        return Content.text(out -> {
            TableWriter table = Tables.open(format, out, ColumnRows.HEADINGS);
            for (ColumnDefinition column : ColumnDefinition.all()) {
                table.row(ColumnRows.row(column));
            }
            table.finish();
        });
    }
}
