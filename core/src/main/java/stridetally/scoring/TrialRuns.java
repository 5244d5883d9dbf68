package stridetally.scoring;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import stridetally.ingest.ReadingKind;
import stridetally.ingest.SeriesNumbers;
import stridetally.ingest.TrialSink;

/**
 * The tries of one part of a long log, packed by runs: tries of one series, day and label that came in a row. A log in the
 * order of its days has one run a session; a shuffled one a run a try, at the same cost each. A run names the run before it
 * of its series, so a series is a chain that is read from its end, and nothing is looked up or moved while reading. About
 * 9 bytes a run, 5 a try and 4 a series.
 *
 * <p>Tries keep their order of arrival, which stands for their place in the file. Hot loop: no objects. Not for several
 * threads while tries come in.
 */
public final class TrialRuns implements TrialSink {
    private static final int NONE = 0;
    private static final int PAGE_BITS = 20;
    private static final int PAGE = 1 << PAGE_BITS;

    /** Back, day and label, label number, count. */
    private static final int LONGEST_HEAD = 4 + 4 + 4 + 1;

    /** Head, help and prompt, and three variable numbers of at most 10 bytes each. */
    private static final int LONGEST_TRY = 2 + 3 * 10;

    private static final int MOST_TRIES = 255;
    private static final int LABELLED = 1;
    private static final long[] SCALES = {1_000_000_000L, 10_000_000L, 100_000L, 1L};
    private static final int KIND_MASK = 0b111;
    private static final int SCALE_SHIFT = 3;
    private static final int NUMBERED = 1 << 5;
    private static final int SEVERAL = 1 << 6;
    private static final int RANK_BITS = 4;
    private static final int HIGHEST_RANK = (1 << RANK_BITS) - 2;

    private final SeriesNumbers numbers;
    private final List<byte[]> pages = new ArrayList<>();
    private byte[] page = new byte[0];
    private int free = PAGE;
    private int[] lastRun = new int[1 << 10];
    private int openSeries = -1;
    private int openDay;
    private int openLabel;
    private int openCount;

    /** For tries whose series and labels are numbered by these numbers. */
    public TrialRuns(SeriesNumbers numbers) {
        this.numbers = numbers;
    }

    SeriesNumbers numbers() {
        return numbers;
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
        if (!same || free + LONGEST_TRY > PAGE || (page[openCount] & 0xff) == MOST_TRIES) {
            begin(series, day, label);
        }
        page[openCount]++;
        add(number, kind, value, given, help, prompt);
    }

    private void begin(int series, int day, int label) {
        if (free + LONGEST_HEAD + LONGEST_TRY > PAGE) {
            // Addresses are whole numbers of 31 bits: two gigabytes of tries, some 300 million of them.
            Math.multiplyExact(pages.size() + 1, PAGE);
            page = new byte[PAGE];
            pages.add(page);
            // Address 0 stands for no run.
            free = pages.size() == 1 ? 1 : 0;
        }
        if (series >= lastRun.length) {
            lastRun = Arrays.copyOf(lastRun, Math.max(series + 1, lastRun.length + lastRun.length / 2));
        }
        int address = ((pages.size() - 1) << PAGE_BITS) + free;
        putInt(lastRun[series]);
        lastRun[series] = address;
        putInt(day << 1 | (label == 0 ? 0 : LABELLED));
        if (label != 0) {
            putInt(label);
        }
        openCount = free;
        page[free++] = 0;
        openSeries = series;
        openDay = day;
        openLabel = label;
    }

    private void add(int number, ReadingKind kind, long value, int given, int help, int prompt) {
        if (help > HIGHEST_RANK || prompt > HIGHEST_RANK) {
            throw new IllegalArgumentException("rank " + help + ", " + prompt);
        }
        int scale = scale(value);
        int several = given == 1 ? 0 : SEVERAL;
        int numbered = number == 0 ? 0 : NUMBERED;
        page[free++] = (byte) (kind.code() | scale << SCALE_SHIFT | numbered | several);
        page[free++] = (byte) (((help + 1) << RANK_BITS) | (prompt + 1));
        put(value / SCALES[scale]);
        if (numbered != 0) {
            put(number);
        }
        if (several != 0) {
            put(given);
        }
    }

    /** The coarsest scale that the value is whole on; whole numbers of 32 bits are divided where that serves. */
    private static int scale(long value) {
        long hundredths = value / SCALES[1];
        if (hundredths * SCALES[1] == value) {
            boolean whole = (int) hundredths == hundredths ? (int) hundredths % 100 == 0 : hundredths % 100 == 0;
            return whole ? 0 : 1;
        }
        return value % SCALES[2] == 0 ? 2 : 3;
    }

    private void putInt(int number) {
        page[free++] = (byte) number;
        page[free++] = (byte) (number >> 8);
        page[free++] = (byte) (number >> 16);
        page[free++] = (byte) (number >> 24);
    }

    private void put(long number) {
        long rest = number;
        while ((rest & ~0x7fL) != 0) {
            page[free++] = (byte) (rest | 0x80);
            rest >>>= 7;
        }
        page[free++] = (byte) rest;
    }

    /** Goes through the runs of a series, the last first. */
    static final class Cursor {
        private TrialRuns runs;
        private byte[] page = new byte[0];
        private int at;
        private int address;
        private int before;
        private int day;
        private int label;
        private int count;
        private int kind;
        private int help;
        private int prompt;
        private long value;
        private int number;
        private int given;

        Cursor(TrialRuns runs) {
            this.runs = runs;
        }

        /** Over the runs of a series of some runs; none for a number below 0. */
        void over(TrialRuns of, int series) {
            runs = of;
            before = series < 0 || series >= of.lastRun.length ? NONE : of.lastRun[series];
        }

        /** Goes to the run before; false when there is none. */
        boolean nextRun() {
            if (before == NONE) {
                return false;
            }
            go(before);
            return true;
        }

        /** Goes to a run by its address. */
        void go(int one) {
            page = runs.pages.get(one >>> PAGE_BITS);
            at = one & PAGE - 1;
            before = nextInt();
            int dayAndLabel = nextInt();
            day = dayAndLabel >> 1;
            label = (dayAndLabel & LABELLED) == 0 ? 0 : nextInt();
            count = page[at++] & 0xff;
            address = one;
        }

        /** Where the run lies. */
        int address() {
            return address;
        }

        int day() {
            return day;
        }

        int label() {
            return label;
        }

        int count() {
            return count;
        }

        /** Reads the next try of the run. */
        void nextTry() {
            int head = page[at++];
            int ranks = page[at++] & 0xff;
            kind = head & KIND_MASK;
            help = (ranks >> RANK_BITS) - 1;
            prompt = (ranks & (1 << RANK_BITS) - 1) - 1;
            value = next() * SCALES[head >> SCALE_SHIFT & 0b11];
            number = (head & NUMBERED) == 0 ? 0 : (int) next();
            given = (head & SEVERAL) == 0 ? 1 : (int) next();
        }

        int kind() {
            return kind;
        }

        int help() {
            return help;
        }

        int prompt() {
            return prompt;
        }

        long value() {
            return value;
        }

        int number() {
            return number;
        }

        int given() {
            return given;
        }

        private int nextInt() {
            int number = (page[at] & 0xff)
                    | ((page[at + 1] & 0xff) << 8)
                    | ((page[at + 2] & 0xff) << 16)
                    | (page[at + 3] << 24);
            at += 4;
            return number;
        }

        private long next() {
            long number = 0;
            int shift = 0;
            byte part;
            do {
                part = page[at++];
                number |= (part & 0x7fL) << shift;
                shift += 7;
            } while (part < 0);
            return number;
        }
    }
}
