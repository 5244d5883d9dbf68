package stridetally.plan;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import stridetally.model.Level;
import stridetally.model.StudentCode;
import stridetally.model.WordScale;
import stridetally.problem.Checked;
import stridetally.problem.RowProblem;
import stridetally.table.Cells;

/**
 * What was approved for whom. Columns {@code student, rung, approved, until, help}; one bad cell and nothing is approved,
 * because the row that cannot be read may be the one that ends an approval.
 */
public record Approvals(List<Approval> rows) {
    /** No file, nothing approved. */
    public static final Approvals NONE = new Approvals(List.of());

    public Approvals {
        rows = List.copyOf(rows);
    }

    /** Reads the file; {@code students} are the codes of the roster. */
    public static Checked<Approvals> read(List<Cells> cells, Ladder ladder, WordScale help, Set<StudentCode> students) {
        List<Approval> rows = new ArrayList<>();
        List<RowProblem> problems = new ArrayList<>();
        for (Cells one : cells) {
            PlanRow row = new PlanRow(one);
            Optional<Approval> approval = approval(row, ladder, help, students);
            problems.addAll(row.problems());
            approval.ifPresent(rows::add);
        }
        return problems.isEmpty() ? Checked.fine(new Approvals(rows)) : Checked.setAside(problems);
    }

    /**
     * The approval of a rung that counts on a day: the latest made by then, and of equal days the lower row. An earlier one
     * never comes back when the latest has ended.
     */
    public Optional<Approval> latest(StudentCode student, Rung rung, LocalDate asOf) {
        Optional<Approval> latest = Optional.empty();
        for (Approval one : rows) {
            boolean ours = one.student().equals(student)
                    && one.rung().equals(rung.id())
                    && !one.approved().isAfter(asOf);
            if (ours
                    && latest.map(before -> !one.approved().isBefore(before.approved()))
                            .orElse(true)) {
                latest = Optional.of(one);
            }
        }
        return latest;
    }

    private static Optional<Approval> approval(PlanRow row, Ladder ladder, WordScale help, Set<StudentCode> students) {
        String student = row.needed("student", "a student code");
        if (!student.isEmpty() && !students.contains(new StudentCode(student))) {
            row.wrong("student", "", "a code of students.csv", "correct the code");
        }
        String rung = row.needed("rung", "a rung of the ladder");
        if (!rung.isEmpty()) {
            List<String> known = ladder.rungs().stream().map(Rung::id).toList();
            row.word("rung", rung, known, ladder::find);
        }
        row.needed("approved", "the day of the approval");
        Optional<LocalDate> approved = row.day("approved");
        Optional<LocalDate> until = row.day("until");
        if (approved.isPresent() && until.isPresent() && until.get().isBefore(approved.get())) {
            row.wrong("until", "a day not before that of the approval", "correct one of them");
        }
        String word = row.needed("help", "how much help must be given, one of " + String.join(", ", help.words()));
        Optional<Level> level = word.isEmpty() ? Optional.empty() : row.word("help", word, help.words(), help::find);
        return row.isFine()
                ? Optional.of(new Approval(
                        new StudentCode(student), rung, approved.orElseThrow(), until, level.orElseThrow()))
                : Optional.empty();
    }
}
