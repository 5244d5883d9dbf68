package stridetally.model;

import java.util.List;
import java.util.Optional;

/** Everything hand-kept of one logbook, as it was known on a day; the trials are not here. */
public record Caseload(
        Settings settings,
        List<Student> students,
        List<Goal> goals,
        List<Benchmark> benchmarks,
        List<Attainment> attainment,
        List<Change> changes,
        List<ServicePlan> services,
        List<Visit> visits,
        List<Body> bodies,
        List<Remark> remarks) {

    public Caseload {
        students = List.copyOf(students);
        goals = List.copyOf(goals);
        benchmarks = List.copyOf(benchmarks);
        attainment = List.copyOf(attainment);
        changes = List.copyOf(changes);
        services = List.copyOf(services);
        visits = List.copyOf(visits);
        bodies = List.copyOf(bodies);
        remarks = List.copyOf(remarks);
    }

    /** The same with other goals. */
    public Caseload withGoals(List<Goal> goals) {
        return new Caseload(
                settings, students, goals, benchmarks, attainment, changes, services, visits, bodies, remarks);
    }

    /** The student of a code, if the roster has them. */
    public Optional<Student> student(StudentCode code) {
        for (Student student : students) {
            if (student.code().equals(code)) {
                return Optional.of(student);
            }
        }
        return Optional.empty();
    }

    /** The goal of an id. */
    public Optional<Goal> goal(GoalId id) {
        for (Goal goal : goals) {
            if (goal.id().equals(id)) {
                return Optional.of(goal);
            }
        }
        return Optional.empty();
    }
}
