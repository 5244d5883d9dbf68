package stridetally.report;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import stridetally.forecast.CaseloadReview;
import stridetally.forecast.GoalReview;
import stridetally.measures.Measure;
import stridetally.model.Caseload;
import stridetally.model.DateRange;
import stridetally.model.GoalId;
import stridetally.model.MeasureId;
import stridetally.model.Student;
import stridetally.model.StudentCode;
import stridetally.scoring.GoalScorer;
import stridetally.stats.Estimate;

/**
 * Everything that the documents of one run are made of.
 *
 * @param review of the whole caseload, whatever part of it is shown
 * @param evidence of each goal of the review
 * @param stamp what of the logbook was looked at
 * @param setAside rows that still are set aside
 * @param ahead tries after the day of the report, ignored
 * @param forecastMethod id of the way of forecasting
 * @param names only when the person asked for names
 */
public record ReportInput(
        Caseload caseload,
        CaseloadReview review,
        Map<GoalId, GoalEvidence> evidence,
        PeriodChoice period,
        Stamp stamp,
        List<SetAsideRow> setAside,
        Map<StudentCode, Integer> ahead,
        String forecastMethod,
        MeasurementError error,
        Map<StudentCode, String> names) {

    public ReportInput {
        evidence = Map.copyOf(evidence);
        setAside = List.copyOf(setAside);
        ahead = Map.copyOf(ahead);
        names = Map.copyOf(names);
    }

    /** The logbook and its last entry. */
    public record Stamp(String logbook, int lastEntry) {}

    /** Which period was asked for. */
    public sealed interface PeriodChoice {
        /** A period of the settings, whose dates may differ between schools. */
        record Named(String name) implements PeriodChoice {}

        /** Two dates. */
        record Dates(DateRange days) implements PeriodChoice {}
    }

    /**
     * The same with the evidence of every goal of the review.
     *
     * @param scorer that made the scores of the review
     * @param measures the catalogue
     */
    public ReportInput gather(GoalScorer scorer, Function<MeasureId, Optional<Measure>> measures) {
        Map<GoalId, GoalEvidence> gathered = new HashMap<>();
        for (GoalReview goal : review.goals()) {
            Optional<ReportWindow> window = window(goal.goal().student()).value();
            gathered.put(goal.goal().id(), GoalEvidence.gather(scorer, goal.score(), window, caseload, measures));
        }
        return new ReportInput(
                caseload, review, gathered, period, stamp, setAside, ahead, forecastMethod, error, names);
    }

    /** The period of a student, or that the student's school has none of this name. */
    public Estimate<ReportWindow> window(StudentCode code) {
        Optional<Student> student = caseload.student(code);
        String school = student.isPresent() ? student.get().school() : "";
        if (period instanceof PeriodChoice.Dates dates) {
            ReportPeriod between = ReportPeriod.between(dates.days(), caseload.settings(), school);
            return Estimate.of(new ReportWindow(between, review.asOf()));
        }
        String name = period instanceof PeriodChoice.Named named ? named.name() : "";
        Optional<ReportPeriod> found = ReportPeriod.named(name, caseload.settings(), school);
        return found.isPresent()
                ? Estimate.of(new ReportWindow(found.get(), review.asOf()))
                : Estimate.notEstimable("the settings have no period of this name for the school");
    }

    /** What is known of a goal beside its review. */
    public GoalEvidence evidence(GoalReview goal) {
        GoalEvidence found = evidence.get(goal.goal().id());
        if (found == null) {
            throw new IllegalArgumentException("no evidence of a goal of the review");
        }
        return found;
    }

    /** The name to print, only when names were asked for. */
    public Optional<String> name(StudentCode code) {
        return Optional.ofNullable(names.get(code));
    }
}
