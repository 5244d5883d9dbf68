package stridetally.report;

import java.io.IOException;
import java.util.List;
import stridetally.problem.OutputRefused;
import stridetally.table.Cell;
import stridetally.table.MarkdownTable;
import stridetally.table.MarkdownText;

/** Writes the blocks of a Markdown page. Whatever it is given is escaped; only the marks of the blocks are its own. */
final class MarkdownPage {
    /** A place for a person to write in. */
    static final String FILL = "______";

    private final Appendable out;
    private boolean inList;
    private boolean first = true;

    MarkdownPage(Appendable out) {
        this.out = out;
    }

    void heading(int level, String text) {
        block();
        write("#".repeat(level) + " " + MarkdownText.escape(text) + "\n");
    }

    void paragraph(String text) {
        block();
        write(MarkdownText.escape(text) + "\n");
    }

    void paragraph(String label, String text) {
        block();
        write("**" + MarkdownText.escape(label) + "** " + within(text) + "\n");
    }

    void bullet(String text) {
        item();
        write("- " + MarkdownText.escape(text) + "\n");
    }

    void bullet(String label, String text) {
        item();
        write("- **" + MarkdownText.escape(label) + ":** " + within(text) + "\n");
    }

    /** A bullet that a person completes by hand. */
    void fillIn(String label, String text) {
        item();
        write("- **" + MarkdownText.escape(label) + ":** " + within(text) + " " + FILL + "\n");
    }

    /** A label with nothing behind it but the place to write in. */
    void fillIn(Label label) {
        item();
        write("- **" + MarkdownText.escape(label.text()) + ":** " + FILL + "\n");
    }

    /** The same with nothing before it but its own words. */
    void fillIn(String text) {
        item();
        write("- " + MarkdownText.escape(text) + " " + FILL + "\n");
    }

    /** Words that stand before a colon. */
    record Label(String text) {}

    void signature() {
        signature("Date", "Therapist");
    }

    void signature(String date, String therapist) {
        block();
        write(date + " " + FILL + FILL + " " + therapist + " " + FILL + FILL + FILL + "\n");
    }

    void table(List<String> headings, List<List<Cell>> rows) {
        block();
        MarkdownTable table = new MarkdownTable(out, headings);
        rows.forEach(table::row);
        table.finish();
    }

    /** Lines as they are. They must hold no back-tick and no line end. */
    void fence(List<String> lines) {
        block();
        write("```text\n" + String.join("\n", lines) + "\n```\n");
    }

    /** Words behind a label: what only acts at the start of a line needs no escape there. */
    private static String within(String text) {
        String before = "x ";
        return MarkdownText.escape(before + text).substring(before.length());
    }

    private void block() {
        if (!first) {
            write("\n");
        }
        first = false;
        inList = false;
    }

    private void item() {
        if (!inList) {
            block();
            inList = true;
        }
    }

    private void write(String text) {
        try {
            out.append(text);
        } catch (IOException cause) {
            throw new OutputRefused("the page cannot be written; check the disk and try again", cause);
        }
    }
}
