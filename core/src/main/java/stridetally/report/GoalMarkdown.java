package stridetally.report;

import java.util.Optional;
import stridetally.forecast.GoalJudgement;
import stridetally.model.Change;
import stridetally.model.Remark;

/** The part of one goal on the team's page: on one sheet of paper, or with everything that is known of it. */
final class GoalMarkdown {
    private final MarkdownPage page;
    private final TeamReport.Method method;
    private final ReportPeriod period;
    private final String language;

    /**
     * On a page.
     *
     * @param language in which the goals of the logbook are written
     */
    GoalMarkdown(MarkdownPage page, TeamReport.Method method, ReportPeriod period, String language) {
        this.page = page;
        this.method = method;
        this.period = period;
        this.language = language;
    }

    /** What a meeting reads; the general cautions and how figures are computed stand once, after all goals. */
    void sheet(GoalPart part) {
        heading(part);
        page.paragraph("Student:", part.goal().student().text() + "; period: " + period.text());
        goal(part);
        judgement(part);
        for (SidePart side : part.sides()) {
            new SideMarkdown(page, part, period, method, side).summary();
        }
        new BesideMarkdown(page, part).write();
        page.heading(3, "Help, prompts and teaching");
        new HelpMarkdown(page, part, period).summary();
        if (part.changes().isEmpty()) {
            page.bullet("Changes of strategy", "none is written");
        }
        listChanges(part);
        new NextMarkdown(page, part, method).write(PageDetail.SUMMARY);
        new MeasuredMarkdown(page, part).close();
    }

    /** The same with every figure, and the tries behind them. */
    void everything(GoalPart part) {
        head(part);
        judgement(part);
        for (SidePart side : part.sides()) {
            new SideMarkdown(page, part, period, method, side).write();
        }
        new BesideMarkdown(page, part).write();
        new HelpMarkdown(page, part, period).write();
        changes(part);
        new NextMarkdown(page, part, method).write(PageDetail.EVERYTHING);
        MeasuredMarkdown measured = new MeasuredMarkdown(page, part);
        measured.missing();
        measured.measured();
        MethodLine.sentences(part, method).forEach(page::bullet);
        new PastMarkdown(page, part).behind();
    }

    /** The goal as it is written. */
    void head(GoalPart part) {
        heading(part);
        goal(part);
    }

    private void heading(GoalPart part) {
        page.heading(2, "Goal " + part.goal().id());
    }

    private void goal(GoalPart part) {
        said("As written:", part.goal().statement());
        said("Where it matters:", part.goal().routine());
        page.paragraph(
                "What makes it met:",
                part.words().criterion() + "; due date " + part.words().due());
    }

    private void said(String label, String words) {
        Optional<Spoken> said = Spoken.ifAny(language, words);
        if (said.isPresent()) {
            page.paragraph(label, said.get());
        } else {
            page.paragraph(label, "not written");
        }
    }

    private void judgement(GoalPart part) {
        page.heading(3, "Where it stands");
        GoalJudgement computed = part.review().judgement();
        String word = Attention.word(computed.judgement());
        if (part.remark().isPresent()) {
            decision(part.remark().get());
        }
        page.bullet(
                part.remark().isPresent() ? "Computed beside it" : "Computed", word + ". Why: " + computed.reason());
        page.bullet("Enough by its date", computed.sufficiency().text());
        new PastMarkdown(page, part).told();
    }

    private void decision(Remark remark) {
        String own = remark.judgement().orElse("");
        page.bullet(
                "Decision of the therapist",
                own.isBlank() ? "no judgement of their own is written for this period" : own);
        if (!remark.why().isBlank()) {
            page.bullet("The therapist's reason", Spoken.in(remark.language(), remark.why()));
        }
        if (!remark.remark().isBlank()) {
            page.bullet("The therapist's remark", Spoken.in(remark.language(), remark.remark()));
        }
    }

    /** Changes of strategy, as a part of its own. */
    void changes(GoalPart part) {
        page.heading(3, "What changed in teaching");
        if (part.changes().isEmpty()) {
            page.paragraph("No change of strategy is written.");
        }
        listChanges(part);
    }

    private void listChanges(GoalPart part) {
        for (Change change : part.changes()) {
            page.bullet("Changed on " + change.date(), Spoken.in(language, change.what()));
        }
    }
}
