package stridetally.cli.input;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import stridetally.ingest.KnownTrials;
import stridetally.ingest.NamesToCodes;
import stridetally.ingest.SeriesNumbers;
import stridetally.ingest.TrialCells;
import stridetally.ingest.TrialFeed;
import stridetally.logbook.EntryKind;
import stridetally.logbook.ExtraTable;
import stridetally.logbook.GoalTerms;
import stridetally.logbook.KeptKind;
import stridetally.logbook.Logbook;
import stridetally.measures.Catalogue;
import stridetally.measures.Measure;
import stridetally.measures.MeasureRow;
import stridetally.model.Caseload;
import stridetally.model.Student;
import stridetally.model.StudentCode;
import stridetally.problem.Checked;
import stridetally.problem.RowProblem;
import stridetally.scoring.SessionTable;
import stridetally.table.Cells;

/**
 * A logbook with its hand-kept files read.
 *
 * @param problems of the hand-kept files; their rows that cannot be read are left out, and told
 */
public record OpenLogbook(Logbook book, Caseload caseload, Catalogue catalogue, List<RowProblem> problems) {

    public OpenLogbook {
        problems = List.copyOf(problems);
    }

    /** Opens a folder; with a day, as it was known then. */
    public static OpenLogbook at(Path folder, Optional<LocalDate> knownOn) {
        return of(Logbook.open(folder, knownOn));
    }

    /** Reads the hand-kept files of an open logbook. */
    public static OpenLogbook of(Logbook book) {
        Checked<Caseload> caseload = book.caseload();
        List<RowProblem> problems = new ArrayList<>(caseload.problems());
        Catalogue catalogue = catalogue(book, problems);
        Checked<Caseload> inTerms = GoalTerms.of(caseload.value().orElseThrow(), catalogue);
        problems.addAll(inTerms.problems());
        return new OpenLogbook(book, inTerms.value().orElseThrow(), catalogue, problems);
    }

    /** Every trial that stands, grouped into sessions. */
    public SessionTable sessions() {
        SeriesNumbers numbers = new SeriesNumbers();
        SessionTable table = new SessionTable(numbers);
        TrialFeed feed = new TrialFeed(numbers, caseload.settings(), table);
        book.trials().forEach((entry, line, cells) -> feed.push(cells, entry, line));
        return table;
    }

    /** The identities of every trial that stands in entries of a kind. */
    public KnownTrials knownTrials(EntryKind kind) {
        KnownTrials known = new KnownTrials();
        (kind == EntryKind.SECOND_OBSERVER ? book.secondObserver() : book.trials())
                .forEach((entry, line, cells) -> known.add(
                        TrialCells.read(cells, caseload.settings(), "entry " + entry + ", line " + line),
                        TrialFeed.origin(entry, line)));
        return known;
    }

    /** The codes of the roster; empty when the logbook keeps none, and every code is taken. */
    public Optional<Set<StudentCode>> roster() {
        return book.has(KeptKind.STUDENTS)
                ? Optional.of(caseload.students().stream().map(Student::code).collect(Collectors.toSet()))
                : Optional.empty();
    }

    /** The codes that may stand in a log whose names are turned into codes: of the roster, else those with a name. */
    public Set<StudentCode> codes(NamesToCodes names) {
        return roster().orElseGet(names::students);
    }

    private static Catalogue catalogue(Logbook book, List<RowProblem> problems) {
        Catalogue standard = Catalogue.standard();
        List<Measure> extra = new ArrayList<>();
        for (Cells cells : book.rows(ExtraTable.MEASURES)) {
            Map<String, String> byName =
                    cells.header().columns().keySet().stream().collect(Collectors.toMap(name -> name, cells::text));
            Checked<Measure> measure = MeasureRow.parse(byName, cells.at(), standard);
            problems.addAll(measure.problems());
            measure.value().ifPresent(extra::add);
        }
        return standard.with(extra);
    }
}
