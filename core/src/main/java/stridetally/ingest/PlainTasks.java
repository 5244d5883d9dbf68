package stridetally.ingest;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import stridetally.measures.Measure;
import stridetally.model.MeasureId;
import stridetally.model.Protocol;
import stridetally.model.SeriesKey;
import stridetally.model.Side;
import stridetally.model.StudentCode;
import stridetally.model.Trial;
import stridetally.model.TrialPlace;
import stridetally.model.Use;
import stridetally.problem.RowProblem;
import stridetally.units.Expecting;
import stridetally.units.Unit;
import stridetally.units.UnitNames;

/**
 * Which series a row belongs to, from the bytes of its cells. The cells that say what was tried (measure, unit, side, protocol,
 * use, place, source) are understood once, by {@link TrialChecker} on the first row that has them; after that equal bytes
 * mean the same. Together with the student they are a pair, which is found by one look-up; the rows of a session, which
 * stand one behind the other as a rule, by none. Hot loop. A thread's own.
 */
final class PlainTasks {
    /** The series of a student who is not of the range that is read. */
    static final int SKIPPED = -1;

    private static final int NEVER_PLAIN = -1;
    private static final int NEW_PAIR = -2;

    private static final PlainTask NO_TASK = new PlainTask(
            new SeriesKey(
                    "",
                    new StudentCode("-"),
                    new MeasureId("none"),
                    Side.NONE,
                    Protocol.NONE,
                    TrialPlace.SCHOOL,
                    Use.PROBE),
            Expecting.AMOUNT,
            0,
            0,
            0);

    private final BulkForm form;
    private final SeriesNumbers numbers;
    private final StudentRange students;
    private final int student;
    private final PairKey key;
    private final ByteMemo keys = new ByteMemo(ByteMemo.Spread.MANY);

    /** The cells that say what was tried, without the student. */
    private final ByteMemo tasks = new ByteMemo(ByteMemo.Spread.MANY);

    private final List<PlainTask> known = new ArrayList<>();
    private int found = NEW_PAIR;
    private PlainTask foundTask = NO_TASK;
    private int pair = KnownStarts.NONE;
    private int pairs;

    /** The student of the newest pair. */
    private StudentCode newest = NO_TASK.like().student();

    /** By pair of student and task. */
    private int[] series = new int[16];

    private PlainTask[] taskOf = new PlainTask[16];

    PlainTasks(BulkForm form, SeriesNumbers numbers, StudentRange students) {
        this.form = form;
        this.numbers = numbers;
        this.students = students;
        this.student = form.column(TrialColumn.STUDENT);
        this.key = new PairKey(form);
    }

    /**
     * Finds the task of a record; false when it is not plain.
     *
     * @param same first cells that are those of the record that was found before
     */
    boolean find(ByteRecords records, int same) {
        if (key.isLast(records, same)) {
            return true;
        }
        int length = key.lay(records);
        if (length == PairKey.ODD) {
            return false;
        }
        int known = keys.find(key.text(), 0, length);
        if (known == ByteMemo.UNKNOWN) {
            return findNew(records, length);
        }
        pair = known;
        foundTask = taskOf[pair];
        found = series[pair];
        key.remember();
        return true;
    }

    private boolean findNew(ByteRecords records, int length) {
        key.forget();
        int task = tasks.find(key.text(), key.taskStart(), length);
        // The blank student and one with outer blanks or a guard are not for here.
        if (task < 0 || !isPlainCode(records)) {
            return false;
        }
        found = NEW_PAIR;
        pair = KnownStarts.NONE;
        foundTask = known.get(task);
        return true;
    }

    /** The task of the record that was found last. */
    PlainTask task() {
        return foundTask;
    }

    /** The series of that record, now that a try of it goes on; {@link #SKIPPED} when its student is left out. */
    int series(ByteRecords records) {
        return found == NEW_PAIR ? newPair(records) : found;
    }

    /** The student and task of the record that was passed on last; {@link KnownStarts#NONE} when the student is left out. */
    int pair() {
        return pair;
    }

    /** The task of a pair, or of the record that was passed on last. */
    PlainTask task(int of) {
        return of == pair ? foundTask : taskOf[of];
    }

    /** Goes to a record of a pair, and says its series. */
    int goTo(int of) {
        if (of != pair) {
            pair = of;
            found = series[of];
            foundTask = taskOf[of];
            key.forget();
        }
        return found;
    }

    private int newPair(ByteRecords records) {
        int start = records.start(student);
        SeriesKey like = foundTask.like();
        String code = new String(records.bytes(), start, records.end(student) - start, StandardCharsets.US_ASCII);
        int length = key.lay(records);
        if (students.holds(like.source(), code)) {
            found = numbers.number(new SeriesKey(
                    like.source(),
                    student(code),
                    like.measure(),
                    like.side(),
                    like.protocol(),
                    like.place(),
                    like.use()));
            if (pairs == series.length) {
                series = Arrays.copyOf(series, pairs * 2);
                taskOf = Arrays.copyOf(taskOf, pairs * 2);
            }
            series[pairs] = found;
            taskOf[pairs] = foundTask;
            keys.put(key.text(), 0, length, pairs);
            pair = pairs++;
        } else {
            // Not remembered beyond this session: those left out would take the memory of those who are read.
            found = SKIPPED;
            pair = KnownStarts.NONE;
        }
        key.remember();
        return found;
    }

    /** The tasks of a student are new together as a rule; millions of codes would be held twice. */
    private StudentCode student(String code) {
        if (!newest.text().equals(code)) {
            newest = new StudentCode(code);
        }
        return newest;
    }

    /** A checked trial and the notes on it: rows with the same cells for its task are known from now on. */
    void learn(ByteRecords records, Trial trial, List<RowProblem> problems) {
        int length = key.lay(records);
        if (length == PairKey.ODD || tasks.find(key.text(), key.taskStart(), length) != ByteMemo.UNKNOWN) {
            return;
        }
        int brings = PlainNotes.ofSeries(problems);
        if (brings == PlainNotes.UNKNOWN) {
            return;
        }
        Measure measure = form.rules().catalogue().find(trial.key().measure()).orElseThrow();
        boolean plain = isOwnUnit(records, measure.unit());
        tasks.put(key.text(), key.taskStart(), length, plain ? known.size() : NEVER_PLAIN);
        if (plain) {
            known.add(PlainTask.of(trial.key(), measure, brings));
        }
    }

    private boolean isOwnUnit(ByteRecords records, Unit own) {
        int column = form.column(TrialColumn.UNIT);
        if (column < 0) {
            return true;
        }
        String written = PlainWords.written(records, column);
        return written.isEmpty()
                || UnitNames.find(written, own).filter(one -> one == own).isPresent();
    }

    /** A code of letters, digits and signs of ASCII that nothing is taken off. */
    private boolean isPlainCode(ByteRecords records) {
        int start = records.start(student);
        int end = records.end(student);
        byte[] bytes = records.bytes();
        boolean plain = start < end && bytes[start] != '\'';
        for (int place = start; place < end; place++) {
            plain &= bytes[place] > ' ' && bytes[place] < 0x7f;
        }
        return plain;
    }
}
