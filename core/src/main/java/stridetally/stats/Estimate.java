package stridetally.stats;

import static java.util.Objects.requireNonNull;

import java.util.Optional;
import java.util.function.Function;

/**
 * A figure that was computed, or the reason why it could not be. An unknown is said, never filled: there is no NaN, no
 * zero and no empty text in its place.
 *
 * @param <T> what is estimated
 */
public sealed interface Estimate<T> permits Estimate.Estimated, Estimate.NotEstimable {

    /**
     * A computed figure.
     *
     * @param estimate the figure; a double is finite, else IllegalArgumentException
     */
    record Estimated<T>(T estimate) implements Estimate<T> {

        public Estimated {
            requireNonNull(estimate, "estimate");
            if (estimate instanceof Double number && !Double.isFinite(number)) {
                throw new IllegalArgumentException("estimate is not finite: " + number);
            }
        }

        @Override
        public Optional<T> value() {
            return Optional.of(estimate);
        }

        @Override
        public String reason() {
            return "";
        }

        @Override
        public boolean isEstimated() {
            return true;
        }

        @Override
        public <R> Estimate<R> flatMap(Function<? super T, Estimate<R>> next) {
            return next.apply(estimate);
        }

        @Override
        public <R> Estimate<R> map(Function<? super T, ? extends R> step) {
            return new Estimated<>(step.apply(estimate));
        }

        @Override
        public T orElseThrow() {
            return estimate;
        }
    }

    /**
     * No figure.
     *
     * @param reason why, as a short plain phrase without a closing stop; never blank
     */
    record NotEstimable<T>(String reason) implements Estimate<T> {

        public NotEstimable {
            if (reason.isBlank()) {
                throw new IllegalArgumentException("reason is blank");
            }
        }

        @Override
        public Optional<T> value() {
            return Optional.empty();
        }

        @Override
        public boolean isEstimated() {
            return false;
        }

        @Override
        public <R> Estimate<R> flatMap(Function<? super T, Estimate<R>> next) {
            return new NotEstimable<>(reason);
        }

        @Override
        public <R> Estimate<R> map(Function<? super T, ? extends R> step) {
            return new NotEstimable<>(reason);
        }

        @Override
        public T orElseThrow() {
            throw new IllegalStateException("not estimable: " + reason);
        }
    }

    /** A computed figure that is known to be sound. */
    static <T> Estimate<T> of(T estimate) {
        return new Estimated<>(estimate);
    }

    /** A computed double, or the fact that it left the range of doubles on the way. */
    static Estimate<Double> finite(double estimate) {
        return Double.isFinite(estimate) ? new Estimated<>(estimate) : notEstimable(Checks.BEYOND_RANGE);
    }

    /** No figure, because of this. */
    static <T> Estimate<T> notEstimable(String reason) {
        return new NotEstimable<>(reason);
    }

    /** The figure, if there is one. */
    Optional<T> value();

    /** Why there is no figure; empty text when there is one. */
    String reason();

    /** The next step's outcome on the figure, or the same reason. */
    <R> Estimate<R> flatMap(Function<? super T, Estimate<R>> next);

    /** The figure; IllegalStateException with the reason when there is none. */
    T orElseThrow();

    /** The figure turned into another one, or the same reason. */
    <R> Estimate<R> map(Function<? super T, ? extends R> step);

    /** Whether there is a figure. */
    boolean isEstimated();
}
