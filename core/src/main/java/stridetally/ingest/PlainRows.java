package stridetally.ingest;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import stridetally.measures.Measure;
import stridetally.model.Level;
import stridetally.model.MeasureId;
import stridetally.model.Protocol;
import stridetally.model.SeriesKey;
import stridetally.model.Side;
import stridetally.model.StudentCode;
import stridetally.model.Trial;
import stridetally.model.TrialPlace;
import stridetally.model.Use;
import stridetally.model.WordScale;
import stridetally.problem.ProblemCode;
import stridetally.problem.ProblemTally;
import stridetally.problem.RowProblem;
import stridetally.table.FormulaGuard;
import stridetally.units.Amount;
import stridetally.units.Expecting;
import stridetally.units.Unit;
import stridetally.units.UnitNames;

/**
 * Takes the records of a log that are provably plain, without an object a record.
 *
 * <p>What a row says is a product of its cells, and most of them repeat. The cells that say what was tried (measure, unit,
 * side, protocol, use, place, source) are understood once, by {@link TrialChecker} on the first row that has them; after
 * that equal bytes mean the same, and bring the same notes ({@code PLACE_BLANK} and its like), which are only counted. So
 * no rule on these cells is written twice. Only what differs from row to row is judged here: an ISO
 * date, a number in the measure's own unit within its plausible range, a trial number, a word of help already known.
 * Anything else is refused, and {@link OddRows} takes it.
 */
final class PlainRows {
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

    /** The notes that the cells of a series bring to each of its rows, in the order of their bits. */
    private static final List<ProblemCode> KEY_NOTES =
            List.of(ProblemCode.PLACE_BLANK, ProblemCode.SIDE_MISSING, ProblemCode.SIDE_NOT_USED);

    private static final int HELP_BLANK = 1 << 3;

    /** The notes that other cells of a row may bring; they say nothing of the series. */
    private static final Set<ProblemCode> ROW_NOTES = EnumSet.of(
            ProblemCode.HELP_BLANK, ProblemCode.VALUE_UNUSUAL, ProblemCode.VALUE_MARKED, ProblemCode.DATE_SHORT_YEAR);

    /** So many of a kind of note go the long way, which makes the sentences of the first ones. */
    private static final int TOLD = 5;

    private static final int NEVER_PLAIN = -1;
    private static final int MOST_DIGITS = 6;
    private static final int MOST_DECIMALS = 9;
    private static final long[] TENS = {1, 10, 100, 1_000, 10_000, 100_000, 1_000_000, 10_000_000, 100_000_000};
    private static final int LONGEST_CELL = 255;
    private static final int KEY_ROOM = KEY.length * (LONGEST_CELL + 1);
    private static final int UNREADABLE = Integer.MIN_VALUE;

    private static final Task NO_TASK = new Task(
            new SeriesKey(
                    "",
                    new StudentCode("-"),
                    new MeasureId("none"),
                    Side.NONE,
                    Protocol.NONE,
                    TrialPlace.SCHOOL,
                    Use.PROBE),
            0,
            0,
            false,
            0);

    private final BulkForm form;
    private final SeriesNumbers numbers;
    private final TrialSink sink;
    private final int lastDay;
    private final int columns;
    private final WordScale helpScale;
    private final WordScale promptScale;
    private final int[] keyColumns;
    private final int student;
    private final int date;
    private final int value;
    private final int number;
    private final int of;
    private final int help;
    private final int prompt;
    private final int label;

    private final PlainDays days = new PlainDays();
    private final ByteMemo keys = new ByteMemo();
    private final ByteMemo helpWords = new ByteMemo();
    private final ByteMemo promptWords = new ByteMemo();
    private final ByteMemo labels = new ByteMemo();

    private byte[] keyBytes = new byte[KEY_ROOM];
    private byte[] lastKey = new byte[KEY_ROOM];
    private int lastKeyLength;
    private int foundPair = NEVER_PLAIN;
    private Task foundTask = NO_TASK;

    /** The cells that say what was tried, without the student. */
    private final ByteMemo tasks = new ByteMemo();

    private final List<Task> known = new ArrayList<>();
    private int pairs;

    /** By pair of student and task. */
    private int[] series = new int[16];

    private Task[] taskOf = new Task[16];

    /**
     * What the cells besides the student say.
     *
     * @param like a key of any student with these cells
     * @param low billionths; a value below it has something to be said of it
     * @param high the same above
     * @param brings the notes that every row with these cells has, as bits
     */
    private record Task(SeriesKey like, long low, long high, boolean whole, int brings) {}

    private final int[] told = new int[2 * HELP_BLANK];
    private final long[] counted = new long[2 * HELP_BLANK];
    private long rows;
    private long ahead;
    private boolean point;

    /** Whether the last value was written with decimals. */
    private boolean broken;

    PlainRows(BulkForm form, SeriesNumbers numbers, TrialSink sink) {
        this.form = form;
        this.numbers = numbers;
        this.sink = sink;
        this.lastDay = Math.toIntExact(Math.min(Integer.MAX_VALUE, form.asOf().toEpochDay()));
        this.columns = form.columns();
        this.helpScale = form.rules().settings().help();
        this.promptScale = form.rules().settings().prompt();
        this.keyColumns = Arrays.stream(KEY)
                .mapToInt(this::column)
                .filter(column -> column >= 0)
                .toArray();
        this.student = column(TrialColumn.STUDENT);
        this.date = column(TrialColumn.DATE);
        this.value = column(TrialColumn.VALUE);
        this.number = column(TrialColumn.TRIAL);
        this.of = column(TrialColumn.OF);
        this.help = column(TrialColumn.HELP);
        this.prompt = column(TrialColumn.PROMPT);
        this.label = column(TrialColumn.SESSION);
    }

    private int column(TrialColumn column) {
        return form.layout().column(column) - 1;
    }

    /** Takes a record, or refuses it untouched. */
    boolean take(ByteRecords records) {
        if (records.cells() != columns || (of >= 0 && records.end(of) != records.start(of))) {
            return false;
        }
        byte[] bytes = records.bytes();
        int day = days.day(bytes, records.start(date), records.end(date));
        // Only a row with a day is a try, whose value may prove how the file writes decimals.
        long amount = day == PlainDays.ODD ? -1 : amount(bytes, records.start(value), records.end(value));
        int trial = number < 0 ? 0 : number(bytes, records.start(number), records.end(number));
        if (amount < 0 || trial < 0 || !findPair(records)) {
            return false;
        }
        Task task = foundTask;
        if (amount < task.low || amount > task.high || (task.whole && broken && amount % Amount.ONE != 0)) {
            return false;
        }
        int helpRank = rank(helpWords, records, help, helpScale);
        int promptRank = rank(promptWords, records, prompt, promptScale);
        int labelNumber = label(records);
        if (helpRank == UNREADABLE || promptRank == UNREADABLE || labelNumber < 0) {
            return false;
        }
        if (day > lastDay) {
            ahead++;
            rows++;
            return true;
        }
        int brings = task.brings | (helpRank == Level.BLANK ? HELP_BLANK : 0);
        if (brings != 0) {
            if (told[brings] < TOLD) {
                told[brings]++;
                return false;
            }
            counted[brings]++;
        }
        rows++;
        int one = foundPair >= 0 ? foundPair : newPair(records);
        sink.trial(series[one], day, labelNumber, trial, ReadingKind.EXACT, amount, 1, helpRank, promptRank, 0);
        return true;
    }

    /** A checked trial and the notes on it: rows with the same cells for its task are known from now on. */
    void learn(ByteRecords records, Trial trial, List<RowProblem> problems) {
        int length = keyLength(records);
        int from = taskStart();
        if (length < 0 || tasks.find(keyBytes, from, length) != ByteMemo.UNKNOWN) {
            return;
        }
        int brings = 0;
        for (RowProblem problem : problems) {
            int bit = KEY_NOTES.indexOf(problem.code());
            if (bit < 0 && !ROW_NOTES.contains(problem.code())) {
                return;
            }
            brings |= bit < 0 ? 0 : 1 << bit;
        }
        Measure measure = form.rules().catalogue().find(trial.key().measure()).orElseThrow();
        Expecting expecting = measure.kind().expecting();
        boolean plain = (expecting == Expecting.AMOUNT || expecting == Expecting.WHOLE_NUMBER)
                && isOwnUnit(records, measure.unit());
        tasks.put(keyBytes, from, length, plain ? known.size() : NEVER_PLAIN);
        if (plain) {
            known.add(new Task(trial.key(), low(measure), high(measure), expecting == Expecting.WHOLE_NUMBER, brings));
        }
    }

    private static long low(Measure measure) {
        return Math.max(
                measure.possible().low().map(Amount::billionths).orElse(0L),
                measure.plausible().low().map(Amount::billionths).orElse(0L));
    }

    private static long high(Measure measure) {
        return Math.min(
                measure.possible().high().map(Amount::billionths).orElse(Long.MAX_VALUE),
                measure.plausible().high().map(Amount::billionths).orElse(Long.MAX_VALUE));
    }

    private boolean isOwnUnit(ByteRecords records, Unit own) {
        int column = column(TrialColumn.UNIT);
        if (column < 0) {
            return true;
        }
        String written = written(records, column);
        return written.isEmpty()
                || UnitNames.find(written, own).filter(one -> one == own).isPresent();
    }

    /** Finds the task of a record, and its pair with the student when it was seen before; false when it is not plain. */
    private boolean findPair(ByteRecords records) {
        if (isLastKey(records)) {
            return true;
        }
        int length = keyLength(records);
        if (length < 0) {
            return false;
        }
        foundPair = keys.find(keyBytes, 0, length);
        if (foundPair < 0) {
            int task = tasks.find(keyBytes, taskStart(), length);
            // The blank student and one with outer blanks or a guard are not for here.
            if (task < 0 || !isPlainCode(records)) {
                lastKeyLength = 0;
                return false;
            }
            lastKeyLength = 0;
            foundTask = known.get(task);
            return true;
        }
        foundTask = taskOf[foundPair];
        byte[] spare = lastKey;
        lastKey = keyBytes;
        keyBytes = spare;
        lastKeyLength = length;
        return true;
    }

    /** Whether the cells are those of the last pair, as they are for the tries of one session. */
    private boolean isLastKey(ByteRecords records) {
        if (lastKeyLength == 0) {
            return false;
        }
        byte[] bytes = records.bytes();
        byte[] last = lastKey;
        int length = 0;
        for (int column : keyColumns) {
            int place = records.start(column);
            int end = records.end(column);
            if ((last[length++] & 0xff) != end - place || records.hasDoubled(column)) {
                return false;
            }
            while (place < end) {
                if (last[length++] != bytes[place++]) {
                    return false;
                }
            }
        }
        return true;
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

    /** Numbers the series of a student and a task, now that a try of it goes on. */
    private int newPair(ByteRecords records) {
        int start = records.start(student);
        SeriesKey like = foundTask.like;
        StudentCode code = new StudentCode(
                new String(records.bytes(), start, records.end(student) - start, StandardCharsets.US_ASCII));
        if (pairs == series.length) {
            series = Arrays.copyOf(series, pairs * 2);
            taskOf = Arrays.copyOf(taskOf, pairs * 2);
        }
        series[pairs] = numbers.number(new SeriesKey(
                like.source(), code, like.measure(), like.side(), like.protocol(), like.place(), like.use()));
        taskOf[pairs] = foundTask;
        keys.put(keyBytes, 0, keyLength(records), pairs);
        return pairs++;
    }

    /** Where the cells of the task begin among {@link #keyBytes}: behind the student, which is laid there first. */
    private int taskStart() {
        return (keyBytes[0] & 0xff) + 1;
    }

    /** Lays the cells of the series into {@link #keyBytes}, each behind its length. */
    private int keyLength(ByteRecords records) {
        byte[] bytes = records.bytes();
        int length = 0;
        for (int column : keyColumns) {
            int start = records.start(column);
            int size = records.end(column) - start;
            if (size > LONGEST_CELL || records.hasDoubled(column)) {
                return -1;
            }
            keyBytes[length++] = (byte) size;
            // Shorter than a call for the few bytes that a code has.
            for (int place = start; place < start + size; place++) {
                keyBytes[length++] = bytes[place];
            }
        }
        return length;
    }

    /** Billionths of a plain number such as {@code 8.41}; below 0 when it is none. */
    private long amount(byte[] bytes, int start, int end) {
        long number = 0;
        int place = start;
        broken = false;
        while (place < end && bytes[place] >= '0' && bytes[place] <= '9') {
            number = number * 10 + (bytes[place++] - '0');
        }
        int digits = place - start;
        if (digits == 0 || digits > MOST_DIGITS) {
            return -1;
        }
        if (place == end) {
            return number * Amount.ONE;
        }
        int decimals = end - place - 1;
        if (bytes[place] != '.' || decimals == 0 || decimals > MOST_DECIMALS) {
            return -1;
        }
        for (place++; place < end; place++) {
            int digit = bytes[place] - '0';
            if (digit < 0 || digit > 9) {
                return -1;
            }
            number = number * 10 + digit;
        }
        point = true;
        broken = true;
        return number * TENS[MOST_DECIMALS - decimals];
    }

    /** A trial number; 0 when the cell is blank, below 0 when it is none. */
    private static int number(byte[] bytes, int start, int end) {
        if (end - start > MOST_DIGITS || (start < end && bytes[start] == '0')) {
            return -1;
        }
        int number = 0;
        for (int place = start; place < end; place++) {
            int digit = bytes[place] - '0';
            if (digit < 0 || digit > 9) {
                return -1;
            }
            number = number * 10 + digit;
        }
        return number;
    }

    private static int rank(ByteMemo words, ByteRecords records, int column, WordScale scale) {
        if (column < 0) {
            return Level.BLANK;
        }
        int found = words.find(records.bytes(), records.start(column), records.end(column));
        return found == ByteMemo.UNKNOWN ? newRank(words, records, column, scale) : found - 1;
    }

    /** Ranks are remembered plus one; 0 is a blank cell. */
    private static int newRank(ByteMemo words, ByteRecords records, int column, WordScale scale) {
        if (records.hasDoubled(column) || records.end(column) - records.start(column) > LONGEST_CELL) {
            return UNREADABLE;
        }
        String word = written(records, column);
        int rank =
                word.isEmpty() ? Level.BLANK : scale.find(word).map(Level::rank).orElse(UNREADABLE);
        if (rank != UNREADABLE) {
            words.put(records.bytes(), records.start(column), records.end(column), rank + 1);
        }
        return rank;
    }

    private int label(ByteRecords records) {
        if (label < 0 || records.start(label) == records.end(label)) {
            return 0;
        }
        int found = labels.find(records.bytes(), records.start(label), records.end(label));
        if (found != ByteMemo.UNKNOWN) {
            return found;
        }
        if (records.hasDoubled(label) || records.end(label) - records.start(label) > LONGEST_CELL) {
            return -1;
        }
        int one = numbers.label(written(records, label));
        labels.put(records.bytes(), records.start(label), records.end(label), one);
        return one;
    }

    /** The cell as {@link TrialLayout#written} gives it. */
    private static String written(ByteRecords records, int column) {
        String cell = new String(
                records.bytes(),
                records.start(column),
                records.end(column) - records.start(column),
                StandardCharsets.UTF_8);
        return FormulaGuard.unguard(cell).strip();
    }

    /** Adds the notes that were only counted. */
    void addCounted(ProblemTally problems) {
        for (int brings = 0; brings < counted.length; brings++) {
            for (int bit = 0; bit < KEY_NOTES.size(); bit++) {
                problems.addCounted(KEY_NOTES.get(bit), (brings & 1 << bit) == 0 ? 0 : counted[brings]);
            }
            problems.addCounted(ProblemCode.HELP_BLANK, (brings & HELP_BLANK) == 0 ? 0 : counted[brings]);
        }
    }

    /** Records taken. */
    long rows() {
        return rows;
    }

    /** Of them those of a day that is left out. */
    long ahead() {
        return ahead;
    }

    /** Whether a value with a decimal point was seen. */
    boolean point() {
        return point;
    }
}
