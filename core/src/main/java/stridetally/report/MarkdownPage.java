package stridetally.report;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Supplier;
import stridetally.problem.OutputRefused;
import stridetally.table.Cell;
import stridetally.table.MarkdownTable;
import stridetally.table.MarkdownText;

/** Writes the blocks of a Markdown page. Whatever it is given is escaped; only the marks of the blocks are its own. */
final class MarkdownPage {
    /** A place for a person to write in. */
    static final String FILL = "______";

    /** Around words in another language, on the way to HTML: signs that mean nothing, and are taken out of all words. */
    static final char LANGUAGE = '\uE000';

    static final char WORDS = '\uE001';
    static final char END = '\uE002';

    /** What becomes of a page. */
    enum Use {
        /** It is read as it is. */
        TEXT,
        /** It is turned into HTML: languages are marked, and a chart leaves only its place. */
        HTML
    }

    private final Appendable out;
    private final Use use;
    private boolean inList;
    private boolean first = true;

    MarkdownPage(Appendable out) {
        this(out, Use.TEXT);
    }

    MarkdownPage(Appendable out, Use use) {
        this.out = out;
        this.use = use;
    }

    void heading(int level, String text) {
        block();
        write("#".repeat(level) + " " + escape(text) + "\n");
    }

    void paragraph(String text) {
        block();
        write(escape(text) + "\n");
    }

    void paragraph(String label, String text) {
        block();
        write("**" + escape(label) + "** " + within(text) + "\n");
    }

    void paragraph(String label, Spoken said) {
        block();
        write("**" + escape(label) + "** " + marked(said) + "\n");
    }

    void bullet(String text) {
        item();
        write("- " + escape(text) + "\n");
    }

    void bullet(String label, String text) {
        item();
        write("- **" + escape(label) + ":** " + within(text) + "\n");
    }

    void bullet(String label, Spoken said) {
        item();
        write("- **" + escape(label) + ":** " + marked(said) + "\n");
    }

    /** A bullet that a person completes by hand. */
    void fillIn(String label, String text) {
        item();
        write("- **" + escape(label) + ":** " + within(text) + " " + FILL + "\n");
    }

    /** A label with nothing behind it but the place to write in. */
    void fillIn(Label label) {
        item();
        write("- **" + escape(label.text()) + ":** " + FILL + "\n");
    }

    /** The same with nothing before it but its own words. */
    void fillIn(String text) {
        item();
        write("- " + escape(text) + " " + FILL + "\n");
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
        for (List<Cell> row : rows) {
            table.row(use == Use.HTML ? unmarked(row) : row);
        }
        table.finish();
    }

    /** A chart in plain characters. Its lines must hold no back-tick and no line end. */
    void chart(Supplier<List<String>> lines) {
        block();
        write(use == Use.HTML ? "```text\n```\n" : "```text\n" + String.join("\n", lines.get()) + "\n```\n");
    }

    private String marked(Spoken said) {
        String words = within(said.words());
        return use == Use.HTML && !said.language().isEmpty() ? LANGUAGE + said.language() + WORDS + words + END : words;
    }

    /** Words behind a label: what only acts at the start of a line needs no escape there. */
    private String within(String text) {
        String before = "x ";
        return escape(before + text).substring(before.length());
    }

    private String escape(String text) {
        return MarkdownText.escape(use == Use.HTML ? unmarked(text) : text);
    }

    private static List<Cell> unmarked(List<Cell> row) {
        List<Cell> cells = new ArrayList<>(row);
        cells.replaceAll(cell -> hasMark(cell.plain()) ? Cell.text(unmarked(cell.plain())) : cell);
        return cells;
    }

    private static String unmarked(String text) {
        return hasMark(text) ? text.replace(LANGUAGE, ' ').replace(WORDS, ' ').replace(END, ' ') : text;
    }

    private static boolean hasMark(String text) {
        for (int place = 0; place < text.length(); place++) {
            if (text.charAt(place) >= LANGUAGE && text.charAt(place) <= END) {
                return true;
            }
        }
        return false;
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
