package stridetally.report;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.ToIntFunction;
import java.util.stream.Collectors;
import stridetally.forecast.GoalJudgement;
import stridetally.model.Remark;
import stridetally.scoring.HelpCounts;
import stridetally.scoring.NotUsed;
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
        part.sides().forEach(sides::write);
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
        Spoken.ifAny(language, words)
                .ifPresentOrElse(said -> page.paragraph(label, said), () -> page.paragraph(label, "not written"));
    }

    private void judgement(GoalPart part) {
        page.heading(3, "Where it stands");
        GoalJudgement computed = part.review().judgement();
        String word = Attention.word(computed.judgement());
        part.remark().ifPresent(remark -> decision(remark, word));
        page.bullet(part.remark().isPresent() ? "Computed beside it" : "Computed", word);
        page.bullet("Why", computed.reason());
        page.bullet("Enough by its date", computed.sufficiency().text());
        new PastMarkdown(page, part).told();
    }

    private void decision(Remark remark, String computed) {
        Optional<String> own = remark.judgement().filter(word -> !word.isBlank());
        page.bullet(
                "Decision of the therapist",
                own.orElse("no judgement of their own is written for this period; the computed one is \"" + computed
                        + "\""));
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
        page.table(
                headings,
                table.rows().stream()
                        .map(row -> {
                            List<Cell> cells = new ArrayList<>(List.of(
                                    Cell.code(row.word()),
                                    part(table, row, HelpTable.Row::probeNow),
                                    part(table, row, HelpTable.Row::practiceNow)));
                            if (before) {
                                cells.add(part(table, row, HelpTable.Row::probeBefore));
                                cells.add(part(table, row, HelpTable.Row::practiceBefore));
                            }
                            return cells;
                        })
                        .toList());
    }

    /** {@code 14 (82 %)}: tries at a level, and their share of all tries of the column. */
    private static Cell part(HelpTable table, HelpTable.Row row, ToIntFunction<HelpTable.Row> column) {
        int all = table.rows().stream().mapToInt(column).sum();
        int tries = column.applyAsInt(row);
        return Cell.code(
                tries == 0
                        ? "0"
                        : tries + " ("
                                + BigDecimal.valueOf(100L * tries)
                                        .divide(BigDecimal.valueOf(all), 0, RoundingMode.HALF_UP)
                                + " %)");
    }

    /** Changes of strategy. */
    void changes(GoalPart part) {
        page.heading(3, "What changed in teaching");
        if (part.changes().isEmpty()) {
            page.paragraph("No change of strategy is written.");
        }
        part.changes().forEach(change -> page.bullet(change.date().toString(), Spoken.in(language, change.what())));
    }

    private void next(GoalPart part) {
        page.heading(3, "What comes next");
        Optional<Spoken> next = part.remark().flatMap(remark -> Spoken.ifAny(remark.language(), remark.next()));
        next.ifPresentOrElse(
                words -> page.bullet("At school", words), () -> page.fillIn("At school", "not written yet:"));
        String home = "At home, what the family can do";
        part.remark()
                .flatMap(remark -> Spoken.ifAny(remark.language(), remark.home()))
                .ifPresentOrElse(
                        words -> page.bullet(home, words), () -> page.fillIn(home, "the therapist fills this in:"));
        part.home().ifPresent(tries -> page.bullet("Tries at home so far", home(part, tries)));
        page.paragraph("Before anyone practises:");
        part.cautions().forEach(page::bullet);
    }

    private String home(GoalPart part, PeriodFigures home) {
        String median = home.median()
                .value()
                .map(value -> "middle value (median) " + part.unit().text(value))
                .orElseGet(() -> "no value: " + home.median().reason());
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
        part.doubts().forEach(page::bullet);
        if (!part.notTried().isEmpty()) {
            page.bullet(
                    "Sessions of this period without a try",
                    part.notTried().entrySet().stream()
                            .map(one -> one.getValue() + " " + one.getKey().word())
                            .collect(Collectors.joining(", ")));
        }
        if (!part.review().score().notUsed().isEmpty()) {
            page.bullet(
                    "Tries not used, since the goal began",
                    part.review().score().notUsed().stream()
                            .map(GoalMarkdown::notUsed)
                            .collect(Collectors.joining("; ")));
        }
    }

    private static String notUsed(NotUsed one) {
        return Counted.of(one.tries(), "try") + ": " + one.words();
    }

    /** How it is measured and computed. */
    void howMeasured(GoalPart part) {
        page.heading(3, "How it is measured");
        GoalWords words = part.words();
        page.bullet("What is counted", words.measured() + "; " + words.better());
        if (!words.side().isEmpty()) {
            page.bullet("Side", words.side());
        }
        page.bullet("How it is taken", words.taken());
        page.bullet("Where tries count", words.places());
        page.bullet("What a session is worth", words.valued());
        MethodLine.sentences(part, method).forEach(page::bullet);
    }
}
