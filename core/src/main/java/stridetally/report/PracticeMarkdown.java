package stridetally.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import stridetally.measures.FamilyWords;
import stridetally.model.Precaution;
import stridetally.plan.Approval;
import stridetally.plan.LineLayout;
import stridetally.plan.Rung;
import stridetally.plan.StudentPlan;
import stridetally.plan.StudentPlan.Step;
import stridetally.table.Cell;

/** What a student may practise next, for the therapist, as Markdown. */
final class PracticeMarkdown {
    private static final List<String> HEADINGS =
            List.of("Rung", "Task", "Standing", "Why", "Ready when", "Approved", "On the home sheet");

    private final MarkdownPage page;

    private PracticeMarkdown(Appendable out) {
        page = new MarkdownPage(out);
    }

    static void write(StudentPlan plan, Appendable out) {
        new PracticeMarkdown(out).write(plan);
    }

    private void write(StudentPlan plan) {
        page.heading(1, "What to practise next: " + plan.student().code().text());
        page.bullet("As of", plan.asOf().toString());
        page.bullet("Next to look at", next(plan));
        page.bullet(
                "Home sheet", plan.whyNoHome().map(why -> "none: " + why).orElse("yes, of what is marked so below"));
        page.bullet(
                "Line on the floor",
                plan.line()
                        .map(PracticeMarkdown::line)
                        .orElse("no height of the last year in bodies.csv, so its length is yours to set"));
        page.paragraph(
                "Ready is what the probes show, approved is what you allow. The sheet prints only what approved.csv"
                        + " allows on the day; a blank until holds for " + Approval.WEEKS + " weeks.");
        page.heading(2, "Rungs");
        List<List<Cell>> rows = new ArrayList<>();
        plan.steps().forEach(step -> rows.add(row(step)));
        page.table(HEADINGS, rows);
        page.heading(2, "Cautions");
        Cautions.of(Optional.empty(), Optional.of(plan.student())).forEach(page::bullet);
        List<Precaution> heed = plan.caution().toHeed();
        if (heed.contains(Precaution.TWO_ADULTS)) {
            page.bullet("Two adults each time.");
        }
    }

    private static String next(StudentPlan plan) {
        List<String> ready = plan.next().stream().map(step -> step.rung().id()).toList();
        return ready.isEmpty() ? "no rung beyond those approved is ready" : String.join(", ", ready);
    }

    private static String line(LineLayout line) {
        return line.lengthFeet() + " ft (" + line.lengthMetres() + " m) long, " + LineLayout.WIDTH_INCHES
                + " in wide and at most " + LineLayout.MOST_WIDTH_INCHES + " in, " + LineLayout.CLEAR_FEET
                + " ft of clear floor all round; about " + line.largeSteps() + " large or " + line.smallSteps()
                + " small steps; move on at " + LineLayout.STEPS_TO_MOVE_ON
                + " steps in a row or most of the line, unaided";
    }

    private static List<Cell> row(Step step) {
        Rung rung = step.rung();
        return List.of(
                Cell.text(rung.id()),
                Cell.text(name(rung)),
                Cell.code(step.standing().word()),
                Cell.text(step.why()),
                Cell.text(rung.ready().map(ready -> ready.text()).orElse("from the start")),
                Cell.text(step.approval()
                        .map(one -> one.approved() + " to " + one.lastDay() + ", "
                                + one.help().word())
                        .orElse("")),
                Cell.code(step.onHomeSheet().word()));
    }

    static String name(Rung rung) {
        Rung.Words words = rung.words().get(FamilyWords.ENGLISH);
        return words == null ? rung.id() : words.name();
    }
}
