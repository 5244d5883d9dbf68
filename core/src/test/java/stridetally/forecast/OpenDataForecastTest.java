package stridetally.forecast;

import static org.junit.jupiter.api.Assertions.assertEquals;
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
 * taken as four weeks. The observed value is one session about the line, so no interval of the line is held against it.
 */
class OpenDataForecastTest {
    private static final LocalDate START = LocalDate.parse("2026-01-05");
    private static final int WEEKS = 4;
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

    /** Mean absolute error of a forecaster on the last occasion. */
    private static double error(
            List<Person> people, Forecaster forecaster, int first, int lastKnown, int due, double way) {
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
        double sum = 0;
        for (int i = 0; i < forecasts.size(); i++) {
            double seen = Double.parseDouble(
                    Objects.requireNonNull(people.get(i).values().get(due)));
            sum += Math.abs(((Forecast.Outlook) forecasts.get(i)).value() - seen);
        }
        return sum / forecasts.size();
    }

    @Test
    void lastDayOfTheSleepStudy() throws IOException {
        List<Person> people = read("sleepstudy.csv", 0, 1, 2);
        assertEquals(18, people.size());
        double own = error(people, new OwnLineForecaster(FROM_THREE), 0, 5, 9, 100);
        double pooled = error(people, new PooledForecaster(FROM_THREE), 0, 5, 9, 100);
        assertTrue(pooled < own, "mean absolute error in ms: pooled " + pooled + ", own line " + own);
    }

    @Test
    void lastYearOfOrthodont() throws IOException {
        List<Person> people = read("orthodont.csv", 0, 1, 2);
        assertEquals(27, people.size());
        double own = error(people, new OwnLineForecaster(FROM_THREE), 8, 12, 14, 5);
        double pooled = error(people, new PooledForecaster(FROM_THREE), 8, 12, 14, 5);
        assertTrue(pooled < own, "mean absolute error in mm: pooled " + pooled + ", own line " + own);
    }
}
