package stridetally.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import stridetally.forecast.GoalReview;
import stridetally.model.Goal;
import stridetally.model.Remark;

/**
 * One goal of the caseload table.
 *
 * @param name only when names were asked for
 * @param part the same as on the team's page; empty when the student's school has no such period
 * @param setAside rows of the student that are still set aside
 * @param missedVisits visits of the student in the period that were not held
 */
public record CaseloadRow(
        GoalReview review,
        Optional<String> name,
        Optional<ReportPeriod> period,
        Optional<GoalPart> part,
        ShownUnit unit,
        int gaps,
        int setAside,
        int missedVisits) {

    /** The goal. */
    public Goal goal() {
        return review.goal();
    }

    /** What else there is to know, in a few words each; empty when there is nothing. */
    public List<String> flags() {
        List<String> flags = new ArrayList<>();
        add(flags, gaps, "gap", " in the goal");
        add(flags, assisted(), "session", " with more help only");
        add(flags, setAside, "row", " set aside");
        add(flags, missedVisits, "visit", " missed");
        return flags;
    }

    /** The therapist's own word on this goal in this period. */
    public Optional<String> ownJudgement() {
        return part.flatMap(GoalPart::remark).flatMap(Remark::judgement).filter(word -> !word.isBlank());
    }

    static CaseloadRow of(ReportInput input, GoalReview review) {
        Optional<ReportWindow> window = input.window(review.goal().student()).value();
        return new CaseloadRow(
                review,
                input.name(review.goal().student()),
                window.map(ReportWindow::period),
                window.map(open -> GoalPart.of(input, review, open)),
                review.score()
                        .measure()
                        .map(one -> ShownUnit.of(one, input.caseload().settings()))
                        .orElse(ShownUnit.AS_WRITTEN),
                input.evidence(review).gaps().size(),
                (int) input.setAside().stream()
                        .filter(row -> row.student().equals(review.goal().student()))
                        .count(),
                window.map(open -> ServiceReport.of(
                                        input.caseload(), review.goal().student(), open)
                                .missedVisits())
                        .orElse(0));
    }

    private int assisted() {
        return review.sides().stream()
                .mapToInt(side -> side.trend().series().assistedOnly())
                .sum();
    }

    private static void add(List<String> flags, int count, String noun, String rest) {
        if (count > 0) {
            flags.add(Counted.of(count, noun) + rest);
        }
    }
}
