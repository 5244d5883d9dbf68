package stridetally.scoring;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import stridetally.ingest.ReadingKind;

/**
 * The tries of the session that a {@link SeriesWalk} has come to, in arrays that are used again. Hot loop: no objects. Not for
 * several threads.
 */
final class SessionTries {
    private int tries;
    private boolean alike;
    private byte[] kind = new byte[16];
    private long[] value = new long[16];
    private int[] given = new int[16];
    private int[] help = new int[16];
    private int[] prompt = new int[16];
    private int[] number = new int[16];

    /** By row: which of the series that count as one it is of. */
    private int[] member = new int[16];

    /** Begins a session. */
    void clear() {
        tries = 0;
    }

    /** Takes the tries of the run at a cursor. */
    void add(RunCursor cursor, int which) {
        int count = cursor.count();
        if (tries + count > kind.length) {
            grow(Math.max(tries + count, kind.length * 2));
        }
        for (int row = tries; row < tries + count; row++) {
            cursor.nextTry();
            kind[row] = (byte) cursor.kind();
            value[row] = cursor.value();
            given[row] = cursor.given();
            help[row] = cursor.help();
            prompt[row] = cursor.prompt();
            number[row] = cursor.number();
            member[row] = which;
        }
        tries += count;
    }

    private void grow(int size) {
        kind = Arrays.copyOf(kind, size);
        value = Arrays.copyOf(value, size);
        given = Arrays.copyOf(given, size);
        help = Arrays.copyOf(help, size);
        prompt = Arrays.copyOf(prompt, size);
        number = Arrays.copyOf(number, size);
        member = Arrays.copyOf(member, size);
    }

    int size() {
        return tries;
    }

    long value(int row) {
        return value[row];
    }

    int help(int row) {
        return help[row];
    }

    /** Whether every row is a plain number, and the rows stand in their order. */
    boolean isPlain() {
        int exact = ReadingKind.EXACT.code();
        for (int row = 0; row < tries; row++) {
            if (kind[row] != exact) {
                return false;
            }
        }
        return alike;
    }

    /** By trial number, when all rows have one; without any they stand in the order of the file already. */
    void order() {
        boolean ascending = true;
        alike = true;
        for (int row = 1; row < tries; row++) {
            // Numbers by place in the file are counted in each series for itself.
            boolean oneSeries = member[row] == member[0];
            alike &= (number[row] == 0) == (number[0] == 0) && (oneSeries || number[0] != 0);
            ascending &= number[row] >= number[row - 1];
        }
        if (!alike || ascending) {
            return;
        }
        for (int row = 1; row < tries; row++) {
            for (int at = row; at > 0 && number[at] < number[at - 1]; at--) {
                swap(at);
            }
        }
    }

    private void swap(int at) {
        swap(number, at);
        swap(given, at);
        swap(help, at);
        swap(prompt, at);
        swap(member, at);
        long kept = value[at];
        value[at] = value[at - 1];
        value[at - 1] = kept;
        byte keptKind = kind[at];
        kind[at] = kind[at - 1];
        kind[at - 1] = keptKind;
    }

    private static void swap(int[] of, int at) {
        int kept = of[at];
        of[at] = of[at - 1];
        of[at - 1] = kept;
    }

    /** The session as an object, of so many series. */
    TrialGroup group(int day, String label, int members) {
        List<TrialGroup> groups = new ArrayList<>();
        for (int which = 0; which < members; which++) {
            int count = 0;
            for (int row = 0; row < tries; row++) {
                count += member[row] == which ? 1 : 0;
            }
            if (count > 0) {
                groups.add(TrialGroup.ordered(day, label, rows(which, count)));
            }
        }
        return TrialGroup.joined(groups);
    }

    private TrialGroup.Rows rows(int which, int count) {
        TrialGroup.Rows rows = new TrialGroup.Rows(count);
        int at = 0;
        for (int row = 0; row < tries; row++) {
            if (member[row] == which) {
                rows.kind[at] = kind[row];
                rows.value[at] = value[row];
                rows.given[at] = given[row];
                rows.help[at] = help[row];
                rows.prompt[at] = prompt[row];
                rows.number[at] = number[row];
                rows.origin[at++] = row;
            }
        }
        return rows;
    }
}
