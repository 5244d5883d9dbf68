package stridetally.report;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import stridetally.model.Remark;

/** What comes next in a goal, at school and at home, with the cautions of whoever will act on it. */
final class NextMarkdown {
    private static final String BEFORE = "Before anyone practises";

    private final MarkdownPage page;
    private final GoalPart part;
    private final TeamReport.Method method;

    NextMarkdown(MarkdownPage page, GoalPart part, TeamReport.Method method) {
        this.page = page;
        this.part = part;
        this.method = method;
    }

    void write(PageDetail detail) {
        page.heading(3, "What comes next");
        Optional<Remark> remark = part.remark();
        Optional<Spoken> next = remark.isPresent()
                ? Spoken.ifAny(remark.get().language(), remark.get().next())
                : Optional.empty();
        saidOrOpen("At school", next, "not written yet:");
        Optional<Spoken> home = remark.isPresent()
                ? Spoken.ifAny(remark.get().language(), remark.get().home())
                : Optional.empty();
        saidOrOpen("At home, what the family can do", home, "the therapist fills this in:");
        if (part.home().isPresent()) {
            page.bullet("Tries at home so far", home(part.home().get()));
        }
        if (detail == PageDetail.EVERYTHING) {
            page.paragraph(BEFORE + ":");
            part.cautions().forEach(page::bullet);
        } else {
            page.bullet(BEFORE, String.join(" ", cautions()));
        }
    }

    /** The goal's own, and when to stop: a page is copied alone. The rest stands once, under its own heading. */
    private List<String> cautions() {
        List<String> cautions = new ArrayList<>(part.cautions());
        cautions.removeAll(Cautions.ALWAYS);
        cautions.add(Cautions.FIRST);
        cautions.add(Cautions.ADULT);
        cautions.add(Cautions.STOP);
        return cautions;
    }

    /** The cautions of several goals, none twice. */
    static void cautions(MarkdownPage page, List<GoalPart> parts) {
        Set<String> cautions = new LinkedHashSet<>();
        for (GoalPart part : parts) {
            cautions.addAll(part.cautions());
        }
        cautions(page, cautions);
    }

    /** Those that every goal has, after sheets that each end with their own. */
    static void commonCautions(MarkdownPage page, List<GoalPart> parts) {
        Set<String> common = new LinkedHashSet<>(parts.get(0).cautions());
        for (GoalPart part : parts) {
            common.retainAll(part.cautions());
            part.review().score().measure().ifPresent(measure -> common.remove(measure.cautions()));
        }
        cautions(page, common);
    }

    private static void cautions(MarkdownPage page, Set<String> cautions) {
        page.heading(2, BEFORE);
        cautions.forEach(page::bullet);
    }

    private void saidOrOpen(String label, Optional<Spoken> said, String open) {
        if (said.isPresent()) {
            page.bullet(label, said.get());
        } else {
            page.fillIn(label, open);
        }
    }

    private String home(PeriodFigures home) {
        String median = home.median().isEstimated()
                ? "middle value (median) " + part.unit().text(home.median().orElseThrow())
                : "no value: " + home.median().reason();
        return Counted.of(home.recorded(), "try") + " in " + Counted.of(home.sessions(), "session") + ", " + median
                + ", " + homeHelp(home) + "; in no other figure of this page";
    }

    private String homeHelp(PeriodFigures home) {
        return home.mostHelp().isPresent()
                ? "most help " + method.help().level(home.mostHelp().getAsInt()).word()
                : "help not written";
    }
}
