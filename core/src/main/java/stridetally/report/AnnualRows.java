package stridetally.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import stridetally.forecast.CaseloadRates;
import stridetally.forecast.ReachableTarget;
import stridetally.forecast.SchoolRate;
import stridetally.model.Goal;
import stridetally.stats.Estimate;
import stridetally.table.Cell;

/**
 * The annual review as a flat table, a row a goal and side. Numbers are unrounded, in the unit of the {@code unit} column,
 * rates per week of school; what cannot be said is blank, with the reason in {@code reason}.
 */
public final class AnnualRows {
    /** The columns, in order. */
    public static final List<String> HEADINGS = List.of(
            "student",
            "goal",
            "follows",
            "measure",
            "side",
            "unit",
            "from",
            "to",
            "as_of",
            "baseline",
            "target",
            "due",
            "sessions",
            "sessions_with_value",
            "permitted_share",
            "present_median",
            "present_low",
            "present_high",
            "present_sessions",
            "present_from",
            "present_to",
            "change",
            "share_of_way",
            "met_on",
            "target_reached_on",
            "judgement",
            "own_rate",
            "own_rate_error",
            "others_rate",
            "others_rate_spread",
            "others_students",
            "others",
            "rate",
            "weeks",
            "next_by",
            "next_near",
            "next_far",
            "reason");

    private AnnualRows() {}

    /** The rows of a review. */
    public static List<List<Cell>> rows(AnnualReview review) {
        List<List<Cell>> rows = new ArrayList<>();
        for (YearOfGoal year : review.goals()) {
            year.sides().forEach(side -> rows.add(row(review, year, side)));
        }
        return rows;
    }

    private static List<Cell> row(AnnualReview review, YearOfGoal year, YearOfGoal.YearOfSide side) {
        Goal goal = year.goal();
        List<Cell> cells = new ArrayList<>(List.of(
                Cell.text(goal.student().text()),
                Cell.text(goal.id().text()),
                Cell.text(goal.follows().map(id -> id.text()).orElse("")),
                Cell.text(goal.measure().text()),
                Cell.code(side.side().review().side().word()),
                Cell.code(year.part()
                        .review()
                        .score()
                        .measure()
                        .map(one -> one.unit().symbol())
                        .orElse("")),
                Cell.date(review.head().period().days().first()),
                Cell.date(review.head().period().days().last()),
                Cell.date(review.head().asOf()),
                FigureCells.amount(goal.baseline()),
                FigureCells.amount(goal.target()),
                FigureCells.date(goal.due())));
        cells.addAll(reached(side));
        cells.addAll(List.of(
                FigureCells.date(year.part().review().score().metOn()),
                FigureCells.date(side.side().review().score().targetReachedOn()),
                Cell.code(year.part().review().judgement().word())));
        cells.addAll(next(side.next()));
        cells.add(FigureCells.reasons(List.of(
                FigureCells.why("present", side.present()),
                FigureCells.why("share of way", side.side().shareOfWay()),
                FigureCells.why("next target", side.next()),
                side.next()
                        .value()
                        .flatMap(ReachableTarget::ceiling)
                        .map(one -> "next target: cut, "
                                + CeilingWords.of(one, year.part().unit()))
                        .orElse(""))));
        return cells;
    }

    private static List<Cell> reached(YearOfGoal.YearOfSide side) {
        Optional<PeriodFigures> now = side.side().now();
        List<Cell> cells = new ArrayList<>(List.of(
                now.map(one -> Cell.whole(one.sessions())).orElseGet(Cell::blank),
                now.map(one -> Cell.whole(one.withValue())).orElseGet(Cell::blank),
                now.map(one -> FigureCells.of(one.permitted().share("no try"))).orElseGet(Cell::blank)));
        Optional<PeriodFigures> present = side.present().value();
        cells.addAll(present.map(one -> List.of(
                        FigureCells.measured(one.median()),
                        FigureCells.measured(one.low()),
                        FigureCells.measured(one.high()),
                        Cell.whole(one.withValue()),
                        Cell.date(one.days().first()),
                        Cell.date(one.days().last())))
                .orElseGet(() -> FigureCells.blanks(6)));
        cells.add(FigureCells.measured(side.side().change()));
        cells.add(FigureCells.of(side.side().shareOfWay()));
        return cells;
    }

    private static List<Cell> next(Estimate<ReachableTarget> next) {
        return next.value().map(AnnualRows::next).orElseGet(() -> FigureCells.blanks(11));
    }

    private static List<Cell> next(ReachableTarget next) {
        Optional<SchoolRate> own = next.own().value();
        Optional<CaseloadRates.Others> others = next.others().value();
        return List.of(
                FigureCells.optional(own.map(SchoolRate::perWeek)),
                FigureCells.optional(own.map(SchoolRate::error)),
                FigureCells.optional(others.map(CaseloadRates.Others::mean)),
                FigureCells.optional(others.map(CaseloadRates.Others::spread)),
                others.map(one -> Cell.whole(one.students())).orElseGet(Cell::blank),
                Cell.code(others.map(one -> one.kin().words()).orElse("")),
                Cell.number(next.rate()),
                Cell.number(next.weeks()),
                Cell.date(next.by()),
                Cell.number(next.near()),
                Cell.number(next.far()));
    }
}
