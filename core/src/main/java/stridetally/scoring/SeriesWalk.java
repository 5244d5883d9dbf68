package stridetally.scoring;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import stridetally.ingest.ReadingKind;

/**
 * Goes through the sessions of one series of {@link LogRuns} in the order of their days and labels, with the tries of each,
 * in arrays that are used again. Hot loop: no objects a session. Not for several threads.
 */
public final class SeriesWalk {
    private final LogRuns log;
    private final RunCursor cursor;
    private int runs;
    private int[] part = new int[64];
    private int[] address = new int[64];
    private int[] day = new int[64];
    private int[] label = new int[64];
    private int[] order = new int[64];

    /** By run: which of the series it is of. */
    private int[] member = new int[64];

    private int members = 1;
    private int next;
    private boolean labelled;

    private int tries;
    private boolean alike;
    private byte[] kind = new byte[16];
    private long[] value = new long[16];
    private int[] given = new int[16];
    private int[] help = new int[16];
    private int[] prompt = new int[16];
    private int[] number = new int[16];
    private int[] memberOfRow = new int[16];

    SeriesWalk(LogRuns log) {
        this.log = log;
        this.cursor = new RunCursor();
    }

    /**
     * Goes to a series; or to several of one child, side and measure, such as probes and practice: what falls on the same day
     * and label is one session then.
     */
    public void over(int... series) {
        runs = 0;
        next = 0;
        labelled = false;
        members = series.length;
        for (int one = 0; one < log.parts(); one++) {
            for (int which = 0; which < members; which++) {
                int from = runs;
                cursor.over(log.part(one), log.local(one, series[which]));
                while (cursor.nextRun()) {
                    gather(one, which);
                }
                turn(from);
            }
        }
        sort();
    }

    /** Reads the next session; false at the end. */
    public boolean nextSession() {
        if (next == runs) {
            return false;
        }
        tries = 0;
        int first = order[next];
        do {
            int run = order[next++];
            cursor.over(log.part(part[run]), -1);
            cursor.go(address[run]);
            read(member[run]);
        } while (next < runs && day[order[next]] == day[first] && label[order[next]] == label[first]);
        inOrder();
        return true;
    }

    /** The day of the session, in days since 1970-01-01. */
    public int day() {
        return day[order[next - 1]];
    }

    /** Its label; blank as a rule. */
    public String label() {
        return log.numbers().labelText(label[order[next - 1]]);
    }

    /** Rows of the log that it has. */
    public int size() {
        return tries;
    }

    /** Billionths of the measure's unit, of a row. */
    public long value(int row) {
        return value[row];
    }

    /** Rank of the help of a row. */
    public int help(int row) {
        return help[row];
    }

    /** Whether the session is as nearly all are: every row a plain number, and the rows in their order, see {@link TrialGroup}. */
    public boolean isPlain() {
        int exact = ReadingKind.EXACT.code();
        for (int row = 0; row < tries; row++) {
            if (kind[row] != exact) {
                return false;
            }
        }
        return alike;
    }

    /** By trial number, when all rows have one; without any they stand in the order of the file already. */
    private void inOrder() {
        boolean ascending = true;
        alike = true;
        for (int row = 1; row < tries; row++) {
            // Numbers by place in the file are counted in each series for itself.
            boolean oneSeries = memberOfRow[row] == memberOfRow[0];
            alike &= (number[row] == 0) == (number[0] == 0) && (oneSeries || number[0] != 0);
            ascending &= number[row] >= number[row - 1];
        }
        if (!alike || ascending) {
            return;
        }
        for (int row = 1; row < tries; row++) {
            for (int at = row; at > 0 && number[at] < number[at - 1]; at--) {
                turnAround(at);
            }
        }
    }

    private void turnAround(int at) {
        swap(number, at, at - 1);
        swap(given, at, at - 1);
        swap(help, at, at - 1);
        swap(prompt, at, at - 1);
        swap(memberOfRow, at, at - 1);
        long kept = value[at];
        value[at] = value[at - 1];
        value[at - 1] = kept;
        byte keptKind = kind[at];
        kind[at] = kind[at - 1];
        kind[at - 1] = keptKind;
    }

    /** The session as an object. */
    public TrialGroup group() {
        List<TrialGroup> groups = new ArrayList<>();
        for (int which = 0; which < members; which++) {
            int count = 0;
            for (int row = 0; row < tries; row++) {
                count += memberOfRow[row] == which ? 1 : 0;
            }
            if (count > 0) {
                groups.add(TrialGroup.ordered(day(), label(), rows(which, count)));
            }
        }
        return TrialGroup.joined(groups);
    }

    private TrialGroup.Rows rows(int which, int count) {
        TrialGroup.Rows rows = new TrialGroup.Rows(count);
        int at = 0;
        for (int row = 0; row < tries; row++) {
            if (memberOfRow[row] == which) {
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

    private void gather(int one, int which) {
        if (runs == part.length) {
            part = Arrays.copyOf(part, runs * 2);
            address = Arrays.copyOf(address, runs * 2);
            day = Arrays.copyOf(day, runs * 2);
            label = Arrays.copyOf(label, runs * 2);
            order = Arrays.copyOf(order, runs * 2);
            member = Arrays.copyOf(member, runs * 2);
        }
        part[runs] = one;
        member[runs] = which;
        address[runs] = cursor.address();
        day[runs] = cursor.day();
        label[runs] = log.label(one, cursor.label());
        labelled |= label[runs] != 0;
        runs++;
    }

    /** The runs of a part came the last first. */
    private void turn(int from) {
        for (int one = from, other = runs - 1; one < other; one++, other--) {
            swap(address, one, other);
            swap(day, one, other);
            swap(label, one, other);
        }
    }

    private static void swap(int[] of, int one, int other) {
        int kept = of[one];
        of[one] = of[other];
        of[other] = kept;
    }

    private void sort() {
        boolean ascending = !labelled && members == 1;
        for (int run = 0; run < runs; run++) {
            order[run] = run;
            ascending &= run == 0 || day[run] >= day[run - 1];
        }
        if (ascending) {
            return;
        }
        if (labelled || members > 1) {
            sortByLabel();
            return;
        }
        long[] keys = new long[runs];
        for (int run = 0; run < runs; run++) {
            keys[run] = (long) day[run] << Integer.SIZE | run;
        }
        Arrays.sort(keys);
        for (int run = 0; run < runs; run++) {
            order[run] = (int) keys[run];
        }
    }

    private void sortByLabel() {
        Integer[] all = new Integer[runs];
        Arrays.setAll(all, run -> run);
        Comparator<Integer> byDay = (one, other) -> Integer.compare(day[one], day[other]);
        Comparator<Integer> byLabel = (one, other) ->
                log.numbers().labelText(label[one]).compareTo(log.numbers().labelText(label[other]));
        // Then as they came, whichever of the series they are of.
        Comparator<Integer> byPart = (one, other) -> Integer.compare(part[one], part[other]);
        Comparator<Integer> byAddress = (one, other) -> Integer.compare(address[one], address[other]);
        Arrays.sort(all, byDay.thenComparing(byLabel).thenComparing(byPart).thenComparing(byAddress));
        for (int run = 0; run < runs; run++) {
            order[run] = all[run];
        }
    }

    private void read(int which) {
        int count = cursor.count();
        if (tries + count > kind.length) {
            int size = Math.max(tries + count, kind.length * 2);
            kind = Arrays.copyOf(kind, size);
            value = Arrays.copyOf(value, size);
            given = Arrays.copyOf(given, size);
            help = Arrays.copyOf(help, size);
            prompt = Arrays.copyOf(prompt, size);
            number = Arrays.copyOf(number, size);
            memberOfRow = Arrays.copyOf(memberOfRow, size);
        }
        for (int row = tries; row < tries + count; row++) {
            cursor.nextTry();
            kind[row] = (byte) cursor.kind();
            value[row] = cursor.value();
            given[row] = cursor.given();
            help[row] = cursor.help();
            prompt[row] = cursor.prompt();
            number[row] = cursor.number();
            memberOfRow[row] = which;
        }
        tries += count;
    }
}
