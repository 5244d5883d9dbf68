package stridetally.ingest;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.BooleanSupplier;
import stridetally.model.SeriesKey;
import stridetally.model.Trial;
import stridetally.problem.ProblemTally;
import stridetally.problem.RowProblem;

/** One bare log by the usual reader: its tries go on, what is wrong is counted. */
public final class UsualFile implements TrialLog.Taker {
    private final TrialFeed feed;
    private final LocalDate asOf;
    private final StudentRange students;
    private final int place;
    private final BooleanSupplier room;
    private final ProblemTally problems = new ProblemTally();
    private long setAside;
    private long ahead;
    private boolean pushed;

    /**
     * Into a feed.
     *
     * @param asOf tries of a later day are left out and counted
     * @param students whose tries go on
     * @param place of the file among those read together, from 0
     * @param room whether more tries may go on
     */
    public UsualFile(TrialFeed feed, LocalDate asOf, StudentRange students, int place, BooleanSupplier room) {
        this.feed = feed;
        this.asOf = asOf;
        this.students = students;
        this.place = place;
        this.room = room;
    }

    /** Reads it to its end. */
    public LogFile read(ByteSource source, LogRules rules) {
        TextSource text = InputTables.of(source, Optional.empty()).only();
        TrialLog log = TrialLog.open(text, rules);
        TrialLog.Count count = log.read(this);
        List<String> notes = new ArrayList<>();
        if (!text.note().isEmpty()) {
            notes.add(text.note());
        }
        notes.addAll(log.form().notes());
        notes.addAll(count.notes());
        return new LogFile(
                source.name(),
                WhichReader.USUAL,
                count.rows(),
                count.blank(),
                setAside,
                ahead,
                notes,
                Optional.empty());
    }

    /** What is wrong with its rows. */
    public ProblemTally problems() {
        return problems;
    }

    /** Whether any try went on. */
    public boolean pushed() {
        return pushed;
    }

    @Override
    public void taken(Trial trial, LogRow row, List<RowProblem> notes) {
        if (trial.date().isAfter(asOf)) {
            ahead++;
            return;
        }
        for (RowProblem note : notes) {
            problems.add(note);
        }
        SeriesKey key = trial.key();
        if (students.holds(key.source(), key.student().text()) && room.getAsBoolean()) {
            pushed = true;
            feed.push(trial, TrialFeed.origin(place, row.line()));
        }
    }

    @Override
    public void setAside(LogRow row, List<RowProblem> reasons) {
        for (RowProblem reason : reasons) {
            problems.add(reason);
        }
        setAside++;
    }
}
