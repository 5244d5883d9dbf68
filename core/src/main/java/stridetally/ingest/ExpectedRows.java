package stridetally.ingest;

import java.util.Arrays;
import stridetally.table.ByteLongs;
import stridetally.units.Expecting;

/**
 * Recognizes rows without cutting them: the further tries of a session, and the first one of the session that came next on an
 * earlier day ({@link KnownStarts}). Such a row begins with known bytes up to its trial number and value, and goes on behind
 * them with words seen before ({@link KnownWords}) and with cells that say nothing of the try. What all of these mean is known,
 * so only the two numbers are read. This serves logs whose cells stand so; in any other, and for any row that is not just so, all
 * is left to {@link PlainRows}. Hot loop. A thread's own.
 */
final class ExpectedRows {
    private static final int NEVER = -1;
    private static final int LONGEST_START = 255;

    /** After so many rows that were not recognized it is seen whether expecting pays. Ours. */
    private static final int LOOK_AGAIN = 1 << 16;

    /** It does when one was recognized for so many that were not. */
    private static final int WORTH = 8;

    /** So many rows of a log without order, a shuffled one, are not learned before it is tried again. Ours. */
    private static final int REST = 1 << 21;

    private final int columns;
    private final int date;
    private final int number;
    private final int value;

    /** The first column of the try. */
    private final int first;

    /** The last column of a word that is understood. */
    private final int lastWord;

    private final int[] keyColumns;
    private final boolean serves;
    private final byte delimiter;
    private final KnownWords words = new KnownWords();
    private final KnownStarts starts = new KnownStarts();
    private final LastCell behindWords = new LastCell();

    /** How the row before began, if it was learned or recognized. */
    private final byte[] start = new byte[LONGEST_START];

    /** Its bytes; {@link #NEVER} when nothing is expected. */
    private int size = NEVER;

    private int day;
    private int key;
    private int label;
    private int pair = KnownStarts.NONE;

    /** Of the row that was recognized. */
    private int foundPair = KnownStarts.NONE;

    private int learned;
    private int recognized;
    private int resting;
    private int foundWords;
    private int foundNumber;

    ExpectedRows(BulkForm form) {
        this.columns = form.columns();
        this.date = form.column(TrialColumn.DATE);
        this.number = form.column(TrialColumn.TRIAL);
        this.value = form.column(TrialColumn.VALUE);
        this.first = number < 0 ? value : number;
        this.delimiter = (byte) form.dialect().delimiter();
        int[] keys = PairKey.columns(form);
        int[] understood = columns(form, TrialColumn.HELP, TrialColumn.PROMPT);
        this.lastWord = Math.max(max(keys), max(understood));
        this.keyColumns = Arrays.stream(keys).filter(column -> column > value).toArray();
        this.serves = max(columns(form, TrialColumn.STUDENT, TrialColumn.DATE, TrialColumn.SESSION)) < first
                && (number < 0 || value == number + 1)
                && lastWord > value
                && form.column(TrialColumn.OF) < 0
                && Arrays.stream(understood).allMatch(column -> column > value);
    }

    private static int[] columns(BulkForm form, TrialColumn... of) {
        return Arrays.stream(of)
                .mapToInt(form::column)
                .filter(column -> column >= 0)
                .toArray();
    }

    private static int max(int[] columns) {
        return Arrays.stream(columns).max().orElse(NEVER);
    }

    /**
     * A row was cut and understood.
     *
     * @param ofPair its student and task; {@link KnownStarts#NONE} for a student who is left out
     */
    void learn(ByteRecords records, int ofPair, int labelNumber, int helpRank, int promptRank) {
        int before = pair;
        size = NEVER;
        pair = KnownStarts.NONE;
        if (rests()) {
            return;
        }
        int end = serves ? wordsEnd(records) : NEVER;
        int known = records.start(first) - records.row();
        if (end == NEVER || known > LONGEST_START || records.end(date) - records.start(date) != KnownStarts.DAY) {
            return;
        }
        byte[] bytes = records.bytes();
        int from = records.end(value) + 1;
        int found = words.find(bytes, from);
        if (found == KnownWords.UNKNOWN) {
            found = words.learn(bytes, from, end, keyCells(records), helpRank, promptRank);
        }
        if (found == KnownWords.UNKNOWN) {
            return;
        }
        pair = ofPair;
        key = words.key(found);
        label = labelNumber;
        day = records.start(date) - records.row();
        size = known;
        System.arraycopy(bytes, records.row(), start, 0, size);
        if (pair != KnownStarts.NONE) {
            starts.learn(pair, start, 0, size, day, key, label);
            if (before != KnownStarts.NONE && before != pair) {
                starts.follows(before, pair);
            }
        }
    }

    private boolean rests() {
        if (resting > 0) {
            resting--;
            return true;
        }
        if (++learned == LOOK_AGAIN) {
            resting = recognized < LOOK_AGAIN / WORTH ? REST : 0;
            learned = 0;
            recognized = 0;
        }
        return false;
    }

    /** Behind the sign that ends the words of a row; {@link #NEVER} when they do not follow the value without quotes. */
    private int wordsEnd(ByteRecords records) {
        int end = records.end(value);
        for (int column = value + 1; column <= lastWord; column++) {
            if (records.start(column) != end + 1) {
                return NEVER;
            }
            end = records.end(column);
        }
        byte sign = records.bytes()[end];
        return sign == (lastWord < columns - 1 ? delimiter : '\n') ? end + 1 : NEVER;
    }

    private byte[] keyCells(ByteRecords records) {
        byte[] cells = {};
        for (int column : keyColumns) {
            int from = records.start(column);
            int at = cells.length;
            cells = Arrays.copyOf(cells, at + records.end(column) - from + 1);
            System.arraycopy(records.bytes(), from, cells, at, cells.length - 1 - at);
            cells[cells.length - 1] = delimiter;
        }
        return cells;
    }

    /** Whether the row that follows begins as expected; then its pair is {@link #pair}. */
    boolean begins(ByteRecords records) {
        int row = records.ahead();
        if (size == NEVER || row + LONGEST_START > records.limit()) {
            return false;
        }
        foundPair = pair;
        if (ByteLongs.same(start, 0, records.bytes(), row, size)) {
            return true;
        }
        foundPair = pair == KnownStarts.NONE ? KnownStarts.NONE : starts.after(pair);
        return foundPair != KnownStarts.NONE && starts.begins(foundPair, records.bytes(), row, start, day);
    }

    /** The pair of the row that begins as expected; {@link KnownStarts#NONE} when its student is left out. */
    int pair() {
        return foundPair;
    }

    /**
     * Behind the row that begins as expected, when it also goes on so; below 0 when that is not sure. Nothing but what {@code tried}
     * holds has changed then.
     */
    int end(ByteRecords records, PlainTask task, PlainValue tried) {
        boolean amounts = task.expecting() == Expecting.AMOUNT || task.expecting() == Expecting.WHOLE_NUMBER;
        byte[] bytes = records.bytes();
        int from = records.ahead() + (foundPair == pair ? size : starts.length(foundPair));
        int place = number < 0 ? from : overNumber(bytes, from);
        if (place < 0 || !amounts || !tried.amount(task, bytes, place) || bytes[tried.end()] != delimiter) {
            return NEVER;
        }
        place = tried.end() + 1;
        foundWords = words.find(bytes, place);
        if (foundWords == KnownWords.UNKNOWN
                || words.key(foundWords) != (foundPair == pair ? key : starts.key(foundPair))) {
            return NEVER;
        }
        place += words.length(foundWords);
        int left = columns - 1 - lastWord;
        if (left > 1) {
            place = behindWords.over(records, place);
            left--;
        }
        if (left > 0) {
            return place < 0 ? NEVER : records.overLine(place, left);
        }
        return place <= records.limit() ? place : NEVER;
    }

    /** Behind the delimiter that ends a trial number. */
    private int overNumber(byte[] bytes, int from) {
        int place = from;
        int read = 0;
        while (bytes[place] >= '0' && bytes[place] <= '9') {
            read = read * 10 + (bytes[place++] - '0');
        }
        foundNumber = read;
        boolean plain = place - from <= PlainRows.MOST_DIGITS && (place == from || bytes[from] != '0');
        return plain && bytes[place] == delimiter ? place + 1 : NEVER;
    }

    /** The row is taken: what follows is compared with it. */
    void take(ByteRecords records) {
        recognized++;
        if (foundPair == pair) {
            return;
        }
        pair = foundPair;
        size = starts.length(pair);
        day = starts.day(pair);
        key = starts.key(pair);
        label = starts.label(pair);
        System.arraycopy(records.bytes(), records.ahead(), start, 0, size);
    }

    /** The trial number of the row that was recognized; 0 when it has none. */
    int number() {
        return foundNumber;
    }

    /** The number of its session's label. */
    int label() {
        return label;
    }

    /** The rank of its help. */
    int help() {
        return words.help(foundWords);
    }

    /** The rank of its prompt. */
    int prompt() {
        return words.prompt(foundWords);
    }
}
