package stridetally.scoring;

import java.util.Arrays;
import stridetally.ingest.ReadingKind;
import stridetally.ingest.TrialSink;
import stridetally.table.ByteLongs;

/**
 * The tries of one part of a long log, packed by runs: tries of one series, day and label that came in a row. A log in the
 * order of its days has one run a session; a shuffled one a run a try, at the same cost each. A run names the run before it
 * of its series, so a series is a chain that is read from its end ({@link RunCursor}), and nothing is looked up or moved
 * while reading. About 9 bytes a run, 5 a try and 4 a series.
 *
 * <p>Tries keep their order of arrival, which stands for their place in the file. Hot loop: no objects. Not for several
 * threads while tries come in.
 */
public final class TrialRuns implements TrialSink {
    static final int NONE = 0;
    static final int PAGE_BITS = 20;
    static final int PAGE = 1 << PAGE_BITS;

    /** Addresses are whole numbers of 31 bits: two gigabytes of tries, some 300 million of them. */
    private static final long MOST_BYTES = Integer.MAX_VALUE - 2L * PAGE;

    /** Back, day and label, label number, count. */
    private static final int LONGEST_HEAD = 4 + 4 + 4 + 1;

    /** Head, help and prompt, and three variable numbers. */
    private static final int LONGEST_TRY = 2 + 3 * PackedBytes.LONGEST;

    private static final int MOST_TRIES = 255;
    static final int LABELLED = 1;
    private static final long[] SCALES = {1_000_000_000L, 10_000_000L, 100_000L, 1L};
    static final int KIND_MASK = 0b111;
    private static final double HUNDREDTH = 1e7;
    private static final int SCALE_SHIFT = 3;
    static final int NUMBERED = 1 << 5;
    static final int SEVERAL = 1 << 6;
    static final int RANK_BITS = 4;
    private static final int HIGHEST_RANK = (1 << RANK_BITS) - 2;

    /** Pages of several that follow each other. An array, since a list would be asked for each run. */
    private static final class Pages {
        byte[][] all = new byte[16][];
        int count;

        void add(byte[] page) {
            if (count == all.length) {
                all = Arrays.copyOf(all, count * 2);
            }
            all[count++] = page;
        }
    }

    private final Pages pages;
    private final PackedBytes free;
    private byte[] page;
    private int[] lastRun = new int[1 << 10];
    private long runs;
    private int openSeries = -1;
    private int openDay;
    private int openLabel;
    private int openCount;

    /** Without tries. */
    public TrialRuns() {
        this.pages = new Pages();
        this.free = new PackedBytes();
        this.page = new byte[0];
        free.go(page, PAGE);
    }

    private TrialRuns(TrialRuns before) {
        this.pages = before.pages;
        this.free = before.free;
        this.page = before.page;
    }

    /** Another one without tries, whose tries will lie on the pages of this one behind its own; it takes no more itself then. */
    public TrialRuns next() {
        return new TrialRuns(this);
    }

    @Override
    public void trial(
            int series,
            int day,
            int label,
            int number,
            ReadingKind kind,
            long value,
            int given,
            int help,
            int prompt,
            long origin) {
        boolean same = series == openSeries && day == openDay && label == openLabel;
        if (!same || free.at() + LONGEST_TRY > PAGE || (page[openCount] & 0xff) == MOST_TRIES) {
            begin(series, day, label);
        }
        page[openCount]++;
        add(number, kind, value, given, help, prompt);
    }

    private void begin(int series, int day, int label) {
        if (free.at() + LONGEST_HEAD + LONGEST_TRY > PAGE) {
            Math.multiplyExact(pages.count + 1, PAGE);
            page = new byte[PAGE];
            pages.add(page);
            // Address 0 stands for no run.
            free.go(page, pages.count == 1 ? 1 : 0);
        }
        if (series >= lastRun.length) {
            lastRun = Arrays.copyOf(lastRun, Math.max(series + 1, lastRun.length + lastRun.length / 2));
        }
        int address = ((pages.count - 1) << PAGE_BITS) + free.at();
        free.putInt(lastRun[series]);
        lastRun[series] = address;
        free.putInt(day << 1 | (label == 0 ? 0 : LABELLED));
        if (label != 0) {
            free.putInt(label);
        }
        openCount = free.at();
        free.putByte(0);
        openSeries = series;
        openDay = day;
        openLabel = label;
        runs++;
    }

    private void add(int number, ReadingKind kind, long value, int given, int help, int prompt) {
        if (help > HIGHEST_RANK || prompt > HIGHEST_RANK) {
            throw new IllegalArgumentException("rank " + help + ", " + prompt);
        }
        int scale = 3;
        long scaled = value;
        // A quotient of doubles, since the quick compiler calls for one of whole numbers; the product says whether it
        // is right.
        long hundredths = (long) (value / HUNDREDTH);
        if (hundredths * SCALES[1] == value) {
            int few = (int) hundredths;
            boolean whole = few == hundredths && few % 100 == 0;
            scale = whole ? 0 : 1;
            scaled = whole ? few / 100 : hundredths;
        } else if (value % SCALES[2] == 0) {
            scale = 2;
            scaled = value / SCALES[2];
        }
        int several = given == 1 ? 0 : SEVERAL;
        int numbered = number == 0 ? 0 : NUMBERED;
        free.putByte(kind.code() | scale << SCALE_SHIFT | numbered | several);
        free.putByte(((help + 1) << RANK_BITS) | (prompt + 1));
        free.put(scaled);
        if (numbered != 0) {
            free.put(number);
        }
        if (several != 0) {
            free.put(given);
        }
    }

    static long scale(int head) {
        return SCALES[head >> SCALE_SHIFT & 0b11];
    }

    byte[] page(int address) {
        return pages.all[address >>> PAGE_BITS];
    }

    /** The run before one of its series. */
    int before(int address) {
        return (int) ByteLongs.at(page(address), address & (PAGE - 1));
    }

    /** The last run of a series; {@link #NONE} when it has none here, as for a number below 0. */
    int lastRun(int series) {
        return series < 0 || series >= lastRun.length ? NONE : lastRun[series];
    }

    /** How many runs there are. */
    public long runs() {
        return runs;
    }

    /** How many runs a series has. */
    public int runs(int series) {
        RunCursor cursor = new RunCursor();
        cursor.over(this, series);
        int count = 0;
        while (cursor.nextRun()) {
            count++;
        }
        return count;
    }

    /** Bytes in which the tries are held, and those before them on the same pages; of pages that were begun, only what is used. */
    public long bytes() {
        return Math.max(0L, pages.count - 1L) * PAGE + (pages.count == 0 ? 0 : free.at()) + seriesBytes();
    }

    /** Bytes that say where the runs of each series end. */
    public long seriesBytes() {
        return (long) Integer.BYTES * lastRun.length;
    }

    /** Whether more can be addressed. */
    public boolean addressable() {
        return (long) pages.count * PAGE < MOST_BYTES;
    }
}
