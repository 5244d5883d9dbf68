package stridetally.stats;

import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;

/** Wilson's interval against R. */
class WilsonIntervalReferenceTest {

    @TestFactory
    Stream<DynamicTest> shares() {
        return ReferenceCases.of("wilson", "proportions").checks(row -> {
            String[] share = row.fixture().split("of", -1);
            Estimate<Interval> ours = WilsonInterval.of(Long.parseLong(share[0]), Long.parseLong(share[1]), 0.95)
                    .map(WilsonInterval::interval);
            return Optional.of(
                    switch (row.quantity()) {
                        case "wilson_lo" -> ours.map(Interval::low);
                        case "wilson_hi" -> ours.map(Interval::high);
                        default -> throw new AssertionError(row);
                    });
        });
    }
}
