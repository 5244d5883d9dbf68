package stridetally.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import stridetally.model.Side;
import stridetally.scoring.AttainmentLevels.Attained;
import stridetally.scoring.AttainmentScore;
import stridetally.stats.StandardScore;
import stridetally.table.Cell;

/** The last cells of a row of {@link ReportCsv}: attainment, and a published value beside the latest test. */
final class ReportCsvBeside {
    private ReportCsvBeside() {}

    /** {@code level, t_score, t_score_weighted, reference_z, reference_source}; {@code side} counts from 0. */
    static List<Cell> cells(GoalPart part, int side, StudentAttainment attainment) {
        List<Cell> cells = new ArrayList<>();
        List<Attained> sides = part.attainment().sides();
        cells.add(
                side < sides.size() && sides.get(side) instanceof Attained.AtLevel at
                        ? Cell.whole(at.level())
                        : Cell.blank());
        cells.add(t(Optional.of(attainment.equal())));
        cells.add(t(attainment.weighted()));
        Optional<BesideReference> reference =
                side < part.sides().size() ? reference(part, part.sides().get(side)) : Optional.empty();
        cells.add(reference
                .map(one -> FigureCells.of(one.score().map(StandardScore::z)))
                .orElseGet(Cell::blank));
        cells.add(Cell.text(reference.map(one -> one.reference().source()).orElse("")));
        return cells;
    }

    /** Why a level or a standard score is missing. */
    static List<String> reasons(GoalPart part, SidePart side) {
        List<String> reasons = new ArrayList<>();
        int place = part.sides().indexOf(side);
        List<Attained> sides = part.attainment().sides();
        if (place >= 0 && place < sides.size() && sides.get(place) instanceof Attained.NotRated none) {
            reasons.add("level: " + none.reason());
        }
        if (!part.references().isEmpty() && reference(part, side).isEmpty()) {
            reasons.add("reference_z: " + whyNone(part, side));
        }
        return reasons;
    }

    private static String whyNone(GoalPart part, SidePart side) {
        for (ReferenceTable.Line line : part.references()) {
            if (isOf(line, side)) {
                return line.beside().isEmpty()
                        ? line.why()
                        : line.beside().get(0).score().reason();
            }
        }
        return "no test of this side to compare";
    }

    private static Optional<BesideReference> reference(GoalPart part, SidePart side) {
        for (ReferenceTable.Line line : part.references()) {
            for (BesideReference one : isOf(line, side) ? line.beside() : List.<BesideReference>of()) {
                if (one.score().isEstimated()) {
                    return Optional.of(one);
                }
            }
        }
        return Optional.empty();
    }

    private static boolean isOf(ReferenceTable.Line line, SidePart side) {
        Side own = side.review().side();
        return own == Side.NONE || line.key().side() == own;
    }

    private static Cell t(Optional<AttainmentScore> score) {
        return score.isPresent() && score.get() instanceof AttainmentScore.Scored scored
                ? Cell.number(scored.t())
                : Cell.blank();
    }
}
