package stridetally.report;

import java.time.LocalDate;
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
    private final GoalMarkdown goals;

    private AnnualMarkdown(AnnualReview review, MarkdownPage page) {
        this.page = page;
        this.review = review;
        this.goals = new GoalMarkdown(
                page,
                review.method(),
                new ReportPeriod("", review.head().period().days(), Optional.empty()),
                review.language());
    }

    /** Writes one document. */
    public static void write(AnnualReview review, Appendable out) {
        write(review, new MarkdownPage(out));
    }

    /** The document on its way to HTML. */
    static void write(AnnualReview review, MarkdownPage page) {
        new AnnualMarkdown(review, page).write();
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
        page.heading(2, "Before anyone practises");
        Set<String> cautions = new LinkedHashSet<>();
        review.goals().forEach(year -> cautions.addAll(year.part().cautions()));
        cautions.forEach(page::bullet);
        page.heading(2, "Signed");
        page.signature();
    }

    private void goal(YearOfGoal year) {
        goals.head(year.part());
        year.goal().follows().map(GoalId::text).ifPresent(id -> page.paragraph("Follows:", "goal " + id));
        year.followedBy().map(GoalId::text).ifPresent(id -> page.paragraph("Goes on as:", "goal " + id));
        reached(year);
        PresentMarkdown present = new PresentMarkdown(page, year, review.method());
        for (YearOfGoal.YearOfSide side : year.sides()) {
            page.heading(3, "The year, period by period" + PresentMarkdown.of(side, ", "));
            // The chart first: under the table it would no longer fit on the goal's first sheet of paper.
            page.chart(() -> side.side().chart().lines());
            present.year(side);
            new ChangeMarkdown(page, year.part(), side.side(), review.method()).write();
        }
        goals.help(year.part());
        goals.changes(year.part());
        page.heading(3, "Present level");
        year.sides().forEach(present::level);
        page.fillIn("What it means for the school day and the general curriculum", "the team writes this:");
        page.heading(3, "A next target");
        year.sides().forEach(side -> new NextTargetMarkdown(page, year, side, review.method()).write());
        if (year.sides().stream().anyMatch(side -> side.next().isEstimated())) {
            page.paragraph(NextTargetMarkdown.RULE);
        }
        page.fillIn(new MarkdownPage.Label("The team's next target, by which date, with which help"));
        goals.missing(year.part());
        goals.howMeasured(year.part());
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
        year.told().forEach(line -> told(year.part(), line));
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

    private void told(GoalPart part, ReportLine line) {
        page.bullet(
                "Told as of " + line.asOf() + (line.period().isBlank() ? "" : ", " + line.period()),
                (line.judgement().isBlank() ? "no judgement" : line.judgement())
                        + (line.value().isBlank()
                                ? ", no value"
                                : ", latest value " + new PastMarkdown(page, part).shown(line.value())));
    }
}
