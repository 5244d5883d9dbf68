package stridetally.scoring;

import java.util.Arrays;
import java.util.Optional;
import stridetally.ingest.ReadingKind;
import stridetally.measures.Measure;
import stridetally.measures.MeasureKind;
import stridetally.model.Direction;
import stridetally.model.Summary;
import stridetally.units.Amount;

/**
 * The values that some tries of a session amount to. {@code unable} is the lowest rank in a median or best and never a zero
 * in a mean; a capped try leaves a median or best known where its true value cannot matter.
 */
final class SessionSummaries {
    static final SessionValue NO_TRY = new SessionValue.Missing("no try counts");

    private static final SessionValue BY_TRIES = new SessionValue.Missing("tries met are counted together, not ranked");
    private static final SessionValue UNRANKED = new SessionValue.Missing("neither way is better for this measure");

    private final TrialGroup tries;
    private final int[] rows;
    private final Measure measure;
    private final int firstTries;
    private final boolean byTries;

    /** Of these rows of a session, in their order. */
    SessionSummaries(TrialGroup tries, int[] rows, Counting counting) {
        this.tries = tries;
        this.rows = rows;
        this.measure = counting.measure();
        this.firstTries = counting.firstTries();
        this.byTries = measure.kind() == MeasureKind.TRIES || has(ReadingKind.TRIES);
    }

    /** By one of the summaries; a share of tries is always tries met over tries given. */
    SessionValue by(Summary summary) {
        if (rows.length == 0) {
            return NO_TRY;
        }
        if (byTries) {
            return mean();
        }
        return switch (summary) {
            case BEST -> best();
            case MEAN -> mean();
            case MEDIAN -> median();
            case LAST -> last();
            case TOTAL -> total();
        };
    }

    /** The best of the first tries. */
    SessionValue best() {
        if (rows.length == 0) {
            return NO_TRY;
        }
        if (byTries) {
            return BY_TRIES;
        }
        if (measure.better().isEmpty()) {
            return UNRANKED;
        }
        int[] first = Arrays.copyOf(rows, Math.min(rows.length, firstTries));
        OrderedTries order = new OrderedTries(tries, first, measure.better());
        int place = measure.better().get() == Direction.HIGHER ? first.length - 1 : 0;
        return order.at(place, place, "every try was unable");
    }

    /** The mean of the measured tries, tries met over tries given included. */
    SessionValue mean() {
        return rows.length == 0 ? NO_TRY : added(byTries ? Divisor.TRIES : Divisor.MEASURED);
    }

    /** The middle try, or the mean of the two middle ones. */
    SessionValue median() {
        if (rows.length == 0) {
            return NO_TRY;
        }
        if (byTries) {
            return BY_TRIES;
        }
        if (measure.better().isEmpty() && has(ReadingKind.UNABLE)) {
            return UNRANKED;
        }
        OrderedTries order = new OrderedTries(tries, rows, measure.better());
        return order.at((rows.length - 1) / 2, rows.length / 2, "the median falls on a try that was unable");
    }

    /** The try with the highest number. */
    SessionValue last() {
        if (rows.length == 0) {
            return NO_TRY;
        }
        if (byTries) {
            return BY_TRIES;
        }
        int row = rows[rows.length - 1];
        return switch (tries.kind(row)) {
            case AT_LEAST -> new SessionValue.Bounded(Bound.AT_LEAST, tries.value(row), 1);
            case AT_MOST -> new SessionValue.Bounded(Bound.AT_MOST, tries.value(row), 1);
            case UNABLE -> new SessionValue.Missing("the last try was unable");
            default -> new SessionValue.Known(tries.value(row), 1);
        };
    }

    /** Sample SD of the exact values, in the measure's unit; empty under two of them. */
    Optional<Double> sd() {
        double[] exact = exact();
        if (exact.length < 2 || byTries) {
            return Optional.empty();
        }
        // Two passes about the mean: the one-pass formula loses all digits for close values.
        double mean = sum(exact) / exact.length;
        double[] squares = new double[exact.length];
        for (int i = 0; i < exact.length; i++) {
            squares[i] = (exact[i] - mean) * (exact[i] - mean);
        }
        return Optional.of(Math.sqrt(sum(squares) / (exact.length - 1)));
    }

    /** Compensated, so that the order of the tries does not show. */
    private static double sum(double[] values) {
        double sum = 0;
        double lost = 0;
        for (double value : values) {
            double next = value - lost;
            double more = sum + next;
            lost = (more - sum) - next;
            sum = more;
        }
        return sum;
    }

    private double[] exact() {
        double[] values = new double[rows.length];
        int count = 0;
        for (int row : rows) {
            if (tries.kind(row) == ReadingKind.EXACT) {
                values[count++] = Amount.toDouble(tries.value(row));
            }
        }
        return Arrays.copyOf(values, count);
    }

    /** Whether the tries hold one of a kind. */
    boolean has(ReadingKind kind) {
        for (int row : rows) {
            if (tries.kind(row) == kind) {
                return true;
            }
        }
        return false;
    }

    /** Whether a summary adds values up, so that an {@code unable} has no place in it. */
    boolean adds(Summary summary) {
        return !byTries && (summary == Summary.MEAN || summary == Summary.TOTAL);
    }

    /** Whether they are tries met of tries given. */
    boolean byTries() {
        return byTries;
    }

    private SessionValue total() {
        return rows.length == 0 ? NO_TRY : added(Divisor.ONE);
    }

    /** What a sum is divided by. */
    private enum Divisor {
        MEASURED,
        TRIES,
        ONE
    }

    private SessionValue added(Divisor divisor) {
        long sum = 0;
        int measured = 0;
        int given = 0;
        for (int row : rows) {
            boolean unable = tries.kind(row) == ReadingKind.UNABLE;
            sum = Math.addExact(sum, unable ? 0 : amount(row));
            measured += unable ? 0 : 1;
            given += tries.given(row);
        }
        if (measured == 0 && divisor != Divisor.TRIES) {
            return new SessionValue.Missing("every try was unable");
        }
        int count = switch (divisor) {
            case MEASURED -> measured;
            case TRIES -> given;
            case ONE -> 1;
        };
        return censored(sum, count);
    }

    private SessionValue censored(long sum, int count) {
        boolean above = has(ReadingKind.AT_LEAST);
        boolean below = has(ReadingKind.AT_MOST);
        if (above && below) {
            return new SessionValue.Missing("tries are capped on both sides");
        }
        if (above || below) {
            return new SessionValue.Bounded(above ? Bound.AT_LEAST : Bound.AT_MOST, sum, count);
        }
        return new SessionValue.Known(sum, count);
    }

    private long amount(int row) {
        return tries.kind(row) == ReadingKind.TRIES
                ? Math.multiplyExact(tries.value(row), Amount.ONE)
                : tries.value(row);
    }
}
