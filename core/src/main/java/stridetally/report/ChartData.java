package stridetally.report;

import java.time.LocalDate;
import java.util.ArrayList;
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
import stridetally.units.Amount;

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
        sessions = inOrder(sessions);
        changes = List.copyOf(changes);
        breaks = List.copyOf(breaks);
    }

    private static List<Session> inOrder(List<Session> sessions) {
        List<Session> inOrder = new ArrayList<>(sessions);
        inOrder.sort(Session::compareDayTo);
        return List.copyOf(inOrder);
    }

    /** The charts of a goal, one for each side, with the changes of strategy up to the day. */
    public static List<ChartData> of(GoalReview review, Caseload caseload, LocalDate asOf) {
        Optional<Measure> measure = review.score().measure();
        ShownUnit unit = measure.isPresent() ? ShownUnit.of(measure.get(), caseload.settings()) : ShownUnit.AS_WRITTEN;
        List<Change> changes = changes(caseload, review.goal(), asOf);
        List<SchoolBreak> breaks = breaks(caseload, review.goal());
        List<ChartData> charts = new ArrayList<>();
        for (SideReview side : review.sides()) {
            charts.add(of(review, side, unit, changes, breaks, asOf));
        }
        return charts;
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
                within(side.score().sessions(), days),
                value(goal.baseline()),
                goal.baselineDate(),
                value(goal.target()),
                goal.due(),
                goal.aim() == GoalAim.KEEP ? HELD : side.trend().aim(),
                side.trend(),
                side.forecast() instanceof Forecast.Outlook found ? Optional.of(found) : Optional.empty(),
                changes,
                breaks,
                asOf);
    }

    private static List<Session> within(List<Session> sessions, SeriesWindow days) {
        List<Session> within = new ArrayList<>();
        for (Session session : sessions) {
            if (days.holds(session.date())) {
                within.add(session);
            }
        }
        return within;
    }

    private static Optional<Double> value(Optional<Amount> amount) {
        return amount.isPresent() ? Optional.of(amount.get().value()) : Optional.empty();
    }

    /** Changes of the goal, and of the student as a whole, up to a day, by day. */
    static List<Change> changes(Caseload caseload, Goal goal, LocalDate last) {
        List<Change> changes = new ArrayList<>();
        for (Change change : caseload.changes()) {
            boolean meant = change.student().equals(goal.student())
                    && (change.goal().isEmpty() || change.goal().get().equals(goal.id()));
            if (meant && !change.date().isAfter(last)) {
                changes.add(change);
            }
        }
        changes.sort(ChartData::byDay);
        return changes;
    }

    private static int byDay(Change one, Change other) {
        int byDay = one.date().compareTo(other.date());
        return byDay != 0 ? byDay : one.what().compareTo(other.what());
    }

    /** Breaks of the school of the goal's student, by day. */
    static List<SchoolBreak> breaks(Caseload caseload, Goal goal) {
        Optional<Student> student = caseload.student(goal.student());
        String school = student.isPresent() ? student.get().school() : "";
        List<SchoolBreak> breaks = new ArrayList<>();
        for (SchoolBreak one : caseload.settings().breaks()) {
            if (one.school().isBlank() || one.school().equals(school)) {
                breaks.add(one);
            }
        }
        return breaks;
    }

    /** Which way is better, in the words of the page. */
    static String better(Optional<Measure> measure) {
        if (measure.isEmpty() || measure.get().better().isEmpty()) {
            return "neither way is better by itself";
        }
        return measure.get().better().get() == Direction.HIGHER ? "more is better" : "less is better";
    }
}
