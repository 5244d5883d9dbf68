package stridetally.cli.output;

import java.util.Optional;
import stridetally.cli.files.Content;
import stridetally.cli.files.OutputFolder;
import stridetally.cli.options.PageFormat;
import stridetally.logbook.StudentRecord;
import stridetally.report.RecordMarkdown;
import stridetally.report.ReportInput;
import stridetally.table.Cell;
import stridetally.table.CsvTable;

/** The record of one student as a folder of tables with a page that says what is in it. */
public final class RecordOutput {
    private RecordOutput() {}

    /** Writes the folder {@code CODE-record} of the output folder. */
    public static void write(
            StudentRecord record,
            ReportInput.Stamp stamp,
            Optional<String> name,
            OutputFolder folder,
            PageFormat format) {
        String below = ReportOutput.fileName(record.code()) + "-record/";
        for (StudentRecord.Part part : record.parts()) {
            if (!part.rows().isEmpty()) {
                folder.write(below + part.name() + ".csv", table(part));
            }
        }
        if (format == PageFormat.HTML) {
            folder.write(below + "record.html", Content.text(out -> RecordMarkdown.html(record, stamp, name, out)));
        } else {
            folder.write(below + "record.md", Content.text(out -> RecordMarkdown.write(record, stamp, name, out)));
        }
    }

    private static Content table(StudentRecord.Part part) {
        return Content.text(out -> {
            CsvTable table = new CsvTable(out, part.headings());
            part.rows().forEach(row -> table.row(row.stream().map(Cell::text).toList()));
            table.finish();
        });
    }
}
