package stridetally.report;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import stridetally.forecast.GoalJudgement;
import stridetally.forecast.Judgement;
import stridetally.model.GoalId;
import stridetally.model.StudentCode;
import stridetally.scoring.AttainmentLevels;
import stridetally.scoring.AttainmentScore;
import stridetally.scoring.AttainmentScore.LeftOut;
import stridetally.scoring.AttainmentScore.Scored;
import stridetally.table.Cell;

/**
 * The rows of {@code score --by student}: attainment T over the rated goals, all weighing the same ({@code t_score}) and by
 * the written weights ({@code t_score_weighted}, blank without any), the ids of goals without a rating, and how many goals
 * have each judgement.
 */
public final class StudentRows {
    /** The columns, in order. */
    public static final List<String> HEADINGS = Stream.of(
                    Stream.of("student", "goals", "rated", "unrated", "t_score", "t_score_weighted"),
                    Arrays.stream(Judgement.values()).map(one -> one.word().replace(' ', '_')),
                    Stream.of("no_judgement", "reason"))
            .flatMap(names -> names)
            .toList();

    private StudentRows() {}

    /**
     * The row of a student.
     *
     * @param judgements of the same goals; empty when none were judged in this run, and the counts are then blank
     */
    public static List<Cell> row(StudentCode student, StudentAttainment attainment, List<GoalJudgement> judgements) {
        AttainmentScore equal = attainment.equal();
        Optional<AttainmentScore> weighted = attainment.weighted();
        List<Cell> cells = new ArrayList<>(List.of(
                Cell.text(student.text()),
                Cell.whole(attainment.goals().size()),
                Cell.whole(equal instanceof Scored scored ? scored.goals() : 0),
                Cell.text(ids(equal.leftOut())),
                t(equal),
                weighted.map(StudentRows::t).orElseGet(Cell::blank)));
        for (Judgement word : Judgement.values()) {
            cells.add(count(judgements, Optional.of(word)));
        }
        cells.add(count(judgements, Optional.empty()));
        List<String> reasons = reasons(equal, weighted, judgements);
        if (!attainment.derived().isEmpty()) {
            reasons.add(AttainmentLevels.RULE + ", for "
                    + attainment.derived().stream().map(GoalId::text).collect(Collectors.joining(" ")));
        }
        cells.add(FigureCells.reasons(reasons));
        return cells;
    }

    private static Cell t(AttainmentScore score) {
        return score instanceof Scored scored ? Cell.number(scored.t()) : Cell.blank();
    }

    private static Cell count(List<GoalJudgement> judgements, Optional<Judgement> word) {
        return judgements.isEmpty()
                ? Cell.blank()
                : Cell.whole(judgements.stream()
                        .filter(one -> one.judgement().equals(word))
                        .count());
    }

    private static List<String> reasons(
            AttainmentScore equal, Optional<AttainmentScore> weighted, List<GoalJudgement> judgements) {
        List<String> reasons = new ArrayList<>();
        if (equal instanceof AttainmentScore.NotScored none) {
            reasons.add("t_score: " + none.reason());
        }
        if (weighted.isEmpty()) {
            reasons.add("t_score_weighted: no weights are written");
        } else if (weighted.get() instanceof AttainmentScore.NotScored none) {
            reasons.add("t_score_weighted: " + none.reason());
        }
        Stream.concat(equal.leftOut().stream(), weighted.stream().flatMap(one -> one.leftOut().stream()))
                .map(one -> one.goal() + " is left out: " + one.reason())
                .forEach(reasons::add);
        if (judgements.isEmpty()) {
            reasons.add("no goal was judged");
        }
        return reasons;
    }

    private static String ids(List<LeftOut> leftOut) {
        return leftOut.stream().map(one -> one.goal().text()).collect(Collectors.joining(" "));
    }
}
