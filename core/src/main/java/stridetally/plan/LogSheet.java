package stridetally.plan;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.temporal.TemporalAdjusters;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.function.Predicate;
import stridetally.measures.Measure;
import stridetally.measures.Rhythm;
import stridetally.measures.Sidedness;
import stridetally.model.Caseload;
import stridetally.model.Goal;
import stridetally.model.GoalSide;
import stridetally.model.MeasureId;
import stridetally.model.Precaution;
import stridetally.model.Side;
import stridetally.model.Student;
import stridetally.model.TrialPlace;

/**
 * A blank log for one school and one day: the students who are usually seen on that weekday, a line a goal and side. Prefilled
 * so that only what a try gave is left to write.
 *
 * @param school as in students.csv; blank when it is not written there
 * @param date the first such weekday after the day of the run
 * @param lines at least one, by student and in the order of the goal file
 */
public record LogSheet(String school, LocalDate date, List<LogLine> lines) {
    public LogSheet {
        lines = List.copyOf(lines);
        if (lines.isEmpty()) {
            throw new IllegalArgumentException("a log without a line");
        }
    }

    /**
     * The logs of the coming school week.
     *
     * @param notes what the therapist must know: what was left out and why
     */
    public record Week(List<LogSheet> sheets, List<String> notes) {
        public Week {
            sheets = List.copyOf(sheets);
            notes = List.copyOf(notes);
        }
    }

    /** The students of the sheet, once each. */
    public List<Student> students(Caseload caseload) {
        return lines.stream()
                .map(one -> one.goal().student())
                .distinct()
                .flatMap(code -> caseload.student(code).stream())
                .toList();
    }

    /** The most tries of any line; at least two, so that tries stand side by side. */
    public int tries() {
        return Math.max(2, lines.stream().mapToInt(LogLine::tries).max().orElse(0));
    }

    /** Whether any line asks for the prompt. */
    public boolean asksPrompt() {
        return lines.stream().anyMatch(LogLine::asksPrompt);
    }

    /** Makes the logs, by school and then by day. */
    public static Week week(
            Caseload caseload,
            Function<MeasureId, Optional<Measure>> measures,
            DaysSeen seen,
            Predicate<Student> shown,
            LocalDate asOf) {
        List<Student> students = caseload.students().stream().filter(shown).toList();
        Set<String> schools = new TreeSet<>();
        students.forEach(one -> schools.add(one.school()));
        List<LogSheet> sheets = new ArrayList<>();
        Set<String> notes = new TreeSet<>();
        for (String school : schools) {
            for (DayOfWeek day : EnumSet.range(DayOfWeek.MONDAY, DayOfWeek.FRIDAY)) {
                LocalDate date = asOf.with(TemporalAdjusters.next(day));
                List<LogLine> lines = new ArrayList<>();
                for (Student student : students) {
                    if (student.school().equals(school)
                            && seen.usual(student.code()).contains(day)) {
                        lines.addAll(lines(caseload, student, measures, date, notes));
                    }
                }
                Optional<String> closed = closed(caseload, school, date);
                if (closed.isPresent() && !lines.isEmpty()) {
                    notes.add("no log for " + date + ": " + closed.get());
                } else if (!lines.isEmpty()) {
                    sheets.add(new LogSheet(school, date, lines));
                }
            }
        }
        return new Week(sheets, List.copyOf(notes));
    }

    private static Optional<String> closed(Caseload caseload, String school, LocalDate date) {
        return caseload.settings().breaks().stream()
                .filter(one -> one.days().holds(date)
                        && (one.school().isBlank() || one.school().equals(school)))
                .map(one -> "it lies in the break \"" + one.name() + "\"")
                .findFirst();
    }

    private static List<LogLine> lines(
            Caseload caseload,
            Student student,
            Function<MeasureId, Optional<Measure>> measures,
            LocalDate date,
            Set<String> notes) {
        List<LogLine> lines = new ArrayList<>();
        boolean here = student.from().map(first -> !date.isBefore(first)).orElse(true)
                && student.until().map(last -> !date.isAfter(last)).orElse(true);
        for (Goal goal : caseload.goals()) {
            if (here && goal.student().equals(student.code()) && isOpen(goal, date)) {
                Optional<Measure> measure = measures.apply(goal.measure());
                Optional<String> why = whyLeftOut(goal, student, measure);
                why.ifPresent(reason -> notes.add(goal.id().text() + " stands on no log: " + reason));
                if (why.isEmpty()) {
                    sides(goal, measure.orElseThrow())
                            .forEach(side -> lines.add(new LogLine(
                                    goal, measure.orElseThrow(), side, tries(goal, measure.orElseThrow()))));
                }
            }
        }
        return lines;
    }

    private static boolean isOpen(Goal goal, LocalDate date) {
        return goal.ended().isEmpty()
                && goal.from().map(first -> !date.isBefore(first)).orElse(true)
                && goal.until().map(last -> !date.isAfter(last)).orElse(true);
    }

    private static Optional<String> whyLeftOut(Goal goal, Student student, Optional<Measure> measure) {
        if (measure.isEmpty()) {
            return Optional.of("its measure is not known");
        }
        if (measure.get().rhythm() == Rhythm.REVIEW) {
            return Optional.of("it is measured a few times a year");
        }
        Set<Precaution> barred = Task.barring(Task.of(goal.measure()));
        barred.retainAll(Caution.of(student.precautions()).known());
        if (!barred.isEmpty()) {
            return Optional.of("precautions hold " + HomeSheet.words(barred));
        }
        return goal.places().contains(TrialPlace.SCHOOL)
                ? Optional.empty()
                : Optional.of("it is not counted at school");
    }

    private static List<Side> sides(Goal goal, Measure measure) {
        if (goal.side() == GoalSide.LEFT) {
            return List.of(Side.LEFT);
        }
        if (goal.side() == GoalSide.RIGHT) {
            return List.of(Side.RIGHT);
        }
        boolean both = goal.side() != GoalSide.NONE || measure.sidedness() == Sidedness.REQUIRED;
        return both ? List.of(Side.LEFT, Side.RIGHT) : List.of(Side.NONE);
    }

    private static int tries(Goal goal, Measure measure) {
        return Math.max(1, goal.criterion().triesGiven().orElse(measure.usualTrials()));
    }
}
