package stridetally.stats;

import java.math.BigDecimal;
import java.util.Arrays;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;
import stridetally.units.Amount;

/** Theil-Sen and Mann-Kendall against R, once with doubles and once with exact fractions. */
class RankReferenceTest {

    private static final Set<String> NOT_OURS = Set.of(
            "intercept_median_residual",
            "mk_z_no_continuity",
            "mk_p_no_continuity",
            "sen_ci95_lo_interpolated",
            "sen_ci95_hi_interpolated");

    private final ReferenceCases cases = ReferenceCases.of("rank", "series");

    @TestFactory
    Stream<DynamicTest> withDoubles() {
        return cases.checks(row -> figure(row, OrderedValues.of(cases.numbers("y", "series", row.fixture()))));
    }

    @TestFactory
    Stream<DynamicTest> withExactFractions() {
        return cases.checks(row -> figure(row, exact(row.fixture())));
    }

    /** Each value as the mean of some tries: three times itself over 3. */
    private OrderedValues exact(String series) {
        long[] sums = cases.texts("y", "series", series)
                .mapToLong(text -> 3 * Amount.of(new BigDecimal(text)).billionths())
                .toArray();
        int[] counts = new int[sums.length];
        Arrays.fill(counts, 3);
        return ExactMeans.of(sums, counts);
    }

    private Optional<Estimate<Double>> figure(ReferenceCases.Expected row, OrderedValues y) {
        if (NOT_OURS.contains(row.quantity())) {
            return Optional.empty();
        }
        double[] weeks = Arrays.stream(cases.numbers("day", "series", row.fixture()))
                .map(day -> day / 7)
                .toArray();
        TheilSenSlope slope = TheilSenSlope.of(weeks, y, 0.95).orElseThrow();
        MannKendall trend = MannKendall.of(weeks, y).orElseThrow();
        double reach = CriticalValue.normal(0.95) * Math.sqrt(trend.variance());
        return Optional.of(
                switch (row.quantity()) {
                    case "n" -> Estimate.finite(trend.points());
                    case "pairs_used" -> Estimate.finite((double) slope.pairsUsed());
                    case "theil_sen_slope_per_week" -> Estimate.of(slope.slope());
                    case "intercept_conover" -> Estimate.of(slope.intercept());
                    case "kendall_S" -> Estimate.finite((double) trend.s());
                    case "var_S_tie_corrected" -> Estimate.of(trend.variance());
                    case "mk_z_continuity" -> trend.z();
                    // also where the exact p is the one reported
                    case "mk_p_two_sided", "r_cor_test_p_continuity" ->
                        trend.z().map(CriticalValue::normalTwoSided);
                    case "kendall_tau_b" -> trend.tauB();
                    case "kendall_exact_p_two_sided" ->
                        trend.points() <= MannKendall.EXACT_UP_TO
                                ? trend.p()
                                : Estimate.of(MannKendall.exactP(trend.points(), trend.s()));
                    case "sen_C_95" -> Estimate.of(reach);
                    case "sen_rank_lo_real" -> Estimate.of((slope.pairsUsed() - reach) / 2);
                    case "sen_rank_hi_real" -> Estimate.of((slope.pairsUsed() + reach) / 2 + 1);
                    case "sen_ci95_lo_outward" -> slope.interval().map(Interval::low);
                    case "sen_ci95_hi_outward" -> slope.interval().map(Interval::high);
                    default -> throw new AssertionError(row);
                });
    }
}
