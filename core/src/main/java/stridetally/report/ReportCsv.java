package stridetally.report;

import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import stridetally.forecast.Forecast;
import stridetally.forecast.GoalReview;
import stridetally.model.Goal;
import stridetally.model.GoalId;
import stridetally.model.Remark;
import stridetally.model.StudentCode;
import stridetally.stats.Estimate;
import stridetally.stats.Interval;
import stridetally.table.Cell;
import stridetally.table.CsvTable;
import stridetally.trend.Point;
import stridetally.trend.TrendLine;

/**
 * The team's documents, or the caseload, as one flat table: a row a goal, and one for each side of a goal of two sides.
 * Numbers are unrounded and in the unit of the {@code unit} column; a capped value keeps its sign ({@code >=60.0}); what
 * cannot be said is blank, with the reason in {@code reason}.
 *
 * <ul>
 *   <li>{@code student, goal, measure, side, unit}: whose goal, and of what
 *   <li>{@code period, from, to, as_of, logbook, last_entry}: the days looked at, and what was looked at
 *   <li>{@code baseline, baseline_date, target, due, criterion}: the goal; the criterion in words
 *   <li>{@code previous_…}: the period before; {@code sessions} to {@code permitted_share}: this period
 *   <li>{@code latest, latest_date, change, share_of_way, beyond_error}: change since the baseline
 *   <li>{@code slope_…, robust_slope, needed_per_week, aim_today, latest_minus_aim, forecast_…, chance_…}: as in {@code trend}
 *   <li>{@code streak, met_on, target_reached_on}: the criterion
 *   <li>{@code judgement, sufficiency}: computed; {@code therapist_judgement, remark, next}: the therapist's own words
 *   <li>{@code last_try, days_to_due, year_over_on}: the last day with a try, days from {@code as_of} to {@code due} (below 0:
 *       it is over), and a year since the goal's first day, by which its plan is reviewed
 *   <li>{@code level, t_score, t_score_weighted}: as in {@code score --by goal} and {@code --by student}
 *   <li>{@code reference_z, reference_source}: as {@code z} in {@code score --by reference}, of the first source with one
 * </ul>
 */
public final class ReportCsv {
    /** The columns, in order. */
    public static final List<String> HEADINGS = List.of(
            "student",
            "goal",
            "measure",
            "side",
            "unit",
            "period",
            "from",
            "to",
            "as_of",
            "logbook",
            "last_entry",
            "baseline",
            "baseline_date",
            "target",
            "due",
            "criterion",
            "previous_sessions",
            "previous_counted",
            "previous_median",
            "previous_low",
            "previous_high",
            "sessions",
            "sessions_with_value",
            "recorded",
            "counted",
            "median",
            "low",
            "high",
            "permitted_share",
            "latest",
            "latest_date",
            "change",
            "share_of_way",
            "beyond_error",
            "slope_per_week",
            "slope_low95",
            "slope_high95",
            "robust_slope",
            "needed_per_week",
            "aim_today",
            "latest_minus_aim",
            "forecast",
            "forecast_low80",
            "forecast_high80",
            "chance_line",
            "chance",
            "streak",
            "met_on",
            "target_reached_on",
            "judgement",
            "sufficiency",
            "therapist_judgement",
            "remark",
            "next",
            "reason",
            "last_try",
            "days_to_due",
            "year_over_on",
            "level",
            "t_score",
            "t_score_weighted",
            "reference_z",
            "reference_source");

    private ReportCsv() {}

    /** The goals of some students, in the order given. */
    public static void write(List<TeamReport> reports, Appendable out) {
        CsvTable table = new CsvTable(out, HEADINGS);
        for (TeamReport report : reports) {
            Start start = new Start(
                    Optional.of(report.head().period()),
                    report.head().asOf(),
                    report.head().stamp());
            StudentAttainment attainment = report.attainment();
            for (GoalPart part : report.goals()) {
                write(part, start, attainment, table);
            }
        }
        table.finish();
    }

    /** The goals of a caseload, the ones that need attention first. */
    public static void write(CaseloadReport report, Appendable out) {
        CsvTable table = new CsvTable(out, HEADINGS);
        Map<GoalId, GoalPart> parts = new LinkedHashMap<>();
        for (CaseloadRow row : report.rows()) {
            report.part(row).ifPresent(part -> parts.put(row.goal().id(), part));
        }
        Map<StudentCode, List<GoalPart>> byStudent = new HashMap<>();
        for (GoalPart part : parts.values()) {
            byStudent
                    .computeIfAbsent(part.goal().student(), any -> new ArrayList<>())
                    .add(part);
        }
        for (CaseloadRow row : report.rows()) {
            Start start = new Start(row.period(), report.asOf(), report.stamp());
            GoalPart part = parts.get(row.goal().id());
            if (part != null) {
                List<GoalPart> theirs = byStudent.getOrDefault(row.goal().student(), List.of());
                write(part, start, StudentAttainment.of(theirs), table);
            } else {
                List<Cell> cells = start.withDays(withoutPeriod(row.review(), start), row.review());
                cells.addAll(FigureCells.blanks(HEADINGS.size() - cells.size()));
                table.row(cells);
            }
        }
        table.finish();
    }

    private static void write(GoalPart part, Start start, StudentAttainment attainment, CsvTable table) {
        List<List<Cell>> rows = rows(part, start);
        for (int side = 0; side < rows.size(); side++) {
            List<Cell> cells = start.withDays(rows.get(side), part.review());
            cells.addAll(ReportCsvBeside.cells(part, side, attainment));
            table.row(cells);
        }
    }

    private record Start(Optional<ReportPeriod> period, java.time.LocalDate asOf, ReportInput.Stamp stamp) {
        /** The row with what a calendar asks, behind the figures. */
        List<Cell> withDays(List<Cell> row, GoalReview review) {
            List<Cell> cells = new ArrayList<>(row);
            cells.add(FigureCells.date(CaseloadReport.lastTry(List.of(review))));
            cells.add(review.goal()
                    .due()
                    .map(due -> Cell.whole(ChronoUnit.DAYS.between(asOf, due)))
                    .orElseGet(Cell::blank));
            cells.add(FigureCells.date(ComingUp.yearSince(review.goal())));
            return cells;
        }

        List<Cell> cells(GoalReview review, String side) {
            Goal goal = review.goal();
            return new ArrayList<>(List.of(
                    Cell.text(goal.student().text()),
                    Cell.text(goal.id().text()),
                    Cell.text(goal.measure().text()),
                    Cell.code(side),
                    Cell.code(review.score()
                            .measure()
                            .map(one -> one.unit().symbol())
                            .orElse("")),
                    Cell.text(period.map(ReportPeriod::name).orElse("")),
                    FigureCells.date(period.map(one -> one.days().first())),
                    FigureCells.date(period.map(one -> one.days().last())),
                    Cell.date(asOf),
                    Cell.text(stamp.logbook()),
                    Cell.whole(stamp.lastEntry()),
                    FigureCells.amount(goal.baseline()),
                    FigureCells.date(goal.baselineDate()),
                    FigureCells.amount(goal.target()),
                    FigureCells.date(goal.due())));
        }
    }

    private static List<List<Cell>> rows(GoalPart part, Start start) {
        if (part.sides().isEmpty()) {
            List<Cell> cells = start.cells(part.review(), "");
            cells.add(Cell.text(part.words().criterion()));
            return List.of(blankTo(cells, part.review(), part.remark(), part.doubts()));
        }
        return part.sides().stream().map(side -> row(part, side, start)).toList();
    }

    private static List<Cell> withoutPeriod(GoalReview review, Start start) {
        return blankTo(
                start.cells(review, ""),
                review,
                Optional.empty(),
                List.of("the settings have no such period for the student's school"));
    }

    private static List<Cell> blankTo(
            List<Cell> cells, GoalReview review, Optional<Remark> remark, List<String> reasons) {
        cells.addAll(FigureCells.blanks(HEADINGS.indexOf("judgement") - cells.size()));
        cells.addAll(said(review, remark));
        cells.add(FigureCells.reasons(
                Stream.concat(reasons.stream(), Stream.of(review.judgement().reason()))
                        .toList()));
        return cells;
    }

    private static List<Cell> row(GoalPart part, SidePart side, Start start) {
        List<Cell> cells = start.cells(part.review(), side.review().side().word());
        cells.add(Cell.text(part.words().criterion()));
        cells.addAll(before(side.before()));
        cells.addAll(now(side.now()));
        cells.addAll(change(side));
        cells.addAll(line(side.review().trend()));
        cells.addAll(forecast(side.review().forecast()));
        cells.addAll(List.of(
                Cell.whole(side.criterion().streak()),
                FigureCells.date(part.review().score().metOn()),
                FigureCells.date(side.criterion().targetReachedOn())));
        cells.addAll(said(part.review(), part.remark()));
        cells.add(FigureCells.reasons(reasons(part, side)));
        return cells;
    }

    private static List<Cell> before(Optional<PeriodFigures> figures) {
        return figures.map(one -> {
                    List<Cell> cells = new ArrayList<>(List.of(Cell.whole(one.sessions()), Cell.whole(one.counted())));
                    cells.addAll(values(one));
                    return cells;
                })
                .orElseGet(() -> FigureCells.blanks(5));
    }

    private static List<Cell> now(Optional<PeriodFigures> figures) {
        return figures.map(one -> {
                    List<Cell> cells = new ArrayList<>(List.of(
                            Cell.whole(one.sessions()),
                            Cell.whole(one.withValue()),
                            Cell.whole(one.recorded()),
                            Cell.whole(one.counted())));
                    cells.addAll(values(one));
                    cells.add(FigureCells.of(one.permitted().share("help or prompt was not written")));
                    return cells;
                })
                .orElseGet(() -> FigureCells.blanks(8));
    }

    private static List<Cell> values(PeriodFigures figures) {
        return List.of(
                FigureCells.measured(figures.median()),
                FigureCells.measured(figures.low()),
                FigureCells.measured(figures.high()));
    }

    private static List<Cell> change(SidePart side) {
        Optional<Point> latest = side.review().trend().latest();
        return List.of(
                latest.map(Measured::of).map(FigureCells::of).orElseGet(Cell::blank),
                FigureCells.date(latest.map(Point::date)),
                FigureCells.measured(side.change()),
                FigureCells.of(side.shareOfWay()),
                Cell.code(side.beyondError().answer().word()));
    }

    private static List<Cell> line(TrendLine trend) {
        Estimate<Interval> own = trend.slopeInterval();
        return List.of(
                FigureCells.of(trend.own().slopePerWeek()),
                FigureCells.of(own.map(Interval::low)),
                FigureCells.of(own.map(Interval::high)),
                FigureCells.of(trend.robust().slopePerWeek()),
                FigureCells.of(trend.neededPerWeek()),
                FigureCells.of(trend.aimToday()),
                FigureCells.of(trend.latestMinusAim()));
    }

    private static List<Cell> forecast(Forecast forecast) {
        return TrendRows.forecast(forecast);
    }

    private static List<Cell> said(GoalReview review, Optional<Remark> remark) {
        return List.of(
                Cell.code(review.judgement().word()),
                Cell.text(review.judgement().sufficiency().text()),
                Cell.text(remark.flatMap(Remark::judgement).orElse("")),
                Cell.text(remark.map(Remark::remark).orElse("")),
                Cell.text(remark.map(Remark::next).orElse("")));
    }

    private static List<String> reasons(GoalPart part, SidePart side) {
        List<String> reasons = new ArrayList<>();
        reasons.add(side.before().isEmpty() ? "previous: no day of a period before belongs to the goal" : "");
        side.before().ifPresent(one -> reasons.add(FigureCells.why("previous_median", one.median())));
        reasons.add(side.now().isEmpty() ? "no day of the period belongs to the goal yet" : "");
        side.now().ifPresent(one -> reasons.add(FigureCells.why("median", one.median())));
        reasons.add(FigureCells.why("change", side.change()));
        reasons.add(FigureCells.why("share_of_way", side.shareOfWay()));
        reasons.add("beyond_error: " + side.beyondError().reason());
        reasons.add(part.review().reason(side.review()));
        reasons.addAll(part.doubts());
        reasons.addAll(ReportCsvBeside.reasons(part, side));
        return reasons;
    }
}
