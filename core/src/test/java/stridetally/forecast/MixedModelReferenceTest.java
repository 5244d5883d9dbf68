package stridetally.forecast;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import stridetally.stats.ReferenceCases;
import stridetally.trend.MadeGoal;

/**
 * The Gaussian special case is the usual mixed model: told what lme4 found for the people of sleepstudy together, each
 * person's line is the one that lme4 predicts. lme4 lets level and way correlate on day 0; on the day -r sa/sb they do not,
 * and there our model is the same one.
 */
class MixedModelReferenceTest {
    private static final LocalDate START = LocalDate.parse("2026-01-05");
    private static final double ORIGIN = 250;
    private static final double WAY = 100;

    private final ReferenceCases sleep = ReferenceCases.of("mixed", "sleepstudy");
    private final Map<String, Double> found = sleep.expected().stream()
            .collect(Collectors.toMap(ReferenceCases.Expected::quantity, one -> Double.parseDouble(one.value())));

    private double found(String quantity) {
        return found.getOrDefault(quantity, Double.NaN);
    }

    @Test
    void eachLineIsTheOneThatTheMixedModelPredicts() {
        double uncorrelatedDay = -found("corr") * found("sd_intercept") / found("sd_slope");
        double levelSpread = found("sd_intercept") * Math.sqrt(1 - found("corr") * found("corr"));
        Hyper hyper = new Hyper(
                (found("fixed_intercept") + uncorrelatedDay * found("fixed_slope") - ORIGIN) / WAY,
                levelSpread / WAY,
                found("fixed_slope") / WAY,
                found("sd_slope") / WAY,
                Math.log(found("resid_sd") / WAY),
                1e-6,
                0,
                0);
        List<String> people = sleep.input().stream()
                .map(row -> row.getOrDefault("Subject", ""))
                .distinct()
                .toList();
        assertEquals(18, people.size());
        for (String person : people) {
            double[] days = sleep.numbers("Days", "Subject", person);
            for (int i = 0; i < days.length; i++) {
                days[i] -= uncorrelatedDay;
            }
            SeriesEvidence evidence = evidence(person, days, hyper);
            double level = 0;
            double way = 0;
            for (int part = 0; part < evidence.parts; part++) {
                level += evidence.shares[part] * evidence.levels[part];
                way += evidence.shares[part] * evidence.ways[part];
            }
            double slope = found("fixed_slope") + found("blup_slope_" + person);
            double intercept = found("fixed_intercept") + found("blup_intercept_" + person);
            assertEquals(slope, WAY * way, 1e-6 * WAY, person);
            assertEquals(intercept, ORIGIN + WAY * (level - way * uncorrelatedDay), 1e-6 * ORIGIN, person);
        }
    }

    private SeriesEvidence evidence(String person, double[] times, Hyper hyper) {
        MadeCase made = new MadeCase(
                new MadeGoal()
                        .baselineDate(START.minusDays(1).toString())
                        .baseline(Double.toString(ORIGIN))
                        .target(Double.toString(ORIGIN + WAY))
                        .due(START.plusDays(60).toString())
                        .noCriterion()
                        .made(),
                START.plusDays(30));
        List<String> values = sleep.texts("Reaction", "Subject", person).toList();
        for (int day = 0; day < values.size(); day++) {
            made.on(START.plusDays(day), values.get(day));
        }
        AutoregressiveSums sums = new AutoregressiveSums();
        sums.fill(ScaledSeries.of(made.made()).orElseThrow(), times, CarryTable.of(hyper.carry()));
        SeriesEvidence evidence = SeriesEvidence.fine();
        evidence.of(sums, hyper);
        return evidence;
    }
}
