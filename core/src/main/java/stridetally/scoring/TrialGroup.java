package stridetally.scoring;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import stridetally.ingest.ReadingKind;

/**
 * The tries of one session in their order: by trial number; a try without one stands at its place in the file. Primitive
 * columns, so that millions of sessions can be gone through.
 */
public final class TrialGroup {
    private final int day;
    private final String label;
    private final Rows rows;

    private TrialGroup(int day, String label, Rows rows) {
        this.day = day;
        this.label = label;
        this.rows = rows;
    }

    /** Orders the rows, which came in order of arrival. */
    static TrialGroup ordered(int day, String label, Rows rows) {
        Rows inFile = rows.sortedBy(rows.origin);
        // Without a trial number it is the ordinal in file order.
        long[] numbers = new long[inFile.size()];
        for (int i = 0; i < numbers.length; i++) {
            inFile.number[i] = inFile.number[i] == 0 ? i + 1 : inFile.number[i];
            numbers[i] = inFile.number[i];
        }
        return new TrialGroup(day, label, inFile.sortedBy(numbers));
    }

    /** One session of tries that were logged in several series: another place, or a protocol that serves as well. */
    static TrialGroup joined(List<TrialGroup> parts) {
        TrialGroup first = parts.get(0);
        if (parts.size() == 1) {
            return first;
        }
        int size = 0;
        for (TrialGroup part : parts) {
            size += part.size();
        }
        Rows all = new Rows(size);
        int row = 0;
        for (TrialGroup part : parts) {
            row = all.take(part.rows, row);
        }
        Rows inFile = all.sortedBy(all.origin);
        long[] numbers = new long[inFile.size()];
        for (int i = 0; i < numbers.length; i++) {
            numbers[i] = inFile.number[i];
        }
        return new TrialGroup(first.day, first.label, inFile.sortedBy(numbers));
    }

    /** The day. */
    public LocalDate date() {
        return LocalDate.ofEpochDay(day);
    }

    /** Days since 1970-01-01. */
    int day() {
        return day;
    }

    /** The label that splits a day; blank as a rule. */
    public String label() {
        return label;
    }

    /** Rows of the log; one row may hold several tries. */
    public int size() {
        return rows.size();
    }

    /** How to read the value. */
    public ReadingKind kind(int row) {
        return ReadingKind.at(rows.kind[row]);
    }

    /** Billionths of the measure's unit; tries met for {@link ReadingKind#TRIES}. */
    public long value(int row) {
        return rows.value[row];
    }

    /** Tries on this row. */
    public int given(int row) {
        return rows.given[row];
    }

    /** Rank of the help; {@link stridetally.model.Level#BLANK} = not recorded. */
    public int help(int row) {
        return rows.help[row];
    }

    /** Rank of the prompt; {@link stridetally.model.Level#BLANK} = not recorded. */
    public int prompt(int row) {
        return rows.prompt[row];
    }

    /** Trial number, as written or by place in the file. */
    public int number(int row) {
        return rows.number[row];
    }

    /** Entry number times 2^32 plus the line. */
    public long origin(int row) {
        return rows.origin[row];
    }

    /** The columns of a session that is being read. */
    static final class Rows {
        final PackedBytes cursor = new PackedBytes();
        final byte[] kind;
        final long[] value;
        final int[] given;
        final int[] help;
        final int[] prompt;
        final int[] number;
        final long[] origin;

        Rows(int size) {
            kind = new byte[size];
            value = new long[size];
            given = new int[size];
            help = new int[size];
            prompt = new int[size];
            number = new int[size];
            origin = new long[size];
        }

        int size() {
            return kind.length;
        }

        private int take(Rows from, int start) {
            int row = start;
            for (int i = 0; i < from.size(); i++) {
                copy(from, i, row++);
            }
            return row;
        }

        private Rows sortedBy(long[] key) {
            if (ascending(key)) {
                return this;
            }
            Rows sorted = new Rows(size());
            List<Integer> order = new ArrayList<>(size());
            for (int row = 0; row < size(); row++) {
                order.add(row);
            }
            order.sort((one, other) -> Long.compare(key[one], key[other]));
            for (int row = 0; row < size(); row++) {
                sorted.copy(this, order.get(row), row);
            }
            return sorted;
        }

        private static boolean ascending(long[] key) {
            for (int i = 1; i < key.length; i++) {
                if (key[i] < key[i - 1]) {
                    return false;
                }
            }
            return true;
        }

        private void copy(Rows from, int source, int target) {
            kind[target] = from.kind[source];
            value[target] = from.value[source];
            given[target] = from.given[source];
            help[target] = from.help[source];
            prompt[target] = from.prompt[source];
            number[target] = from.number[source];
            origin[target] = from.origin[source];
        }
    }
}
