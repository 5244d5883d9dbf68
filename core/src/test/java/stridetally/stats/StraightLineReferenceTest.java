package stridetally.stats;

import java.util.Arrays;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;

/** Lines, their errors, intervals and residuals against R, on made-up series and open data. */
class StraightLineReferenceTest {

    private static final Set<String> NOT_OURS = Set.of(
            "t_intercept",
            "p_intercept",
            "ci95_intercept_lo",
            "ci95_intercept_hi",
            "adj_r_squared",
            "resid_lag1_pearson",
            "dw_p_greater_exact",
            "dw_p_two_sided_exact");

    @TestFactory
    Stream<DynamicTest> madeUpSeries() {
        ReferenceCases cases = ReferenceCases.of("line", "series");
        return cases.checks(row -> {
            if (NOT_OURS.contains(row.quantity())) {
                return Optional.empty();
            }
            double[] days = cases.numbers("day", "series", row.fixture());
            double[] weeks = Arrays.stream(days).map(day -> day / 7).toArray();
            double[] y = cases.numbers("y", "series", row.fixture());
            StraightLine line = StraightLine.fit(weeks, y).orElseThrow();
            String quantity = row.quantity();
            if (quantity.contains("_day")) {
                return Optional.of(
                        quantity.equals("slope_per_day")
                                ? StraightLine.fit(days, y).map(StraightLine::slope)
                                : atDay(line, quantity));
            }
            return Optional.of(
                    switch (quantity) {
                        case "resid_lag1_sum_form" ->
                            DurbinWatson.of(line.residuals(weeks, y)).map(DurbinWatson::lagOne);
                        case "durbin_watson" ->
                            DurbinWatson.of(line.residuals(weeks, y)).map(DurbinWatson::d);
                        case "y_lag1_autocorrelation_centred" -> Descriptive.lagOneAutocorrelation(y);
                        default -> figure(line, quantity);
                    });
        });
    }

    private static Estimate<Double> atDay(StraightLine line, String quantity) {
        int cut = quantity.lastIndexOf("_day");
        LinePoint there = line.at(Integer.parseInt(quantity.substring(cut + 4)) / 7.0);
        return switch (quantity.substring(0, cut)) {
            case "fit" -> Estimate.of(there.point());
            case "mean_ci95_lo" -> there.meanInterval(0.95).map(Interval::low);
            case "mean_ci95_hi" -> there.meanInterval(0.95).map(Interval::high);
            case "pred_pi95_lo" -> there.newPointInterval(0.95).map(Interval::low);
            case "pred_pi95_hi" -> there.newPointInterval(0.95).map(Interval::high);
            default -> throw new AssertionError(quantity);
        };
    }

    private static Estimate<Double> figure(StraightLine line, String quantity) {
        return switch (quantity) {
            case "n" -> Estimate.finite(line.points());
            case "intercept" -> Estimate.of(line.intercept());
            case "slope_per_week" -> Estimate.of(line.slope());
            case "se_intercept" -> line.interceptStandardError();
            case "se_slope" -> line.slopeStandardError();
            case "t_slope" -> line.slopeStandardError().map(error -> line.slope() / error);
            case "p_slope" -> line.slopePValue();
            case "ci95_slope_lo" -> line.slopeInterval(0.95).map(Interval::low);
            case "ci95_slope_hi" -> line.slopeInterval(0.95).map(Interval::high);
            case "df_residual" -> Estimate.finite(line.degreesOfFreedom());
            case "residual_sd", "note_residual_sd_is_zero" -> line.residualStandardDeviation();
            case "r_squared" -> line.rSquared();
            case "f" -> line.slopeStandardError().map(error -> Math.pow(line.slope() / error, 2));
            case "ss_residual" -> Estimate.of(line.residualSumOfSquares());
            default -> throw new AssertionError(quantity);
        };
    }

    @TestFactory
    Stream<DynamicTest> setsThatFitAlikeAndLookDifferent() {
        ReferenceCases cases = ReferenceCases.of("datasets", "anscombe");
        return cases.checks(row -> {
            String set = row.fixture().substring("anscombe".length());
            StraightLine line = StraightLine.fit(cases.numbers("x", "dataset", set), cases.numbers("y", "dataset", set))
                    .orElseThrow();
            return Optional.of(
                    switch (row.quantity()) {
                        case "intercept" -> Estimate.of(line.intercept());
                        case "slope" -> Estimate.of(line.slope());
                        case "r_squared" -> line.rSquared();
                        case "se_slope" -> line.slopeStandardError();
                        default -> throw new AssertionError(row);
                    });
        });
    }

    @TestFactory
    Stream<DynamicTest> everyPersonOfTheSleepStudy() {
        return ownSlopes(ReferenceCases.of("datasets", "sleepstudy"), "Days", "Reaction");
    }

    @TestFactory
    Stream<DynamicTest> everyChildOfTheGrowthStudy() {
        return ownSlopes(ReferenceCases.of("datasets", "orthodont"), "age", "distance");
    }

    private static Stream<DynamicTest> ownSlopes(ReferenceCases cases, String x, String y) {
        return cases.checks(row -> {
            String subject = row.quantity().substring("own_ols_slope_".length());
            return Optional.of(
                    StraightLine.fit(cases.numbers(x, "Subject", subject), cases.numbers(y, "Subject", subject))
                            .map(StraightLine::slope));
        });
    }
}
