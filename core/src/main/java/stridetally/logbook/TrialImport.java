package stridetally.logbook;

import java.util.ArrayList;
import java.util.List;
import stridetally.ingest.KnownTrials;
import stridetally.ingest.TrialCells;
import stridetally.ingest.TrialColumn;
import stridetally.ingest.TrialFeed;
import stridetally.ingest.TrialLog;
import stridetally.ingest.TrialOrdinals;
import stridetally.measures.Measure;
import stridetally.model.Trial;
import stridetally.problem.At;
import stridetally.problem.ProblemCode;
import stridetally.problem.ProblemTally;
import stridetally.problem.RowProblem;
import stridetally.table.Row;

/**
 * One log of trials on its way into a logbook: each row is taken, known already, set aside with its reason, or blank, and
 * every row is one of the four. Rows go on one by one; only the identities of what is known are held.
 */
public final class TrialImport {

    /** What happens to a trial whose identity is known with another value. */
    public enum Clash {
        /** It is set aside as a conflict. */
        SET_ASIDE,
        /** It stands in the place of the earlier one, which stays in its entry and is no longer read. */
        REPLACE
    }

    /** Where the rows go: an entry in the making, or nowhere in a dry run. */
    public interface Destination {
        /** A row of the entry, see {@link TrialCells#HEADINGS}. */
        void row(List<String> cells);

        /** A row that was not taken. */
        void setAside(SetAsideRow row);
    }

    /**
     * What became of a log.
     *
     * @param superseded lines of earlier entries in whose place its rows stand
     * @param numbered rows without a try number, which were numbered in file order
     */
    public record Outcome(
            long rows,
            long taken,
            long known,
            long setAside,
            long blank,
            List<LineRange> superseded,
            long numbered,
            ProblemTally problems) {

        public Outcome {
            superseded = List.copyOf(superseded);
        }
    }

    private final TrialLog log;
    private final KnownTrials knownTrials;
    private final Clash clash;
    private final Destination destination;
    private final TrialOrdinals ordinals = new TrialOrdinals();
    private final ProblemTally problems = new ProblemTally();
    private final List<LineRange> superseded = new ArrayList<>();
    private long taken;
    private long known;
    private long setAside;

    /** {@code knownTrials} holds every trial of the logbook, and learns those of this log. */
    public TrialImport(TrialLog log, KnownTrials knownTrials, Clash clash, Destination destination) {
        this.log = log;
        this.knownTrials = knownTrials;
        this.clash = clash;
        this.destination = destination;
    }

    /** Brings every row to its place. */
    public Outcome run() {
        TrialLog.Count count = log.read(new TrialLog.Taker() {
            @Override
            public void taken(Trial trial, Row row, List<RowProblem> notes) {
                notes.forEach(problems::add);
                place(ordinals.numbered(trial), trial.number() > 0, row);
            }

            @Override
            public void setAside(Row row, List<RowProblem> reasons) {
                aside(row, reasons);
            }
        });
        return new Outcome(
                count.rows(),
                taken,
                known,
                setAside,
                count.blank(),
                LineRange.joined(superseded),
                ordinals.given(),
                problems);
    }

    private void place(Trial trial, boolean numberWritten, Row row) {
        long here = TrialFeed.origin(0, row.line());
        KnownTrials.Standing standing = knownTrials.add(trial, here);
        if (standing == KnownTrials.Standing.NEW) {
            take(trial);
            return;
        }
        long before = knownTrials.originOf(trial);
        int entry = TrialFeed.entry(before);
        String where = entry == 0
                ? "line " + TrialFeed.line(before) + " of this file"
                : "entry " + LogbookFolder.four(entry) + ", line " + TrialFeed.line(before);
        if (standing == KnownTrials.Standing.SAME && entry != 0) {
            known++;
        } else if (standing == KnownTrials.Standing.SAME) {
            aside(
                    row,
                    List.of(problem(
                            ProblemCode.DUPLICATE,
                            row,
                            where + " has the same try with the same value",
                            "one row for each try",
                            "give this try its own number, or dismiss the row")));
        } else if (clash == Clash.REPLACE && entry != 0) {
            superseded.add(LineRange.line(entry, TrialFeed.line(before)));
            knownTrials.replace(trial, here);
            take(trial);
        } else {
            String mend = entry == 0
                    ? "keep the right one of the two"
                    : "import it with --replace if this one is right, or give the try its own number";
            aside(
                    row,
                    List.of(problem(
                            ProblemCode.CONFLICT,
                            row,
                            where + " has this " + (numberWritten ? "try" : "try (by its place in the session)")
                                    + " with another value",
                            "one value for each try",
                            mend)));
        }
    }

    private void take(Trial trial) {
        Measure measure = log.rules()
                .catalogue()
                .find(trial.key().measure())
                .orElseThrow(() -> new IllegalStateException("a checked trial has a known measure"));
        destination.row(TrialCells.of(trial, measure));
        taken++;
    }

    private void aside(Row row, List<RowProblem> reasons) {
        reasons.forEach(problems::add);
        String at = At.row(log.shortName(), row.line()).text();
        destination.setAside(SetAsideRow.of(readStudent(row), at, reasons, row.cells()));
        setAside++;
    }

    /** The code, only when it is one of the roster: the cell may hold a name. */
    private String readStudent(Row row) {
        String written = log.layout().text(row.cells(), TrialColumn.STUDENT);
        boolean known = log.rules()
                .roster()
                .map(codes -> codes.stream().anyMatch(code -> code.text().equals(written)))
                .orElse(true);
        return known ? written : "";
    }

    private RowProblem problem(ProblemCode code, Row row, String found, String expected, String mend) {
        return new RowProblem(code, At.row(log.name(), row.line()), found, expected, mend);
    }
}
