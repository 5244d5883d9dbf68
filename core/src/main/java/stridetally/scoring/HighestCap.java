package stridetally.scoring;

import java.util.Optional;
import stridetally.ingest.ReadingKind;
import stridetally.units.Amount;

/** The highest cap that a counted try ran into: a target beyond it cannot be seen to be reached. */
final class HighestCap {
    private Optional<Amount> highest = Optional.empty();

    void look(TrialGroup tries, Counting counting) {
        for (int row = 0; row < tries.size(); row++) {
            boolean capped = tries.kind(row) == ReadingKind.AT_LEAST
                    && counting.counts(tries.kind(row), tries.help(row), tries.prompt(row));
            Amount value = new Amount(tries.value(row));
            if (capped && (highest.isEmpty() || highest.get().compareTo(value) < 0)) {
                highest = Optional.of(value);
            }
        }
    }

    Optional<Amount> amount() {
        return highest;
    }
}
