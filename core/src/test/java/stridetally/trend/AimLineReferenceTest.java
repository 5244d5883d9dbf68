package stridetally.trend;

import java.time.LocalDate;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;
import stridetally.stats.Estimate;
import stridetally.stats.ReferenceCases;
import stridetally.units.Amount;

/** The aim line and the weekly slopes beside it, against R. The decision rules of the same file are not in this package. */
class AimLineReferenceTest {

    private static final Set<String> NOT_OURS = Set.of(
            "trailing_below",
            "trailing_above",
            "rule3_change",
            "rule4_change",
            "rule4_raise",
            "median_last3",
            "median_last3_minus_aimline_at_middle_of_last3");

    @TestFactory
    Stream<DynamicTest> weeklySeries() {
        ReferenceCases cases = ReferenceCases.of("aimline", "weekly");
        LocalDate start = MadeSeries.DAY_ZERO;
        AimLine aim = AimLine.between(start, Amount.of("20"), start.plusDays(126), Amount.of("40"));
        return cases.checks(row -> {
            if (NOT_OURS.contains(row.quantity())) {
                return Optional.empty();
            }
            Series series = MadeSeries.of(
                    cases.numbers("day", "case", row.fixture()),
                    cases.texts("y", "case", row.fixture()).toList());
            Estimate<Double> ours = switch (row.quantity()) {
                case "aimline_slope_per_week" -> aim.neededPerWeek();
                case "last_aimline" -> aim.on(series.latest().orElseThrow().date());
                case "ols_slope_per_week" -> OwnLine.of(series).slopePerWeek();
                case "theil_sen_slope_per_week" -> RobustLine.of(series, 0.95).slopePerWeek();
                default -> throw new AssertionError(row.quantity());
            };
            return Optional.of(ours);
        });
    }
}
