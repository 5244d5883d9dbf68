package stridetally.cli.input;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Optional;
import stridetally.cli.Console;
import stridetally.cli.files.FileSource;
import stridetally.cli.files.StandardInput;
import stridetally.cli.options.SourceOption;
import stridetally.cli.options.WritingOptions;
import stridetally.ingest.ByteSource;
import stridetally.logbook.Logbook;
import stridetally.problem.RowProblem;
import stridetally.problem.Severity;

/** Opens what a command works on, and says what the person must know of it. */
public final class Sources {
    private final Console console;

    public Sources(Console console) {
        this.console = console;
    }

    /** A logbook, every goal scored and judged. */
    public ScoredLogbook logbook(Path folder, Optional<LocalDate> known, LocalDate asOf) {
        return logbook(Logbook.open(folder, known), folder, asOf);
    }

    /** A logbook that is open already, every goal scored and judged. */
    public ScoredLogbook logbook(Logbook book, Path folder, LocalDate asOf) {
        OpenLogbook open = OpenLogbook.of(book);
        open.problems().forEach(this::tell);
        ScoredLogbook scored = ScoredLogbook.of(open, asOf);
        if (scored.aheadCount() > 0) {
            console.note(tries(scored.aheadCount()) + " after " + asOf + " left out");
        }
        int setAside = open.book().openSetAside().size();
        if (setAside > 0) {
            console.note((setAside == 1 ? "1 row is" : setAside + " rows are")
                    + " still set aside; see import --status --logbook " + folder);
        }
        return scored;
    }

    /** A bare log. */
    public LogRead log(SourceOption source, WritingOptions writing, LocalDate asOf) {
        ByteSource bytes = source.isStandardInput() ? new StandardInput(console.in()) : new FileSource(source.path());
        LogRead log = LogRead.of(bytes, new LogRead.How(asOf, writing.order(), writing.decimals()));
        log.problems().sentences().forEach(console::warn);
        if (!log.note().isEmpty()) {
            console.note(log.note());
        }
        console.note(bytes.name() + ": a bare log has no goals: every recorded try counts, and duplicates are not"
                + " looked for");
        if (log.ahead() > 0) {
            console.note(tries(log.ahead()) + " after " + asOf + " left out");
        }
        return log;
    }

    /** A row that cannot be read must be known; what is only doubtful can be hushed. */
    private void tell(RowProblem problem) {
        if (problem.severity() == Severity.SET_ASIDE) {
            console.warn(problem.sentence());
        } else {
            console.note(problem.sentence());
        }
    }

    private static String tries(long count) {
        return count == 1 ? "1 try" : count + " tries";
    }
}
