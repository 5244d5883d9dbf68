package stridetally.scoring;

import java.util.Arrays;
import java.util.Comparator;
import java.util.Optional;

/**
 * Goes through the sessions of one series of {@link LogRuns} in the order of their days and labels, with the tries of each,
 * in arrays that are used again. Hot loop: no objects a session. Not for several threads.
 */
public final class SeriesWalk {
    /** Up to so many days a run are counted. Ours. */
    private static final int DAYS_A_RUN = 8;

    private final LogRuns log;
    private final RunCursor cursor;
    private final Optional<RunCursor> lone;
    private final RunChains chains = new RunChains();
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

    /** The first run of the session, in order. */
    private int first;

    /** Whether {@link #tries} holds the session. */
    private boolean gathered;

    private boolean labelled;

    private final SessionTries tries = new SessionTries();

    SeriesWalk(LogRuns log) {
        this.log = log;
        this.cursor = new RunCursor();
        this.lone = Optional.of(cursor);
    }

    /**
     * Goes to a series; or to several of one child, side and measure, such as probes and practice: what falls on the same day
     * and label is one session then.
     */
    public void over(int... series) {
        next = 0;
        labelled = false;
        members = series.length;
        chains.clear();
        for (int one = 0; one < log.parts(); one++) {
            for (int which = 0; which < members; which++) {
                chains.add(log.part(one), log.part(one).lastRun(log.local(one, series[which])));
            }
        }
        chains.measure();
        runs = 0;
        for (int chain = 0; chain < chains.count(); chain++) {
            int start = runs;
            runs += chains.length(chain);
            room();
            cursor.over(log.part(chain / members), log.local(chain / members, series[chain % members]));
            // A chain is gone along from its end.
            for (int run = runs - 1; run >= start; run--) {
                cursor.nextRun();
                note(run, chain / members, chain % members);
            }
        }
        sort();
    }

    /** Reads the next session; false at the end. */
    public boolean nextSession() {
        if (next == runs) {
            return false;
        }
        first = next;
        gathered = false;
        int run = order[next++];
        if (continues(run)) {
            gather();
        } else {
            go(run);
        }
        return true;
    }

    private void go(int run) {
        cursor.over(log.part(part[run]), -1);
        cursor.go(address[run]);
    }

    /** Whether the next run is of the same session. */
    private boolean continues(int run) {
        return next < runs && day[order[next]] == day[run] && label[order[next]] == label[run];
    }

    /** Lays the tries of the session side by side, in their order. */
    private void gather() {
        tries.clear();
        next = first;
        int run;
        do {
            run = order[next++];
            go(run);
            tries.add(cursor, member[run]);
        } while (continues(run));
        tries.order();
        gathered = true;
    }

    private SessionTries tries() {
        if (!gathered) {
            gather();
        }
        return tries;
    }

    /**
     * The run that is the whole session, as nearly all are, at its first try; whoever reads it goes on by {@link #isPlain} and its
     * like only. Empty when the session has several, or was looked at already.
     */
    Optional<RunCursor> loneRun() {
        return gathered ? Optional.empty() : lone;
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
        return tries().size();
    }

    /** Billionths of the measure's unit, of a row. */
    public long value(int row) {
        return tries().value(row);
    }

    /** Rank of the help of a row. */
    public int help(int row) {
        return tries().help(row);
    }

    /** Whether the session is as nearly all are: every row a plain number, and the rows in their order, see {@link TrialGroup}. */
    public boolean isPlain() {
        return tries().isPlain();
    }

    /** The session as an object. */
    public TrialGroup group() {
        return tries().group(day(), label(), members);
    }

    private void room() {
        if (runs > part.length) {
            int more = Math.max(runs, part.length * 2);
            part = Arrays.copyOf(part, more);
            address = Arrays.copyOf(address, more);
            day = Arrays.copyOf(day, more);
            label = Arrays.copyOf(label, more);
            order = Arrays.copyOf(order, more);
            member = Arrays.copyOf(member, more);
        }
    }

    private void note(int run, int one, int which) {
        part[run] = one;
        member[run] = which;
        address[run] = cursor.address();
        day[run] = cursor.day();
        label[run] = log.label(one, cursor.label());
        labelled |= label[run] != 0;
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
        sortByDay();
    }

    /** Those of a day as they came: counted where the days lie as near to each other as those of a log, else sorted. */
    private void sortByDay() {
        int first = day[0];
        int last = day[0];
        for (int run = 1; run < runs; run++) {
            first = Math.min(first, day[run]);
            last = Math.max(last, day[run]);
        }
        long days = last - (long) first + 1;
        if (days > (long) DAYS_A_RUN * runs) {
            long[] keys = new long[runs];
            for (int run = 0; run < runs; run++) {
                keys[run] = (long) day[run] << Integer.SIZE | run;
            }
            Arrays.sort(keys);
            for (int run = 0; run < runs; run++) {
                order[run] = (int) keys[run];
            }
            return;
        }
        int[] place = new int[(int) days + 1];
        for (int run = 0; run < runs; run++) {
            place[day[run] - first + 1]++;
        }
        for (int one = 1; one <= days; one++) {
            place[one] += place[one - 1];
        }
        for (int run = 0; run < runs; run++) {
            order[place[day[run] - first]++] = run;
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
}
