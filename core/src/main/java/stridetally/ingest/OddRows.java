package stridetally.ingest;

import java.util.Optional;
import org.jspecify.annotations.Nullable;
import stridetally.model.Trial;
import stridetally.problem.Checked;
import stridetally.problem.ProblemTally;
import stridetally.problem.RowProblem;
import stridetally.table.Row;
import stridetally.table.RowSink;

/**
 * Takes the records that are not provably plain, by the very classes that read a small log. What such a record may mean
 * for the whole file (a date that needs an order, a second table) is not decided here: then nothing is {@link #proven}, and
 * the file is read anew by the other reader.
 */
final class OddRows implements RowSink {
    private final BulkForm form;
    private final StudentRange students;
    private final TrialChecker checker;
    private final TrialFeed feed;
    private final RowEnds ends;
    private final DecimalProof decimals = new DecimalProof();
    private final ProblemTally problems = new ProblemTally();
    private long rows;
    private long blank;
    private long setAside;
    private long ahead;
    private boolean proven = true;
    private @Nullable PlainRows learner;
    private @Nullable ByteRecords records;

    OddRows(BulkForm form, SeriesNumbers numbers, TrialSink sink, StudentRange students) {
        this.form = form;
        this.students = students;
        this.checker = new TrialChecker(
                form.rules(), form.layout(), form.name(), form.bytes().shortName());
        this.feed = new TrialFeed(numbers, form.rules().settings(), sink);
        this.ends = new RowEnds(form.name(), form.form());
    }

    /** Who may learn from the next record, which lies there. */
    void watch(@Nullable PlainRows one, ByteRecords place) {
        learner = one;
        records = place;
    }

    @Override
    public void row(Row row) {
        rows++;
        TrialLayout layout = form.layout();
        String date = layout.text(row.cells(), TrialColumn.DATE);
        if (mayDecideForAll(row, date)) {
            proven = false;
            return;
        }
        if (ends.isNoTry(row)) {
            return;
        }
        decimals.look(row, layout);
        Checked<Trial> checked = checker.check(row.cells(), row.line());
        Optional<Trial> trial = checked.value();
        if (trial.isEmpty()) {
            setAside++;
            checked.problems().forEach(problems::add);
        } else if (trial.get().date().isAfter(form.asOf())) {
            ahead++;
        } else {
            checked.problems().forEach(problems::add);
            if (students.holds(
                    trial.get().key().source(), trial.get().key().student().text())) {
                feed.push(trial.get(), row.line());
            }
            if (learner != null && records != null) {
                learner.learn(records, trial.get(), checked.problems());
            }
        }
    }

    /** Another table's headings, or a date that proves or needs an order. */
    private boolean mayDecideForAll(Row row, String date) {
        boolean dayFirst = !date.isEmpty() && Character.isDigit(date.charAt(0));
        boolean orderMatters = form.rules().order() == DateOrder.UNPROVEN
                && (DayText.proves(date) != DateOrder.UNPROVEN || DayText.needsOrder(date));
        return orderMatters || (!dayFirst && RowEnds.isHeading(row) && !ends.isHeadingAgain(row));
    }

    @Override
    public void problem(RowProblem problem, String written) {
        rows++;
        setAside++;
        problems.add(problem);
    }

    @Override
    public void blank(long line) {
        rows++;
        blank++;
    }

    boolean proven() {
        return proven;
    }

    RowEnds ends() {
        return ends;
    }

    DecimalProof decimals() {
        return decimals;
    }

    ProblemTally problems() {
        return problems;
    }

    long rows() {
        return rows;
    }

    long blankRows() {
        return blank;
    }

    long setAside() {
        return setAside;
    }

    long ahead() {
        return ahead;
    }
}
