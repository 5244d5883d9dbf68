package stridetally.report;

import java.util.Optional;
import stridetally.forecast.Ceiling;
import stridetally.measures.Measure;
import stridetally.model.Goal;
import stridetally.plan.LineLayout;
import stridetally.plan.StepsOnWay;
import stridetally.units.Amount;

/** What is said of a value that a goal cannot pass as it is measured now. */
final class CeilingWords {
    /** Beyond a ceiling. */
    private static final String ON = "; a harder task is the way on, not more of the same";

    private CeilingWords() {}

    /** The end of the line or the beam that a goal names, in steps of this child. */
    static Optional<Ceiling> ofWay(ReportInput input, GoalPart part) {
        Optional<Measure> measure = part.review().score().measure();
        if (measure.isEmpty()) {
            return Optional.empty();
        }
        Goal goal = part.goal();
        Optional<Amount> height = LineLayout.height(
                goal.student(), input.caseload().bodies(), input.review().asOf());
        return StepsOnWay.of(goal, measure.get(), height)
                .map(way -> new Ceiling(way.steps(), Ceiling.Kind.WAY, words(way)));
    }

    private static String words(StepsOnWay way) {
        return way.length() + " long, about " + Counted.of(way.steps(), "small step")
                + way.height()
                        .map(height -> " at a height of " + height.text() + " cm")
                        .orElse("; no height of the last year is written, so one of 100 cm is taken");
    }

    /** Why no next target lies beyond it. */
    static String of(Ceiling ceiling, ShownUnit unit) {
        String value = unit.text(ceiling.value());
        return switch (ceiling.kind()) {
            case PLAUSIBLE ->
                value + " is the last value that the catalogue holds plausible; a harder way of taking the measure,"
                        + " or another measure, may serve better";
            case MEASURE -> "this measure ends at " + value + ON;
            case CAP -> "tries were stopped at " + value + ", and more cannot be seen" + ON;
            case WAY -> "at " + value + " the way is at its end (" + ceiling.words() + ")" + ON;
        };
    }
}
