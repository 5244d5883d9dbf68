package stridetally.units;

import java.util.function.Function;

/** What one step of the grammar gives: a value or a refusal. */
sealed interface Step<T> {

    /** The step went well. */
    record Went<T>(T value) implements Step<T> {}

    /** The step refused the cell. */
    record Stopped<T>(Refusal refusal) implements Step<T> {}

    static <T> Step<T> of(T value) {
        return new Went<>(value);
    }

    static <T> Step<T> stop(Reason reason, String mend) {
        return new Stopped<>(new Refusal(reason, mend));
    }

    /** The next step, unless this one refused. */
    default <R> Step<R> then(Function<T, Step<R>> next) {
        if (this instanceof Went<T> went) {
            return next.apply(went.value());
        }
        return new Stopped<>(((Stopped<T>) this).refusal());
    }
}
