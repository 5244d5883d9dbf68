package stridetally.report;

import java.util.Optional;
import stridetally.scoring.Bound;
import stridetally.scoring.SessionValue;
import stridetally.stats.Estimate;
import stridetally.trend.Point;
import stridetally.units.Amount;

/**
 * A value as sessions give it, unrounded, in the measure's unit.
 *
 * @param bound on which side of the value the true one lies; empty for an exact one
 */
public record Measured(double value, Optional<Bound> bound) {

    public Measured {
        if (!Double.isFinite(value)) {
            throw new IllegalArgumentException("value " + value);
        }
    }

    /** An exact value. */
    public static Measured exact(double value) {
        return new Measured(value, Optional.empty());
    }

    /** An amount of a goal. */
    public static Measured of(Amount amount) {
        return exact(amount.value());
    }

    /** The value of a point. */
    public static Measured of(Point point) {
        return new Measured(point.value(), point.bound());
    }

    /** A session value, or why there is none. */
    public static Estimate<Measured> of(SessionValue value) {
        if (value instanceof SessionValue.Known known) {
            return Estimate.of(exact(known.value()));
        }
        if (value instanceof SessionValue.Bounded bounded) {
            return Estimate.of(new Measured(bounded.value(), Optional.of(bounded.bound())));
        }
        return Estimate.notEstimable(value instanceof SessionValue.Missing missing ? missing.reason() : "no value");
    }

    /** The value less another one; a bound stays a bound on the same side. */
    Measured minus(double other) {
        return new Measured(value - other, bound);
    }
}
