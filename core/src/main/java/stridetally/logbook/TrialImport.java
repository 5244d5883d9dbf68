package stridetally.logbook;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
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

    private static final int AT = TrialCells.HEADINGS.indexOf("at");

    private final TrialLog log;
    private final KnownTrials knownTrials;
    private final Clash clash;
    private final Destination destination;
    private final int entry;
    private final EntryLines lines = new EntryLines();
    private final Mends mends;
    private final TrialOrdinals ordinals = new TrialOrdinals();
    private final ProblemTally problems = new ProblemTally();
    private final List<LineRange> superseded = new ArrayList<>();
    private long taken;
    private long known;
    private long setAside;

    /**
     * Over one log.
     *
     * @param knownTrials every trial of the logbook; learns those of this log
     * @param entry the number that the entry of this log will have
     */
    public TrialImport(TrialLog log, KnownTrials knownTrials, Clash clash, int entry, Destination destination) {
        this(log, knownTrials, clash, entry, destination, Mends.none());
    }

    TrialImport(TrialLog log, KnownTrials knownTrials, Clash clash, int entry, Destination destination, Mends mends) {
        this.mends = mends;
        this.log = log;
        this.entry = entry;
        this.knownTrials = knownTrials;
        this.clash = clash;
        this.destination = destination;
    }

    /** Brings every row to its place. */
    public Outcome run() {
        TrialLog.Count count = log.read(new TrialLog.Taker() {
            @Override
            public void taken(Trial trial, Row row, List<RowProblem> notes) {
                if (mends.isClosed(row)) {
                    known++;
                    return;
                }
                notes.forEach(note -> problems.add(mends.inFile(note)));
                Optional<SetAsideRecord> mended = mends.of(row);
                if (trial.number() > 0 || mended.isEmpty()) {
                    place(ordinals.numbered(trial), trial.number() > 0, row);
                } else {
                    placeUnnumbered(trial, mended.get(), row);
                }
            }

            @Override
            public void setAside(Row row, List<RowProblem> reasons) {
                if (mends.isClosed(row)) {
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
                problems);
    }

    /**
     * A mended row without a number comes after the tries of its session: its place among them is no longer known. One
     * that was in conflict must say its number, or it could be taken as a try that never was.
     */
    private void placeUnnumbered(Trial trial, SetAsideRecord mended, Row row) {
        if (isDuplicate(mended) || hasCode(mended, ProblemCode.CONFLICT)) {
            aside(
                    row,
                    List.of(new RowProblem(
                            ProblemCode.CONFLICT,
                            At.row(log.name(), row.line()),
                            "",
                            "the number of the try",
                            "write it in the trial column, or dismiss " + mended.id())));
            return;
        }
        int number = 1;
        while (knownTrials.originOf(trial.withNumber(number)) != 0) {
            number++;
        }
        place(trial.withNumber(number), false, row);
    }

    private void place(Trial trial, boolean numberWritten, Row row) {
        long here = TrialFeed.origin(entry, lines.next());
        KnownTrials.Standing standing = knownTrials.add(trial, here);
        if (standing == KnownTrials.Standing.NEW) {
            take(trial, row, "");
            return;
        }
        long before = knownTrials.originOf(trial);
        boolean inThisFile = TrialFeed.entry(before) == entry;
        if (standing == KnownTrials.Standing.SAME) {
            if (inThisFile || mends.of(row).map(TrialImport::isDuplicate).orElse(false)) {
                aside(row, List.of(duplicate(row, before)));
            } else {
                known++;
            }
        } else if (clash == Clash.REPLACE && !inThisFile) {
            LineRange replaced = LineRange.line(TrialFeed.entry(before), TrialFeed.line(before));
            superseded.add(replaced);
            knownTrials.replace(trial, here);
            take(trial, row, ", replaces " + replaced.text());
        } else {
            aside(row, List.of(conflict(row, before, numberWritten)));
        }
    }

    private RowProblem duplicate(Row row, long before) {
        return new RowProblem(
                ProblemCode.DUPLICATE,
                At.row(log.name(), row.line()),
                where(before) + " has the same try with the same value",
                "one row for each try",
                "give this try its own number, or dismiss the row");
    }

    private RowProblem conflict(Row row, long before, boolean numberWritten) {
        return new RowProblem(
                ProblemCode.CONFLICT,
                At.row(log.name(), row.line()),
                where(before) + " has this " + (numberWritten ? "try" : "try (by its place in the session)")
                        + " with another value",
                "one value for each try",
                TrialFeed.entry(before) == entry
                        ? "keep the right one of the two"
                        : "import it with --replace if this one is right, or give the try its own number");
    }

    private String where(long origin) {
        return TrialFeed.entry(origin) == entry
                ? "line " + lines.fileLine(TrialFeed.line(origin)) + " of this file"
                : "entry " + LogbookFolder.four(TrialFeed.entry(origin)) + ", line " + TrialFeed.line(origin);
    }

    private static boolean isDuplicate(SetAsideRecord record) {
        return hasCode(record, ProblemCode.DUPLICATE);
    }

    private static boolean hasCode(SetAsideRecord record, ProblemCode code) {
        return List.of(record.row().codes().split(" ", -1)).contains(code.name());
    }

    /** The place of a row also says what it stands for: that is how a reader of the entry sees it. */
    private void take(Trial trial, Row row, String replaces) {
        Measure measure = log.rules()
                .catalogue()
                .find(trial.key().measure())
                .orElseThrow(() -> new IllegalStateException("a checked trial has a known measure"));
        List<String> cells = TrialCells.of(trial, measure);
        String mended = mends.of(row).map(one -> ", mends " + one.id()).orElse("");
        cells.set(AT, cells.get(AT) + mended + replaces);
        destination.row(cells);
        lines.add(row.line(), cells);
        taken++;
    }

    private void aside(Row row, List<RowProblem> reasons) {
        reasons.forEach(reason -> problems.add(mends.inFile(reason)));
        setAside++;
        if (mends.staysOpen(row)) {
            return;
        }
        String at = At.row(log.shortName(), row.line()).text();
        destination.setAside(SetAsideRow.of(readStudent(row), at, reasons, row.cells()));
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
}
