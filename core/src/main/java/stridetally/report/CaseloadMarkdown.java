package stridetally.report;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import stridetally.forecast.Forecast;
import stridetally.forecast.SideReview;
import stridetally.model.Goal;
import stridetally.model.GoalAim;
import stridetally.table.Cell;

/** The caseload as one Markdown table, the goals that need attention first. */
public final class CaseloadMarkdown {
    private static final List<String> HEADINGS = List.of(
            "student",
            "goal",
            "measure",
            "baseline",
            "latest",
            "target",
            "due",
            "judgement",
            "chance",
            "enough by its date?",
            "to look at");

    /** What the table of all goals is headed by, which begins a page of its own on paper. */
    static final String EVERY_GOAL = "Every goal";

    /** Goals that are told one by one before the table; our choice, for the first page to hold them. */
    private static final int MOST_FIRST = 8;

    private final MarkdownPage page;
    private final CaseloadReport report;

    private CaseloadMarkdown(CaseloadReport report, Appendable out) {
        this.page = new MarkdownPage(out);
        this.report = report;
    }

    /** Writes the document. */
    public static void write(CaseloadReport report, Appendable out) {
        new CaseloadMarkdown(report, out).write();
    }

    private void write() {
        page.heading(1, "Caseload");
        page.bullet("Period", report.period());
        page.bullet("What is known up to", report.asOf().toString());
        page.bullet(
                "Made from",
                "logbook " + report.stamp().logbook() + ", up to entry "
                        + report.stamp().lastEntry());
        page.bullet("Goals", Counted.of(report.rows().size(), "goal") + counts());
        if (report.setAside() > 0) {
            page.bullet(
                    "Rows not taken",
                    Counted.of(report.setAside(), "row") + " with a student's code set aside and in no figure");
        }
        first();
        comingUp();
        quiet();
        changes();
        visits();
        page.paragraph(MethodLine.judgement(report.method()));
        page.paragraph("The treating therapist decides; a judgement computed here is one side of the conversation.");
        // Last, on paper of its own: what comes before is the page that is read at a glance.
        page.heading(2, EVERY_GOAL);
        page.table(HEADINGS, report.rows().stream().map(this::row).toList());
    }

    private void first() {
        page.heading(2, "First to look at");
        List<CaseloadRow> urgent = report.rows().stream()
                .filter(row -> Attention.isUrgent(row.review().judgement().judgement()))
                .filter(row -> row.review().judgement().judgement().isPresent() || row.gaps() > 0)
                .sorted(CaseloadMarkdown::byAttentionAndDue)
                .toList();
        if (urgent.isEmpty()) {
            page.paragraph("No goal is past its date, off course, in need of mending or reached only with more help.");
        }
        urgent.stream().limit(MOST_FIRST).forEach(row -> page.bullet(label(row), why(row)));
        if (urgent.size() > MOST_FIRST) {
            page.paragraph("And " + (urgent.size() - MOST_FIRST) + " more, in the order of the table below.");
        }
    }

    private static int byAttentionAndDue(CaseloadRow one, CaseloadRow other) {
        int order = Attention.ORDER.indexOf(one.review().judgement().judgement())
                - Attention.ORDER.indexOf(other.review().judgement().judgement());
        LocalDate due = one.goal().due().orElse(LocalDate.MAX);
        return order == 0 ? due.compareTo(other.goal().due().orElse(LocalDate.MAX)) : order;
    }

    private static String label(CaseloadRow row) {
        return row.goal().id().text() + row.name().map(name -> ", " + name).orElse("") + ", " + judgement(row);
    }

    private String why(CaseloadRow row) {
        String due = row.goal()
                .due()
                .map(day -> "Due " + day + ", " + ComingUp.distance(day, report.asOf()) + ". ")
                .orElse("No due date. ");
        String flags = row.flags().isEmpty() ? "" : " Also: " + String.join(", ", row.flags()) + ".";
        return due + row.review().judgement().reason() + flags;
    }

    /** A line for each day, since many goals share theirs. */
    private void comingUp() {
        page.heading(2, "Reviews and due dates that are over or come within " + Counted.of(ComingUp.AHEAD, "day"));
        if (report.comingUp().isEmpty()) {
            page.paragraph("None of an open goal.");
        }
        Map<String, List<String>> lines = new LinkedHashMap<>();
        report.comingUp()
                .forEach(one -> lines.computeIfAbsent(
                                one.on() + ", " + ComingUp.distance(one.on(), report.asOf()) + ", "
                                        + one.why().words(),
                                any -> new ArrayList<>())
                        .add(one.goal().id().text()));
        lines.forEach((day, goals) -> page.bullet(day, String.join(", ", goals)));
    }

    private String counts() {
        String counts = report.counts().stream()
                .map(one -> one.goals() + " " + Attention.word(one.judgement()))
                .collect(Collectors.joining(", "));
        return counts.isEmpty() ? "" : ": " + counts;
    }

    private List<Cell> row(CaseloadRow row) {
        Goal goal = row.goal();
        String side = goal.side().word();
        return List.of(
                Cell.text(row.name()
                        .map(name -> goal.student().text() + " " + name)
                        .orElse(goal.student().text())),
                Cell.text(goal.id().text()),
                Cell.text(goal.measure().text() + (side.isEmpty() ? "" : " (" + side + ")")),
                Cell.text(goal.baseline()
                        .map(amount -> row.unit().text(amount.value()))
                        .orElse("not written")),
                Cell.text(sides(row, one -> latest(row, one))),
                Cell.text(goal.target()
                        .map(amount -> row.unit().text(amount.value()))
                        .orElse("not written")),
                Cell.text(goal.due().map(Object::toString).orElse("not written")),
                Cell.text(judgement(row)),
                Cell.text(sides(row, one -> chance(row, one))),
                Cell.code(Attention.enough(row.review().judgement().sufficiency())),
                Cell.text(String.join("; ", row.flags())));
    }

    private static String judgement(CaseloadRow row) {
        String computed = Attention.word(row.review().judgement().judgement());
        return row.ownJudgement()
                .map(own -> own + " (therapist; computed: " + computed + ")")
                .orElse(computed);
    }

    private static String sides(CaseloadRow row, Function<SideReview, String> figure) {
        if (row.review().sides().isEmpty()) {
            return "not known";
        }
        return row.review().sides().stream()
                .map(side -> (row.review().sides().size() > 1 ? side.side().word() + " " : "") + figure.apply(side))
                .collect(Collectors.joining("; "));
    }

    private static String latest(CaseloadRow row, SideReview side) {
        Optional<Double> target = row.goal().target().map(amount -> amount.value());
        return side.trend()
                .latest()
                .map(point -> {
                    Measured value = Measured.of(point);
                    String number = target.map(far -> row.unit().number(value, far))
                            .orElseGet(() -> row.unit().number(value));
                    return row.unit().withUnit(number) + " on " + point.date();
                })
                .orElse("none");
    }

    private String chance(CaseloadRow row, SideReview side) {
        return side.forecast() instanceof Forecast.Outlook outlook
                ? new ChanceWords(report.method().thresholds())
                        .text(row.goal().aim() == GoalAim.KEEP ? outlook.chanceLine() : outlook.chance())
                : "none";
    }

    private void quiet() {
        page.heading(2, "Students without a try for " + Counted.of(report.quietDays(), "day") + " or more");
        if (report.quiet().isEmpty()) {
            page.paragraph("None with an open goal.");
        }
        report.quiet()
                .forEach(one -> page.bullet(
                        one.student().text(),
                        one.last()
                                .map(day -> "last try on " + day)
                                .orElse("no try was ever recorded for an open goal")));
    }

    private void changes() {
        page.heading(2, "Changes of strategy in the period");
        if (report.changes().isEmpty()) {
            page.paragraph("None is written.");
        }
        report.changes()
                .forEach(change -> page.bullet(
                        change.date() + ", " + change.student().text()
                                + change.goal().map(goal -> ", " + goal).orElse(""),
                        change.what()));
    }

    private void visits() {
        VisitTotals totals = report.visits();
        page.heading(2, "Visits in the period");
        page.bullet(
                "Given",
                Counted.of(totals.held(), "visit") + " held, " + Counted.of(totals.heldMinutes(), "minute")
                        + (totals.withoutMinutes() == 0
                                ? ""
                                : "; the minutes of " + Counted.of(totals.withoutMinutes(), "visit")
                                        + " are not written"));
        page.bullet("Planned", planned(totals));
        page.bullet(
                "Missed",
                totals.missed().isEmpty()
                        ? "no missed visit is on file"
                        : totals.missed().stream()
                                .map(one -> one.visits() + " " + one.status().word())
                                .collect(Collectors.joining(", ")));
        page.paragraph(PlannedMinutes.RULE);
    }

    private static String planned(VisitTotals totals) {
        String unknown = totals.withoutPlan() == 0
                ? ""
                : "not known for " + totals.withoutPlan() + " of " + Counted.of(totals.students(), "student");
        if (totals.withoutPlan() == totals.students()) {
            return unknown.isEmpty() ? "no student has a day in this period" : unknown;
        }
        String known = TeamMarkdown.minutes(totals.planned());
        return unknown.isEmpty() ? known : known + "; " + unknown;
    }
}
