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
 * @param window the days looked at; empty when the student's school has no such period
 * @param remark the therapist's own words on this goal in this period
 * @param setAside rows of the student that are still set aside
 * @param missedVisits visits of the student in the period that were not held
 */
public record CaseloadRow(
        GoalReview review,
        Optional<String> name,
        Optional<ReportWindow> window,
        Optional<Remark> remark,
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
        return remark.flatMap(Remark::judgement).filter(word -> !word.isBlank());
    }

    /** The period. */
    public Optional<ReportPeriod> period() {
        return window.map(ReportWindow::period);
    }

    /** What is known of a student, counted once for all goals. */
    record OfStudent(Optional<ReportWindow> window, Optional<ServiceReport> services, int setAside) {}

    static CaseloadRow of(ReportInput input, GoalReview review, OfStudent student) {
        return new CaseloadRow(
                review,
                input.name(review.goal().student()),
                student.window(),
                student.window().flatMap(open -> GoalPart.remark(input.caseload(), review.goal(), open.period())),
                review.score()
                        .measure()
                        .map(one -> ShownUnit.of(one, input.caseload().settings()))
                        .orElse(ShownUnit.AS_WRITTEN),
                input.evidence(review).gaps().size(),
                student.setAside(),
                student.services().map(ServiceReport::missedVisits).orElse(0));
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
