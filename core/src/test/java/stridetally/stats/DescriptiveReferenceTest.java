package stridetally.stats;

import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;

/** Mean, spread and quantiles against R. */
class DescriptiveReferenceTest {

    @TestFactory
    Stream<DynamicTest> stance() {
        ReferenceCases cases = ReferenceCases.of("descriptive", "stance");
        double[] y = cases.input().stream()
                .mapToDouble(row -> Double.parseDouble(row.get("y")))
                .toArray();
        return cases.checks(row -> figure(y, row.quantity()));
    }

    private static Optional<Estimate<Double>> figure(double[] y, String quantity) {
        if (quantity.startsWith("quantile_type7_p25_p50_p75_")) {
            double percent = Double.parseDouble(quantity.substring(quantity.lastIndexOf('_') + 1));
            return Optional.of(Descriptive.quantile(y, percent / 100));
        }
        return switch (quantity) {
            case "mean" -> Optional.of(Descriptive.mean(y));
            case "sd_n_minus_1" -> Optional.of(Descriptive.standardDeviation(y));
            case "median" -> Optional.of(Descriptive.median(y));
            case "sd_n", "mad_unscaled", "mad_x1.4826", "cv_percent" -> Optional.empty();
            default -> {
                if (!quantity.startsWith("quantile_type")) {
                    throw new AssertionError(quantity);
                }
                yield Optional.empty();
            }
        };
    }
}
