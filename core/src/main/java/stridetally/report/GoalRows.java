package stridetally.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import stridetally.model.Goal;
import stridetally.model.Side;
import stridetally.scoring.AttainmentLevels;
import stridetally.scoring.AttainmentLevels.Attained;
import stridetally.scoring.GoalScore;
import stridetally.scoring.SideScore;
import stridetally.table.Cell;

/**
 * The rows of {@code score --by goal}: one side of one goal. {@code met_on} is the whole goal's, {@code streak} the side's.
 * A goal whose measure is not in the catalogue has one row with the reason.
 */
public final class GoalRows {
    /** The columns, in order. */
    public static final List<String> HEADINGS = List.of(
            "student",
            "goal",
            "measure",
            "side",
            "baseline",
            "target",
            "due",
            "latest",
            "latest_date",
            "share_of_way",
            "met_on",
            "streak",
            "level",
            "weight",
            "reason");

    private GoalRows() {}

    /**
     * The rows of a goal.
     *
     * @param levels the written attainment levels, if any
     */
    public static List<List<Cell>> rows(GoalScore score, Optional<AttainmentLevels> levels) {
        if (score.sides().isEmpty()) {
            List<Cell> cells = start(score.goal(), Side.NONE);
            cells.addAll(FigureCells.blanks(3));
            cells.addAll(end(score, FigureCells.blanks(2), score.cautions()));
            return List.of(cells);
        }
        return score.sides().stream().map(side -> row(score, side, levels)).toList();
    }

    /** The level that a side's latest value reaches, or why there is none. */
    public static Attained attained(SideScore side, Optional<AttainmentLevels> levels) {
        if (levels.isEmpty()) {
            return new Attained.NotRated(
                    "no attainment levels are written, and without a baseline and a better target none can be derived");
        }
        return side.latest()
                .map(latest -> levels.get().of(latest.value()))
                .orElseGet(() -> new Attained.NotRated("no session with a value after the baseline date"));
    }

    private static List<Cell> row(GoalScore score, SideScore side, Optional<AttainmentLevels> levels) {
        Attained attained = attained(side, levels);
        List<Cell> cells = start(score.goal(), side.side());
        cells.add(side.latest().map(latest -> FigureCells.of(latest.value())).orElseGet(Cell::blank));
        cells.add(FigureCells.date(side.latest().map(SideScore.Latest::date)));
        cells.add(FigureCells.of(side.shareOfWay()));
        Cell level = attained instanceof Attained.AtLevel at ? Cell.whole(at.level()) : Cell.blank();
        List<String> reasons = new ArrayList<>();
        reasons.add(FigureCells.why("share_of_way", side.shareOfWay()));
        if (attained instanceof Attained.NotRated none) {
            reasons.add("level: " + none.reason());
        } else if (levels.isPresent() && levels.get().origin() == AttainmentLevels.Origin.DERIVED) {
            reasons.add(AttainmentLevels.RULE);
        }
        reasons.addAll(score.cautions());
        cells.addAll(end(score, List.of(Cell.whole(side.streak()), level), reasons));
        return cells;
    }

    private static List<Cell> start(Goal goal, Side side) {
        return new ArrayList<>(List.of(
                Cell.text(goal.student().text()),
                Cell.text(goal.id().text()),
                Cell.text(goal.measure().text()),
                Cell.code(side.word()),
                FigureCells.amount(goal.baseline()),
                FigureCells.amount(goal.target()),
                FigureCells.date(goal.due())));
    }

    private static List<Cell> end(GoalScore score, List<Cell> streakAndLevel, List<String> reasons) {
        List<Cell> cells = new ArrayList<>(List.of(FigureCells.date(score.metOn())));
        cells.addAll(streakAndLevel);
        cells.add(FigureCells.amount(score.goal().weight()));
        cells.add(FigureCells.reasons(reasons));
        return cells;
    }
}
