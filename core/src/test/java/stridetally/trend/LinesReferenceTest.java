package stridetally.trend;

import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;
import stridetally.stats.Estimate;
import stridetally.stats.Interval;
import stridetally.stats.ReferenceCases;

/**
 * Lines of whole series per week of 7 days, against R on made-up series and on the people of two open data sets. The x of
 * the open data (days, years of age) is taken as days, so that a slope per week is 7 times R's slope.
 */
class LinesReferenceTest {

    @TestFactory
    Stream<DynamicTest> ownLine() {
        ReferenceCases cases = ReferenceCases.of("line", "series");
        return cases.checks(row -> {
            OwnLine own = OwnLine.of(series(cases, row));
            Estimate<Interval> interval = own.slopeInterval(0.95);
            return switch (row.quantity()) {
                case "slope_per_week" -> Optional.of(own.slopePerWeek());
                case "se_slope" -> Optional.of(own.slopeStandardError());
                case "ci95_slope_lo" -> Optional.of(interval.map(Interval::low));
                case "ci95_slope_hi" -> Optional.of(interval.map(Interval::high));
                case "intercept" -> Optional.of(own.intercept());
                case "r_squared" -> Optional.of(own.rSquared());
                case "resid_lag1_sum_form" -> Optional.of(own.lagOne());
                default -> Optional.empty();
            };
        });
    }

    @TestFactory
    Stream<DynamicTest> robustLineAndRanks() {
        ReferenceCases cases = ReferenceCases.of("rank", "series");
        return cases.checks(row -> {
            RobustLine robust = RobustLine.of(series(cases, row), 0.95);
            RankTrend rank = RankTrend.of(series(cases, row));
            return switch (row.quantity()) {
                case "theil_sen_slope_per_week" -> Optional.of(robust.slopePerWeek());
                case "sen_ci95_lo_outward" -> Optional.of(robust.interval().map(Interval::low));
                case "sen_ci95_hi_outward" -> Optional.of(robust.interval().map(Interval::high));
                case "kendall_S" -> Optional.of(rank.s().map(Long::doubleValue));
                case "kendall_tau_b" -> Optional.of(rank.tauB());
                default -> Optional.empty();
            };
        });
    }

    @TestFactory
    Stream<DynamicTest> eachSleeper() {
        return each(ReferenceCases.of("datasets", "sleepstudy"), "Days", "Reaction");
    }

    @TestFactory
    Stream<DynamicTest> eachGrowingChild() {
        return each(ReferenceCases.of("datasets", "orthodont"), "age", "distance");
    }

    private static Stream<DynamicTest> each(ReferenceCases cases, String x, String y) {
        return cases.checks(row -> {
            String subject = row.quantity().substring("own_ols_slope_".length());
            Series series = MadeSeries.of(
                    cases.numbers(x, "Subject", subject),
                    cases.texts(y, "Subject", subject).toList());
            return Optional.of(OwnLine.of(series).slopePerWeek().map(perWeek -> perWeek / 7));
        });
    }

    private static Series series(ReferenceCases cases, ReferenceCases.Expected row) {
        return MadeSeries.of(
                cases.numbers("day", "series", row.fixture()),
                cases.texts("y", "series", row.fixture()).toList());
    }
}
