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

    private static final TrialColumn[] KEY = {
        TrialColumn.STUDENT,
        TrialColumn.MEASURE,
        TrialColumn.UNIT,
        TrialColumn.SOURCE,
        TrialColumn.SIDE,
        TrialColumn.PROTOCOL,
        TrialColumn.USE,
        TrialColumn.PLACE
    };

    private static final int NEVER_PLAIN = -1;
    private static final int NEW_PAIR = -2;
    private static final int LONGEST_CELL = 255;
    private static final int KEY_ROOM = KEY.length * (LONGEST_CELL + 1);

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
    private final int[] columns;
    private final int student;
    private final ByteMemo keys = new ByteMemo(ByteMemo.Spread.MANY);

    /** The cells that say what was tried, without the student. */
    private final ByteMemo tasks = new ByteMemo(ByteMemo.Spread.MANY);

    private final List<PlainTask> known = new ArrayList<>();
    private byte[] keyBytes = new byte[KEY_ROOM];
    private byte[] lastKey = new byte[KEY_ROOM];
    private int lastKeyLength;

    /** Where the cell of each column lies within the key, behind its length. */
    private int[] keyStarts;

    private int[] lastKeyStarts;
    private int found = NEW_PAIR;
    private PlainTask foundTask = NO_TASK;
    private int pair = KnownStarts.NONE;
    private int pairs;

    /** By pair of student and task. */
    private int[] series = new int[16];

    private PlainTask[] taskOf = new PlainTask[16];

    PlainTasks(BulkForm form, SeriesNumbers numbers, StudentRange students) {
        this.form = form;
        this.numbers = numbers;
        this.students = students;
        this.student = form.column(TrialColumn.STUDENT);
        this.columns = columns(form);
        // The student's stays first, see taskStart.
        Arrays.sort(columns, 1, columns.length);
        this.keyStarts = new int[columns.length];
        this.lastKeyStarts = new int[columns.length];
    }

    /** The columns that say which series a row belongs to. */
    static int[] columns(BulkForm form) {
        return Arrays.stream(KEY)
                .mapToInt(form::column)
                .filter(column -> column >= 0)
                .toArray();
    }

    /**
     * Finds the task of a record; false when it is not plain.
     *
     * @param same first cells that are those of the record that was found before
     */
    boolean find(ByteRecords records, int same) {
        if (isLastKey(records, same)) {
            return true;
        }
        int length = keyLength(records);
        if (length < 0) {
            return false;
        }
        int known = keys.find(keyBytes, 0, length);
        if (known == ByteMemo.UNKNOWN) {
            return findNew(records, length);
        }
        pair = known;
        foundTask = taskOf[pair];
        found = series[pair];
        remember(length);
        return true;
    }

    /** Whether the cells are those of the last pair, as they are for the tries of one session. */
    private boolean isLastKey(ByteRecords records, int same) {
        if (lastKeyLength == 0) {
            return false;
        }
        // The columns are in order but for the student's, which comes first.
        for (int which = columns.length - 1; which > 0 && columns[which] >= same; which--) {
            if (!isLast(records, which)) {
                return false;
            }
        }
        return student < same || isLast(records, 0);
    }

    private boolean isLast(ByteRecords records, int which) {
        byte[] bytes = records.bytes();
        byte[] last = lastKey;
        int column = columns[which];
        int known = lastKeyStarts[which];
        int place = records.start(column);
        int end = records.end(column);
        int length = end - place;
        return (last[known] & 0xff) == length
                && !records.hasDoubled(column)
                && ByteLongs.same(last, known + 1, bytes, place, length);
    }

    private boolean findNew(ByteRecords records, int length) {
        lastKeyLength = 0;
        int task = tasks.find(keyBytes, taskStart(), length);
        // The blank student and one with outer blanks or a guard are not for here.
        if (task < 0 || !isPlainCode(records)) {
            return false;
        }
        found = NEW_PAIR;
        pair = KnownStarts.NONE;
        foundTask = known.get(task);
        return true;
    }

    /** The next row of the same session need not be looked up. */
    private void remember(int length) {
        byte[] spare = lastKey;
        lastKey = keyBytes;
        keyBytes = spare;
        int[] spareStarts = lastKeyStarts;
        lastKeyStarts = keyStarts;
        keyStarts = spareStarts;
        lastKeyLength = length;
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
            lastKeyLength = 0;
        }
        return found;
    }

    private int newPair(ByteRecords records) {
        int start = records.start(student);
        SeriesKey like = foundTask.like();
        String code = new String(records.bytes(), start, records.end(student) - start, StandardCharsets.US_ASCII);
        int length = keyLength(records);
        if (students.holds(like.source(), code)) {
            found = numbers.number(new SeriesKey(
                    like.source(),
                    new StudentCode(code),
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
            keys.put(keyBytes, 0, length, pairs);
            pair = pairs++;
        } else {
            // Not remembered beyond this session: those left out would take the memory of those who are read.
            found = SKIPPED;
            pair = KnownStarts.NONE;
        }
        remember(length);
        return found;
    }

    /** A checked trial and the notes on it: rows with the same cells for its task are known from now on. */
    void learn(ByteRecords records, Trial trial, List<RowProblem> problems) {
        int length = keyLength(records);
        int from = taskStart();
        if (length < 0 || tasks.find(keyBytes, from, length) != ByteMemo.UNKNOWN) {
            return;
        }
        int brings = PlainNotes.ofSeries(problems);
        if (brings == PlainNotes.UNKNOWN) {
            return;
        }
        Measure measure = form.rules().catalogue().find(trial.key().measure()).orElseThrow();
        boolean plain = isOwnUnit(records, measure.unit());
        tasks.put(keyBytes, from, length, plain ? known.size() : NEVER_PLAIN);
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

    /** Where the cells of the task begin among {@link #keyBytes}: behind the student, which is laid there first. */
    private int taskStart() {
        return (keyBytes[0] & 0xff) + 1;
    }

    /** Lays the cells of the series into {@link #keyBytes}, each behind its length. */
    private int keyLength(ByteRecords records) {
        byte[] bytes = records.bytes();
        int length = 0;
        for (int which = 0; which < columns.length; which++) {
            int column = columns[which];
            int start = records.start(column);
            int size = records.end(column) - start;
            if (size > LONGEST_CELL || records.hasDoubled(column)) {
                return -1;
            }
            keyStarts[which] = length;
            keyBytes[length++] = (byte) size;
            // Shorter than a call for the few bytes that a code has.
            for (int place = start; place < start + size; place++) {
                keyBytes[length++] = bytes[place];
            }
        }
        return length;
    }
}
