package stridetally.report;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.StringJoiner;
import stridetally.forecast.GoalJudgement;
import stridetally.model.Change;
import stridetally.model.Remark;
import stridetally.scoring.HelpCounts;
import stridetally.scoring.NotUsed;
import stridetally.scoring.SessionStatus;
import stridetally.table.Cell;

/** The part of one goal on the team's page. */
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

    void write(GoalPart part) {
        head(part);
        judgement(part);
        SideMarkdown sides = new SideMarkdown(page, part, period, method);
        for (SidePart side : part.sides()) {
            sides.write(side);
        }
        new BesideMarkdown(page, part).write();
        help(part);
        changes(part);
        next(part);
        missing(part);
        howMeasured(part);
        new PastMarkdown(page, part).behind();
    }

    /** The goal as it is written. */
    void head(GoalPart part) {
        page.heading(2, "Goal " + part.goal().id());
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
            decision(part.remark().get(), word);
        }
        page.bullet(part.remark().isPresent() ? "Computed beside it" : "Computed", word);
        page.bullet("Why", computed.reason());
        page.bullet("Enough by its date", computed.sufficiency().text());
        new PastMarkdown(page, part).told();
    }

    private void decision(Remark remark, String computed) {
        String own = remark.judgement().orElse("");
        page.bullet(
                "Decision of the therapist",
                own.isBlank()
                        ? "no judgement of their own is written for this period; the computed one is \"" + computed
                                + "\""
                        : own);
        if (!remark.why().isBlank()) {
            page.bullet("The therapist's reason", Spoken.in(remark.language(), remark.why()));
        }
        if (!remark.remark().isBlank()) {
            page.bullet("The therapist's remark", Spoken.in(remark.language(), remark.remark()));
        }
    }

    /** Permitted help, and the tries at each level. */
    void help(GoalPart part) {
        page.heading(3, "Help and prompts");
        page.bullet("Permitted help", part.words().help());
        page.bullet("Permitted prompts", part.words().prompt());
        most(part);
        table("help", HelpTable.ofHelp(part.help()));
        table("prompt", HelpTable.ofPrompts(part.help()));
        page.paragraph("A probe is a try that is measured; practice is a try that is taught and is in no value.");
    }

    /** The same in a line each: what was permitted, and how many tries had which. */
    void helpSummary(GoalPart part) {
        page.heading(3, "Help and prompts");
        page.bullet(
                "Permitted", part.words().help() + "; prompts: " + part.words().prompt());
        counts("help", HelpTable.ofHelp(part.help()));
        counts("prompt", HelpTable.ofPrompts(part.help()));
    }

    private void counts(String of, HelpTable table) {
        StringJoiner measured = new StringJoiner(", ");
        StringJoiner taught = new StringJoiner(", ");
        HelpTable.Row all = table.all();
        for (HelpTable.Row row : table.rows()) {
            if (row.probeNow() > 0) {
                measured.add(row.word() + " " + share(row.probeNow(), all.probeNow()));
            }
            if (row.practiceNow() > 0) {
                taught.add(row.word() + " " + share(row.practiceNow(), all.practiceNow()));
            }
        }
        page.bullet("Measured tries by " + of, measured.length() == 0 ? "none" : measured.toString());
        if (taught.length() > 0) {
            page.bullet("Taught tries by " + of + ", in no value", taught.toString());
        }
    }

    /** By its word: places on the scale are never reckoned with. */
    private void most(GoalPart part) {
        String now = most(part.help().probeNow());
        page.bullet(
                "Most help of a probe",
                period.previous().isPresent()
                        ? now + "; in the period before " + most(part.help().probeBefore())
                        : now);
    }

    private static String most(HelpCounts counts) {
        List<HelpCounts.AtLevel> levels = counts.help();
        return levels.isEmpty()
                ? "not known"
                : levels.get(levels.size() - 1).level().word();
    }

    private void table(String of, HelpTable table) {
        if (table.rows().isEmpty()) {
            page.paragraph("No try with a level of " + of + " in this period or the one before.");
            return;
        }
        boolean before = period.previous().isPresent();
        List<String> headings = new ArrayList<>(List.of("tries by " + of, "probe", "practice"));
        if (before) {
            headings.addAll(List.of("probe, period before", "practice, period before"));
        }
        HelpTable.Row all = table.all();
        List<List<Cell>> rows = new ArrayList<>();
        for (HelpTable.Row row : table.rows()) {
            List<Cell> cells = new ArrayList<>(List.of(
                    Cell.code(row.word()),
                    part(row.probeNow(), all.probeNow()),
                    part(row.practiceNow(), all.practiceNow())));
            if (before) {
                cells.add(part(row.probeBefore(), all.probeBefore()));
                cells.add(part(row.practiceBefore(), all.practiceBefore()));
            }
            rows.add(cells);
        }
        page.table(headings, rows);
    }

    /** {@code 14 (82 %)}: tries at a level, and their share of all tries of the column. */
    private static Cell part(int tries, int all) {
        return Cell.code(tries == 0 ? "0" : share(tries, all));
    }

    private static String share(int tries, int all) {
        return tries + " ("
                + BigDecimal.valueOf(100L * tries).divide(BigDecimal.valueOf(all), 0, RoundingMode.HALF_UP)
                + " %)";
    }

    /** Changes of strategy. */
    void changes(GoalPart part) {
        page.heading(3, "What changed in teaching");
        if (part.changes().isEmpty()) {
            page.paragraph("No change of strategy is written.");
        }
        for (Change change : part.changes()) {
            page.bullet(change.date().toString(), Spoken.in(language, change.what()));
        }
    }

    private void next(GoalPart part) {
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
            page.bullet("Tries at home so far", home(part, part.home().get()));
        }
        page.paragraph("Before anyone practises:");
        bullets(part.cautions());
    }

    private void saidOrOpen(String label, Optional<Spoken> said, String open) {
        if (said.isPresent()) {
            page.bullet(label, said.get());
        } else {
            page.fillIn(label, open);
        }
    }

    private void bullets(List<String> sentences) {
        for (String sentence : sentences) {
            page.bullet(sentence);
        }
    }

    private String home(GoalPart part, PeriodFigures home) {
        String median = home.median().isEstimated()
                ? "middle value (median) " + part.unit().text(home.median().orElseThrow())
                : "no value: " + home.median().reason();
        return Counted.of(home.recorded(), "try") + " in " + Counted.of(home.sessions(), "session") + ", " + median
                + ", " + homeHelp(home) + "; kept apart, in no other figure of this page";
    }

    private String homeHelp(PeriodFigures home) {
        return home.mostHelp().isPresent()
                ? "most help " + method.help().level(home.mostHelp().getAsInt()).word()
                : "help not written";
    }

    /** What is missing or not used. */
    void missing(GoalPart part) {
        page.heading(3, "What is missing or not used");
        boolean nothing = part.doubts().isEmpty()
                && part.review().score().notUsed().isEmpty()
                && part.notTried().isEmpty();
        if (nothing) {
            page.paragraph("Nothing is missing in the goal, and every try counts.");
        }
        bullets(part.doubts());
        if (!part.notTried().isEmpty()) {
            StringJoiner notTried = new StringJoiner(", ");
            for (Map.Entry<SessionStatus, Integer> one : part.notTried().entrySet()) {
                notTried.add(one.getValue() + " " + one.getKey().word());
            }
            page.bullet("Sessions of this period without a try", notTried.toString());
        }
        if (!part.review().score().notUsed().isEmpty()) {
            StringJoiner notUsed = new StringJoiner("; ");
            for (NotUsed one : part.review().score().notUsed()) {
                notUsed.add(notUsed(one));
            }
            page.bullet("Tries not used, since the goal began", notUsed.toString());
        }
    }

    private static String notUsed(NotUsed one) {
        return Counted.of(one.tries(), "try") + ": " + one.words();
    }

    /** How it is measured and computed. */
    private void howMeasured(GoalPart part) {
        measured(part);
        bullets(MethodLine.sentences(part, method));
    }

    /** The same in one paragraph. */
    void measuredSummary(GoalPart part) {
        page.heading(3, "How it is measured");
        GoalWords words = part.words();
        page.paragraph("Counted: " + words.measured() + "; " + words.better() + ". "
                + (words.side().isEmpty() ? "" : "Sides: " + words.side() + ". ")
                + "Taken: " + words.taken() + ". Tries count at: " + words.places() + ". A session is worth "
                + words.valued() + ".");
    }

    /** How it is measured. */
    void measured(GoalPart part) {
        page.heading(3, "How it is measured");
        GoalWords words = part.words();
        page.bullet("What is counted", words.measured() + "; " + words.better());
        if (!words.side().isEmpty()) {
            page.bullet("Side", words.side());
        }
        page.bullet("How it is taken", words.taken());
        page.bullet("Where tries count", words.places());
        page.bullet("What a session is worth", words.valued());
    }
}
