package stridetally.report;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import stridetally.model.Caseload;
import stridetally.model.Contact;
import stridetally.model.Precaution;
import stridetally.model.Student;
import stridetally.plan.LogLine;
import stridetally.plan.LogSheet;
import stridetally.table.Cell;

/** Blank logs to be printed and filled in by hand, with the cautions that belong beside the tries. */
public final class LogSheetHtml {
    private final MarkdownPage page;

    private LogSheetHtml(Appendable out) {
        page = new MarkdownPage(out);
    }

    /** Writes one HTML page, a log on its own paper. */
    public static void write(List<LogSheet> sheets, Caseload caseload, Contact contact, Appendable out) {
        List<HtmlPage.Document> documents = new ArrayList<>();
        for (LogSheet sheet : sheets) {
            StringBuilder markdown = new StringBuilder();
            markdown(sheet, caseload, contact, markdown);
            documents.add(new HtmlPage.Document(markdown.toString(), List.of(), HtmlPage.Paper.FORM));
        }
        HtmlPage.write("Blank logs", documents, out);
    }

    /** Writes one log as Markdown. */
    public static void markdown(LogSheet sheet, Caseload caseload, Contact contact, Appendable out) {
        new LogSheetHtml(out).write(sheet, caseload, contact);
    }

    private void write(LogSheet sheet, Caseload caseload, Contact contact) {
        String day = sheet.date().getDayOfWeek().name().toLowerCase(Locale.ROOT);
        String weekday = day.substring(0, 1).toUpperCase(Locale.ROOT) + day.substring(1);
        page.heading(
                1,
                "Log for " + weekday + (sheet.school().isBlank() ? "" : ", " + sheet.school()) + ", " + sheet.date());
        page.paragraph("In each try: value / help" + (sheet.asksPrompt() ? " / prompt" : "")
                + ". Leave a try blank that was not made. Write >10 where you stopped at a limit of 10; unable, refused,"
                + " absent where that is so.");
        List<String> headings = new ArrayList<>(List.of("Student", "Measure", "Side", "How"));
        for (int number = 1; number <= sheet.tries(); number++) {
            headings.add("Try " + number);
        }
        List<List<Cell>> rows = new ArrayList<>();
        for (LogLine line : sheet.lines()) {
            rows.add(row(sheet, line));
        }
        page.table(headings, rows);
        page.heading(2, "Take care");
        cautions(sheet, caseload).forEach(page::bullet);
        String reach = FamilyPaper.reach(contact, "en");
        if (reach.isEmpty()) {
            page.fillIn(new MarkdownPage.Label("Whom to ask"));
        } else {
            page.bullet("Whom to ask", reach);
        }
        page.signature("Date", "Written by");
    }

    private static List<Cell> row(LogSheet sheet, LogLine line) {
        List<Cell> cells = new ArrayList<>(List.of(
                Cell.text(line.goal().student().text()),
                Cell.text(line.measure().name() + ", " + line.measure().unit().symbol()),
                Cell.code(line.side().word()),
                Cell.text(line.goal().protocol().text())));
        for (int number = 1; number <= sheet.tries(); number++) {
            String room = line.asksPrompt() ? "_____ / _____ / _____" : "_____ / _____";
            cells.add(Cell.code(number <= line.tries() ? room : ""));
        }
        return cells;
    }

    private static Set<String> cautions(LogSheet sheet, Caseload caseload) {
        Set<String> cautions = new LinkedHashSet<>();
        for (Student student : sheet.students(caseload)) {
            List<String> words = student.precautions().stream()
                    .filter(word -> !Precaution.find(word).equals(Optional.of(Precaution.NONE)))
                    .toList();
            if (!words.isEmpty()) {
                cautions.add(student.code().text() + ": " + String.join(", ", words) + ". Follow the written orders.");
            } else if (student.precautions().isEmpty()) {
                cautions.add(student.code().text() + ": precautions are not written; ask the therapist first.");
            }
        }
        for (LogLine line : sheet.lines()) {
            if (!line.measure().cautions().isBlank()) {
                cautions.add(line.measure().name() + ": " + line.measure().cautions());
            }
        }
        cautions.addAll(Cautions.of(Optional.empty(), Optional.empty()));
        return cautions;
    }
}
