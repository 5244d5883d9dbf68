package stridetally.report;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import stridetally.scoring.Bound;
import stridetally.stats.Estimate;

/**
 * Session values in order, where a capped one is known on one side only: the k-th true value lies between the k-th lower
 * end and the k-th upper end. Where both agree it is known, where one is open it is a bound, and where both are open
 * nothing is said.
 */
final class OrderedMeasured {
    private final double[] low;
    private final double[] high;

    OrderedMeasured(List<Measured> values) {
        low = new double[values.size()];
        high = new double[values.size()];
        for (int i = 0; i < low.length; i++) {
            Measured one = values.get(i);
            low[i] = is(one, Bound.AT_MOST) ? Double.NEGATIVE_INFINITY : one.value();
            high[i] = is(one, Bound.AT_LEAST) ? Double.POSITIVE_INFINITY : one.value();
        }
        Arrays.sort(low);
        Arrays.sort(high);
    }

    /** The middle value, or the mean of the two middle ones. */
    Estimate<Measured> median() {
        return at((low.length - 1) / 2, low.length / 2);
    }

    /** The lowest value. */
    Estimate<Measured> lowest() {
        return at(0, 0);
    }

    /** The highest value. */
    Estimate<Measured> highest() {
        return at(low.length - 1, low.length - 1);
    }

    private Estimate<Measured> at(int place, int next) {
        if (low.length == 0) {
            return Estimate.notEstimable("no session with a value");
        }
        double least = middle(low, place, next);
        double most = middle(high, place, next);
        if (Double.isInfinite(least) && Double.isInfinite(most)) {
            return Estimate.notEstimable("capped values leave it open on both sides");
        }
        if (least == most) {
            return Estimate.of(Measured.exact(least));
        }
        boolean openAbove = Double.isInfinite(most) || Double.isInfinite(high[high.length - 1]);
        boolean saysLeast = !Double.isInfinite(least) && openAbove;
        return Estimate.of(
                saysLeast
                        ? new Measured(least, Optional.of(Bound.AT_LEAST))
                        : new Measured(most, Optional.of(Bound.AT_MOST)));
    }

    /** Halves first, so that no sum of two large values leaves the range of doubles. */
    private static double middle(double[] ends, int place, int next) {
        return place == next ? ends[place] : ends[place] / 2 + ends[next] / 2;
    }

    private static boolean is(Measured one, Bound bound) {
        return one.bound().isPresent() && one.bound().get() == bound;
    }
}
