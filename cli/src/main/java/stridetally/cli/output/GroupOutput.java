package stridetally.cli.output;

import stridetally.cli.files.Content;
import stridetally.cli.options.Format;
import stridetally.cli.options.PageFormat;
import stridetally.report.GroupMarkdown;
import stridetally.report.GroupReport;
import stridetally.report.GroupTableRows;
import stridetally.table.TableWriter;

/** The roll-ups of {@code report --for groups}. */
public final class GroupOutput {
    private GroupOutput() {}

    /** All groups, as a page or as one table. */
    public static Content of(GroupReport report, PageFormat format) {
        return Content.text(out -> {
            switch (format) {
                case HTML -> GroupMarkdown.html(report, out);
                case MARKDOWN -> GroupMarkdown.write(report, out);
                case CSV, JSON -> {
                    TableWriter table = Tables.open(Format.valueOf(format.name()), out, GroupTableRows.HEADINGS);
                    report.groups().forEach(row -> table.row(GroupTableRows.row(report, row)));
                    table.finish();
                }
            }
        });
    }
}
