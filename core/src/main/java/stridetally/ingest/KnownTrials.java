package stridetally.ingest;

import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import stridetally.model.SeriesKey;
import stridetally.model.Trial;

/**
 * Which trials are already there, by identity: source, student, date, session, measure, side, protocol, place, observer,
 * trial. Holds 128 bits of a digest of each identity and 64 of its value, so that a log of a million tries is known in
 * 40 bytes a try; two different identities meeting in 128 bits is not a thing that happens.
 */
public final class KnownTrials {

    /** What is known of a trial that comes in. */
    public enum Standing {
        NEW,
        /** Same identity, same value. */
        SAME,
        /** Same identity, another value. */
        OTHER_VALUE
    }

    private static final int FIRST_SIZE = 1 << 10;

    private final MessageDigest digest;
    private long[] high = new long[FIRST_SIZE];
    private long[] low = new long[FIRST_SIZE];
    private long[] value = new long[FIRST_SIZE];
    private long[] origin = new long[FIRST_SIZE];
    private int size;

    public KnownTrials() {
        try {
            digest = MessageDigest.getInstance("SHA-256");
        } catch (NoSuchAlgorithmException impossible) {
            throw new IllegalStateException("every Java has SHA-256", impossible);
        }
    }

    /**
     * Where a trial stands; a new one is remembered with its origin. An {@code origin} is an entry and line, see
     * {@link TrialFeed#origin}.
     */
    public Standing add(Trial trial, long from) {
        long[] key = identity(trial);
        long worth = worth(trial);
        int slot = slot(key[0], key[1]);
        if (high[slot] == 0 && low[slot] == 0) {
            high[slot] = key[0];
            low[slot] = key[1];
            value[slot] = worth;
            origin[slot] = from;
            size++;
            if (size * 2 > high.length) {
                grow();
            }
            return Standing.NEW;
        }
        return value[slot] == worth ? Standing.SAME : Standing.OTHER_VALUE;
    }

    /** From now on the trial of this identity has this value and origin. */
    public void replace(Trial trial, long from) {
        long[] key = identity(trial);
        int slot = slot(key[0], key[1]);
        value[slot] = worth(trial);
        origin[slot] = from;
    }

    /** The origin of the trial that has this one's identity; 0 when there is none. */
    public long originOf(Trial trial) {
        long[] key = identity(trial);
        return origin[slot(key[0], key[1])];
    }

    /** Whether a trial of this identity and value is there. */
    public boolean has(Trial trial) {
        long[] key = identity(trial);
        int slot = slot(key[0], key[1]);
        return origin[slot] != 0 && value[slot] == worth(trial);
    }

    private long[] identity(Trial trial) {
        SeriesKey key = trial.key();
        String text = String.join(
                "\u0001",
                key.source(),
                key.student().text(),
                trial.date().toString(),
                trial.session(),
                key.measure().text(),
                key.side().word(),
                key.protocol().text(),
                key.place().word(),
                trial.observer(),
                Integer.toString(trial.number()));
        return bits(text);
    }

    private long worth(Trial trial) {
        return bits(TrialCells.valueText(trial.reading()) + "\u0001"
                + (trial.reading() instanceof stridetally.units.Reading.Tries tries ? tries.given() : 1))[0];
    }

    private long[] bits(String text) {
        ByteBuffer hash = ByteBuffer.wrap(digest.digest(text.getBytes(StandardCharsets.UTF_8)));
        return new long[] {hash.getLong(), hash.getLong()};
    }

    private int slot(long first, long second) {
        int mask = high.length - 1;
        int slot = (int) first & mask;
        while ((high[slot] != 0 || low[slot] != 0) && (high[slot] != first || low[slot] != second)) {
            slot = (slot + 1) & mask;
        }
        return slot;
    }

    private void grow() {
        long[] oldHigh = high;
        long[] oldLow = low;
        long[] oldValue = value;
        long[] oldOrigin = origin;
        high = new long[oldHigh.length * 2];
        low = new long[high.length];
        value = new long[high.length];
        origin = new long[high.length];
        for (int old = 0; old < oldHigh.length; old++) {
            if (oldHigh[old] != 0 || oldLow[old] != 0) {
                int slot = slot(oldHigh[old], oldLow[old]);
                high[slot] = oldHigh[old];
                low[slot] = oldLow[old];
                value[slot] = oldValue[old];
                origin[slot] = oldOrigin[old];
            }
        }
    }
}
