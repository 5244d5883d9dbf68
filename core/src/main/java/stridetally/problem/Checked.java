package stridetally.problem;

import java.util.List;
import java.util.Optional;

/** A value with what was found wrong on the way to it; no value when a problem sets the row aside. */
public record Checked<T>(Optional<T> value, List<RowProblem> problems) {

    public Checked {
        problems = List.copyOf(problems);
    }

    /** A value about which nothing needs to be said. */
    public static <T> Checked<T> fine(T value) {
        return new Checked<>(Optional.of(value), List.of());
    }

    /** A row that was not taken. */
    public static <T> Checked<T> setAside(List<RowProblem> problems) {
        return new Checked<>(Optional.empty(), problems);
    }
}
