package stridetally.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import stridetally.measures.Measure;
import stridetally.measures.MeasureKind;
import stridetally.measures.Sidedness;
import stridetally.model.Direction;
import stridetally.model.Settings;
import stridetally.model.Thresholds;
import stridetally.scoring.Bound;
import stridetally.units.Unit;

/** Numbers and counts as words. Expected texts are rounded by hand. */
class WordsTest {
    private static final Settings SETTINGS = MadeCaseload.settings();
    private static final ShownUnit STEPS = ShownUnit.of(MadeCaseload.STEPS, SETTINGS);
    private static final ShownUnit SECONDS = ShownUnit.of(MadeCaseload.STANCE, SETTINGS);

    @ParameterizedTest
    @CsvSource({"4, 4 steps", "5.5, 5.5 steps", "1, 1 step", "0, 0 steps", "5.9999, 6 steps", "2.35, 2.4 steps"})
    void aCountShowsOneDecimalOnlyBetweenTwoCounts(double value, String text) {
        assertEquals(text, STEPS.text(value));
    }

    @ParameterizedTest
    @CsvSource({"8, 8.0 s", "8.25, 8.25 s", "8.254, 8.25 s", "8.255, 8.26 s", "1.005, 1.01 s"})
    void aValueIsRoundedHalfUpOnItsDecimalText(double value, String text) {
        assertEquals(text, SECONDS.text(value));
    }

    @Test
    void aCappedValueKeepsItsSign() {
        assertEquals(">= 60.0 s", SECONDS.text(new Measured(60, Optional.of(Bound.AT_LEAST))));
        assertEquals("<= 2.0 s", SECONDS.text(new Measured(2, Optional.of(Bound.AT_MOST))));
    }

    @Test
    void aValueShortOfTheTargetNeverReadsAsTheTarget() {
        assertEquals("11.97", STEPS.number(Measured.exact(11.97), 12));
        assertEquals("12", STEPS.number(Measured.exact(12), 12));
    }

    @Test
    void changesCarryTheirSign() {
        assertEquals("+3 steps", STEPS.change(Measured.exact(3)));
        assertEquals("-1 step", STEPS.change(Measured.exact(-1)));
        assertEquals("0 steps", STEPS.change(Measured.exact(-0.0)));
    }

    @Test
    void sharesAreShownInPercent() {
        assertEquals("80 %", ShownUnit.of(MadeCaseload.SUCCESS, SETTINGS).text(0.8));
    }

    @Test
    void aLengthIsShownInTheUnitOfTheSettings() {
        Measure walk = MadeCaseload.measure(
                "walk-30s", Unit.METRES, MeasureKind.DISTANCE, Direction.HIGHER, 1, Sidedness.NONE);
        Settings feet = new Settings(
                "made-up",
                List.of(),
                List.of(),
                Map.of("walk-30s", "ft"),
                SETTINGS.help(),
                SETTINGS.prompt(),
                Thresholds.USUAL,
                List.of());
        // 30.48 m / 0.3048 m = 100 ft.
        assertEquals("100.0 ft", ShownUnit.of(walk, feet).text(30.48));
    }

    @Test
    void aUnitOfAnotherKindIsPassedOver() {
        Settings wrong = new Settings(
                "made-up",
                List.of(),
                List.of(),
                Map.of("line-steps", "ft"),
                SETTINGS.help(),
                SETTINGS.prompt(),
                Thresholds.USUAL,
                List.of());
        assertEquals("4 steps", ShownUnit.of(MadeCaseload.STEPS, wrong).text(4));
    }

    @ParameterizedTest
    @CsvSource({
        "0.82, about 8 in 10 (82 %)",
        "0.75, about 8 in 10 (75 %)",
        "0.5, about 5 in 10 (50 %)",
        "0.05, about 1 in 10 (5 %)",
        "0.949, about 9 in 10 (95 %)",
        "0.02, less than 1 in 20 (2 %)",
        "0, less than 1 in 20 (under 1 %)",
        "1, more than 19 in 20 (over 99 %)",
        "0.7, about 7 in 10 (70 %)",
        "0.6999, about 7 in 10 (69.99 %)",
        "0.3001, about 3 in 10 (30.01 %)"
    })
    void aChanceNeverReadsAsBeingAtALimitWhenItIsNot(double chance, String text) {
        assertEquals(text, new ChanceWords(Thresholds.USUAL).text(chance));
    }

    @ParameterizedTest
    @CsvSource({"0, session, 0 sessions", "1, session, 1 session", "2, try, 2 tries", "1, try, 1 try"})
    void oneIsOneAndManyAreMany(long count, String noun, String text) {
        assertEquals(text, Counted.of(count, noun));
    }

    @ParameterizedTest
    @CsvSource({"5 >10 12, >10, 5, >12", "5 6 >7, 6, 5, >7", ">5 6, >5.5, >5, >6", "<4 6 8, 6, <4, 8", "3, 3, 3, 3"})
    void cappedSessionsLeaveKnownWhatTheyCannotChange(String values, String median, String low, String high) {
        OrderedMeasured order = new OrderedMeasured(java.util.Arrays.stream(values.split(" ", -1))
                .map(WordsTest::read)
                .toList());
        assertEquals(read(median), order.median().orElseThrow());
        assertEquals(read(low), order.lowest().orElseThrow());
        assertEquals(read(high), order.highest().orElseThrow());
    }

    @Test
    void capsOnBothSidesLeaveTheMiddleUnsaid() {
        assertFalse(
                new OrderedMeasured(List.of(read("<3"), read(">3"))).median().isEstimated());
        assertFalse(new OrderedMeasured(List.of()).median().isEstimated());
    }

    private static Measured read(String text) {
        Optional<Bound> bound = text.startsWith(">")
                ? Optional.of(Bound.AT_LEAST)
                : text.startsWith("<") ? Optional.of(Bound.AT_MOST) : Optional.empty();
        return new Measured(Double.parseDouble(text.replaceAll("[<>]", "")), bound);
    }
}
