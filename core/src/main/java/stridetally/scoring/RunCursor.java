package stridetally.scoring;

import stridetally.ingest.ReadingKind;

/** Goes through the runs of a series of {@link TrialRuns}, the last first, and through the tries of a run. Hot loop. */
final class RunCursor {
    private final PackedBytes bytes = new PackedBytes();
    private TrialRuns runs = new TrialRuns();
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

    /** Over the runs of a series of some runs; none for a number below 0. */
    void over(TrialRuns of, int series) {
        runs = of;
        before = of.lastRun(series);
    }

    /** Goes to the run before; false when there is none. */
    boolean nextRun() {
        if (before == TrialRuns.NONE) {
            return false;
        }
        go(before);
        return true;
    }

    /** Goes to a run by its address. */
    void go(int one) {
        bytes.go(runs.page(one), one & TrialRuns.PAGE - 1);
        long head = bytes.nextTwoInts();
        before = (int) head;
        int dayAndLabel = (int) (head >>> Integer.SIZE);
        day = dayAndLabel >> 1;
        label = (dayAndLabel & TrialRuns.LABELLED) == 0 ? 0 : bytes.nextInt();
        count = bytes.nextByte();
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
        int head = bytes.nextByte();
        int ranks = bytes.nextByte();
        kind = head & TrialRuns.KIND_MASK;
        help = (ranks >> TrialRuns.RANK_BITS) - 1;
        prompt = (ranks & (1 << TrialRuns.RANK_BITS) - 1) - 1;
        value = bytes.next() * TrialRuns.scale(head);
        number = (head & TrialRuns.NUMBERED) == 0 ? 0 : (int) bytes.next();
        given = (head & TrialRuns.SEVERAL) == 0 ? 1 : (int) bytes.next();
    }

    /**
     * Reads all tries of the run into arrays that are long enough: values and ranks of help. False, after some of them, when one is
     * not an exact amount or they do not stand in their order. What {@link #nextTry} reads one by one, in local variables.
     */
    boolean plainTries(long[] values, int[] helps) {
        byte[] from = bytes.page();
        int place = bytes.at();
        int exactly = ReadingKind.EXACT.code();
        int tries = count;
        long before = 0;
        for (int row = 0; row < tries; row++) {
            int head = from[place++];
            helps[row] = ((from[place++] & 0xff) >> TrialRuns.RANK_BITS) - 1;
            byte part = from[place++];
            long read = part & 0x7f;
            for (int shift = 7; part < 0; shift += 7) {
                part = from[place++];
                read |= (part & 0x7fL) << shift;
            }
            values[row] = read * TrialRuns.scale(head);
            long own = 0;
            if ((head & TrialRuns.NUMBERED) != 0) {
                part = from[place++];
                own = part & 0x7f;
                for (int shift = 7; part < 0; shift += 7) {
                    part = from[place++];
                    own |= (part & 0x7fL) << shift;
                }
            }
            boolean inOrder = row == 0 || (own >= before && (own == 0) == (before == 0));
            if (!inOrder || (head & (TrialRuns.KIND_MASK | TrialRuns.SEVERAL)) != exactly) {
                return false;
            }
            before = own;
        }
        return true;
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
}
