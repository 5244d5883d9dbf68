package stridetally.stats;

import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/** The exact interval of a count against R. */
class PoissonIntervalReferenceTest {

    @TestFactory
    Stream<DynamicTest> counts() {
        return ReferenceCases.of("poisson", "counts").checks(row -> {
            Interval ours = PoissonInterval.of(Long.parseLong(row.fixture()), 0.95);
            return Optional.of(Estimate.of(row.quantity().equals("exact_lo") ? ours.low() : ours.high()));
        });
    }

    @Test
    void aCountIsNotNegative() {
        assertThrows(IllegalArgumentException.class, () -> PoissonInterval.of(-1, 0.95));
        assertThrows(IllegalArgumentException.class, () -> PoissonInterval.of(1, 1));
    }
}
