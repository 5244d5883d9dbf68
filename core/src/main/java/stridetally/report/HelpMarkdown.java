package stridetally.report;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.StringJoiner;
import java.util.function.ToIntFunction;
import stridetally.scoring.HelpCounts;
import stridetally.table.Cell;

/** With which help and prompts the tries of a goal were made: in tables, or in a line each. */
final class HelpMarkdown {
    private static final String NONE = "none";

    private final MarkdownPage page;
    private final GoalPart part;
    private final boolean before;

    /** Of a goal; the period before is shown when there is one. */
    HelpMarkdown(MarkdownPage page, GoalPart part, ReportPeriod period) {
        this.page = page;
        this.part = part;
        this.before = period.previous().isPresent();
    }

    /** Permitted help, and the tries at each level, as a part of its own. */
    void write() {
        page.heading(3, "Help and prompts");
        page.bullet("Permitted help", part.words().help());
        page.bullet("Permitted prompts", part.words().prompt());
        String now = most(part.help().probeNow());
        // By its word: places on the scale are never reckoned with.
        page.bullet(
                "Most help of a probe",
                before ? now + "; in the period before " + most(part.help().probeBefore()) : now);
        table("help", HelpTable.ofHelp(part.help()));
        table("prompt", HelpTable.ofPrompts(part.help()));
        page.paragraph("A probe is a try that is measured; practice is a try that is taught and is in no value.");
    }

    private static String most(HelpCounts counts) {
        List<HelpCounts.AtLevel> levels = counts.help();
        return levels.isEmpty()
                ? "not known"
                : levels.get(levels.size() - 1).level().word();
    }

    /** Bullets of the page's current part: what was permitted, and how many tries had which. */
    void summary() {
        page.bullet(
                "Permitted help",
                part.words().help() + "; prompts: " + part.words().prompt());
        HelpTable help = HelpTable.ofHelp(part.help());
        String taught = counts(help, HelpTable.Row::practiceNow);
        page.bullet(
                "Measured tries by help",
                measured(help) + (taught.equals(NONE) ? "" : "; taught, in no value: " + taught));
        page.bullet("Measured tries by prompt", measured(HelpTable.ofPrompts(part.help())));
    }

    private String measured(HelpTable table) {
        return counts(table, HelpTable.Row::probeNow)
                + (before ? "; in the period before " + counts(table, HelpTable.Row::probeBefore) : "");
    }

    private static String counts(HelpTable table, ToIntFunction<HelpTable.Row> column) {
        StringJoiner counts = new StringJoiner(", ");
        int all = column.applyAsInt(table.all());
        for (HelpTable.Row row : table.rows()) {
            int tries = column.applyAsInt(row);
            if (tries > 0) {
                counts.add(row.word() + " " + share(tries, all));
            }
        }
        return counts.length() == 0 ? NONE : counts.toString();
    }

    private void table(String of, HelpTable table) {
        if (table.rows().isEmpty()) {
            page.paragraph("No try with a level of " + of + " in this period or the one before.");
            return;
        }
        List<String> headings = new ArrayList<>(List.of("tries by " + of, "probe", "practice"));
        if (before) {
            headings.addAll(List.of("probe, period before", "practice, period before"));
        }
        HelpTable.Row all = table.all();
        List<List<Cell>> rows = new ArrayList<>();
        for (HelpTable.Row row : table.rows()) {
            List<Cell> cells = new ArrayList<>(List.of(
                    Cell.code(row.word()),
                    cell(row.probeNow(), all.probeNow()),
                    cell(row.practiceNow(), all.practiceNow())));
            if (before) {
                cells.add(cell(row.probeBefore(), all.probeBefore()));
                cells.add(cell(row.practiceBefore(), all.practiceBefore()));
            }
            rows.add(cells);
        }
        page.table(headings, rows);
    }

    /** {@code 14 (82 %)}: tries at a level, and their share of all tries of the column. */
    private static Cell cell(int tries, int all) {
        return Cell.code(tries == 0 ? "0" : share(tries, all));
    }

    private static String share(int tries, int all) {
        return tries + " ("
                + BigDecimal.valueOf(100L * tries).divide(BigDecimal.valueOf(all), 0, RoundingMode.HALF_UP)
                + " %)";
    }
}
