package stridetally.scoring;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import stridetally.ingest.SeriesNumbers;

/** The sessions of a table by series, in the order of their days and, within a day, of their labels. */
public final class SessionIndex implements SeriesSessions {
    private static final Comparator<TrialGroup> BY_DAY_AND_LABEL = new ByDayAndLabel();

    private final SessionTable table;

    /** Where each series starts in {@link #ordered}, and one more. */
    private final int[] starts;

    private final int[] ordered;

    SessionIndex(SessionTable table) {
        this.table = table;
        starts = new int[table.numbers().size() + 1];
        ordered = new int[table.size()];
        for (int session = 0; session < table.size(); session++) {
            starts[table.series(session) + 1]++;
        }
        for (int series = 1; series < starts.length; series++) {
            starts[series] += starts[series - 1];
        }
        int[] next = starts.clone();
        for (int session = 0; session < table.size(); session++) {
            ordered[next[table.series(session)]++] = session;
        }
    }

    /** The numbers of the series and labels. */
    @Override
    public SeriesNumbers numbers() {
        return table.numbers();
    }

    /** How many series had a number when the index was made. */
    @Override
    public int seriesCount() {
        return starts.length - 1;
    }

    /** The last day of a series up to one, in days since 1970-01-01; the least number when there is none. */
    int lastDay(int series, LocalDate upTo) {
        int last = Integer.MIN_VALUE;
        for (int i = starts[series]; i < starts[series + 1]; i++) {
            int day = table.day(ordered[i]);
            last = day <= upTo.toEpochDay() ? Math.max(last, day) : last;
        }
        return last;
    }

    /** The sessions of one series. */
    public List<TrialGroup> of(int series) {
        List<TrialGroup> groups = new ArrayList<>(starts[series + 1] - starts[series]);
        for (int i = starts[series]; i < starts[series + 1]; i++) {
            groups.add(table.group(ordered[i]));
        }
        groups.sort(BY_DAY_AND_LABEL);
        return groups;
    }

    /** The sessions of several series of one child, side and measure; what falls on the same day and label is one session. */
    @Override
    public List<TrialGroup> joined(List<Integer> series) {
        List<TrialGroup> parts = new ArrayList<>();
        for (int one : series) {
            parts.addAll(of(one));
        }
        if (series.size() < 2) {
            return parts;
        }
        parts.sort(BY_DAY_AND_LABEL);
        List<TrialGroup> sessions = new ArrayList<>();
        int start = 0;
        for (int i = 1; i <= parts.size(); i++) {
            if (i == parts.size() || !sameSession(parts.get(start), parts.get(i))) {
                sessions.add(TrialGroup.joined(parts.subList(start, i)));
                start = i;
            }
        }
        return sessions;
    }

    /** The order of sessions in a series. */
    private static final class ByDayAndLabel implements Comparator<TrialGroup> {
        @Override
        public int compare(TrialGroup one, TrialGroup other) {
            int days = Integer.compare(one.day(), other.day());
            return days != 0 ? days : one.label().compareTo(other.label());
        }
    }

    private static boolean sameSession(TrialGroup one, TrialGroup other) {
        return one.day() == other.day() && one.label().equals(other.label());
    }
}
