package stridetally.recordings;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Sway against numbers from outside: formulas of Prieto 1996 (memory) on a made-up record, computed in Python (NumPy, SciPy)
 * and again in R with the same digits. Jerk: formula as in table 2 of doi 10.1186/1743-0003-9-59.
 */
class SwayReferenceTest {
    private static final double[] AP = {1, 2, 4, 3, 1, -1, -3, -2, 0, 1, 2};
    private static final double[] ML = {0, 1, 2, 3, 2, 0, -1, -2, -2, -1, 0};
    private static final double[] AP_SENSOR = {0.02, 0.05, 0.04, -0.01, -0.03, 0.00};
    private static final double[] ML_SENSOR = {0.01, 0.00, -0.02, -0.01, 0.02, 0.01};

    private static Map<String, Double> figures(SwayUnit unit, double[] ap, double[] ml) {
        double[] time = new double[ap.length];
        for (int i = 0; i < time.length; i++) {
            time[i] = i / 10.0;
        }
        Map<String, Double> found = new HashMap<>();
        List<Figure> figures = SwayFigures.of(new SwaySamples(unit, ap.length, time, ml, ap, 0.1, 0, 0), Detrend.MEAN);
        figures.forEach(one -> found.put(one.quantity(), one.value().orElseThrow()));
        return found;
    }

    @ParameterizedTest
    @CsvSource({
        "sway-path, 18.6076988691",
        "sway-path-forward, 15",
        "sway-path-sideways, 10",
        "sway-velocity, 18.6076988691",
        "sway-mean-distance, 2.2710505673",
        "sway-rms, 2.5551762405",
        "sway-rms-forward, 2.0041279714",
        "sway-rms-sideways, 1.5850541613",
        "sway-range-forward, 7",
        "sway-range-sideways, 5",
        "sway-frequency, 1.3040252372",
        "sway-area, 57.9678449280",
        "sway-area-chi-square, 44.8777152151",
        "sway-area-prediction, 77.2904599039",
        "sway-area-circle, 55.3479259527",
        "sway-area-per-second, 12.9545454545",
    })
    void centreOfPressure(String quantity, double expected) {
        Double found = figures(SwayUnit.PRESSURE, AP, ML).get(quantity);
        assertEquals(expected, found == null ? Double.NaN : found, 5e-9);
    }

    @ParameterizedTest
    @CsvSource({"trunk-jerk, 0.032", "trunk-sway-path, 0.1726519409", "trunk-sway-rms, 0.0310017921"})
    void accelerationOfTheTrunk(String quantity, double expected) {
        Double found = figures(SwayUnit.ACCELERATION, AP_SENSOR, ML_SENSOR).get(quantity);
        assertEquals(expected, found == null ? Double.NaN : found, 5e-11);
    }

    /** F(0.95; 2, 9) = 4.2564947291 and F(0.95; 2, 2998) = 2.99873: R's qf and SciPy. */
    @Test
    void quantilesOfF() {
        assertEquals(4.2564947291, Ellipse.quantileF(9), 5e-11);
        assertEquals(2.99873, Ellipse.quantileF(2998), 5e-6);
    }

    /** A drift of 3 mm a second is nothing but drift: what is left of a straight line is 0. */
    @Test
    void aLineTakesOutADrift() {
        double[] drift = new double[50];
        double[] time = new double[50];
        for (int i = 0; i < drift.length; i++) {
            time[i] = i / 10.0;
            drift[i] = 3 * time[i];
        }
        SwaySamples samples = new SwaySamples(SwayUnit.PRESSURE, 50, time, drift, new double[50], 0.1, 0, 0);
        double rms = SwayFigures.of(samples, Detrend.LINE).stream()
                .filter(one -> one.quantity().equals("sway-rms"))
                .findFirst()
                .orElseThrow()
                .value()
                .orElseThrow();
        assertEquals(0, rms, 1e-12);
    }
}
