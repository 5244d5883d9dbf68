package stridetally.cli.output;

import java.util.List;
import stridetally.cli.options.Format;
import stridetally.table.CsvTable;
import stridetally.table.JsonTable;
import stridetally.table.MarkdownTable;
import stridetally.table.TableWriter;

/** Opens a table in a format. */
public final class Tables {
    private Tables() {}

    /** A table with these headings; the caller writes the rows and finishes it. */
    public static TableWriter open(Format format, Appendable out, List<String> headings) {
        return switch (format) {
            case CSV -> new CsvTable(out, headings);
            case JSON -> new JsonTable(out, headings);
            case MARKDOWN -> new MarkdownTable(out, headings);
        };
    }
}
