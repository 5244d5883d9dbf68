package stridetally.ingest;

import java.io.IOException;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import stridetally.model.Trial;
import stridetally.problem.At;
import stridetally.problem.Checked;
import stridetally.problem.InputRefused;
import stridetally.problem.RowProblem;
import stridetally.table.Dialect;
import stridetally.table.Row;
import stridetally.table.RowSink;
import stridetally.table.TableReader;

/**
 * A log of trials: headings in any order, then rows; separated by comma, semicolon, tab or |, or a sheet of a workbook.
 *
 * <p>Required: student, date, measure, value, as columns or said for the whole form. Others: source, session, trial, unit,
 * of, help, prompt, side, protocol, use, place, observer, activity, note. One row a try, or tries side by side, see
 * {@link FormFinder}. Rows are pushed on one by one; nothing is collected.
 */
public final class TrialLog {

    /** Takes the tries of a log in file order. */
    public interface Taker {
        /** A checked trial with the notes on it. */
        void taken(Trial trial, LogRow row, List<RowProblem> notes);

        /** A try that was not taken, with all that is wrong with it. */
        void setAside(LogRow row, List<RowProblem> problems);
    }

    /**
     * What was read: rows of a long log; tries, and rows without any, of a form with tries side by side.
     *
     * @param blank how many of them held nothing, or no try
     * @param notes what the person should know of the rows
     */
    public record Count(long rows, long blank, List<String> notes) {
        public Count {
            notes = List.copyOf(notes);
        }
    }

    private final TextSource text;
    private final Dialect dialect;
    private final LogRules rules;
    private final TrialForm form;

    private TrialLog(TextSource text, Dialect dialect, LogRules rules, TrialForm form) {
        this.text = text;
        this.dialect = dialect;
        this.rules = rules;
        this.form = form;
    }

    /** Reads a log of which nothing is said, see {@link #open(TextSource, LogRules, FormMapping)}. */
    public static TrialLog open(TextSource text, LogRules rules) {
        return open(text, rules, FormMapping.NONE);
    }

    /**
     * Finds the headings, and proves from the whole file the date order and the decimal mark when they are needed. Refuses
     * a file without the required headings, without rows, or with dates whose order is uncertain.
     */
    public static TrialLog open(TextSource text, LogRules rules, FormMapping mapping) {
        String name = text.bytes().name();
        FormFinder finder = new FormFinder(name, mapping, rules.catalogue(), rules.roster());
        TrialForm form = finder.find(FirstRows.of(text));
        LogRules said = rules.with(mapping);
        try (Reader reader = text.open()) {
            TableReader table = TableReader.sniffing(reader, name, TrialLayout::isKnown);
            FileProof proof = new FileProof(name, form);
            table.forEach(proof);
            if (!proof.any()) {
                throw new InputRefused(name + ": a heading row and no rows below it; nothing to read");
            }
            return new TrialLog(text, table.dialect(), proof.rules(said), proof.form(said));
        } catch (IOException failed) {
            throw unreadable(name, failed);
        } catch (UncheckedIOException failed) {
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

    /** How it is laid out. */
    public TrialForm form() {
        return form;
    }

    /** The rules it is read by, with the date order that was proven. */
    public LogRules rules() {
        return rules;
    }

    /** Pushes every try. */
    public Count read(Taker taker) {
        String name = text.bytes().name();
        try (Reader reader = text.open()) {
            TableReader table = new TableReader(reader, name, dialect);
            RowsOut rows = new RowsOut(taker);
            table.forEach(rows);
            return new Count(rows.count, rows.blank + rows.ends.count(), rows.notes());
        } catch (IOException failed) {
            throw unreadable(name, failed);
        } catch (UncheckedIOException failed) {
            throw unreadable(name, failed);
        }
    }

    static InputRefused unreadable(String name, Exception failed) {
        return new InputRefused(name + ": could not be read to its end; check the disk and try again", failed);
    }

    private final class RowsOut implements RowSink {
        private final Taker taker;
        private final List<TrialChecker> checkers = new ArrayList<>();
        private final RowEnds ends = new RowEnds(name(), form);
        private final UnheadedCells unheaded = new UnheadedCells(name(), form.headings());
        private final UnreadValues unread = new UnreadValues(name(), form);
        private long count;
        private long blank;

        RowsOut(Taker taker) {
            this.taker = taker;
            for (TrialLayout layout : form.tries()) {
                checkers.add(new TrialChecker(rules, layout, name(), shortName()));
            }
        }

        @Override
        public void row(Row row) {
            if (row.line() <= form.lastHeadingLine()) {
                return;
            }
            if (ends.isNoTry(row)) {
                count++;
                return;
            }
            unheaded.look(row.cells(), row.line());
            unread.look(row.cells(), row.line());
            for (int which = 0; which < checkers.size(); which++) {
                TrialLayout layout = form.tries().get(which);
                count++;
                if (form.sideBySide()
                        && layout.written(row.cells(), TrialColumn.VALUE).isEmpty()) {
                    blank++;
                } else {
                    give(row, layout, checkers.get(which));
                }
            }
        }

        List<String> notes() {
            List<String> notes = new ArrayList<>(ends.notes());
            notes.addAll(unheaded.notes());
            notes.addAll(unread.notes());
            return notes;
        }

        private void give(Row row, TrialLayout layout, TrialChecker checker) {
            Checked<Trial> checked = checker.check(row.cells(), row.line());
            At kept = checker.kept(row.line());
            LogRow one = new LogRow(
                    new At(name(), kept.line(), kept.column(), ""),
                    kept,
                    layout,
                    form.keptCells(layout.alone(row.cells())));
            if (checked.value().isPresent()) {
                taker.taken(checked.value().get(), one, checked.problems());
            } else {
                taker.setAside(one, checked.problems());
            }
        }

        @Override
        public void problem(RowProblem problem, String written) {
            long line = problem.at().line();
            if (line <= form.lastHeadingLine()) {
                return;
            }
            count++;
            LogRow row = new LogRow(At.row(name(), line), At.row(shortName(), line), form.first(), List.of(written));
            taker.setAside(row, List.of(problem));
        }

        @Override
        public void blank(long line) {
            ends.blank();
            if (line > form.lastHeadingLine()) {
                count++;
                blank++;
            }
        }
    }
}
