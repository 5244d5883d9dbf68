package stridetally.forecast;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import stridetally.model.Thresholds;
import stridetally.stats.ReferenceCases;
import stridetally.trend.MadeGoal;

/**
 * The integration over what the caseload has in common, against a long run of random steps in another language
 * (scripts/long-run.py): twelve goals from 2000 to 3000 in 252 days, known up to day 126.
 */
class LongRunReferenceTest {
    private static final LocalDate START = LocalDate.parse("2026-09-07");
    private static final Thresholds NEVER_STALE = new Thresholds(0.7, 0.3, 4, 600, 4, 0.2);

    @Test
    void theFixedPointsSayWhatTheLongRunSays() {
        ReferenceCases run = ReferenceCases.of("forecast", "caseload");
        Map<String, Double> expected = run.expected().stream()
                .collect(Collectors.toMap(
                        one -> one.fixture() + " " + one.quantity(), one -> Double.parseDouble(one.value())));
        List<ForecastCase> cases = new ArrayList<>();
        for (int series = 1; series <= 12; series++) {
            MadeCase made = new MadeCase(
                    new MadeGoal()
                            .baselineDate(START.toString())
                            .baseline("2000")
                            .target("3000")
                            .due(START.plusDays(252).toString())
                            .noCriterion()
                            .made(),
                    START.plusDays(126));
            double[] days = run.numbers("day", "series", Integer.toString(series));
            List<String> values =
                    run.texts("value", "series", Integer.toString(series)).toList();
            for (int i = 0; i < days.length; i++) {
                made.on(START.plusDays((long) days[i]), values.get(i));
            }
            cases.add(made.made());
        }
        List<Forecast> forecasts = new PooledForecaster(NEVER_STALE).forecast(cases);
        for (int series = 1; series <= 12; series++) {
            Forecast.Outlook ours = assertInstanceOf(Forecast.Outlook.class, forecasts.get(series - 1));
            assertEquals(
                    expected.getOrDefault(series + " chance_line", Double.NaN),
                    ours.chanceLine(),
                    0.02,
                    "chance of " + series);
            assertEquals(
                    expected.getOrDefault(series + " low80", Double.NaN), ours.low80(), 35, "lower end of " + series);
            assertEquals(
                    expected.getOrDefault(series + " middle", Double.NaN), ours.value(), 25, "middle of " + series);
            assertEquals(
                    expected.getOrDefault(series + " high80", Double.NaN), ours.high80(), 35, "upper end of " + series);
        }
    }
}
