package stridetally.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import stridetally.logbook.StudentRecord;
import stridetally.table.Cell;

/** The first page of a student's record: which files it has, what they hold, and what is not in them. */
public final class RecordMarkdown {
    private RecordMarkdown() {}

    /**
     * Writes the page.
     *
     * @param name only when names were asked for
     */
    public static void write(StudentRecord record, ReportInput.Stamp stamp, Optional<String> name, Appendable out) {
        write(record, stamp, name, new MarkdownPage(out));
    }

    private static void write(StudentRecord record, ReportInput.Stamp stamp, Optional<String> name, MarkdownPage page) {
        page.heading(1, "Record of student " + record.code().text());
        name.ifPresent(written -> page.bullet("Name", written));
        page.bullet("Made from", "logbook " + stamp.logbook() + ", up to entry " + stamp.lastEntry());
        page.paragraph("Every row of the logbook about this student, as it was written, and no row about anybody else."
                + " A row that does not stand any more is there too, and says so.");
        List<List<Cell>> rows = new ArrayList<>();
        for (StudentRecord.Part part : record.parts()) {
            rows.add(List.of(
                    Cell.text(part.rows().isEmpty() ? part.name() : part.name() + ".csv"),
                    part.rows().isEmpty()
                            ? Cell.code("none")
                            : Cell.whole(part.rows().size()),
                    Cell.text(part.holds())));
        }
        page.table(List.of("file", "rows", "what it holds"), rows);
        page.heading(2, "What is not in it");
        page.bullet(
                record.nobodys() == 0
                        ? "Every row that was set aside says whose it is."
                        : Counted.of(record.nobodys(), "row")
                                + " set aside without a student that could be read: see import"
                                + " --status; one may be this student's.");
        page.bullet(
                "A row of a hand-kept file that cannot be read is told each time the logbook is opened, and is not here.");
        page.bullet("Changes made by hand in a hand-kept file leave no earlier version behind.");
        page.bullet("What is computed: see the reports for the team, the family and the annual review.");
        page.heading(2, "Who may see it");
        page.paragraph(
                "This is a confidential record of a child. Who may see it, and how long it is kept, is for the family,"
                        + " the school and the law of the state to say.");
    }

    /** The same page as HTML. */
    public static void html(StudentRecord record, ReportInput.Stamp stamp, Optional<String> name, Appendable out) {
        StringBuilder markdown = new StringBuilder();
        write(record, stamp, name, new MarkdownPage(markdown, MarkdownPage.Use.HTML));
        HtmlPage.write(
                "Record of student " + record.code().text(),
                List.of(new HtmlPage.Document(markdown.toString(), List.of(), HtmlPage.Paper.UPRIGHT)),
                out);
    }
}
