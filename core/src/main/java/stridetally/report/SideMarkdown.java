package stridetally.report;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.StringJoiner;
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
    private static final List<String> HEADINGS = List.of(
            "",
            "middle value (median)",
            "lowest to highest",
            "sessions with a value",
            "tries that count",
            "tries at permitted help");

    private static final Cell NONE = Cell.text("");

    private final MarkdownPage page;
    private final GoalPart part;
    private final ReportPeriod period;
    private final ShownUnit unit;
    private final ChangeMarkdown change;
    private final SidePart side;

    SideMarkdown(MarkdownPage page, GoalPart part, ReportPeriod period, TeamReport.Method method, SidePart side) {
        this.page = page;
        this.part = part;
        this.period = period;
        this.unit = part.unit();
        this.change = new ChangeMarkdown(page, part, side, method);
        this.side = side;
    }

    /** Every figure of the side. */
    void write() {
        start();
        change.write();
        criterion();
        benchmarks();
    }

    /** What a meeting asks. */
    void summary() {
        start();
        change.summary();
        change.rulesOfThumb();
        criterionSummary();
    }

    private void start() {
        String word = side.review().side().word();
        page.heading(3, word.isEmpty() ? "From the start to now" : "From the start to now, " + word + " side");
        page.table(HEADINGS, rows());
        page.chart(() -> side.chart().lines());
    }

    /** In the order of time: where the child started, what came, and what is aimed at. */
    private List<List<Cell>> rows() {
        Goal goal = part.goal();
        List<List<Cell>> rows = new ArrayList<>();
        rows.add(row(
                "baseline, "
                        + (goal.baselineDate().isPresent() ? goal.baselineDate().get() : "date not written"),
                baseline()));
        if (period.previous().isPresent()) {
            rows.add(row("period before, " + period.previous().get().name(), side.before(), "before the goal"));
        }
        rows.add(row(period.name().isBlank() ? "this period" : "this period, " + period.name(), side.now(), "not yet"));
        rows.add(row("target, due date " + part.words().due(), part.words().target()));
        return rows;
    }

    private static List<Cell> row(String label, String value) {
        return List.of(Cell.text(label), Cell.text(value), NONE, NONE, NONE, NONE);
    }

    private List<Cell> row(String label, Optional<PeriodFigures> figures, String none) {
        if (figures.isEmpty()) {
            return row(label, none);
        }
        PeriodFigures of = figures.get();
        return List.of(
                Cell.text(label),
                Cell.text(median(of)),
                Cell.text(range(of)),
                Cell.text(of.withValue() + " of " + of.sessions()),
                Cell.text(of.counted() + " of " + of.recorded()),
                Cell.text(permitted(of)));
    }

    private String baseline() {
        Optional<Amount> amount = part.goal().baseline();
        if (amount.isEmpty()) {
            return "not written";
        }
        String how = part.goal().baselineHow();
        return unit.text(amount.get().value()) + (how.isBlank() ? " (how is not written)" : " (" + how + ")");
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

    private void criterion() {
        CriterionState state = side.criterion();
        String needed = state.needed().isPresent()
                ? "; the criterion asks for " + state.needed().getAsInt()
                : "";
        page.bullet("In a row now", Counted.of(state.streak(), "session") + needed);
        page.bullet("Latest sessions against it", answers(state.last()));
        page.bullet("Target first reached", reached(state));
        Optional<LocalDate> metOn = part.review().score().metOn();
        if (metOn.isPresent()) {
            page.bullet("Criterion first satisfied", "on " + metOn.get() + since());
        }
    }

    /** In short; when it was met stands under where the goal stands. */
    private void criterionSummary() {
        CriterionState state = side.criterion();
        List<Session> last = state.last();
        page.bullet(
                "In a row now",
                Counted.of(state.streak(), "session")
                        + (last.isEmpty() ? "" : "; latest: " + answer(last.get(last.size() - 1)))
                        + "; target first reached: " + reached(state));
        steps();
    }

    private void steps() {
        StringJoiner steps = new StringJoiner("; ");
        for (BenchmarkLine step : side.benchmarks()) {
            steps.add("by " + step.by() + " " + standing(step));
        }
        if (!side.benchmarks().isEmpty()) {
            page.bullet("Short-term steps", steps.toString());
        }
    }

    private static String answers(List<Session> sessions) {
        StringJoiner answers = new StringJoiner("; ");
        for (Session session : sessions) {
            answers.add(answer(session));
        }
        return sessions.isEmpty() ? "none" : answers.toString();
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

    private void benchmarks() {
        for (BenchmarkLine step : side.benchmarks()) {
            page.bullet("Short-term step by " + step.by(), standing(step));
        }
    }

    private String standing(BenchmarkLine step) {
        String latest = step.latest().isPresent() ? on(step.latest().get()) : "no session with a value up to then";
        return unit.text(step.value()) + ": " + step.standing().word() + ", " + latest;
    }

    private String on(Point point) {
        return unit.text(Measured.of(point)) + " on " + point.date();
    }
}
