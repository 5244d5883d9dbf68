package stridetally.scoring;

import java.util.Optional;
import stridetally.ingest.ReadingKind;
import stridetally.model.Direction;
import stridetally.scoring.Answer.Meets;
import stridetally.units.Amount;

/**
 * Whether a try or a session value is at the target or beyond it, by whole numbers. A capped value that ends on the far
 * side of the target meets (or misses) for sure; one that ends before it is not known.
 */
final class TargetCheck {
    private final Direction better;
    private final long target;

    private TargetCheck(Direction better, Amount target) {
        this.better = better;
        this.target = target.billionths();
    }

    /** Empty when there is no target, or neither way is better. */
    static Optional<TargetCheck> of(Counting counting) {
        Optional<Direction> better = counting.measure().better();
        return better.isEmpty() || counting.target().isEmpty()
                ? Optional.empty()
                : Optional.of(new TargetCheck(better.get(), counting.target().get()));
    }

    /** Whether sum / count is at a target or beyond it. */
    static boolean reaches(Direction better, Amount target, long sum, int count) {
        return new TargetCheck(better, target).exact(sum, count) == Meets.YES;
    }

    /** A try that holds a single value. */
    Meets single(ReadingKind kind, long value) {
        return switch (kind) {
            case EXACT -> exact(value, 1);
            case AT_LEAST -> bounded(Bound.AT_LEAST, value, 1);
            case AT_MOST -> bounded(Bound.AT_MOST, value, 1);
            case UNABLE -> Meets.NO;
            case TRIES, NOT_TESTED, REFUSED, ABSENT -> Meets.NOT_ASKED;
        };
    }

    /** A session value. */
    Meets session(SessionValue value) {
        if (value instanceof SessionValue.Known known) {
            return exact(known.sum(), known.count());
        }
        if (value instanceof SessionValue.Bounded bounded) {
            return bounded(bounded.bound(), bounded.sum(), bounded.count());
        }
        return Meets.NOT_KNOWN;
    }

    private Meets exact(long sum, int count) {
        return better.sign() * compare(sum, count) >= 0 ? Meets.YES : Meets.NO;
    }

    private Meets bounded(Bound bound, long sum, int count) {
        int side = compare(sum, count);
        boolean trueIsAbove = bound == Bound.AT_LEAST;
        if (trueIsAbove == (better == Direction.HIGHER)) {
            return better.sign() * side >= 0 ? Meets.YES : Meets.NOT_KNOWN;
        }
        return better.sign() * side < 0 ? Meets.NO : Meets.NOT_KNOWN;
    }

    /** Compares sum / count with the target, in 128 bits, so that no size of value can overflow. */
    private int compare(long sum, int count) {
        long high = Math.multiplyHigh(target, count);
        long low = target * count;
        int byHigh = Long.compare(sum >> 63, high);
        return byHigh != 0 ? byHigh : Long.compareUnsigned(sum, low);
    }
}
