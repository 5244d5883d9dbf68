package stridetally.report;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import stridetally.forecast.GoalJudgement;
import stridetally.logbook.ReportLine;
import stridetally.model.Goal;
import stridetally.model.GoalId;
import stridetally.model.Remark;

/** The annual review of one student as Markdown: evidence for the team that writes the next plan, and room for its words. */
public final class AnnualMarkdown {
    private final MarkdownPage page;
    private final AnnualReview review;
    private final PageDetail detail;
    private final GoalMarkdown goals;
    private final ReportPeriod period;

    private AnnualMarkdown(AnnualReview review, PageDetail detail, MarkdownPage page) {
        this.page = page;
        this.review = review;
        this.detail = detail;
        this.period = new ReportPeriod("", review.head().period().days(), Optional.empty());
        this.goals = new GoalMarkdown(page, review.method(), period, review.language());
    }

    /** Writes one document. */
    public static void write(AnnualReview review, PageDetail detail, Appendable out) {
        write(review, detail, new MarkdownPage(out));
    }

    /** The document on its way to HTML. */
    static void write(AnnualReview review, PageDetail detail, MarkdownPage page) {
        new AnnualMarkdown(review, detail, page).write();
    }

    private void write() {
        page.heading(1, "Annual review: student " + review.head().code().text());
        TeamMarkdown.head(page, review.head());
        page.paragraph(
                "Evidence for the team that reviews the plan; it stands in for nobody's judgement. The team, the family and"
                        + " the treating therapist among them, decides on present levels and next goals, within medical orders and"
                        + " the rules of the school and the state.");
        page.heading(2, "Services in these days");
        TeamMarkdown.services(page, review.services());
        review.goals().forEach(this::goal);
        NextMarkdown.cautions(page, parts());
        page.heading(2, "Signed");
        page.signature();
        computed();
    }

    private void goal(YearOfGoal year) {
        goals.head(year.part());
        year.goal().follows().map(GoalId::text).ifPresent(id -> page.paragraph("Follows:", "goal " + id));
        year.followedBy().map(GoalId::text).ifPresent(id -> page.paragraph("Goes on as:", "goal " + id));
        reached(year);
        how(year.part());
        PresentMarkdown present = new PresentMarkdown(page, year, review.method());
        for (YearOfGoal.YearOfSide side : year.sides()) {
            page.heading(3, "The year, period by period" + PresentMarkdown.of(side, ", "));
            // The chart first: under the table it would not fit on the same sheet of paper.
            page.chart(() -> side.side().chart().lines());
            present.year(side);
            ChangeMarkdown change = new ChangeMarkdown(page, year.part(), side.side(), review.method());
            if (detail == PageDetail.SUMMARY) {
                change.summary();
            } else {
                change.write();
            }
        }
        page.heading(3, "Present level");
        year.sides().forEach(present::level);
        page.fillIn("What it means for the school day and the general curriculum", "the team writes this:");
        page.heading(3, "A next target");
        year.sides().forEach(side -> new NextTargetMarkdown(page, year, side).write());
        NextTargetMarkdown.together(page, year, review.method());
        if (hasRange(year)) {
            page.paragraph(NextTargetMarkdown.SUGGESTION);
        }
        page.fillIn(new MarkdownPage.Label("The team's next target, by which date, with which help"));
        new MeasuredMarkdown(page, year.part()).missing();
    }

    /** Before the charts: below them it would no longer fit on the second sheet of a goal with two sides. */
    private void how(GoalPart part) {
        MeasuredMarkdown measured = new MeasuredMarkdown(page, part);
        HelpMarkdown help = new HelpMarkdown(page, part, period);
        if (detail == PageDetail.SUMMARY) {
            measured.measuredSummary();
        } else {
            measured.measured();
        }
        MethodLine.care(part).forEach(page::bullet);
        if (detail == PageDetail.SUMMARY) {
            page.heading(3, "Help and prompts");
            help.summary();
        } else {
            help.write();
        }
        goals.changes(part);
    }

    private List<GoalPart> parts() {
        List<GoalPart> parts = new ArrayList<>();
        review.goals().forEach(year -> parts.add(year.part()));
        return parts;
    }

    private static boolean hasRange(YearOfGoal year) {
        return year.sides().stream().anyMatch(side -> side.next().isEstimated());
    }

    /** Once for all goals: the same words under each of them would fill a page that nobody reads. */
    private void computed() {
        page.heading(2, "How the figures are computed");
        if (review.goals().stream().anyMatch(AnnualMarkdown::hasRange)) {
            page.bullet("Reachable range", NextTargetMarkdown.RULE);
        }
        MethodLine.general(parts(), review.method()).forEach(page::bullet);
        if (detail == PageDetail.SUMMARY) {
            page.bullet(
                    "Each session and more figures: report --for review --explain, or trend and score --by session.");
        }
    }

    private void reached(YearOfGoal year) {
        page.heading(3, "What was reached");
        GoalJudgement computed = year.part().review().judgement();
        page.bullet("Computed", Attention.word(computed.judgement()));
        page.bullet("Why", computed.reason());
        page.bullet("Target first reached", day(year.part().review().score().targetReachedOn(), year.goal()));
        page.bullet(
                "Criterion first satisfied",
                year.part().review().score().metOn().map(day -> "on " + day).orElse("not in these days"));
        year.remarks().forEach(this::remark);
        told(year);
        if (year.told().isEmpty()) {
            page.bullet("Told in these days", "no report was written into a folder, so none is on file");
        }
    }

    private static String day(Optional<LocalDate> reached, Goal goal) {
        return reached.map(day -> "on " + day).orElse(goal.target().isPresent() ? "not yet" : "the goal has no target");
    }

    private void remark(Remark remark) {
        String of = remark.period().isBlank() ? "" : ", " + remark.period();
        List.of(
                        new Line("Decision of the therapist", remark.judgement().orElse("")),
                        new Line("The therapist's reason", remark.why()),
                        new Line("The therapist's remark", remark.remark()),
                        new Line("What was to come next", remark.next()))
                .forEach(line -> Spoken.ifAny(remark.language(), line.words())
                        .ifPresent(said -> page.bullet(line.label() + of, said)));
    }

    private record Line(String label, String words) {}

    /** A page that was made again with the same words was not told twice. */
    private void told(YearOfGoal year) {
        Set<String> told = new LinkedHashSet<>();
        for (ReportLine line : year.told()) {
            told.add((line.period().isBlank() ? "" : line.period() + ", ") + "as of " + line.asOf() + ": "
                    + (line.judgement().isBlank() ? "no judgement" : line.judgement())
                    + (line.value().isBlank()
                            ? ", no value"
                            : ", latest value " + new PastMarkdown(page, year.part()).shown(line.value())));
        }
        if (!told.isEmpty()) {
            page.bullet("Told in these days", String.join("; ", told));
        }
    }
}
