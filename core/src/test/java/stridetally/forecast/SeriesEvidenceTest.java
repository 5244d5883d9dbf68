package stridetally.forecast;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.List;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.CholeskyDecomposition;
import org.apache.commons.math3.linear.RealMatrix;
import org.apache.commons.math3.linear.RealVector;
import org.junit.jupiter.api.Test;
import stridetally.model.Thresholds;
import stridetally.trend.MadeGoal;

/**
 * The closed form against the whole covariance matrix written out: y ~ N(X m, S), S = X D X' + s^2 R + rounding, solved by
 * Cholesky's way (Commons Math 3.6.1).
 */
class SeriesEvidenceTest {
    private static final LocalDate START = LocalDate.parse("2026-09-18");
    private static final LocalDate DUE = LocalDate.parse("2027-06-04");
    private static final List<LocalDate> DAYS =
            List.of(START.plusDays(5), START.plusDays(12), START.plusDays(26), START.plusDays(29), START.plusDays(70));
    private static final double[] STEPS = {5, 4, 7, 6, 9};
    private static final double NOISE = 0.3;
    private static final Hyper HYPER = new Hyper(0.05, 0.2, 0.8, 0.45, Math.log(NOISE), 1e-5, 0.4, 0);

    private static ForecastCase made() {
        MadeCase made = new MadeCase(new MadeGoal().made(), START.plusDays(75));
        for (int i = 0; i < STEPS.length; i++) {
            made.on(DAYS.get(i), Integer.toString((int) STEPS[i]));
        }
        return made.made();
    }

    private static double[] times() {
        double all = ChronoUnit.DAYS.between(START, DUE);
        return DAYS.stream()
                .mapToDouble(day -> ChronoUnit.DAYS.between(START, day) / all)
                .toArray();
    }

    private static RealMatrix design() {
        double[] times = times();
        double[][] rows = new double[times.length][];
        for (int i = 0; i < rows.length; i++) {
            rows[i] = new double[] {1, times[i]};
        }
        return new Array2DRowRealMatrix(rows);
    }

    private static RealMatrix covariance() {
        return covariance(0.2);
    }

    private static RealMatrix covariance(double levelSpread) {
        RealMatrix level = new Array2DRowRealMatrix(new double[][] {{levelSpread * levelSpread, 0}, {0, 0.45 * 0.45}});
        RealMatrix all = design().multiply(level).multiply(design().transpose());
        for (int i = 0; i < STEPS.length; i++) {
            for (int j = 0; j < STEPS.length; j++) {
                long apart = Math.abs(ChronoUnit.DAYS.between(DAYS.get(i), DAYS.get(j)));
                all.addToEntry(i, j, NOISE * NOISE * Math.pow(0.4, apart / 7.0));
            }
        }
        return all;
    }

    private static RealVector lessMean() {
        double[] scaled = new double[STEPS.length];
        for (int i = 0; i < scaled.length; i++) {
            scaled[i] = (STEPS[i] - 4) / 8;
        }
        return new ArrayRealVector(scaled).subtract(design().operate(new ArrayRealVector(new double[] {0.05, 0.8})));
    }

    @Test
    void theDensityIsThatOfTheWholeMatrix() {
        ScaledSeries series = ScaledSeries.of(made()).orElseThrow();
        AutoregressiveSums sums = new AutoregressiveSums();
        sums.fill(series, CaseloadEvidence.heights(series, new LearningCurve(0, 0)), CarryTable.of(HYPER.carry()));
        // the scatter of rounding to whole steps is added to the squares: taken off here to compare the rest
        sums.values -= STEPS.length * series.rounding();
        assertEquals(logDensity(0.2), SeriesEvidence.fine().of(sums, HYPER), 1e-3);
        // one in four is odd, with a level that scatters by 0.5 more: a mixture of two densities
        Hyper someOdd = new Hyper(0.05, 0.2, 0.8, 0.45, Math.log(NOISE), 1e-5, 0.4, 0.25);
        double mixed = Math.log(0.75 * Math.exp(logDensity(0.2)) + 0.25 * Math.exp(logDensity(Math.hypot(0.2, 0.5))));
        assertEquals(mixed, SeriesEvidence.fine().of(sums, someOdd), 1e-3);
    }

    private static double logDensity(double levelSpread) {
        CholeskyDecomposition parts = new CholeskyDecomposition(covariance(levelSpread));
        return -0.5
                * (STEPS.length * Math.log(2 * Math.PI)
                        + Math.log(parts.getDeterminant())
                        + lessMean().dotProduct(parts.getSolver().solve(lessMean())));
    }

    @Test
    void theLineOnTheDueDateIsThatOfTheWholeMatrix() {
        Forecast.Outlook ours = (Forecast.Outlook) new KnownCaseload(Thresholds.USUAL, HYPER, 0)
                .forecast(List.of(made()))
                .get(0);
        RealMatrix inverse = new CholeskyDecomposition(covariance()).getSolver().getInverse();
        RealVector atDue = new ArrayRealVector(new double[] {0.2 * 0.2, 0.45 * 0.45});
        RealVector gain = inverse.operate(design().operate(atDue));
        double mean = 0.85 + gain.dotProduct(lessMean());
        double variance = 0.2 * 0.2 + 0.45 * 0.45 - gain.dotProduct(design().operate(atDue));
        double z = 1.2815515655446004; // upper tenth of the standard normal curve, R 4.3: qnorm(0.9), from memory
        assertEquals(4 + 8 * mean, ours.value(), 2e-3);
        assertEquals(4 + 8 * (mean - z * Math.sqrt(variance)), ours.low80(), 4e-3);
        assertEquals(4 + 8 * (mean + z * Math.sqrt(variance)), ours.high80(), 4e-3);
    }
}
