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
import stridetally.scoring.AttainmentScore.Rated;
import stridetally.scoring.AttainmentScore.Scored;
import stridetally.scoring.AttainmentScore.Weighting;
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
     * @param rated every goal of the student, rated or not
     * @param judgements of the same goals; empty when none were judged in this run, and the counts are then blank
     */
    public static List<Cell> row(StudentCode student, List<Rated> rated, List<GoalJudgement> judgements) {
        return row(student, rated, judgements, List.of());
    }

    /**
     * The same, with goals whose levels were derived.
     *
     * @param derived goals whose levels are not written
     */
    public static List<Cell> row(
            StudentCode student, List<Rated> rated, List<GoalJudgement> judgements, List<GoalId> derived) {
        List<Rated> unweighted = rated.stream()
                .map(one -> new Rated(one.goal(), one.attained(), Optional.empty()))
                .toList();
        AttainmentScore equal = AttainmentScore.of(unweighted);
        AttainmentScore weighted = AttainmentScore.of(rated);
        boolean written = !(weighted instanceof Scored scored) || scored.weighting() == Weighting.WRITTEN;
        List<Cell> cells = new ArrayList<>(List.of(
                Cell.text(student.text()),
                Cell.whole(rated.size()),
                Cell.whole(equal instanceof Scored scored ? scored.goals() : 0),
                Cell.text(ids(equal.leftOut())),
                t(equal),
                written ? t(weighted) : Cell.blank()));
        for (Judgement word : Judgement.values()) {
            cells.add(count(judgements, Optional.of(word)));
        }
        cells.add(count(judgements, Optional.empty()));
        List<String> reasons = reasons(equal, weighted, written, judgements);
        if (!derived.isEmpty()) {
            reasons.add(AttainmentLevels.RULE + ", for "
                    + derived.stream().map(GoalId::text).collect(Collectors.joining(" ")));
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
            AttainmentScore equal, AttainmentScore weighted, boolean written, List<GoalJudgement> judgements) {
        List<String> reasons = new ArrayList<>();
        if (equal instanceof AttainmentScore.NotScored none) {
            reasons.add("t_score: " + none.reason());
        }
        if (!written) {
            reasons.add("t_score_weighted: no weights are written");
        } else if (weighted instanceof AttainmentScore.NotScored none) {
            reasons.add("t_score_weighted: " + none.reason());
        }
        Stream.concat(equal.leftOut().stream(), weighted.leftOut().stream())
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
