package stridetally.measures;

import java.util.Optional;
import stridetally.units.Amount;

/** Values from low to high, both inclusive, in the measure's unit; an empty end is open. */
public record Range(Optional<Amount> low, Optional<Amount> high) {

    /** Whether a value lies within. */
    public boolean holds(Amount value) {
        return (low.isEmpty() || value.compareTo(low.get()) >= 0)
                && (high.isEmpty() || value.compareTo(high.get()) <= 0);
    }

    /** {@code 0 to 200}, {@code at least 0}, {@code at most 300}, {@code any}. */
    public String text() {
        if (low.isPresent() && high.isPresent()) {
            return low.get().text() + " to " + high.get().text();
        }
        return low.map(end -> "at least " + end.text())
                .orElse(high.map(end -> "at most " + end.text()).orElse("any"));
    }
}
