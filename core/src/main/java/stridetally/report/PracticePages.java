package stridetally.report;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import stridetally.plan.Approval;
import stridetally.plan.StudentPlan;
import stridetally.plan.StudentPlan.Step;
import stridetally.table.Cell;
import stridetally.table.TableWriter;

/** What students may practise next: as pages for the therapist, and as a flat table, a row a student and rung. */
public final class PracticePages {
    /** The columns of the flat table. */
    public static final List<String> COLUMNS = List.of(
            "student",
            "rung",
            "name",
            "measure",
            "standing",
            "why",
            "ready_when",
            "approved",
            "until",
            "help",
            "home",
            "on_home_sheet",
            "no_home_sheet_because");

    private PracticePages() {}

    /** Markdown, one student after another. */
    public static void markdown(List<StudentPlan> plans, Appendable out) throws IOException {
        String between = "";
        for (StudentPlan plan : plans) {
            out.append(between);
            PracticeMarkdown.write(plan, out);
            between = "\n---\n\n";
        }
    }

    /** One HTML page. */
    public static void html(List<StudentPlan> plans, Appendable out) {
        List<HtmlPage.Document> documents = new ArrayList<>();
        for (StudentPlan plan : plans) {
            StringBuilder markdown = new StringBuilder();
            PracticeMarkdown.write(plan, markdown);
            documents.add(new HtmlPage.Document(markdown.toString(), List.of(), HtmlPage.Paper.LYING));
        }
        HtmlPage.write("What to practise next", documents, out);
    }

    /** The rows of the flat table. */
    public static void rows(List<StudentPlan> plans, TableWriter table) {
        for (StudentPlan plan : plans) {
            for (Step step : plan.steps()) {
                table.row(List.of(
                        Cell.text(plan.student().code().text()),
                        Cell.text(step.rung().id()),
                        Cell.text(PracticeMarkdown.name(step.rung())),
                        Cell.code(step.rung().measure().text()),
                        Cell.code(step.standing().word()),
                        Cell.text(step.why()),
                        Cell.text(step.rung().ready().map(ready -> ready.text()).orElse("from the start")),
                        step.approval().map(one -> Cell.date(one.approved())).orElse(Cell.blank()),
                        step.approval().map(Approval::lastDay).map(Cell::date).orElse(Cell.blank()),
                        Cell.code(step.approval().map(one -> one.help().word()).orElse("")),
                        Cell.code(step.rung().home().name().toLowerCase(Locale.ROOT)),
                        Cell.code(step.onHomeSheet().word()),
                        Cell.text(plan.whyNoHome().orElse(""))));
            }
        }
        table.finish();
    }
}
