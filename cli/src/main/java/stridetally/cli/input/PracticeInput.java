package stridetally.cli.input;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import stridetally.cli.Console;
import stridetally.ingest.TrialCells;
import stridetally.logbook.ExtraTable;
import stridetally.logbook.Logbook;
import stridetally.measures.FamilyWords;
import stridetally.measures.ShippedLadder;
import stridetally.model.Student;
import stridetally.model.StudentCode;
import stridetally.model.Trial;
import stridetally.model.TrialPlace;
import stridetally.model.Visit;
import stridetally.model.WordScale;
import stridetally.plan.Approvals;
import stridetally.plan.DaysSeen;
import stridetally.plan.HomeSheet;
import stridetally.plan.Ladder;
import stridetally.plan.LadderRows;
import stridetally.plan.LineLayout;
import stridetally.plan.LogSheet;
import stridetally.plan.Probes;
import stridetally.plan.StudentPlan;
import stridetally.problem.Checked;
import stridetally.problem.InputRefused;
import stridetally.problem.RowProblem;
import stridetally.problem.Severity;
import stridetally.stats.Estimate;
import stridetally.table.Cells;

/** Reads what plans are made of, and refuses a ladder or approvals that cannot be trusted in every row. */
public final class PracticeInput {
    private final OpenLogbook open;
    private final List<Student> students;
    private final LocalDate asOf;

    private PracticeInput(OpenLogbook open, List<Student> students, LocalDate asOf) {
        this.open = open;
        this.students = students;
        this.asOf = asOf;
    }

    /** Opens a logbook for the students of these codes, or for all who are there on the day. */
    public static PracticeInput of(Logbook book, List<String> codes, LocalDate asOf, Console console) {
        OpenLogbook open = OpenLogbook.of(book);
        for (RowProblem problem : open.problems()) {
            if (problem.severity() == Severity.SET_ASIDE) {
                console.warn(problem.sentence());
            } else {
                console.note(problem.sentence());
            }
        }
        List<String> unknown = new ArrayList<>(codes);
        open.caseload().students().forEach(one -> unknown.remove(one.code().text()));
        if (!unknown.isEmpty()) {
            throw new InputRefused("students.csv has no student with the code " + String.join(", ", unknown));
        }
        List<Student> students = open.caseload().students().stream()
                .filter(one -> codes.isEmpty()
                        ? isThere(one, asOf)
                        : codes.contains(one.code().text()))
                .sorted(Comparator.comparing(Student::code))
                .toList();
        if (students.isEmpty()) {
            throw new InputRefused("students.csv has no student who is there on " + asOf);
        }
        return new PracticeInput(open, students, asOf);
    }

    /** The logbook. */
    public OpenLogbook open() {
        return open;
    }

    /** What each student may practise next. */
    public List<StudentPlan> plans(Console console) {
        Ladder ladder = ladder(console);
        Approvals approvals = approvals(ladder, console);
        Probes probes = new Probes(asOf);
        open.book()
                .trials()
                .forEach((entry, line, cells) -> probes.add(
                        TrialCells.read(cells, open.caseload().settings(), "entry " + entry + ", line " + line)));
        return students.stream()
                .map(one -> StudentPlan.of(one, ladder, approvals, probes, line(one), asOf))
                .toList();
    }

    /** The home sheets that can be made; why there is none for a student is told. */
    public List<HomeSheet> homeSheets(Console console) {
        Ladder ladder = ladder(console);
        Approvals approvals = approvals(ladder, console);
        List<HomeSheet> sheets = new ArrayList<>();
        for (Student student : students) {
            Estimate<HomeSheet> sheet = HomeSheet.of(student, ladder, approvals, line(student), asOf);
            sheet.value().ifPresent(sheets::add);
            if (!sheet.isEstimated()) {
                console.warn("no home sheet for " + student.code().text() + ": " + sheet.reason());
            }
        }
        if (sheets.isEmpty()) {
            throw new InputRefused("there is no home sheet to write; the reason of each student is told above");
        }
        return sheets;
    }

    /** The blank logs of the week after the day; what was left out is told. */
    public List<LogSheet> logs(Console console) {
        DaysSeen seen = new DaysSeen(asOf);
        open.caseload().visits().stream()
                .filter(visit -> visit.status() == Visit.Status.HELD)
                .forEach(visit -> seen.add(visit.student(), visit.date()));
        open.book().trials().forEach((entry, line, cells) -> {
            Trial trial = TrialCells.read(cells, open.caseload().settings(), "entry " + entry + ", line " + line);
            if (trial.key().place() == TrialPlace.SCHOOL) {
                seen.add(trial.key().student(), trial.date());
            }
        });
        LogSheet.Week week =
                LogSheet.week(open.caseload(), id -> open.catalogue().find(id), seen, students::contains, asOf);
        week.notes().forEach(console::note);
        if (week.sheets().isEmpty()) {
            throw new InputRefused(
                    "there is no log to write: no open goal of a student shown in the week after " + asOf);
        }
        return week.sheets();
    }

    private static boolean isThere(Student student, LocalDate day) {
        return student.until().map(last -> !last.isBefore(day)).orElse(true)
                && student.from().map(first -> !first.isAfter(day)).orElse(true);
    }

    private Optional<LineLayout> line(Student student) {
        return LineLayout.of(student.code(), open.caseload().bodies(), asOf);
    }

    private Ladder ladder(Console console) {
        String file = ExtraTable.LADDER.file();
        List<Cells> rows = rows(ExtraTable.LADDER, console).orElseGet(ShippedLadder::rows);
        if (rows.isEmpty()) {
            throw new InputRefused(file + " holds no rung; take the file away to use the ladder that comes along");
        }
        return trusted(LadderRows.read(rows, open.catalogue(), help(), FamilyWords.languages()), file, console);
    }

    private Approvals approvals(Ladder ladder, Console console) {
        Set<StudentCode> codes =
                open.caseload().students().stream().map(Student::code).collect(Collectors.toSet());
        return rows(ExtraTable.APPROVED, console)
                .map(rows -> trusted(Approvals.read(rows, ladder, help(), codes), ExtraTable.APPROVED.file(), console))
                .orElse(Approvals.NONE);
    }

    private WordScale help() {
        return open.caseload().settings().help();
    }

    private Optional<List<Cells>> rows(ExtraTable table, Console console) {
        return open.book().table(table).map(read -> {
            boolean sound = read.problems().isEmpty();
            return trusted(sound ? read : Checked.setAside(read.problems()), table.file(), console);
        });
    }

    private static <T> T trusted(Checked<T> read, String file, Console console) {
        read.problems().forEach(problem -> console.warn(problem.sentence()));
        return read.value()
                .orElseThrow(() -> new InputRefused(
                        file + " cannot be trusted while a row is wrong, so nothing was made of it; see above"));
    }
}
