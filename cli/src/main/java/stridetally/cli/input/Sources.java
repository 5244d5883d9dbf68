package stridetally.cli.input;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import stridetally.cli.Console;
import stridetally.cli.files.FileSource;
import stridetally.cli.files.StandardInput;
import stridetally.cli.options.ForecastWay;
import stridetally.cli.options.NarrowOptions;
import stridetally.cli.options.SourceOption;
import stridetally.cli.options.WritingOptions;
import stridetally.ingest.ByteSource;
import stridetally.ingest.LogFile;
import stridetally.ingest.SeriesNumbers;
import stridetally.ingest.WhichReader;
import stridetally.logbook.Logbook;
import stridetally.measures.Catalogue;
import stridetally.model.StudentCode;
import stridetally.problem.RowProblem;
import stridetally.problem.Severity;
import stridetally.scoring.DerivedWalks;
import stridetally.scoring.GoalScore;

/** Opens what a command works on, and says what the person must know of it. */
public final class Sources {
    private final Console console;

    public Sources(Console console) {
        this.console = console;
    }

    /** A logbook, every goal scored and judged. */
    public ScoredLogbook logbook(Path folder, Optional<LocalDate> known, LocalDate asOf, ForecastWay forecast) {
        return logbook(Logbook.open(folder, known), folder, asOf, forecast);
    }

    /** A logbook that is open already, every goal scored and judged. */
    public ScoredLogbook logbook(Logbook book, Path folder, LocalDate asOf, ForecastWay forecast) {
        OpenLogbook open = OpenLogbook.of(book);
        open.problems().forEach(this::tell);
        ScoredLogbook scored = ScoredLogbook.of(open, asOf, forecast);
        if (scored.aheadCount() > 0) {
            console.note(tries(scored.aheadCount()) + " after " + asOf + " left out");
        }
        notes(scored).forEach(console::note);
        int setAside = open.book().openSetAside().size();
        if (setAside > 0) {
            console.note((setAside == 1 ? "1 row is" : setAside + " rows are")
                    + " still set aside; see import --status --logbook " + folder);
        }
        return scored;
    }

    private static List<String> notes(ScoredLogbook scored) {
        boolean aimedAt = false;
        for (GoalScore score : scored.scores()) {
            aimedAt |= DerivedWalks.follows(score.goal().measure());
        }
        return aimedAt ? scored.walks().allNotes() : scored.walks().notes();
    }

    /** Bare logs by one of the readers, read at once. */
    public LogRead log(
            SourceOption source, WritingOptions writing, WhichReader which, NarrowOptions narrow, LocalDate asOf) {
        LogPasses passes = passes(source, writing, which, narrow, asOf, false);
        tellRest(passes, narrow);
        return passes.current();
    }

    /**
     * Bare logs, or the first range of their students; says what is to be said of their rows.
     *
     * @param ranges whether the taker can go through ranges
     */
    public LogPasses passes(
            SourceOption source,
            WritingOptions writing,
            WhichReader which,
            NarrowOptions narrow,
            LocalDate asOf,
            boolean ranges) {
        List<ByteSource> sources = new ArrayList<>();
        for (Path path : source.logs()) {
            sources.add(bytes(path));
        }
        LogRead.How how = new LogRead.How(asOf, writing.order(), writing.decimals(), source.sourcePerFile());
        LogPasses passes = LogPasses.of(new LogPasses.Wanted(
                sources,
                how,
                which,
                source.memory().orElse(Runtime.getRuntime().maxMemory() / 10 * 6),
                ranges,
                narrow.students(),
                console::progress,
                console::note));
        LogRead log = passes.current();
        for (LogFile file : log.files()) {
            if (file.refused().isPresent()) {
                console.warn(file.refused().get().getMessage() + "; nothing of this file was taken, the others were");
            }
        }
        console.tell(log.problems());
        for (String note : log.notes()) {
            console.note(note);
        }
        console.note(
                sources.size() == 1
                        ? sources.get(0).name() + ": a bare log has no goals: every recorded try counts, and duplicates"
                                + " are not looked for"
                        : sources.size() + " logs, read as one: bare logs have no goals: every recorded try counts, and"
                                + " duplicates are not looked for");
        if (log.ahead() > 0) {
            console.note(tries(log.ahead()) + " after " + asOf + " left out");
        }
        return passes;
    }

    /** What can be said only when all students were gone through. */
    public void tellRest(LogPasses passes, NarrowOptions narrow) {
        for (String note : passes.walks().allNotes()) {
            console.note(note);
        }
        for (StudentCode code : narrow.students()) {
            if (!passes.saw(code)) {
                tellUnknown(code);
            }
        }
    }

    /** The catalogue, with the measures of a logbook when one is given. */
    public Catalogue catalogue(Optional<Path> folder) {
        if (folder.isEmpty()) {
            return Catalogue.standard();
        }
        OpenLogbook open = OpenLogbook.at(folder.get(), Optional.empty());
        open.problems().forEach(this::tell);
        return open.catalogue();
    }

    /** The tries of a logbook or a bare log as two observers wrote them. */
    public ObservedTries observed(SourceOption source, WritingOptions writing, NarrowOptions narrow, LocalDate asOf) {
        ObservedTries observed = source.isFolder()
                ? ObservedTries.of(OpenLogbook.at(source.path(), source.known()), asOf, narrow::shows)
                : ObservedTries.of(
                        bytes(source.path()),
                        new LogRead.How(asOf, writing.order(), writing.decimals(), source.sourcePerFile()),
                        narrow::shows);
        console.tell(observed.problems());
        if (observed.pairs().byMeasure().isEmpty()) {
            console.warn("no try was written by two observers");
        }
        return observed;
    }

    /** Warns of typed codes that neither the hand-kept files nor the tries know: an empty table would not tell. */
    public void tellUnknown(NarrowOptions narrow, ScoredLogbook book) {
        Set<StudentCode> known = students(book.scorer().index().numbers());
        book.open().caseload().students().forEach(student -> known.add(student.code()));
        book.scores().forEach(score -> known.add(score.goal().student()));
        tellUnknown(narrow, known);
    }

    private ByteSource bytes(Path path) {
        return SourceOption.isStandardInput(path) ? new StandardInput(console.in()) : new FileSource(path);
    }

    /** A row that cannot be read must be known; what is only doubtful can be hushed. */
    private void tell(RowProblem problem) {
        if (problem.severity() == Severity.SET_ASIDE) {
            console.warn(problem.sentence());
        } else {
            console.note(problem.sentence());
        }
    }

    private void tellUnknown(NarrowOptions narrow, Set<StudentCode> known) {
        for (StudentCode code : narrow.students()) {
            if (!known.contains(code)) {
                tellUnknown(code);
            }
        }
    }

    private void tellUnknown(StudentCode code) {
        console.warn("nothing is known of a student with the code " + code.text());
    }

    private static Set<StudentCode> students(SeriesNumbers numbers) {
        Set<StudentCode> students = new HashSet<>();
        for (int series = 0; series < numbers.size(); series++) {
            students.add(numbers.key(series).student());
        }
        return students;
    }

    private static String tries(long count) {
        return count == 1 ? "1 try" : count + " tries";
    }
}
