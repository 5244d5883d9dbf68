package stridetally.report;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.StringJoiner;
import java.util.function.Function;
import stridetally.model.DateRange;
import stridetally.model.Goal;
import stridetally.scoring.Answer;
import stridetally.scoring.GoalScore;
import stridetally.scoring.Session;
import stridetally.stats.Estimate;
import stridetally.table.Cell;
import stridetally.trend.Point;
import stridetally.units.Amount;

/** One side of a goal on the team's page: the table of periods, the chart, the figures of change, the criterion. */
final class SideMarkdown {
    private final MarkdownPage page;
    private final GoalPart part;
    private final ReportPeriod period;
    private final ShownUnit unit;
    private final TeamReport.Method method;

    SideMarkdown(MarkdownPage page, GoalPart part, ReportPeriod period, TeamReport.Method method) {
        this.page = page;
        this.part = part;
        this.period = period;
        this.unit = part.unit();
        this.method = method;
    }

    void write(SidePart side) {
        String word = side.review().side().word();
        page.heading(3, word.isEmpty() ? "From the start to now" : "From the start to now, " + word + " side");
        table(side);
        page.chart(() -> side.chart().lines());
        new ChangeMarkdown(page, part, side, method).write();
        criterion(side);
        benchmarks(side);
    }

    private void table(SidePart side) {
        List<String> headings = new ArrayList<>(List.of("", "baseline"));
        if (period.previous().isPresent()) {
            headings.add("period before (" + period.previous().get().name() + ")");
        }
        headings.add(period.name().isBlank() ? "this period" : "this period (" + period.name() + ")");
        headings.add("target");
        Goal goal = part.goal();
        List<List<Cell>> rows = new ArrayList<>();
        rows.add(row(
                side,
                "middle value (median)",
                baseline(),
                this::median,
                part.words().target()));
        rows.add(row(side, "lowest to highest", "", this::range, ""));
        rows.add(row(side, "sessions with a value", "", one -> one.withValue() + " of " + one.sessions(), ""));
        rows.add(row(side, "tries that count", "", one -> one.counted() + " of " + one.recorded(), ""));
        rows.add(row(side, "tries at permitted help", "", SideMarkdown::permitted, ""));
        rows.add(row(
                side,
                "days",
                goal.baselineDate().isPresent() ? goal.baselineDate().get().toString() : "date not written",
                one -> dates(one.days()),
                "due " + part.words().due()));
        page.table(headings, rows);
    }

    private String baseline() {
        Optional<Amount> amount = part.goal().baseline();
        if (amount.isEmpty()) {
            return "not written";
        }
        String how = part.goal().baselineHow();
        return unit.text(amount.get().value()) + (how.isBlank() ? " (how is not written)" : " (" + how + ")");
    }

    private List<Cell> row(
            SidePart side, String label, String baseline, Function<PeriodFigures, String> figure, String target) {
        List<Cell> cells = new ArrayList<>(List.of(Cell.code(label), Cell.text(baseline)));
        if (period.previous().isPresent()) {
            cells.add(Cell.text(side.before().map(figure).orElse("before the goal")));
        }
        cells.add(Cell.text(side.now().map(figure).orElse("not yet")));
        cells.add(Cell.text(target));
        return cells;
    }

    private String median(PeriodFigures figures) {
        return figures.median().isEstimated()
                ? unit.withUnit(
                        unit.number(figures.median().orElseThrow(), part.goal().target()))
                : "none: " + figures.median().reason();
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
        return end.isEstimated() ? unit.number(end.orElseThrow()) : "not known";
    }

    private static String permitted(PeriodFigures figures) {
        String blank = figures.recorded() == figures.permitted().all()
                ? ""
                : "; not written for "
                        + (figures.recorded() - figures.permitted().all());
        return figures.permitted().of() + " of " + figures.permitted().all() + blank;
    }

    private static String dates(DateRange days) {
        return days.first() + " to " + days.last();
    }

    private void criterion(SidePart side) {
        CriterionState state = side.criterion();
        String needed = state.needed().isPresent()
                ? "; the criterion asks for " + state.needed().getAsInt()
                : "";
        page.bullet("In a row now", Counted.of(state.streak(), "session") + needed);
        StringJoiner answers = new StringJoiner("; ");
        for (Session session : state.last()) {
            answers.add(answer(session));
        }
        page.bullet("Latest sessions against it", state.last().isEmpty() ? "none" : answers.toString());
        page.bullet("Target first reached", reached(state));
        Optional<LocalDate> metOn = part.review().score().metOn();
        if (metOn.isPresent()) {
            page.bullet("Criterion first satisfied", "on " + metOn.get() + since());
        }
    }

    private String reached(CriterionState state) {
        if (state.targetReachedOn().isPresent()) {
            return "on " + state.targetReachedOn().get();
        }
        return part.goal().target().isPresent() ? "not yet" : "the goal has no target";
    }

    private String since() {
        Optional<GoalScore.SinceMet> since = part.review().score().sinceMet();
        if (since.isEmpty()) {
            return "";
        }
        GoalScore.SinceMet after = since.get();
        return "; since then " + after.meet() + " of " + Counted.of(after.sessions(), "session")
                + (after.sessions() == 1 ? " meets" : " meet")
                + (after.notKnown() == 0 ? "" : ", " + after.notKnown() + " not known");
    }

    private static String answer(Session session) {
        Answer met = session.met();
        String word = met.meets() == Answer.Meets.YES
                ? "meets"
                : met.meets() == Answer.Meets.NO ? "does not meet" : met.meets().word();
        return session.date() + " " + word + (met.reason().isBlank() ? "" : " (" + met.reason() + ")");
    }

    private void benchmarks(SidePart side) {
        for (BenchmarkLine step : side.benchmarks()) {
            String latest = step.latest().isPresent() ? on(step.latest().get()) : "no session with a value up to then";
            page.bullet(
                    "Short-term step by " + step.by(),
                    unit.text(step.value()) + ": " + step.standing().word() + "; " + latest);
        }
    }

    private String on(Point point) {
        return unit.text(Measured.of(point)) + " on " + point.date();
    }
}
