package stridetally.ingest;

import java.io.IOException;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.Optional;
import stridetally.model.Trial;
import stridetally.problem.Checked;
import stridetally.problem.InputRefused;
import stridetally.problem.RowProblem;
import stridetally.table.Dialect;
import stridetally.table.Row;
import stridetally.table.RowSink;
import stridetally.table.TableReader;

/**
 * A long log of trials: a heading row, then one row a trial, in any column order, separated by comma, semicolon, tab or |.
 *
 * <p>Required columns: student, date, measure, value. Others: source, session, trial, unit, of, help, prompt, side,
 * protocol, use, place, observer, activity, note. Headings may be written in the ways {@link TrialColumn} lists. Rows are
 * pushed on one by one; nothing is collected.
 */
public final class TrialLog {

    /** Takes the rows of a log in file order. */
    public interface Taker {
        /** A checked trial with the notes on its row. */
        void taken(Trial trial, Row row, List<RowProblem> notes);

        /** A row that was not taken, with all that is wrong with it. */
        void setAside(Row row, List<RowProblem> problems);
    }

    /** How many rows were read, and how many of them were blank. */
    public record Count(long rows, long blank) {}

    private final TextSource text;
    private final LogRules rules;
    private final TrialLayout layout;
    private final Dialect dialect;

    private TrialLog(TextSource text, Dialect dialect, LogRules rules, TrialLayout layout) {
        this.text = text;
        this.dialect = dialect;
        this.rules = rules;
        this.layout = layout;
    }

    /**
     * Reads the headings, and proves the date order from the whole file when a date needs it. Refuses a file without the
     * required headings, without rows, or with dates whose order is uncertain.
     */
    public static TrialLog open(TextSource text, LogRules rules) {
        String name = text.bytes().name();
        try (Reader reader = text.open()) {
            TableReader table = TableReader.sniffing(reader, name, TrialLayout::isKnown);
            Row header = table.next()
                    .flatMap(Checked::value)
                    .orElseThrow(() -> new InputRefused(name
                            + ": no heading row; expected the first row to name student, date, measure and value"));
            TrialLayout layout = TrialLayout.of(header.cells(), name);
            DateOrderProof proof = new DateOrderProof(name, layout);
            boolean any = false;
            Optional<Checked<Row>> next = table.next();
            while (next.isPresent()) {
                any = true;
                next.get().value().ifPresent(proof::look);
                next = table.next();
            }
            if (!any) {
                throw new InputRefused(name + ": a heading row and no rows below it; nothing to read");
            }
            return new TrialLog(text, table.dialect(), rules.with(proof.order(rules.order())), layout);
        } catch (IOException failed) {
            throw unreadable(name, failed);
        }
    }

    /** What to call it in messages. */
    public String name() {
        return text.bytes().name();
    }

    /** What to call it in what is kept. */
    public String shortName() {
        return text.bytes().shortName();
    }

    /** The columns of the log. */
    public TrialLayout layout() {
        return layout;
    }

    /** The rules it is read by, with the date order that was proven. */
    public LogRules rules() {
        return rules;
    }

    /** Pushes every row. */
    public Count read(Taker taker) {
        String name = text.bytes().name();
        try (Reader reader = text.open()) {
            TableReader table = new TableReader(reader, name, dialect);
            table.next();
            RowsOut rows = new RowsOut(taker, new TrialChecker(rules, layout, name, shortName()));
            table.forEach(rows);
            return new Count(rows.count, rows.blank);
        } catch (IOException failed) {
            throw unreadable(name, failed);
        } catch (UncheckedIOException failed) {
            throw unreadable(name, failed);
        }
    }

    private static InputRefused unreadable(String name, Exception failed) {
        return new InputRefused(name + ": could not be read to its end; check the disk and try again", failed);
    }

    private static final class RowsOut implements RowSink {
        private final Taker taker;
        private final TrialChecker checker;
        private long count;
        private long blank;

        RowsOut(Taker taker, TrialChecker checker) {
            this.taker = taker;
            this.checker = checker;
        }

        @Override
        public void row(Row row) {
            count++;
            Checked<Trial> checked = checker.check(row.cells(), row.line());
            checked.value()
                    .ifPresentOrElse(
                            trial -> taker.taken(trial, row, checked.problems()),
                            () -> taker.setAside(row, checked.problems()));
        }

        @Override
        public void problem(RowProblem problem, String written) {
            count++;
            taker.setAside(new Row(problem.at().line(), List.of(written)), List.of(problem));
        }

        @Override
        public void blank(long line) {
            count++;
            blank++;
        }
    }
}
