package stridetally.units;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Map;
import java.util.SplittableRandom;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.ValueSource;
import stridetally.problem.ProblemCode;

/**
 * The cases are our own rules of reading; conversions among them are by hand: 1 in = 2.54 cm and 1 ft = 12 in exactly
 * (6 ft 2 in = 74 in = 187.96 cm), 1 yd = 0.9144 m, 5 km/h = 5/3.6 m/s.
 */
class ValueGrammarTest {

    @ParameterizedTest(name = "{0}: {1}")
    @CsvFileSource(
            resources = {
                "/values/numbers.csv",
                "/values/units.csv",
                "/values/clock.csv",
                "/values/bounds-and-marks.csv",
                "/values/words.csv",
                "/values/tries-and-shares.csv",
                "/values/of-amounts.csv"
            },
            numLinesToSkip = 1)
    void readsACellOfAPointFile(
            String id,
            @Nullable String input,
            @Nullable String unit,
            @Nullable String of,
            Expecting expecting,
            Unit target,
            @Nullable String expected,
            @Nullable String reason) {
        check(ValueGrammar.STANDARD, input, unit, of, expecting, target, expected, reason);
    }

    @ParameterizedTest(name = "{0}: {1}")
    @CsvFileSource(resources = "/values/decimal-comma.csv", numLinesToSkip = 1)
    void readsACellOfACommaFile(
            String id,
            @Nullable String input,
            @Nullable String unit,
            @Nullable String of,
            Expecting expecting,
            Unit target,
            @Nullable String expected,
            @Nullable String reason) {
        ValueGrammar comma = new ValueGrammar(DecimalMark.COMMA, ValueWords.STANDARD);
        check(comma, input, unit, of, expecting, target, expected, reason);
    }

    private static void check(
            ValueGrammar grammar,
            @Nullable String input,
            @Nullable String unit,
            @Nullable String of,
            Expecting expecting,
            Unit target,
            @Nullable String expected,
            @Nullable String reason) {
        String cell = orBlank(input).replace("{nbsp}", "\u00a0").replace("{nnbsp}", "\u202f");
        Parsed parsed = grammar.parse(cell, orBlank(unit), orBlank(of), expecting, target);
        String wanted = expected == null ? "refused " + orBlank(reason) : expected;
        assertEquals(wanted, said(parsed), () -> "for \"" + cell + "\": " + parsed);
    }

    private static String orBlank(@Nullable String cell) {
        return cell == null ? "" : cell;
    }

    private static String said(Parsed parsed) {
        if (parsed instanceof Parsed.NotTaken no) {
            return "refused " + no.reason();
        }
        Parsed.Taken taken = (Parsed.Taken) parsed;
        String marks = taken.marks().stream().map(mark -> "" + mark.mark()).collect(Collectors.joining());
        return (said(taken.reading()) + " " + marks).strip();
    }

    private static String said(Reading reading) {
        if (reading instanceof Reading.Exact exact) {
            return "exact " + exact.amount().text();
        }
        if (reading instanceof Reading.AtLeast end) {
            return "at least " + end.amount().text();
        }
        if (reading instanceof Reading.AtMost end) {
            return "at most " + end.amount().text();
        }
        if (reading instanceof Reading.Tries tries) {
            return "tries " + tries.met() + " of " + tries.given();
        }
        return ((Reading.NotObtained) reading).why().word();
    }

    @Test
    void suggestsTheWordThatWasMeant() {
        Parsed.NotTaken no = refusedTime("refsued");
        assertTrue(no.mend().contains("did you mean refused?"), no.mend());
        assertEquals("refsued", no.found());
    }

    @Test
    void suggestsTheUnitThatWasMeant() {
        Parsed.NotTaken no = refusedTime("12 secnods");
        assertTrue(no.mend().contains("did you mean seconds?"), no.mend());
    }

    @Test
    void doesNotRepeatWordsThatMayBeAName() {
        assertEquals("", refusedTime("Somebody Else").found());
        assertEquals("", refusedTime("he fell after 12 steps near the door").found());
        assertEquals("1O", refusedTime("1O").found());
    }

    @Test
    void saysThatASpreadsheetMayHaveMadeADateOfAFraction() {
        Parsed no = ValueGrammar.STANDARD.parse("4-May", "", "", Expecting.TRIES, Unit.PROPORTION);
        String mend = assertInstanceOf(Parsed.NotTaken.class, no).mend();
        assertTrue(mend.contains("spreadsheet") && mend.contains("4/5"), mend);
    }

    @Test
    void everyReasonNamesAStableCodeThatSetsTheRowAside() {
        for (Reason reason : Reason.values()) {
            assertEquals(stridetally.problem.Severity.SET_ASIDE, reason.code().severity());
        }
        assertEquals(ProblemCode.VALUE_MISSING, refusedTime("").reason().code());
        assertEquals(ProblemCode.VALUE_IMPOSSIBLE, refusedTime("-3").reason().code());
    }

    @Test
    void takesTheWordsOfAFormsOwnList() {
        ValueWords words = ValueWords.STANDARD.with(Map.of("No Show", Reading.Why.ABSENT));
        ValueGrammar grammar = new ValueGrammar(DecimalMark.POINT, words);
        Parsed parsed = grammar.parse("no-show", "", "", Expecting.AMOUNT, Unit.SECONDS);
        assertEquals("absent", said(parsed));
    }

    private static Parsed.NotTaken refusedTime(String cell) {
        Parsed parsed = ValueGrammar.STANDARD.parse(cell, "", "", Expecting.AMOUNT, Unit.SECONDS);
        return assertInstanceOf(Parsed.NotTaken.class, parsed);
    }

    @ParameterizedTest(name = "seed {0}")
    @ValueSource(longs = {1, 20260105, -7})
    void neverThrowsWhateverTheCellsHold(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        Unit[] units = Unit.values();
        Expecting[] sorts = Expecting.values();
        for (int i = 0; i < 10_000; i++) {
            String value = randomCell(random);
            String unit = random.nextInt(3) == 0 ? randomCell(random) : "";
            String of = random.nextInt(3) == 0 ? randomCell(random) : "";
            Expecting sort = sorts[random.nextInt(sorts.length)];
            Unit any = units[random.nextInt(units.length)];
            Unit target = sort == Expecting.SHARE_OR_TRIES ? Unit.PROPORTION : any;
            Parsed parsed = ValueGrammar.STANDARD.parse(value, unit, of, sort, target);
            if (parsed instanceof Parsed.NotTaken no) {
                assertFalse(no.expected().isBlank());
            }
        }
    }

    private static final String[] PIECES = {
        "0",
        "1",
        "5",
        "12",
        "60",
        ".",
        ",",
        ":",
        "/",
        " of ",
        "of",
        "<",
        ">",
        "=",
        "~",
        "*",
        "?",
        "+",
        "-",
        "%",
        "'",
        "\"",
        " ",
        "\u00a0",
        "\u2212",
        "\u2033",
        "s",
        "sec",
        "m",
        "min",
        "ft",
        "in",
        "m/s",
        "e",
        "o",
        "l",
        "nan",
        "refused",
        "yes",
        "May",
        "2026",
        "tries",
        "steps",
        "\u00bd",
        "\ud83d\ude00",
        "999999",
        "#",
        "\u0130",
        "\u0000",
        "h"
    };

    private static String randomCell(SplittableRandom random) {
        StringBuilder cell = new StringBuilder();
        int length = random.nextInt(9);
        for (int i = 0; i < length; i++) {
            cell.append(PIECES[random.nextInt(PIECES.length)]);
        }
        return cell.toString();
    }

    @ParameterizedTest(name = "seed {0}")
    @ValueSource(longs = {2, 20260106})
    void readsBackWhatItsReadingsAreWrittenAs(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        for (int i = 0; i < 2_000; i++) {
            Amount amount = new Amount(random.nextLong(1_000_000L * Amount.ONE) / pow10(random.nextInt(9)));
            readsBack(new Reading.Exact(amount), Expecting.AMOUNT, Unit.METRES);
            readsBack(new Reading.AtLeast(amount), Expecting.AMOUNT, Unit.SECONDS);
            readsBack(new Reading.AtMost(amount), Expecting.AMOUNT, Unit.METRES_PER_SECOND);
            int given = 1 + random.nextInt(40);
            Reading tries = new Reading.Tries(random.nextInt(given + 1), given);
            readsBack(tries, Expecting.TRIES, Unit.PROPORTION);
            readsBack(tries, Expecting.SHARE_OR_TRIES, Unit.PROPORTION);
            Amount share = new Amount(random.nextLong(Amount.ONE + 1));
            readsBack(new Reading.Exact(share), Expecting.SHARE_OR_TRIES, Unit.PROPORTION);
        }
        for (Reading.Why why : Reading.Why.values()) {
            readsBack(new Reading.NotObtained(why), Expecting.WHOLE_NUMBER, Unit.STEPS);
        }
    }

    private static long pow10(int power) {
        long value = 1;
        for (int i = 0; i < power; i++) {
            value *= 10;
        }
        return value;
    }

    private static void readsBack(Reading reading, Expecting expecting, Unit target) {
        ReadingText text = ReadingText.of(reading);
        Parsed blank = ValueGrammar.STANDARD.parse(text.value(), "", text.of(), expecting, target);
        Parsed named = ValueGrammar.STANDARD.parse(text.value(), target.symbol(), text.of(), expecting, target);
        Parsed wanted = new Parsed.Taken(reading, java.util.List.of());
        assertEquals(wanted, blank, text::toString);
        assertEquals(wanted, named, text::toString);
    }
}
