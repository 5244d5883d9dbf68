package stridetally.recordings;

import java.util.Arrays;
import java.util.EnumMap;
import java.util.Map;

/**
 * The strides of one walk: from a contact of a foot to its next, with off and contact of the other foot and its own off
 * between, in this order. Any other order drops the stride, and only it. Where a walk has no offs at all, the contacts
 * alone are looked at. From 14 strides of a foot on, its first and last two are left out, when the walk is not yet steady.
 *
 * @source ours
 */
final class Strides {
    /** A foot with so many strides spares its first and last two and keeps the 10 that a variability needs. */
    static final int LONG_WALK = 14;

    private static final int SPARED = 2;
    private static final double SHORTEST = 0.3;
    private static final double LONGEST = 8;

    /** Why a stride was dropped. */
    enum Drop {
        ORDER("its events are not in the order contact, other foot off, other foot contact, off, contact"),
        NO_OFF("an off between is missing"),
        NO_OTHER_CONTACT("no contact of the other foot between"),
        TOO_SHORT("it takes less than 0.3 s"),
        TOO_LONG("it takes more than 8 s: a stop, or a gap in the recording");

        private final String words;

        Drop(String words) {
            this.words = words;
        }

        String words() {
            return words;
        }
    }

    /** Told of each stride that is dropped. */
    interface Dropped {
        void stride(long line, Drop why);
    }

    private final Footfalls walk;
    private final boolean oneFoot;
    private final int[] nextOfFoot;

    /** Event numbers of each stride that is used. */
    int count;

    int[] first = new int[64];
    int[] otherOff = new int[64];
    int[] middle = new int[64];
    int[] ownOff = new int[64];
    int[] last = new int[64];
    final Map<Drop, Integer> dropped = new EnumMap<>(Drop.class);
    int spared;

    Strides(Footfalls walk, Dropped told) {
        this.walk = walk;
        this.oneFoot = walk.contacts(true) == 0 || walk.contacts(false) == 0;
        this.nextOfFoot = nextOfFoot();
        for (int i = 0; i < walk.count(); i++) {
            if (walk.contact()[i] && nextOfFoot[i] >= 0) {
                look(i, nextOfFoot[i], told);
            }
        }
        spare();
    }

    boolean oneFoot() {
        return oneFoot;
    }

    int droppedCount() {
        return dropped.values().stream().mapToInt(Integer::intValue).sum();
    }

    boolean right(int stride) {
        return walk.right()[first[stride]];
    }

    double seconds(int stride) {
        return walk.time()[last[stride]] - walk.time()[first[stride]];
    }

    /** Middle of the times between contacts of one foot, dropped ones included: tells when the unit of time is another. */
    double medianSeconds() {
        double[] all = new double[walk.count()];
        int n = 0;
        for (int i = 0; i < walk.count(); i++) {
            if (walk.contact()[i] && nextOfFoot[i] >= 0) {
                all[n++] = walk.time()[nextOfFoot[i]] - walk.time()[i];
            }
        }
        Arrays.sort(all, 0, n);
        return n == 0 ? Double.NaN : all[n / 2];
    }

    private int[] nextOfFoot() {
        int[] next = new int[walk.count()];
        int left = -1;
        int right = -1;
        for (int i = walk.count() - 1; i >= 0; i--) {
            if (walk.contact()[i]) {
                next[i] = walk.right()[i] ? right : left;
                right = walk.right()[i] ? i : right;
                left = walk.right()[i] ? left : i;
            }
        }
        return next;
    }

    private void look(int from, int to, Dropped told) {
        boolean foot = walk.right()[from];
        int off = -1;
        int other = -1;
        int own = -1;
        Drop why = null;
        for (int i = from + 1; i < to; i++) {
            boolean mine = walk.right()[i] == foot;
            if (walk.contact()[i]) {
                why = other >= 0 ? Drop.ORDER : why;
                other = i;
            } else if (mine) {
                why = own >= 0 || (other < 0 && !oneFoot) ? Drop.ORDER : why;
                own = i;
            } else {
                why = off >= 0 || other >= 0 ? Drop.ORDER : why;
                off = i;
            }
        }
        why = why == null ? missing(off, other, own) : why;
        why = why == null && walk.timed() ? timing(walk.time()[to] - walk.time()[from]) : why;
        if (why != null) {
            dropped.merge(why, 1, Integer::sum);
            told.stride(walk.line()[from], why);
            return;
        }
        add(from, off, other, own, to);
    }

    private @org.jspecify.annotations.Nullable Drop missing(int off, int other, int own) {
        if (other < 0 && !oneFoot) {
            return Drop.NO_OTHER_CONTACT;
        }
        return walk.offs() && (own < 0 || (off < 0 && !oneFoot)) ? Drop.NO_OFF : null;
    }

    private static @org.jspecify.annotations.Nullable Drop timing(double seconds) {
        return seconds < SHORTEST ? Drop.TOO_SHORT : seconds > LONGEST ? Drop.TOO_LONG : null;
    }

    private void add(int from, int off, int other, int own, int to) {
        if (count == first.length) {
            int size = 2 * count;
            first = Arrays.copyOf(first, size);
            otherOff = Arrays.copyOf(otherOff, size);
            middle = Arrays.copyOf(middle, size);
            ownOff = Arrays.copyOf(ownOff, size);
            last = Arrays.copyOf(last, size);
        }
        first[count] = from;
        otherOff[count] = off;
        middle[count] = other;
        ownOff[count] = own;
        last[count] = to;
        count++;
    }

    private void spare() {
        int rights = 0;
        for (int i = 0; i < count; i++) {
            rights += right(i) ? 1 : 0;
        }
        int[] total = {count - rights, rights};
        int[] seen = new int[2];
        int kept = 0;
        for (int i = 0; i < count; i++) {
            int foot = right(i) ? 1 : 0;
            int place = seen[foot]++;
            boolean out = total[foot] >= LONG_WALK && (place < SPARED || place >= total[foot] - SPARED);
            if (!out) {
                first[kept] = first[i];
                otherOff[kept] = otherOff[i];
                middle[kept] = middle[i];
                ownOff[kept] = ownOff[i];
                last[kept] = last[i];
                kept++;
            }
        }
        spared = count - kept;
        count = kept;
    }
}
