package stridetally.report;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import stridetally.forecast.Forecast;
import stridetally.forecast.GoalReview;
import stridetally.forecast.SideReview;
import stridetally.measures.Measure;
import stridetally.model.Caseload;
import stridetally.model.Change;
import stridetally.model.Direction;
import stridetally.model.Goal;
import stridetally.model.GoalAim;
import stridetally.model.SchoolBreak;
import stridetally.model.SeriesKey;
import stridetally.model.Settings;
import stridetally.model.Side;
import stridetally.model.Student;
import stridetally.scoring.SeriesScore;
import stridetally.scoring.Session;
import stridetally.trend.AimLine;
import stridetally.trend.SeriesWindow;
import stridetally.trend.TrendLine;

/**
 * What a chart of one side of a goal shows, whoever draws it. Amounts are in the measure's unit.
 *
 * @param title which goal and side
 * @param better which way is better, in words
 * @param sessions after the baseline date, by day
 * @param aim undefined for a target that is to be held, because it asks for no change
 * @param outlook the forecast for the due date; empty when there is none
 * @param changes of strategy, by day
 * @param breaks of the school, also those to come
 */
public record ChartData(
        String title,
        ShownUnit unit,
        String better,
        List<Session> sessions,
        Optional<Double> baseline,
        Optional<LocalDate> baselineDate,
        Optional<Double> target,
        Optional<LocalDate> due,
        AimLine aim,
        TrendLine trend,
        Optional<Forecast.Outlook> outlook,
        List<Change> changes,
        List<SchoolBreak> breaks,
        LocalDate asOf) {

    /** Why a goal whose target is to be held has no aim line. */
    static final AimLine HELD = new AimLine.Undefined("the target is to be held");

    public ChartData {
        sessions = sessions.stream()
                .sorted(Comparator.comparing(Session::date).thenComparing(Session::label))
                .toList();
        changes = List.copyOf(changes);
        breaks = List.copyOf(breaks);
    }

    /** The charts of a goal, one for each side, with the changes of strategy up to the day. */
    public static List<ChartData> of(GoalReview review, Caseload caseload, LocalDate asOf) {
        ShownUnit unit = review.score()
                .measure()
                .map(one -> ShownUnit.of(one, caseload.settings()))
                .orElse(ShownUnit.AS_WRITTEN);
        return review.sides().stream()
                .map(side -> of(
                        review,
                        side,
                        unit,
                        changes(caseload, review.goal(), asOf),
                        breaks(caseload, review.goal()),
                        asOf))
                .toList();
    }

    /**
     * The chart of a series without a goal: no aim line and no forecast.
     *
     * @param trend of the sessions
     */
    public static ChartData bare(
            SeriesScore series, TrendLine trend, Measure measure, Settings settings, LocalDate asOf) {
        SeriesKey key = series.key();
        String source = key.source().isBlank() ? "" : key.source() + " ";
        String side = key.side() == Side.NONE ? "" : ", " + key.side().word() + " side";
        String protocol =
                key.protocol().text().isBlank() ? "" : ", " + key.protocol().text();
        return new ChartData(
                source + key.student().text() + ", " + measure.name() + side + protocol + ", "
                        + key.place().word(),
                ShownUnit.of(measure, settings),
                better(Optional.of(measure)),
                series.sessions().stream()
                        .filter(session -> !session.date().isAfter(asOf))
                        .toList(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                trend.aim(),
                trend,
                Optional.empty(),
                List.of(),
                List.of(),
                asOf);
    }

    static ChartData of(
            GoalReview review,
            SideReview side,
            ShownUnit unit,
            List<Change> changes,
            List<SchoolBreak> breaks,
            LocalDate asOf) {
        Goal goal = review.goal();
        SeriesWindow days = SeriesWindow.of(goal, asOf);
        return new ChartData(
                "Goal " + goal.id()
                        + (side.side() == Side.NONE ? "" : ", " + side.side().word() + " side"),
                unit,
                better(review.score().measure()),
                side.score().sessions().stream()
                        .filter(session -> days.holds(session.date()))
                        .toList(),
                goal.baseline().map(amount -> amount.value()),
                goal.baselineDate(),
                goal.target().map(amount -> amount.value()),
                goal.due(),
                goal.aim() == GoalAim.KEEP ? HELD : side.trend().aim(),
                side.trend(),
                side.forecast() instanceof Forecast.Outlook found ? Optional.of(found) : Optional.empty(),
                changes,
                breaks,
                asOf);
    }

    /** Changes of the goal, and of the student as a whole, up to a day, by day. */
    static List<Change> changes(Caseload caseload, Goal goal, LocalDate last) {
        return caseload.changes().stream()
                .filter(change -> change.student().equals(goal.student()))
                .filter(change -> change.goal().map(goal.id()::equals).orElse(true))
                .filter(change -> !change.date().isAfter(last))
                .sorted(Comparator.comparing(Change::date).thenComparing(Change::what))
                .toList();
    }

    /** Breaks of the school of the goal's student, by day. */
    static List<SchoolBreak> breaks(Caseload caseload, Goal goal) {
        String school = caseload.student(goal.student()).map(Student::school).orElse("");
        return caseload.settings().breaks().stream()
                .filter(one -> one.school().isBlank() || one.school().equals(school))
                .toList();
    }

    /** Which way is better, in the words of the page. */
    static String better(Optional<Measure> measure) {
        return measure.flatMap(Measure::better)
                .map(way -> way == Direction.HIGHER ? "more is better" : "less is better")
                .orElse("neither way is better by itself");
    }
}
