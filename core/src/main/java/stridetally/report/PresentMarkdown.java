package stridetally.report;

import java.util.ArrayList;
import java.util.List;
import stridetally.model.Goal;
import stridetally.stats.Estimate;
import stridetally.table.Cell;

/** The year of one side of a goal period by period, and where the child stands at its end. */
final class PresentMarkdown {
    private static final List<String> PERIODS = List.of(
            "period",
            "middle value (median)",
            "lowest to highest",
            "sessions with a value",
            "tries at permitted help",
            "most help");

    private final MarkdownPage page;
    private final YearOfGoal year;
    private final ShownUnit unit;
    private final TeamReport.Method method;

    PresentMarkdown(MarkdownPage page, YearOfGoal year, TeamReport.Method method) {
        this.page = page;
        this.year = year;
        this.unit = year.part().unit();
        this.method = method;
    }

    void year(YearOfGoal.YearOfSide side) {
        Goal goal = year.goal();
        List<List<Cell>> rows = new ArrayList<>();
        rows.add(row(
                "baseline" + goal.baselineDate().map(day -> ", " + day).orElse(""),
                goal.baseline().map(amount -> unit.text(amount.value())).orElse("not written")));
        for (YearOfGoal.OfPeriod period : side.periods()) {
            rows.add(period.figures()
                    .map(figures -> row(
                            period.name(),
                            median(figures),
                            range(figures),
                            figures.withValue() + " of " + figures.sessions(),
                            figures.permitted().of() + " of "
                                    + figures.permitted().all(),
                            help(figures)))
                    .orElseGet(() -> row(period.name(), "before or after the goal")));
        }
        rows.add(row(
                "target, due " + year.part().words().due(), year.part().words().target()));
        page.table(PERIODS, rows);
    }

    void level(YearOfGoal.YearOfSide side) {
        page.bullet(
                "Now" + of(side, ", "),
                side.present()
                        .value()
                        .map(this::level)
                        .orElseGet(() -> "not known: " + side.present().reason()));
    }

    private String level(PeriodFigures figures) {
        return median(figures) + " (median of the last " + Counted.of(figures.withValue(), "session")
                + " with a value, "
                + range(figures) + "), " + figures.days().first() + " to "
                + figures.days().last() + ", " + Counted.of(figures.counted(), "try") + " that count; most help: "
                + help(figures) + "; taken: " + year.part().words().taken();
    }

    private static List<Cell> row(String... texts) {
        List<Cell> cells = new ArrayList<>(TeamMarkdown.Cells.of(texts));
        while (cells.size() < PERIODS.size()) {
            cells.add(Cell.blank());
        }
        return cells;
    }

    private String median(PeriodFigures figures) {
        return figures.median()
                .value()
                .map(unit::text)
                .orElseGet(() -> "none: " + figures.median().reason());
    }

    private String range(PeriodFigures figures) {
        if (figures.withValue() == 0) {
            return "none";
        }
        String low = end(figures.low());
        String high = end(figures.high());
        return low.equals(high) ? low : low + " to " + high;
    }

    private String end(Estimate<Measured> end) {
        return end.value().map(unit::number).orElse("not known");
    }

    private String help(PeriodFigures figures) {
        return figures.mostHelp().isPresent()
                ? method.help().level(figures.mostHelp().getAsInt()).word()
                : "not written";
    }

    static String of(YearOfGoal.YearOfSide side, String between) {
        String word = side.side().review().side().word();
        return word.isEmpty() ? "" : between + word + " side";
    }
}
