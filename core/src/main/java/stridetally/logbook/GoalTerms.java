package stridetally.logbook;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import stridetally.measures.Catalogue;
import stridetally.measures.Measure;
import stridetally.measures.ProtocolText;
import stridetally.model.Caseload;
import stridetally.model.Goal;
import stridetally.model.Protocol;
import stridetally.problem.At;
import stridetally.problem.Checked;
import stridetally.problem.ProblemCode;
import stridetally.problem.RowProblem;

/**
 * The measures and protocols of hand-kept goals in the words of the catalogue, so that a goal typed as {@code Eyes=Open}
 * meets tries logged as {@code eyes=open}. What the catalogue does not know stays as typed, and is told.
 */
public final class GoalTerms {
    private GoalTerms() {}

    /** The caseload with its goals in the catalogue's words. */
    public static Checked<Caseload> of(Caseload caseload, Catalogue catalogue) {
        List<RowProblem> problems = new ArrayList<>();
        List<Goal> goals = new ArrayList<>();
        for (Goal goal : caseload.goals()) {
            goals.add(goal(goal, catalogue, problems));
        }
        return new Checked<>(Optional.of(caseload.withGoals(goals)), problems);
    }

    private static Goal goal(Goal goal, Catalogue catalogue, List<RowProblem> problems) {
        At at = At.row(KeptKind.GOALS.file() + " goal " + goal.id(), 1);
        Optional<Measure> measure = catalogue.find(goal.measure().text());
        if (measure.isEmpty()) {
            problems.add(new RowProblem(
                    ProblemCode.GOAL_UNCLEAR,
                    at,
                    goal.measure().text(),
                    "a measure of the catalogue",
                    catalogue
                            .nearest(goal.measure().text())
                            .map(near -> "did you mean " + near + "?")
                            .orElse("correct it, or describe the measure in measures.csv")));
            return goal;
        }
        Checked<Protocol> protocol = ProtocolText.parse(goal.protocol().text(), measure.get(), at);
        for (RowProblem problem : protocol.problems()) {
            problems.add(
                    new RowProblem(ProblemCode.GOAL_UNCLEAR, at, problem.found(), problem.expected(), problem.mend()));
        }
        return goal.withTerms(measure.get().id(), protocol.value().orElse(goal.protocol()));
    }
}
