package stridetally.logbook;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import stridetally.model.Caseload;
import stridetally.model.Goal;
import stridetally.model.GoalId;
import stridetally.model.Settings;
import stridetally.model.Student;
import stridetally.model.StudentCode;
import stridetally.model.Visit;
import stridetally.problem.At;
import stridetally.problem.Checked;
import stridetally.problem.ProblemCode;
import stridetally.problem.RowProblem;
import stridetally.table.Cells;

/** Puts the hand-kept files together. A bad row is told and left out, its neighbours are taken. */
final class CaseloadReader {
    private final Settings settings;
    private final Function<KeptKind, KeptTable> tables;
    private final List<RowProblem> problems = new ArrayList<>();
    private final Map<GoalId, At> goalAt = new HashMap<>();
    private final Map<StudentCode, At> studentAt = new HashMap<>();

    CaseloadReader(Settings settings, Function<KeptKind, KeptTable> tables) {
        this.settings = settings;
        this.tables = tables;
    }

    Checked<Caseload> read(List<Visit> visits) {
        List<Student> students = students();
        List<Goal> goals = goals();
        Caseload caseload = new Caseload(
                settings,
                students,
                goals,
                rows(KeptKind.BENCHMARKS, KeptRows::benchmark),
                rows(KeptKind.ATTAINMENT, KeptRows::attainment),
                rows(KeptKind.CHANGES, KeptRows::change),
                rows(KeptKind.SERVICES, KeptRows::service),
                visits,
                rows(KeptKind.BODIES, KeptRows::body),
                rows(KeptKind.REMARKS, KeptRows::remark));
        return new Checked<>(java.util.Optional.of(caseload), problems);
    }

    private List<Student> students() {
        List<Student> students = new ArrayList<>();
        for (Cells cells : table(KeptKind.STUDENTS).rows()) {
            take(KeptRows.student(cells), student -> {
                At before = studentAt.putIfAbsent(student.code(), cells.at());
                if (before == null) {
                    students.add(student);
                } else {
                    twice(cells, "student", before);
                }
            });
        }
        return students;
    }

    private List<Goal> goals() {
        GoalRows reader = new GoalRows(settings);
        List<Goal> goals = new ArrayList<>();
        for (Cells cells : table(KeptKind.GOALS).rows()) {
            take(reader.read(cells), goal -> {
                At before = goalAt.putIfAbsent(goal.id(), cells.at());
                if (before != null) {
                    twice(cells, "goal", before);
                    return;
                }
                goals.add(goal);
                if (!studentAt.isEmpty() && !studentAt.containsKey(goal.student())) {
                    problems.add(new RowProblem(
                            ProblemCode.GOAL_STUDENT_UNKNOWN,
                            cells.at("student"),
                            "",
                            "a student of students.csv",
                            "add the student or correct the code"));
                }
            });
        }
        return goals;
    }

    private <T> List<T> rows(KeptKind kind, Function<Cells, Checked<T>> reader) {
        List<T> records = new ArrayList<>();
        for (Cells cells : table(kind).rows()) {
            take(reader.apply(cells), records::add);
            noteUnknownGoal(cells);
        }
        return records;
    }

    /** A benchmark, level, change or remark on a goal that is not written serves nobody; the person should know. */
    private void noteUnknownGoal(Cells cells) {
        String goal = cells.text("goal");
        if (!goal.isEmpty() && !goalAt.containsKey(new GoalId(goal))) {
            problems.add(new RowProblem(
                    ProblemCode.GOAL_UNCLEAR,
                    cells.at("goal"),
                    goal,
                    "a goal of goals.csv",
                    "add the goal or correct its id"));
        }
    }

    private KeptTable table(KeptKind kind) {
        KeptTable table = tables.apply(kind).requiring(kind.required());
        problems.addAll(table.problems());
        return table;
    }

    private <T> void take(Checked<T> checked, java.util.function.Consumer<T> taker) {
        problems.addAll(checked.problems());
        checked.value().ifPresent(taker);
    }

    private void twice(Cells cells, String column, At before) {
        problems.add(new RowProblem(
                ProblemCode.DUPLICATE,
                cells.at(column),
                "",
                "each " + column + " once; it stands at " + before.text() + " already",
                "remove or rename one of the two"));
    }
}
