package stridetally.logbook;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import stridetally.ingest.ColumnSamples;
import stridetally.ingest.KnownTrials;
import stridetally.ingest.LogRow;
import stridetally.ingest.TrialCells;
import stridetally.ingest.TrialFeed;
import stridetally.ingest.TrialLog;
import stridetally.ingest.TrialOrdinals;
import stridetally.measures.Measure;
import stridetally.model.Trial;
import stridetally.problem.ProblemCode;
import stridetally.problem.ProblemTally;
import stridetally.problem.RowProblem;

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
     * @param notes sentences on the rows
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
            ProblemTally problems,
            List<String> notes) {

        public Outcome {
            superseded = List.copyOf(superseded);
            notes = List.copyOf(notes);
        }
    }

    private static final int AT = TrialCells.HEADINGS.indexOf("at");

    private final TrialLog log;
    private final KnownTrials knownTrials;
    private final Clash clash;
    private final Destination destination;
    private final int entry;
    private final EntryLines lines = new EntryLines();
    private final Clashes clashes;
    private final Mends mends;
    private final TrialOrdinals ordinals = new TrialOrdinals();
    private final ProblemTally problems = new ProblemTally();
    private final List<LineRange> superseded = new ArrayList<>();
    private final ColumnSamples samples;
    private long taken;
    private long known;
    private long setAside;

    /**
     * Over one log.
     *
     * @param knownTrials every trial of the logbook; learns those of this log
     * @param entry the number that the entry of this log will have
     * @param samples learns what became of cells
     */
    public TrialImport(
            TrialLog log,
            KnownTrials knownTrials,
            Clash clash,
            int entry,
            Destination destination,
            ColumnSamples samples) {
        this(log, knownTrials, clash, entry, destination, samples, Mends.none());
    }

    TrialImport(
            TrialLog log,
            KnownTrials knownTrials,
            Clash clash,
            int entry,
            Destination destination,
            ColumnSamples samples,
            Mends mends) {
        this.mends = mends;
        this.log = log;
        this.entry = entry;
        this.clashes = new Clashes(entry, lines);
        this.knownTrials = knownTrials;
        this.clash = clash;
        this.destination = destination;
        this.samples = samples;
    }

    /** Brings every row to its place. */
    public Outcome run() {
        TrialLog.Count count = log.read(new TrialLog.Taker() {
            @Override
            public void taken(Trial trial, LogRow row, List<RowProblem> notes) {
                Stand stand = Stand.of(row);
                if (mends.isClosed(stand)) {
                    known++;
                    return;
                }
                notes.forEach(note -> problems.add(mends.inFile(note)));
                samples.look(trial, measure(trial), row);
                Optional<SetAsideRecord> mended = mends.of(stand);
                if (trial.number() > 0 || mended.isEmpty()) {
                    place(ordinals.numbered(trial), trial.number() > 0, row);
                } else {
                    placeUnnumbered(trial, mended.get(), row);
                }
            }

            @Override
            public void setAside(LogRow row, List<RowProblem> reasons) {
                if (mends.isClosed(Stand.of(row))) {
                    known++;
                } else {
                    aside(row, reasons);
                }
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
                problems,
                count.notes());
    }

    /**
     * A mended row without a number comes after the tries of its session: its place among them is no longer known. One
     * that was in conflict must say its number, or it could be taken as a try that never was; so must one that was closed
     * before and now has another value.
     */
    private void placeUnnumbered(Trial trial, SetAsideRecord mended, LogRow row) {
        boolean closed = mends.isClosed(mended);
        if (isDuplicate(mended) || EarlierRows.hasOneOf(mended, Set.of(ProblemCode.CONFLICT.name()))) {
            aside(row, List.of(Clashes.numberWanted(row, mended)));
            return;
        }
        int number = 1;
        while (knownTrials.originOf(trial.withNumber(number)) != 0) {
            if (closed && knownTrials.has(trial.withNumber(number))) {
                known++;
                return;
            }
            number++;
        }
        if (closed) {
            aside(row, List.of(Clashes.numberWanted(row, mended)));
        } else {
            place(trial.withNumber(number), false, row);
        }
    }

    private void place(Trial trial, boolean numberWritten, LogRow row) {
        long here = TrialFeed.origin(entry, lines.next());
        KnownTrials.Standing standing = knownTrials.add(trial, here);
        if (standing == KnownTrials.Standing.NEW) {
            take(trial, row, "");
            return;
        }
        long before = knownTrials.originOf(trial);
        boolean inThisFile = TrialFeed.entry(before) == entry;
        if (standing == KnownTrials.Standing.SAME) {
            if (inThisFile
                    || mends.of(Stand.of(row)).map(TrialImport::isDuplicate).orElse(false)) {
                aside(row, List.of(clashes.duplicate(row, before)));
            } else {
                known++;
            }
        } else if (clash == Clash.REPLACE && !inThisFile) {
            LineRange replaced = LineRange.line(TrialFeed.entry(before), TrialFeed.line(before));
            superseded.add(replaced);
            knownTrials.replace(trial, here);
            take(trial, row, ", replaces " + replaced.text());
        } else {
            aside(row, List.of(clashes.conflict(row, before, numberWritten)));
        }
    }

    private static boolean isDuplicate(SetAsideRecord record) {
        return EarlierRows.hasOneOf(record, Set.of(ProblemCode.DUPLICATE.name()));
    }

    /** The place of a row also says what it stands for: that is how a reader of the entry sees it. */
    private void take(Trial trial, LogRow row, String replaces) {
        Stand stand = Stand.of(row);
        List<String> cells = TrialCells.of(trial, measure(trial));
        String mended = mends.of(stand).map(one -> ", mends " + one.id()).orElse("");
        cells.set(AT, cells.get(AT) + mended + replaces);
        destination.row(cells);
        lines.add(row.line(), cells);
        taken++;
    }

    private Measure measure(Trial trial) {
        return log.rules()
                .catalogue()
                .find(trial.key().measure())
                .orElseThrow(() -> new IllegalStateException("a checked trial has a known measure"));
    }

    private void aside(LogRow row, List<RowProblem> reasons) {
        Stand stand = Stand.of(row);
        reasons.forEach(reason -> problems.add(mends.inFile(reason)));
        setAside++;
        if (mends.staysOpen(stand)) {
            return;
        }
        destination.setAside(SetAsideRow.of(readStudent(row), row.kept().text(), reasons, row.cells()));
    }

    /** The code, only when it is one of the roster: the cell may hold a name. */
    private String readStudent(LogRow row) {
        String written = row.student();
        boolean known = log.rules()
                .roster()
                .map(codes -> codes.stream().anyMatch(code -> code.text().equals(written)))
                .orElse(true);
        return known ? written : "";
    }
}
