package stridetally.recordings;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import stridetally.model.Side;
import stridetally.stats.Symmetry;

/**
 * Footfalls against numbers from outside. The made-up walk and its figures were worked out in Python 3.11 with NumPy 2.4 from
 * the definitions (common practice, no source); the table of symmetry is published.
 */
class FootfallsReferenceTest {
    private static final double[] RIGHT_CONTACTS = {0.000, 1.020, 2.050, 3.060, 4.100};
    private static final double[] RIGHT_OFFS = {0.630, 1.660, 2.680, 3.700};
    private static final double[] LEFT_CONTACTS = {0.520, 1.530, 2.560, 3.580, 4.590};
    private static final double[] LEFT_OFFS = {0.110, 1.130, 2.160, 3.170, 4.210};

    /** The events up to a time, in the order of time. */
    static String walk(double until) {
        List<String> rows = new ArrayList<>();
        add(rows, RIGHT_CONTACTS, "right,contact", until);
        add(rows, RIGHT_OFFS, "right,off", until);
        add(rows, LEFT_CONTACTS, "left,contact", until);
        add(rows, LEFT_OFFS, "left,off", until);
        Collections.sort(rows);
        return "time_s,side,event\n" + String.join("\n", rows) + "\n";
    }

    private static void add(List<String> rows, double[] times, String what, double until) {
        for (double time : times) {
            if (time <= until) {
                rows.add(String.format(Locale.ROOT, "%.3f,%s", time, what));
            }
        }
    }

    @ParameterizedTest
    @CsvSource({
        "stride-time, RIGHT, 1.025",
        "stance-share, RIGHT, 0.619538318437",
        "swing-share, RIGHT, 0.380461681563",
        "double-support, RIGHT, 0.224393150420",
        "single-support, RIGHT, 0.395145168017",
    })
    void theRightStridesOfTheMadeUpWalk(String quantity, Side side, double expected) {
        assertEquals(expected, MadeRecording.footfalls(walk(9)).value(quantity, side), 1e-11);
    }

    @Test
    void cadenceIsOfAllTenContacts() {
        MadeRecording whole = MadeRecording.footfalls(walk(9));
        assertEquals(117.6470588235, whole.value("cadence"), 1e-9);
        assertEquals(9, whole.figure("cadence", Side.NONE).n());
        assertEquals(0, whole.value("strides-dropped"));
    }

    /** Left step times 0.52 0.51 0.51 0.52, right 0.50 0.52 0.50 0.52: indices as of the symmetry table. */
    @Test
    void stepTimesAndTheirSymmetryUpToTheLastRightContact() {
        MadeRecording cut = MadeRecording.footfalls(walk(4.1));
        assertEquals(0.515, cut.value("step-time", Side.LEFT), 1e-12);
        assertEquals(0.510, cut.value("step-time", Side.RIGHT), 1e-12);
        assertEquals(-0.9756097561, cut.value("step-time-robinson"), 1e-9);
        assertEquals(-0.9756174945, cut.value("step-time-log-ratio"), 1e-9);
        assertEquals(0.009756097561, cut.value("step-time-asymmetry"), 1e-11);
    }

    /** Stance is single support of the leg and double support, whichever way it is computed. */
    @Test
    void stanceIsSingleAndDoubleSupport() {
        MadeRecording whole = MadeRecording.footfalls(walk(9));
        for (Side side : List.of(Side.LEFT, Side.RIGHT)) {
            assertEquals(
                    whole.value("stance-share", side),
                    whole.value("single-support", side) + whole.value("double-support", side),
                    1e-12);
        }
    }

    /** R (0, 0.06), L (0.52, -0.05), R (1.05, 0.05): made up; NumPy. */
    @ParameterizedTest
    @CsvSource({
        "stride-length, RIGHT, 1.0500476180",
        "step-length, LEFT, 0.5210239904",
        "step-length, RIGHT, 0.5290236276",
        "step-width, NONE, 0.1050428553"
    })
    void lengthsOfThreeFootprints(String quantity, Side side, double expected) {
        MadeRecording prints =
                MadeRecording.footfalls("side,x_m,y_m\nright,0,0.06\nleft,0.52,-0.05\nright,1.05,0.05\n");
        assertEquals(expected, prints.value(quantity, side), 5e-11);
        assertEquals("positions without times", prints.reason("cadence"));
    }

    @Test
    void unitsAreNamedInTheHeading() {
        MadeRecording prints = MadeRecording.footfalls("side;x_cm;y_cm\nR;0;6\nL;52,0;-5\nR;105;5\n");
        assertEquals(1.0500476180, prints.value("stride-length", Side.RIGHT), 5e-11);
    }

    /** Ten right strides of 1.01 and 1.03 s by turns: mean 1.02, squares 10 * 0.0001 over 9, so SD 0.0105409255 (by hand). */
    @Test
    void aVariabilityNeedsTenStrides() {
        StringBuilder text = new StringBuilder("time_s,side\n");
        double time = 0;
        for (int i = 0; i <= 10; i++) {
            text.append(String.format(Locale.ROOT, "%.2f,right%n%.2f,left%n", time, time + 0.5));
            time += i % 2 == 0 ? 1.01 : 1.03;
        }
        MadeRecording walk = MadeRecording.footfalls(text.toString());
        assertEquals(Math.sqrt(0.001 / 9) / 1.02, walk.value("stride-time-variability", Side.RIGHT), 1e-12);
        assertTrue(
                walk.figure("stride-time-variability", Side.RIGHT).definition().contains("doubtful"));
        assertEquals(
                "4 of the 10 strides it needs",
                MadeRecording.footfalls(walk(9))
                        .figure("stride-time-variability", Side.RIGHT)
                        .value()
                        .reason());
        assertEquals("no off events", walk.reason("stance-share"));
    }

    /**
     * A published table of made-up step lengths, non-paretic and paretic (omicsonline.org, JPMR 2329-9096-2-201, table 1),
     * printed to two digits; the log ratios were computed from its lengths in Python.
     */
    @ParameterizedTest
    @CsvSource({
        "0.39, 0.25, 43.75, -13.71, 44.4685821261",
        "0.59, 0.40, 38.38, -12.07, 38.8657989792",
        "0.47, 0.37, 23.81, -7.54, 23.9229689066",
    })
    void agreesWithThePublishedTableOfSymmetry(double np, double p, double index, double angle, double logRatio) {
        assertEquals(index, new Symmetry(p, np).index().orElseThrow(), 0.005);
        assertEquals(-index, new Symmetry(np, p).index().orElseThrow(), 0.005);
        assertEquals(angle, new Symmetry(np, p).angle().orElseThrow(), 0.005);
        assertEquals(-angle, new Symmetry(p, np).angle().orElseThrow(), 0.005);
        assertEquals(logRatio, new Symmetry(p, np).logRatio().orElseThrow(), 1e-9);
    }

    @Test
    void symmetryOfNothingIsNotKnown() {
        assertEquals("both sides are 0", new Symmetry(0, 0).index().reason());
        assertEquals("a side is 0", new Symmetry(0, 0.5).logRatio().reason());
        assertEquals("both sides are 0", new Symmetry(0, 0).angle().reason());
    }
}
