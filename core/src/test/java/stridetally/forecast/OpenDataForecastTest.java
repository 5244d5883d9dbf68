package stridetally.forecast;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import stridetally.model.Thresholds;
import stridetally.trend.MadeGoal;

/**
 * Measured people instead of made-up ones: sleepstudy of R's lme4 (days 1 to 5 after a baseline of day 0, forecast of day 9)
 * and Orthodont of R's nlme (ages 8 to 12, with the first as the baseline too, forecast of age 14). A day, or a year, is
 * taken as four weeks. The observed value is one session about the line, so the range of the line is widened by the scatter of
 * one session before it is held against it.
 */
class OpenDataForecastTest {
    private static final LocalDate START = LocalDate.parse("2026-01-05");
    private static final int WEEKS = 4;
    // residual standard deviations of (1 + time | person) by REML, lme4 1.1-31; ms and mm
    private static final double SLEEP_SCATTER = 25.59182;
    private static final double JAW_SCATTER = 1.31004;
    // qnorm(0.9)
    private static final double NINETY = 1.2815515655446004;
    private static final Thresholds FROM_THREE = new Thresholds(0.7, 0.3, 3, 600, 4, 0.2);

    private record Person(Map<Integer, String> values) {}

    private static List<Person> read(String file, int value, int time, int person) throws IOException {
        Map<String, Person> people = new LinkedHashMap<>();
        try (InputStream in =
                Objects.requireNonNull(OpenDataForecastTest.class.getResourceAsStream("/reference/datasets/" + file))) {
            String text = new String(in.readAllBytes(), StandardCharsets.UTF_8);
            text.lines().skip(1).filter(line -> !line.isBlank()).forEach(line -> {
                String[] cells = line.split(",", -1);
                people.computeIfAbsent(cells[person], code -> new Person(new LinkedHashMap<>()))
                        .values()
                        .put(Integer.parseInt(cells[time]), cells[value]);
            });
        }
        return new ArrayList<>(people.values());
    }

    /**
     * How a forecaster did on the last occasion.
     *
     * @param error mean absolute error of the line
     * @param covered share of observed values within an 80 % range of one session: the range of the line, widened by the scatter
     *     of a session as lme4 gives it (residual standard deviation)
     * @param width mean width of the range of the line
     */
    private record Done(double error, double covered, double width) {}

    private static Done onTheLast(
            List<Person> people, Forecaster forecaster, int first, int lastKnown, int due, double way, double scatter) {
        List<ForecastCase> cases = new ArrayList<>();
        for (Person person : people) {
            double baseline =
                    Double.parseDouble(Objects.requireNonNull(person.values().get(first)));
            MadeCase made = new MadeCase(
                    new MadeGoal()
                            .baselineDate(START.minusDays(1).toString())
                            .baseline(Double.toString(baseline))
                            .target(Double.toString(baseline + way))
                            .due(START.plusWeeks((long) WEEKS * (due - first)).toString())
                            .noCriterion()
                            .made(),
                    START.plusWeeks((long) WEEKS * (lastKnown - first)));
            person.values().forEach((time, value) -> {
                if (time <= lastKnown) {
                    made.on(START.plusWeeks((long) WEEKS * (time - first)), value);
                }
            });
            cases.add(made.made());
        }
        List<Forecast> forecasts = forecaster.forecast(cases);
        double error = 0;
        double covered = 0;
        double width = 0;
        for (int i = 0; i < forecasts.size(); i++) {
            double seen = Double.parseDouble(
                    Objects.requireNonNull(people.get(i).values().get(due)));
            Forecast.Outlook said = assertInstanceOf(Forecast.Outlook.class, forecasts.get(i));
            error += Math.abs(said.value() - seen);
            double half = Math.hypot((said.high80() - said.low80()) / 2, NINETY * scatter);
            covered += Math.abs(seen - (said.low80() + said.high80()) / 2) <= half ? 1 : 0;
            width += said.high80() - said.low80();
        }
        int n = forecasts.size();
        return new Done(error / n, covered / n, width / n);
    }

    @Test
    void lastDayOfTheSleepStudy() throws IOException {
        List<Person> people = read("sleepstudy.csv", 0, 1, 2);
        assertEquals(18, people.size());
        Done own = onTheLast(people, new OwnLineForecaster(FROM_THREE), 0, 5, 9, 100, SLEEP_SCATTER);
        Done pooled = onTheLast(people, new PooledForecaster(FROM_THREE), 0, 5, 9, 100, SLEEP_SCATTER);
        assertTrue(pooled.error() < own.error(), "ms: pooled " + pooled + ", own line " + own);
        // 80 % of 18 are 14; both ways hold fewer, since people who sleep little slow down faster and faster: 10 and
        // 12.
        // Fewer than half would be a broken range
        assertTrue(pooled.covered() >= 0.5 && own.covered() >= 0.5, "pooled " + pooled + ", own line " + own);
        assertTrue(pooled.width() < own.width(), "pooled " + pooled + ", own line " + own);
    }

    @Test
    void lastYearOfOrthodont() throws IOException {
        List<Person> people = read("orthodont.csv", 0, 1, 2);
        assertEquals(27, people.size());
        Done own = onTheLast(people, new OwnLineForecaster(FROM_THREE), 8, 12, 14, 5, JAW_SCATTER);
        Done pooled = onTheLast(people, new PooledForecaster(FROM_THREE), 8, 12, 14, 5, JAW_SCATTER);
        assertTrue(pooled.error() < own.error(), "mm: pooled " + pooled + ", own line " + own);
        // 80 % of 27, within two standard deviations of a share of so few (0.077 each)
        assertEquals(0.8, pooled.covered(), 0.155, "pooled " + pooled + ", own line " + own);
        assertTrue(pooled.width() < own.width() / 2, "pooled " + pooled + ", own line " + own);
    }
}
