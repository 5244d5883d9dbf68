package stridetally.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.SortedMap;
import java.util.SplittableRandom;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import stridetally.stats.WithinGroupSpread;

/**
 * Students who do not change at all: how often is a change said to be beyond the error of measurement? It should be 1 in
 * 20. Runs are so many that the standard error of a share of 0.05 is 0.0015, of 0.3 is 0.0032.
 */
final class FalseYesSimulationTest {
    private static final int RUNS = 20_000;
    private static final LocalDate FIRST = LocalDate.parse("2026-09-08");

    private final SplittableRandom random = new SplittableRandom(20260908);

    private double normal() {
        return random.nextGaussian();
    }

    private SortedMap<LocalDate, Double> stable(int sessions, int fromDay) {
        SortedMap<LocalDate, Double> days = new TreeMap<>();
        for (int i = 0; i < sessions; i++) {
            days.put(FIRST.plusDays(fromDay + 7L * i), 10 + normal());
        }
        return days;
    }

    private static double mean(SortedMap<LocalDate, Double> days) {
        return days.values().stream().mapToDouble(Double::doubleValue).average().orElseThrow();
    }

    private static boolean yes(WithinGroupSpread spread, double change, int before) {
        return Math.abs(change) > spread.limit(0.95, before, 1).orElseThrow();
    }

    @Test
    void twoSessionsTimesOneNinetySixRootTwoSaysYesFalselyInThreeOfTen() {
        int naive = 0;
        for (int run = 0; run < RUNS; run++) {
            double first = normal();
            double second = normal();
            double s = Math.abs(first - second) / Math.sqrt(2);
            double before = normal();
            double after = normal();
            naive += Math.abs(after - before) > 1.96 * Math.sqrt(2) * s ? 1 : 0;
        }
        // By hand: t with 1 degree of freedom is Cauchy, so P(|t| > 1.96) = (2/pi) atan(1/1.96) = 0.3003.
        assertEquals(2 / Math.PI * Math.atan(1 / 1.96), naive / (double) RUNS, 0.013);
    }

    @Test
    void twoSessionsPooledWithinTwelveStudentsSayYesFalselyInOneOfTwenty() {
        int ours = 0;
        for (int run = 0; run < RUNS; run++) {
            SortedMap<LocalDate, Double> mine = stable(2, 0);
            WithinGroupSpread pool = new SideDays(mine, new TreeMap<>(), 0).spread();
            for (int student = 1; student < 12; student++) {
                pool = pool.plus(new SideDays(stable(2, 0), new TreeMap<>(), 0).spread());
            }
            ours += yes(pool, 10 + normal() - mean(mine), 2) ? 1 : 0;
        }
        assertEquals(0.05, ours / (double) RUNS, 0.006);
    }

    @Test
    void aStudentsOwnSessionsSayYesFalselyInOneOfTwenty() {
        int ours = 0;
        for (int run = 0; run < RUNS; run++) {
            SideDays days = new SideDays(stable(3, 0), stable(5, 28), 0);
            assertEquals(5, days.spread().degreesOfFreedom());
            ours += yes(days.spread(), 10 + normal() - mean(days.baseline()), 3) ? 1 : 0;
        }
        assertEquals(0.05, ours / (double) RUNS, 0.006);
    }

    @Test
    void carryOverFromSessionToSessionCostsLittle() {
        int ours = 0;
        for (int run = 0; run < RUNS; run++) {
            SortedMap<LocalDate, Double> later = new TreeMap<>();
            double carried = normal();
            double baseline = carried;
            for (int i = 1; i <= 8; i++) {
                carried = next(carried);
                later.put(FIRST.plusDays(7L * i), carried);
            }
            SideDays days = new SideDays(new TreeMap<>(), later, 0);
            ours += yes(days.spread(), next(carried) - baseline, 1) ? 1 : 0;
        }
        // The spread about a line is too small when sessions carry over; still far from 3 of 10.
        assertTrue(ours / (double) RUNS < 0.15, () -> "false yes");
    }

    /** Lag-1 correlation 0.3, spread 1. */
    private double next(double before) {
        return 0.3 * before + Math.sqrt(1 - 0.09) * normal();
    }
}
