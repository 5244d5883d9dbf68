package stridetally.logbook;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import stridetally.ingest.LogRules;
import stridetally.model.StudentCode;
import stridetally.model.Visit;
import stridetally.problem.At;
import stridetally.problem.ProblemCode;
import stridetally.problem.ProblemTally;
import stridetally.problem.RowProblem;
import stridetally.problem.Spelling;
import stridetally.table.Row;

/** One attendance log on its way into a logbook: each row taken, known already, or set aside with its reason. */
final class VisitImport implements VisitLog.Taker {
    private final String file;
    private final String shortName;
    private final LogRules rules;
    private final KnownVisits knownVisits;
    private final TrialImport.Destination destination;
    private final ProblemTally problems;
    private final Map<List<String>, Long> here = new HashMap<>();
    private final Mends mends;
    private long taken;
    private long known;
    private long setAside;

    VisitImport(
            String file,
            String shortName,
            LogRules rules,
            KnownVisits knownVisits,
            TrialImport.Destination destination,
            ProblemTally problems,
            Mends mends) {
        this.file = file;
        this.shortName = shortName;
        this.rules = rules;
        this.knownVisits = knownVisits;
        this.destination = destination;
        this.problems = problems;
        this.mends = mends;
    }

    long taken() {
        return taken;
    }

    long known() {
        return known;
    }

    long setAside() {
        return setAside;
    }

    @Override
    public void taken(Visit visit, Row row) {
        Optional<RowProblem> wrong = unknownStudent(visit, row).or(() -> ahead(visit, row));
        if (wrong.isPresent()) {
            setAside(row, List.of(wrong.get()));
            return;
        }
        if (mends.isClosed(stand(row))) {
            known++;
            return;
        }
        List<String> cells = VisitLog.cells(visit);
        if (knownVisits.holds(cells)) {
            known++;
            return;
        }
        Long before = here.putIfAbsent(cells, row.line());
        if (before == null) {
            destination.row(cells);
            taken++;
        } else {
            setAside(row, List.of(twice(row, before)));
        }
    }

    /** To be called when the file is done: its visits are known to the files after it. */
    void remember() {
        knownVisits.addAll(here.keySet());
    }

    @Override
    public void setAside(Row row, List<RowProblem> reasons) {
        if (mends.isClosed(stand(row))) {
            known++;
            return;
        }
        reasons.forEach(reason -> problems.add(mends.inFile(reason)));
        setAside++;
        if (mends.staysOpen(stand(row))) {
            return;
        }
        destination.setAside(SetAsideRow.of("", At.row(shortName, row.line()).text(), reasons, row.cells()));
    }

    private Stand stand(Row row) {
        return new Stand(At.row(shortName, row.line()), row.cells());
    }

    private Optional<RowProblem> unknownStudent(Visit visit, Row row) {
        if (rules.roster().map(codes -> codes.contains(visit.student())).orElse(true)) {
            return Optional.empty();
        }
        List<String> codes = rules.roster().orElseThrow().stream()
                .map(StudentCode::text)
                .sorted()
                .toList();
        String near = Spelling.nearest(visit.student().text(), codes)
                .map(code -> "did you mean " + code + "? ")
                .orElse("");
        return Optional.of(new RowProblem(
                ProblemCode.STUDENT_UNKNOWN,
                At.row(file, row.line()),
                "",
                "a code of students.csv",
                near + "correct the code, or add the student to students.csv"));
    }

    private RowProblem twice(Row row, long before) {
        return new RowProblem(
                ProblemCode.DUPLICATE,
                At.row(file, row.line()),
                "line " + before + " of this file has the same visit",
                "one row for each visit",
                "if there were two, tell them apart by their kind or reason; else dismiss the row");
    }

    private Optional<RowProblem> ahead(Visit visit, Row row) {
        return visit.date().isAfter(rules.asOf())
                ? Optional.of(new RowProblem(
                        ProblemCode.DATE_AHEAD,
                        At.row(file, row.line()),
                        visit.date().toString(),
                        "a day up to " + rules.asOf(),
                        "correct the date, or import it when the day has come"))
                : Optional.empty();
    }
}
