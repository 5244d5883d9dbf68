package stridetally.cli.output;

import java.util.List;
import stridetally.cli.files.Content;
import stridetally.cli.options.Format;
import stridetally.logbook.ImportedFile;
import stridetally.table.Cell;
import stridetally.table.TableWriter;

/** What an import did, a row a file. */
public final class ImportTable {
    private static final List<String> HEADINGS =
            List.of("file", "kind", "rows", "taken", "known", "set_aside", "blank", "replaced", "entry");

    private ImportTable() {}

    /** The counts of one file in a sentence. */
    public static String sentence(ImportedFile file) {
        return file.name() + ": " + file.rows() + (file.rows() == 1 ? " row = " : " rows = ") + file.taken()
                + " taken + " + file.known() + " known + " + file.setAside() + " set aside + " + file.blank()
                + " blank";
    }

    /** The table in a format. */
    public static Content content(List<ImportedFile> files, Format format) {
        return Content.text(out -> {
            TableWriter table = Tables.open(format, out, HEADINGS);
            files.forEach(file -> table.row(List.of(
                    Cell.text(file.name()),
                    Cell.code(file.kind()),
                    Cell.whole(file.rows()),
                    Cell.whole(file.taken()),
                    Cell.whole(file.known()),
                    Cell.whole(file.setAside()),
                    Cell.whole(file.blank()),
                    Cell.whole(file.superseded()),
                    file.entry().map(EntryNumber::cell).orElseGet(Cell::blank))));
            table.finish();
        });
    }
}
