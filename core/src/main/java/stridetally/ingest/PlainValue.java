package stridetally.ingest;

import stridetally.units.Amount;
import stridetally.units.Expecting;

/**
 * The value of a try from bytes, where {@link stridetally.units.ValueGrammar} could not say anything else of it: a bare number
 * in the measure's own unit within its usual range, or whole tries met of whole tries given. Hot loop.
 */
final class PlainValue {
    private static final int MOST_DIGITS = 6;
    private static final int MOST_DECIMALS = 9;
    private static final int MOST_TRIES_DIGITS = 3;
    private static final long[] TENS = {1, 10, 100, 1_000, 10_000, 100_000, 1_000_000, 10_000_000, 100_000_000};

    private ReadingKind kind = ReadingKind.EXACT;
    private long number;
    private int given = 1;
    private boolean point;

    /** Whether the last number was written with decimals. */
    private boolean broken;

    /** Where the last number ends. */
    private int end;

    /** How to read {@link #number}. */
    ReadingKind kind() {
        return kind;
    }

    /** Billionths, or tries met. */
    long number() {
        return number;
    }

    /** Tries given; 1 for an amount. */
    int given() {
        return given;
    }

    /** Behind the last amount. */
    int end() {
        return end;
    }

    /** Whether any value with a decimal point was seen. */
    boolean point() {
        return point;
    }

    /**
     * Reads the cells of a row; false when they must be understood by the grammar.
     *
     * @param of the column of the whole; below 0 when there is none
     */
    boolean read(PlainTask task, ByteRecords records, int value, int of) {
        byte[] bytes = records.bytes();
        int start = records.start(value);
        int end = records.end(value);
        boolean whole = of >= 0 && records.end(of) != records.start(of);
        if (task.expecting() == Expecting.AMOUNT || task.expecting() == Expecting.WHOLE_NUMBER) {
            return !whole && amount(task, bytes, start) && this.end == end;
        }
        if (whole) {
            return isTries(count(bytes, start, end), count(bytes, records.start(of), records.end(of)));
        }
        int slash = start;
        while (slash < end && bytes[slash] != '/') {
            slash++;
        }
        if (slash < end) {
            return isTries(count(bytes, start, slash), count(bytes, slash + 1, end));
        }
        return task.expecting() == Expecting.TRIES
                ? isTries(count(bytes, start, end), 1)
                : amount(task, bytes, start) && this.end == end && number <= Amount.ONE;
    }

    /**
     * Reads an amount that begins at a place and ends at {@link #end}; false when it must be understood by the grammar, as also
     * for a task that has no amounts.
     */
    boolean amount(PlainTask task, byte[] bytes, int start) {
        number = billionths(bytes, start);
        kind = ReadingKind.EXACT;
        given = 1;
        boolean whole = task.expecting() != Expecting.WHOLE_NUMBER || !broken || number % Amount.ONE == 0;
        return number >= 0 && number >= task.low() && number <= task.high() && whole;
    }

    private boolean isTries(int met, int of) {
        kind = ReadingKind.TRIES;
        number = met;
        given = of;
        return met >= 0 && of > 0 && met <= of;
    }

    /** A whole number of few digits; below 0 when it is none. */
    private static int count(byte[] bytes, int start, int end) {
        if (start == end || end - start > MOST_TRIES_DIGITS) {
            return -1;
        }
        return PlainDays.number(bytes, start, end);
    }

    /** Billionths of a plain number such as {@code 8.41}; below 0 when it is none. */
    private long billionths(byte[] bytes, int start) {
        long read = 0;
        int place = start;
        broken = false;
        while (bytes[place] >= '0' && bytes[place] <= '9') {
            read = read * 10 + (bytes[place++] - '0');
        }
        int digits = place - start;
        end = place;
        if (digits == 0 || digits > MOST_DIGITS) {
            return -1;
        }
        if (bytes[place] != '.') {
            return read * Amount.ONE;
        }
        int first = ++place;
        while (bytes[place] >= '0' && bytes[place] <= '9') {
            read = read * 10 + (bytes[place++] - '0');
        }
        int decimals = place - first;
        end = place;
        if (decimals == 0 || decimals > MOST_DECIMALS) {
            return -1;
        }
        point = true;
        broken = true;
        return read * TENS[MOST_DECIMALS - decimals];
    }
}
