package stridetally.scoring;

import java.util.Arrays;
import stridetally.ingest.ReadingKind;
import stridetally.ingest.SeriesNumbers;
import stridetally.ingest.TrialSink;

/**
 * Groups tries by series, day and label as they stream in. What comes out depends on the trial numbers and on the places
 * of the rows in their files, not on the order of arrival, so parts of a log may be read apart and merged. About 36 bytes a
 * session and 9 a try; no object per session. Hot loop: open addressing on primitive arrays. Not for several threads.
 */
public final class SessionTable implements TrialSink {
    private static final int FIRST_SIZE = 64;

    private final SeriesNumbers numbers;
    private final PackedTrials trials = new PackedTrials();
    private int sessions;
    private int[] series = new int[FIRST_SIZE];
    private int[] day = new int[FIRST_SIZE];
    private int[] label = new int[FIRST_SIZE];
    private int[] count = new int[FIRST_SIZE];
    private int[] last = new int[FIRST_SIZE];
    private long[] originBase = new long[FIRST_SIZE];

    /** Session number plus one, 0 = free; twice to four times as many slots as sessions. */
    private int[] slots = new int[4 * FIRST_SIZE];

    /** A table whose series and labels are numbered by these numbers. */
    public SessionTable(SeriesNumbers numbers) {
        this.numbers = numbers;
    }

    /** The numbers of this table's series and labels. */
    public SeriesNumbers numbers() {
        return numbers;
    }

    /** How many sessions there are. */
    public int size() {
        return sessions;
    }

    @Override
    public void trial(
            int seriesNumber,
            int onDay,
            int labelNumber,
            int number,
            ReadingKind kind,
            long value,
            int given,
            int help,
            int prompt,
            long origin) {
        int session = sessionOf(seriesNumber, onDay, labelNumber, origin);
        last[session] =
                trials.add(last[session], originBase[session], number, kind, value, given, help, prompt, origin);
        count[session]++;
    }

    /** Takes over the tries of another table, whose series and labels may be numbered otherwise. */
    public void merge(SessionTable other) {
        for (int session = 0; session < other.sessions; session++) {
            int mine = numbers.number(other.numbers.key(other.series[session]));
            int myLabel = numbers.label(other.numbers.labelText(other.label[session]));
            TrialGroup.Rows rows = other.rows(session);
            for (int row = 0; row < rows.size(); row++) {
                trial(
                        mine,
                        other.day[session],
                        myLabel,
                        rows.number[row],
                        ReadingKind.at(rows.kind[row]),
                        rows.value[row],
                        rows.given[row],
                        rows.help[row],
                        rows.prompt[row],
                        rows.origin[row]);
            }
        }
    }

    /** The sessions by series and day, once all tries are in. */
    public SessionIndex index() {
        return new SessionIndex(this);
    }

    /** Bytes in which the tries are held. */
    long trialBytes() {
        return trials.bytes();
    }

    int series(int session) {
        return series[session];
    }

    int day(int session) {
        return day[session];
    }

    String label(int session) {
        return numbers.labelText(label[session]);
    }

    TrialGroup group(int session) {
        return TrialGroup.ordered(day[session], label(session), rows(session));
    }

    private TrialGroup.Rows rows(int session) {
        TrialGroup.Rows rows = new TrialGroup.Rows(count[session]);
        int address = last[session];
        for (int row = count[session] - 1; row >= 0; row--) {
            address = trials.read(address, originBase[session], rows, row);
        }
        return rows;
    }

    private int sessionOf(int seriesNumber, int onDay, int labelNumber, long origin) {
        int mask = slots.length - 1;
        int slot = hash(seriesNumber, onDay, labelNumber) & mask;
        while (slots[slot] != 0) {
            int found = slots[slot] - 1;
            if (series[found] == seriesNumber && day[found] == onDay && label[found] == labelNumber) {
                return found;
            }
            slot = (slot + 1) & mask;
        }
        slots[slot] = sessions + 1;
        return begin(seriesNumber, onDay, labelNumber, origin);
    }

    private int begin(int seriesNumber, int onDay, int labelNumber, long origin) {
        if (sessions == series.length) {
            grow();
        }
        series[sessions] = seriesNumber;
        day[sessions] = onDay;
        label[sessions] = labelNumber;
        last[sessions] = PackedTrials.NONE;
        originBase[sessions] = origin;
        sessions++;
        if (sessions * 2L > slots.length) {
            rehash();
        }
        return sessions - 1;
    }

    private void grow() {
        int size = Math.addExact(sessions, sessions / 2);
        series = Arrays.copyOf(series, size);
        day = Arrays.copyOf(day, size);
        label = Arrays.copyOf(label, size);
        count = Arrays.copyOf(count, size);
        last = Arrays.copyOf(last, size);
        originBase = Arrays.copyOf(originBase, size);
    }

    private void rehash() {
        slots = new int[Math.multiplyExact(slots.length, 2)];
        int mask = slots.length - 1;
        for (int session = 0; session < sessions; session++) {
            int slot = hash(series[session], day[session], label[session]) & mask;
            while (slots[slot] != 0) {
                slot = (slot + 1) & mask;
            }
            slots[slot] = session + 1;
        }
    }

    private static int hash(int seriesNumber, int onDay, int labelNumber) {
        // Odd multipliers spread neighbouring days and series over the slots.
        int mixed = seriesNumber * 0x9E3779B1 + onDay * 0x85EBCA77 + labelNumber * 0xC2B2AE3D;
        return mixed ^ mixed >>> 15;
    }
}
