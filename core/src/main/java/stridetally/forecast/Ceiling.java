package stridetally.forecast;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import stridetally.measures.Measure;
import stridetally.measures.Range;
import stridetally.model.Direction;
import stridetally.trend.Point;
import stridetally.units.Amount;

/**
 * A value that cannot be passed, or not be seen to be passed, as a goal is measured now: no next target lies beyond it, and a
 * harder task is the way on.
 *
 * @param value in the measure's unit
 * @param kind why it is one
 * @param words what is to be said of it, blank when the kind says all
 */
public record Ceiling(double value, Kind kind, String words) {
    /** Why a value cannot be passed. */
    public enum Kind {
        /** The catalogue holds no value beyond it plausible; it may still be one. */
        PLAUSIBLE("the catalogue holds no better value plausible"),
        /** A share of all tries, the full score of a test, nothing at all. */
        MEASURE("the measure ends there"),
        /** Tries were stopped there. */
        CAP("tries are stopped there"),
        /** The line or the beam ends there. */
        WAY("the line or the beam ends there");

        private final String why;

        Kind(String why) {
            this.why = why;
        }
    }

    /** Why there is no next target for a child who is at it. */
    String reached() {
        return "the ceiling is reached: " + kind.why + (words.isEmpty() ? "" : " (" + words + ")")
                + "; a harder task is the way on, not more of the same";
    }

    /**
     * The nearest of all that bind.
     *
     * @param way how far the line or the beam goes, in steps
     */
    static Optional<Ceiling> nearest(
            Measure measure, List<Point> points, Optional<Amount> highestCap, Optional<Ceiling> way) {
        Optional<Direction> better = measure.better();
        if (better.isEmpty()) {
            return Optional.empty();
        }
        boolean rises = better.get() == Direction.HIGHER;
        List<Ceiling> all = new ArrayList<>();
        end(measure.possible(), rises).ifPresent(end -> all.add(new Ceiling(end.value(), ofThePossible(measure), "")));
        end(measure.plausible(), rises).ifPresent(end -> all.add(new Ceiling(end.value(), Kind.PLAUSIBLE, "")));
        if (rises) {
            double most = highest(points);
            highestCap
                    .filter(cap -> most <= cap.value())
                    .ifPresent(cap -> all.add(new Ceiling(cap.value(), Kind.CAP, "")));
            // More steps than were reckoned were counted: the child's steps are shorter, and those counted are what is
            // known.
            way.map(one -> most <= one.value()
                            ? one
                            : new Ceiling(most, Kind.WAY, one.words() + ", and more were counted"))
                    .ifPresent(all::add);
        }
        Ceiling nearest = null;
        for (Ceiling one : all) {
            boolean nearer = nearest == null || (rises ? one.value() < nearest.value() : one.value() > nearest.value());
            nearest = nearer ? one : nearest;
        }
        return Optional.ofNullable(nearest);
    }

    /** Whether more can be gained before it, by a direction of +1 or -1. */
    boolean isBeyond(double value, int sign) {
        return sign * (this.value - value) > 0;
    }

    private static Optional<Amount> end(Range range, boolean rises) {
        return rises ? range.high() : range.low();
    }

    /** The longest time or way that is held possible guards against slips of the pen; it is not the end of a measure. */
    private static Kind ofThePossible(Measure measure) {
        boolean rises = measure.better().equals(Optional.of(Direction.HIGHER));
        return switch (measure.kind()) {
            case SHARE, TRIES, SCORE -> Kind.MEASURE;
            case COUNT, EVENTS -> rises ? Kind.PLAUSIBLE : Kind.MEASURE;
            default -> Kind.PLAUSIBLE;
        };
    }

    private static double highest(List<Point> points) {
        double highest = Double.NEGATIVE_INFINITY;
        for (Point point : points) {
            highest = Math.max(highest, point.value());
        }
        return highest;
    }
}
