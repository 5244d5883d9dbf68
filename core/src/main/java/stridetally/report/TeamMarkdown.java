package stridetally.report;

import java.util.List;
import java.util.stream.Collectors;
import stridetally.model.Student;
import stridetally.problem.ProblemCode;
import stridetally.stats.Estimate;
import stridetally.table.Cell;

/** The team's document of one student as Markdown, for a meeting: plain words, the same ones every period. */
public final class TeamMarkdown {
    private final MarkdownPage page;

    private TeamMarkdown(MarkdownPage page) {
        this.page = page;
    }

    /** Writes one document. */
    public static void write(TeamReport report, Appendable out) {
        new TeamMarkdown(new MarkdownPage(out)).write(report);
    }

    /** The document on its way to HTML. */
    static void write(TeamReport report, MarkdownPage page) {
        new TeamMarkdown(page).write(report);
    }

    private void write(TeamReport report) {
        page.heading(1, "Progress report: student " + report.head().code().text());
        head(page, report.head());
        page.heading(2, "Services in this period");
        services(page, report.services());
        GlanceMarkdown.write(page, report.goals());
        AttainmentMarkdown.write(page, report.attainment());
        GoalMarkdown goals =
                new GoalMarkdown(page, report.method(), report.head().period(), report.language());
        if (report.detail() == PageDetail.EVERYTHING) {
            report.goals().forEach(goals::everything);
        } else {
            report.goals().forEach(goals::sheet);
            once(report);
        }
        page.heading(2, "Signed");
        page.signature();
    }

    /** What holds of all goals: said under each of them it would fill sheets that nobody reads. */
    private void once(TeamReport report) {
        NextMarkdown.commonCautions(page, report.goals());
        page.heading(2, "How the figures are computed");
        MethodLine.general(report.goals(), report.method()).forEach(page::bullet);
        page.bullet("A probe is a try that is measured; practice is a try that is taught and is in no value.");
        page.bullet("Each try and more figures: report --for team --explain, or trend and score --by session.");
    }

    /** Whom a document is about, and what it was made from. */
    static void head(MarkdownPage page, TeamReport.Head head) {
        head.name().ifPresent(name -> page.bullet("Name", name));
        page.bullet(
                "Period",
                head.period().text()
                        + head.period()
                                .previous()
                                .map(before -> "; the period before: " + before.name() + ", "
                                        + before.days().first() + " to "
                                        + before.days().last())
                                .orElse(""));
        page.bullet("What is known up to", head.asOf().toString());
        page.bullet(
                "Grade",
                head.student().map(Student::grade).map(TeamMarkdown::kept).orElse("not kept"));
        page.bullet(
                "School",
                head.student().map(Student::school).map(TeamMarkdown::kept).orElse("not kept"));
        page.bullet(
                "Made from",
                "logbook " + head.stamp().logbook() + ", up to entry "
                        + head.stamp().lastEntry());
        if (!head.setAside().isEmpty()) {
            page.bullet("Rows not taken", setAside(head.setAside()));
        }
        if (head.ahead() > 0) {
            page.bullet("Not looked at", Counted.of(head.ahead(), "try") + " after " + head.asOf());
        }
    }

    private static String kept(String written) {
        return written.isBlank() ? "not kept" : written;
    }

    private static String setAside(List<SetAsideRow> rows) {
        return Counted.of(rows.size(), "row") + " of this student set aside and in no figure: "
                + rows.stream()
                        .map(row -> row.at() + " "
                                + row.codes().stream().map(ProblemCode::name).collect(Collectors.joining(" ")))
                        .collect(Collectors.joining(", "));
    }

    /** Services given and missed. */
    static void services(MarkdownPage page, ServiceReport services) {
        if (services.days().isEmpty()) {
            page.paragraph("No day of the period to look at yet.");
            return;
        }
        page.bullet(
                "Days",
                services.days().get().first() + " to " + services.days().get().last());
        page.bullet("Planned", minutes(services.planned()));
        services.plans().forEach(plan -> page.bullet("Plan", plan(plan)));
        page.bullet("Given", given(services));
        if (services.missed().isEmpty()) {
            page.bullet("Missed", "no missed visit is on file");
        }
        services.missed()
                .forEach(missed -> page.bullet("Missed, " + missed.status().word(), missed(missed)));
        if (services.missedVisits() > 0 || services.makeUps() > 0) {
            page.bullet(
                    "Made up",
                    services.madeUp() + " of " + Counted.of(services.missedVisits(), "missed visit") + "; "
                            + Counted.of(services.makeUps(), "visit") + " held in these days to make up for another");
        }
        page.paragraph(PlannedMinutes.RULE);
    }

    private static String plan(ServiceReport.Planned plan) {
        String kind = plan.kind().isBlank() ? "" : " (" + plan.kind() + ")";
        return Counted.of(plan.minutes(), "minute") + " per " + plan.per() + kind + " over "
                + Counted.of(plan.schoolDays(), "school day") + ": " + minutes(plan.inPeriod());
    }

    private static String given(ServiceReport services) {
        String visits = Counted.of(services.held(), "visit") + " held, " + Counted.of(services.heldMinutes(), "minute");
        return services.heldWithoutMinutes() == 0
                ? visits
                : visits + "; the minutes of " + Counted.of(services.heldWithoutMinutes(), "visit")
                        + " are not written";
    }

    private static String minutes(Estimate<Double> minutes) {
        return minutes.value().map(TeamMarkdown::minutes).orElseGet(() -> "not known: " + minutes.reason());
    }

    static String minutes(double minutes) {
        String whole = Cells.rounded(minutes, 0);
        return whole + (whole.equals("1") ? " minute" : " minutes");
    }

    private static String missed(ServiceReport.Missed missed) {
        int written =
                missed.reasons().values().stream().mapToInt(Integer::intValue).sum();
        String reasons = missed.reasons().entrySet().stream()
                .map(reason -> reason.getValue() + " " + reason.getKey())
                .collect(Collectors.joining("; "));
        String unsaid = written == missed.visits() ? "" : (missed.visits() - written) + " without a reason written";
        String both = reasons.isEmpty() || unsaid.isEmpty() ? reasons + unsaid : reasons + "; " + unsaid;
        return Counted.of(missed.visits(), "visit") + ": " + both;
    }

    /** Cells of tables on the page. */
    static final class Cells {
        private Cells() {}

        static List<Cell> of(String... texts) {
            return java.util.Arrays.stream(texts).map(Cell::text).toList();
        }

        /** Half up on the decimal text. */
        static String rounded(double value, int decimals) {
            return new java.math.BigDecimal(Double.toString(value))
                    .setScale(decimals, java.math.RoundingMode.HALF_UP)
                    .toPlainString();
        }
    }
}
