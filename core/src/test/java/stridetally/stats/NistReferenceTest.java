package stridetally.stats;

import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;

/** The certified values of the NIST Statistical Reference Datasets. */
class NistReferenceTest {

    @TestFactory
    Stream<DynamicTest> lines() {
        ReferenceCases cases = ReferenceCases.of("nist", "lines");
        return cases.checks(row -> {
            double[] x = cases.numbers("x", "dataset", row.fixture());
            double[] y = cases.numbers("y", "dataset", row.fixture());
            return Optional.of(
                    row.fixture().equals("Norris")
                            ? StraightLine.fit(x, y).flatMap(line -> throughTwo(line, row.quantity()))
                            : OriginLine.fit(x, y).flatMap(line -> throughOrigin(line, row.quantity())));
        });
    }

    private static Estimate<Double> throughTwo(StraightLine line, String quantity) {
        double regression = line.slope() * line.slope() * line.sumOfSquaresX();
        return switch (quantity) {
            case "B0" -> Estimate.of(line.intercept());
            case "SE_B0" -> line.interceptStandardError();
            case "B1" -> Estimate.of(line.slope());
            case "SE_B1" -> line.slopeStandardError();
            case "residual_sd" -> line.residualStandardDeviation();
            case "r_squared" -> line.rSquared();
            case "ss_regression", "ms_regression" -> Estimate.of(regression);
            case "ss_residual" -> Estimate.of(line.residualSumOfSquares());
            case "ms_residual" -> line.residualStandardDeviation().map(s -> s * s);
            case "f_statistic" -> line.residualStandardDeviation().map(s -> regression / (s * s));
            default -> throw new AssertionError(quantity);
        };
    }

    private static Estimate<Double> throughOrigin(OriginLine line, String quantity) {
        double regression = line.slope() * line.slope() * line.sumOfSquaresX();
        return switch (quantity) {
            case "B1" -> Estimate.of(line.slope());
            case "SE_B1" -> line.slopeStandardError();
            case "residual_sd" -> line.residualStandardDeviation();
            case "r_squared" -> line.rSquared();
            case "ss_regression", "ms_regression" -> Estimate.of(regression);
            case "ss_residual" -> Estimate.of(line.residualSumOfSquares());
            case "ms_residual" -> line.residualStandardDeviation().map(s -> s * s);
            case "f_statistic" -> line.residualStandardDeviation().map(s -> regression / (s * s));
            default -> throw new AssertionError(quantity);
        };
    }

    @TestFactory
    Stream<DynamicTest> univariate() {
        return univariate(ReferenceCases.of("nist", "univariate"));
    }

    @TestFactory
    Stream<DynamicTest> univariateStiff() {
        return univariate(ReferenceCases.of("nist", "univariate-stiff"));
    }

    private static Stream<DynamicTest> univariate(ReferenceCases cases) {
        return cases.checks(row -> {
            double[] y = cases.numbers("y", "dataset", row.fixture());
            return Optional.of(
                    switch (row.quantity()) {
                        case "n" -> Estimate.finite(y.length);
                        case "mean" -> Descriptive.mean(y);
                        case "sd_n_minus_1" -> Descriptive.standardDeviation(y);
                        case "lag1_autocorrelation" -> Descriptive.lagOneAutocorrelation(y);
                        default -> throw new AssertionError(row);
                    });
        });
    }
}
