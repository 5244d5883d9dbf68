package stridetally.report;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import stridetally.forecast.CaseloadRates;
import stridetally.forecast.Ceiling;
import stridetally.forecast.Judgement;
import stridetally.forecast.ReachableTarget;
import stridetally.forecast.SchoolClock;
import stridetally.logbook.ReportLine;
import stridetally.model.DateRange;
import stridetally.model.Goal;
import stridetally.model.GoalId;
import stridetally.model.Period;
import stridetally.model.Remark;
import stridetally.model.Student;
import stridetally.scoring.Session;
import stridetally.stats.Estimate;
import stridetally.trend.Point;

/**
 * One goal over the year of a review.
 *
 * @param part the same as on the team's page, of all days of the year
 * @param remarks the therapist's words on this goal in all periods, in the order of the file
 * @param told what reports said of it in these days, up to the day of the review
 * @param followedBy the goal that raised or revised this one
 */
public record YearOfGoal(
        GoalPart part,
        List<YearOfSide> sides,
        List<Remark> remarks,
        List<ReportLine> told,
        Optional<GoalId> followedBy) {

    public YearOfGoal {
        sides = List.copyOf(sides);
        remarks = List.copyOf(remarks);
        told = List.copyOf(told);
    }

    /**
     * What lies behind a review.
     *
     * @param next the day of the next target
     * @param told what reports told
     */
    record Behind(CaseloadRates rates, SchoolClock clock, LocalDate next, List<ReportLine> told) {
        Behind {
            told = List.copyOf(told);
        }
    }

    /**
     * One side.
     *
     * @param present the last sessions with a value, and those between them; the reason when there is none
     * @param periods those of the settings that lie in the year, with the sessions of each
     */
    public record YearOfSide(
            SidePart side, Estimate<PeriodFigures> present, List<OfPeriod> periods, Estimate<ReachableTarget> next) {
        public YearOfSide {
            periods = List.copyOf(periods);
        }
    }

    /** One period; no figures when none of its days belongs to the goal. */
    public record OfPeriod(String name, Optional<PeriodFigures> figures) {}

    /** The goal. */
    public Goal goal() {
        return part.goal();
    }

    static YearOfGoal of(ReportInput input, GoalPart part, ReportWindow window, Behind behind) {
        Goal goal = part.goal();
        boolean closed = part.review().judgement().judgement().equals(Optional.of(Judgement.ENDED));
        List<Period> periods = periods(input, goal, window);
        List<YearOfSide> sides = new ArrayList<>();
        Optional<Ceiling> wayEnd = CeilingWords.ofWay(input, part);
        for (SidePart side : part.sides()) {
            Estimate<ReachableTarget> next = closed
                    ? Estimate.notEstimable("the goal is closed")
                    : ReachableTarget.of(
                            part.review(),
                            side.review(),
                            wayEnd,
                            behind.rates(),
                            behind.clock(),
                            window.asOf(),
                            behind.next());
            sides.add(new YearOfSide(side, present(side), figures(side, periods, goal, window), next));
        }
        return new YearOfGoal(
                part,
                sides,
                input.caseload().remarks().stream()
                        .filter(one -> one.goal().equals(goal.id()))
                        .toList(),
                told(behind.told(), goal, window, input.stamp()),
                input.caseload().goals().stream()
                        .filter(one -> one.follows().equals(Optional.of(goal.id())))
                        .map(Goal::id)
                        .findFirst());
    }

    private static List<ReportLine> told(
            List<ReportLine> lines, Goal goal, ReportWindow window, ReportInput.Stamp stamp) {
        Optional<DateRange> days = window.days();
        return lines.stream()
                .filter(line -> line.goal().equals(goal.id()) && line.lastEntry() <= stamp.lastEntry())
                .filter(line -> days.map(open -> open.holds(line.asOf())).orElse(false))
                .toList();
    }

    /** The periods of the student's school that have a day in the window, by their first day. */
    private static List<Period> periods(ReportInput input, Goal goal, ReportWindow window) {
        String school =
                input.caseload().student(goal.student()).map(Student::school).orElse("");
        DateRange year = window.period().days();
        return input.caseload().settings().periods().stream()
                .map(Period::name)
                .distinct()
                .flatMap(name -> ReportPeriod.named(name, input.caseload().settings(), school).stream())
                .map(one -> new Period(one.name(), one.days(), school))
                .filter(one ->
                        ReportWindow.cut(one.days(), year.first(), year.last()).isPresent())
                .sorted(Comparator.comparing(one -> one.days().first()))
                .toList();
    }

    private static List<OfPeriod> figures(SidePart side, List<Period> periods, Goal goal, ReportWindow window) {
        List<Session> sessions = side.drawing().sessions();
        return periods.stream()
                .map(one -> new OfPeriod(
                        one.name(),
                        new ReportWindow(new ReportPeriod(one.name(), one.days(), Optional.empty()), window.asOf())
                                .now(goal)
                                .map(days -> PeriodFigures.of(sessions, days))))
                .toList();
    }

    private static Estimate<PeriodFigures> present(SidePart side) {
        List<LocalDate> days = side.review().trend().series().points().stream()
                .map(Point::date)
                .toList();
        if (days.isEmpty()) {
            return Estimate.notEstimable("no session with a value after the baseline date");
        }
        DateRange last = new DateRange(
                days.get(Math.max(0, days.size() - ReachableTarget.PRESENT_SESSIONS)), days.get(days.size() - 1));
        return Estimate.of(PeriodFigures.of(side.drawing().sessions(), last));
    }
}
