package stridetally.recordings;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.IntToDoubleFunction;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import stridetally.model.Side;
import stridetally.problem.InputRefused;
import stridetally.problem.ProblemCode;

/** What is wrong with a recording is said with its place, and the rest is scored (common practice, no source). */
class BadRecordingsTest {
    private static final String WALK = FootfallsReferenceTest.walk(9);

    /** Four right strides and four left ones in the whole walk. */
    private static final int ALL = 8;

    @Test
    void timesThatGoBackAreSaidAndPutInOrder() {
        String[] lines = WALK.split("\n", -1);
        String unsorted = WALK.replace(lines[3] + "\n" + lines[4], lines[4] + "\n" + lines[3]);
        MadeRecording walk = MadeRecording.footfalls(unsorted);
        assertEquals(ALL, walk.value("strides"));
        assertTrue(walk.told().contains("made.csv:5:1: RECORDING_DOUBTFUL"), walk.told());
        assertEquals(1, walk.count(ProblemCode.RECORDING_DOUBTFUL));
    }

    @Test
    void aRepeatedEventIsSetAside() {
        MadeRecording walk =
                MadeRecording.footfalls(WALK.replace("0.520,left,contact", "0.520,left,contact\n0.520,left,contact"));
        assertTrue(walk.told().contains("made.csv:5:1: SAMPLE_TIME"), walk.told());
        assertEquals(ALL, walk.value("strides"));
    }

    @Test
    void oneFootOnlyKeepsItsOwnFigures() {
        StringBuilder right = new StringBuilder("time_s,side,event\n");
        WALK.lines()
                .filter(line -> line.contains("right"))
                .forEach(line -> right.append(line).append('\n'));
        MadeRecording walk = MadeRecording.footfalls(right.toString());
        assertEquals(1.025, walk.value("stride-time", Side.RIGHT), 1e-12);
        assertEquals(0.619538318437, walk.value("stance-share", Side.RIGHT), 1e-11);
        assertEquals("one foot only", walk.reason("cadence"));
        assertEquals("one foot only", walk.reason("step-time-robinson"));
        assertTrue(walk.told().contains("one foot only"), walk.told());
    }

    @Test
    void aThirdFootIsSetAside() {
        MadeRecording walk =
                MadeRecording.footfalls(WALK.replace("0.520,left,contact", "0.500,tail,contact\n0.520,left,contact"));
        assertTrue(walk.told().contains("made.csv:4:2: SAMPLE_UNREADABLE (side): found \"tail\""), walk.told());
        assertEquals(ALL, walk.value("strides"));
    }

    /** Without the right off at 2.680 the right stride from 2.050 and the left ones around it are not known. */
    @Test
    void aMissingOffDropsItsStridesOnly() {
        MadeRecording walk = MadeRecording.footfalls(WALK.replace("2.680,right,off\n", ""));
        assertEquals(2, walk.value("strides-dropped"));
        assertEquals(ALL - 2, walk.value("strides"));
        assertEquals(2, walk.count(ProblemCode.STRIDE_DROPPED));
        assertTrue(walk.told().contains("an off between is missing"), walk.told());
    }

    @Test
    void aContactThatIsMissingIsAnotherOrder() {
        MadeRecording walk = MadeRecording.footfalls(WALK.replace("1.530,left,contact\n", ""));
        assertTrue(walk.value("strides-dropped") > 0);
        assertTrue(walk.told().contains("STRIDE_DROPPED"), walk.told());
        assertEquals(1.04, walk.value("stride-time", Side.RIGHT), 0.02);
    }

    @Test
    void aWalkOfTwoStepsHasNoStride() {
        MadeRecording walk = MadeRecording.footfalls("time_s,side\n0.0,right\n0.5,left\n");
        assertEquals("2 contacts: a stride needs 3", walk.reason("cadence"));
        assertEquals("2 contacts: a stride needs 3", walk.reason("stride-time"));
        assertTrue(walk.told().contains("made.csv:2: RECORDING_DOUBTFUL"), walk.told());
        assertTrue(walk.told().contains("there is no stride in this walk"), walk.told());
    }

    @Test
    void timesAndSidesAloneAreKnownAsFootfalls() {
        assertEquals(Optional.of(RecordingKind.FOOTFALLS), RecordingKind.guess(List.of("time_s", "side")));
        assertEquals(Optional.empty(), RecordingKind.guess(List.of("time_s", "side", "value")));
        assertEquals(Optional.empty(), RecordingKind.guess(List.of("student", "side")));
    }

    @Test
    void aTimeThatIsNoNumberIsSetAside() {
        MadeRecording walk = MadeRecording.footfalls(WALK.replace("0.630,right,off", "NaN,right,off"));
        assertTrue(walk.told().contains("SAMPLE_UNREADABLE (time_s): found \"NaN\""), walk.told());
        assertEquals(ALL - 2, walk.value("strides"));
    }

    /** A pause of 20 s between two contacts of a foot is no stride. */
    @Test
    void aGapIsNoStride() {
        String late = WALK.replace("4.590,left,contact", "24.590,left,contact");
        MadeRecording walk = MadeRecording.footfalls(late);
        assertEquals(1, walk.value("strides-dropped"));
        assertTrue(walk.told().contains("more than 8 s"), walk.told());
    }

    @Test
    void timesInMillisecondsAreRefusedAndTheOtherWalkIsScored() {
        StringBuilder text = new StringBuilder("walk,time_s,side\n");
        for (int i = 0; i < 7; i++) {
            String foot = i % 2 == 0 ? "right" : "left";
            text.append("a,").append(i * 500).append(',').append(foot).append('\n');
            text.append("b,").append(i * 0.5).append(',').append(foot).append('\n');
        }
        MadeRecording walks = MadeRecording.footfalls(text.toString());
        assertEquals(1, walks.recorded.refused());
        assertEquals(1, walks.recorded.walks().size());
        assertEquals(120, walks.value("cadence"), 1e-9);
        assertTrue(walks.told().contains("is time_s in milliseconds?"), walks.told());
    }

    @Test
    void positionsInMillimetresCostTheLengthsOnly() {
        StringBuilder text = new StringBuilder("time_s,side,x_m,y_m\n");
        for (int i = 0; i < 7; i++) {
            text.append(i * 0.5)
                    .append(i % 2 == 0 ? ",right," : ",left,")
                    .append(i * 500)
                    .append(",50\n");
        }
        MadeRecording walk = MadeRecording.footfalls(text.toString());
        assertEquals(120, walk.value("cadence"), 1e-9);
        assertTrue(walk.reason("step-length").contains("check the unit of x and y"), walk.reason("step-length"));
        assertEquals(1, walk.count(ProblemCode.RECORDING_DOUBTFUL));
    }

    @Test
    void aFileOfSomethingElseIsRefusedWithWhatWasExpected() {
        InputRefused refused =
                assertThrows(InputRefused.class, () -> MadeRecording.footfalls("student,date\nS1,2026-10-05\n"));
        assertTrue(String.valueOf(refused.getMessage()).contains("expected the columns side"), refused.getMessage());
        assertThrows(InputRefused.class, () -> MadeRecording.footfalls(""));
        assertThrows(InputRefused.class, () -> MadeRecording.sway("time_s,ml_mm\n0,1\n"));
    }

    /** 10 s at 50 Hz on a circle of 5 mm, once a second. */
    private static String stance(IntToDoubleFunction time, double scale) {
        StringBuilder text = new StringBuilder("time_s,ml_mm,ap_mm\n");
        for (int i = 0; i < 500; i++) {
            double angle = 2 * Math.PI * i / 50;
            text.append(String.format(
                    Locale.ROOT,
                    "%.4f,%.5f,%.5f%n",
                    time.applyAsDouble(i),
                    scale * 5 * Math.cos(angle),
                    scale * 5 * Math.sin(angle)));
        }
        return text.toString();
    }

    /** 50 chords of a circle of 5 mm a second: 50 * 2 * 5 * sin(pi / 50) = 31.39525977 mm/s; distance 5 mm; 0.9993421566 Hz. */
    @Test
    void aCircleHasTheVelocityOfItsChords() {
        MadeRecording stance = MadeRecording.sway(stance(i -> i / 50.0, 1));
        assertEquals(31.39525977, stance.value("sway-velocity"), 1e-4);
        assertEquals(5, stance.value("sway-rms"), 1e-5);
        assertEquals(0.9993421566, stance.value("sway-frequency"), 1e-5);
        assertEquals("", stance.told());
    }

    @Test
    void aSampleWhoseTimeDoesNotGoOnIsSetAside() {
        MadeRecording stance = MadeRecording.sway(stance(i -> i == 200 ? 3.98 : i / 50.0, 1));
        assertTrue(stance.told().contains("made.csv:202:1: SAMPLE_TIME"), stance.told());
        assertEquals(499, stance.value("samples"));
        assertEquals(31.39, stance.value("sway-velocity"), 0.02);
    }

    @Test
    void aSampleThatIsNoNumberIsSetAside() {
        String[] lines = stance(i -> i / 50.0, 1).split("\\R", -1);
        lines[100] = "1.98,NaN,1";
        MadeRecording stance = MadeRecording.sway(String.join("\n", lines));
        assertTrue(stance.told().contains("made.csv:101:2: SAMPLE_UNREADABLE (ml_mm): found \"NaN\""), stance.told());
        assertEquals(499, stance.value("samples"));
    }

    /** Half a second is missing: the way across is not walked, so the velocity stays that of the circle. */
    @Test
    void aGapCostsThePathAndNotTheVelocity() {
        StringBuilder text = new StringBuilder();
        stance(i -> i / 50.0, 1)
                .lines()
                .filter(line -> !line.matches("4\\.[0-4].*"))
                .forEach(line -> text.append(line).append('\n'));
        MadeRecording stance = MadeRecording.sway(text.toString());
        assertEquals("1 gap in the recording", stance.reason("sway-path"));
        assertEquals(31.39525977, stance.value("sway-velocity"), 1e-4);
        assertTrue(stance.told().contains("RECORDING_DOUBTFUL"), stance.told());
    }

    @ParameterizedTest
    @CsvSource({"50, 0", "100, 1", "49.5, 0"})
    void anotherSamplingRateThanWrittenIsSaid(double written, long told) {
        MadeRecording stance = MadeRecording.sway(stance(i -> i / 50.0, 1), written);
        assertEquals(told, stance.count(ProblemCode.RECORDING_DOUBTFUL));
        assertEquals(50, stance.value("rate"), 1e-6);
    }

    @Test
    void aFactorOfAThousandIsRefused() {
        assertEquals(1, MadeRecording.sway(stance(i -> i * 20.0, 1)).count(ProblemCode.RECORDING_REFUSED));
        MadeRecording metres = MadeRecording.sway(stance(i -> i / 50.0, 0.001));
        assertEquals(1, metres.recorded.refused());
        assertTrue(metres.told().contains("check the unit of ml and ap"), metres.told());
    }

    @Test
    void aShortStanceIsRefused() {
        MadeRecording few = MadeRecording.sway("time_s,ml_mm,ap_mm\n0,1,1\n0.02,2,1\n");
        assertTrue(few.told().contains("2 samples; it needs 100"), few.told());
        MadeRecording brief = MadeRecording.sway(stance(i -> i / 200.0, 1));
        assertTrue(brief.told().contains("it needs 5.0"), brief.told());
    }

    @Test
    void aStanceOfBadSamplesIsRefused() {
        MadeRecording stance = MadeRecording.sway(stance(i -> i % 3 == 0 ? 0 : i / 50.0, 1));
        assertEquals(1, stance.count(ProblemCode.RECORDING_REFUSED));
        assertTrue(stance.told().contains("and"), stance.told());
    }

    /** The left foot is set down behind the right one at each step: its steps are -0.1 m, those of the right 0.6 m. */
    @Test
    void stepsBackHaveNoSymmetry() {
        MadeRecording walk = MadeRecording.footfalls(steps("-0.1"));
        assertEquals(-0.1, walk.value("step-length", Side.LEFT), 1e-9);
        for (String index : new String[] {"robinson", "log-ratio", "asymmetry"}) {
            assertEquals("a side is below 0", walk.reason("step-length-" + index));
        }
        assertTrue(Double.isFinite(walk.value("step-time-robinson")));
    }

    /** The left foot only comes up to the right one: by hand, 100 * 0.5 / 0.25 and no logarithm of 0. */
    @Test
    void stepsOfNoLengthHaveNoLogRatio() {
        MadeRecording walk = MadeRecording.footfalls(steps("0"));
        assertEquals(200, walk.value("step-length-robinson"), 1e-9);
        assertEquals("a side is 0", walk.reason("step-length-log-ratio"));
    }

    /** Right contacts 0.5 m apart, left ones so far ahead of the right one before. */
    private static String steps(String ahead) {
        StringBuilder text = new StringBuilder("time_s,side,x_m,y_m\n");
        for (int i = 0; i < 8; i++) {
            double right = i * 0.5;
            text.append(i).append(",right,").append(right).append(",0\n");
            text.append(i)
                    .append(".5,left,")
                    .append(right + Double.parseDouble(ahead))
                    .append(",0\n");
        }
        return text.toString();
    }
}
