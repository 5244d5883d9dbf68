package stridetally.table;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;

import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Triggers: CWE-1236, ASVS 1.2.10; carriage return, line feed and full-width forms: OWASP's page, from memory. */
class FormulaGuardTest {
    @ParameterizedTest
    @ValueSource(
            strings = {
                "=HYPERLINK(\"x\")",
                "+1",
                "-1",
                "@SUM(A1)",
                "\t=1",
                "\r=1",
                "\n=1",
                "\0x",
                "  =1",
                "\uFEFF=1",
                "\u00A0=1",
                "\uFF1D1",
                "\uFF0B1",
                "\uFF0D1",
                "\uFF201"
            })
    void putsAnApostropheBeforeWhatASpreadsheetWouldRun(String text) {
        assertEquals("'" + text, FormulaGuard.guard(text));
        assertEquals(text, FormulaGuard.unguard("'" + text));
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "steady", "a=b", "'quoted'", "1", "\u2212 1", "'", "' '=1"})
    void leavesOrdinaryWordsAlone(String text) {
        assertEquals(text, FormulaGuard.guard(text));
        assertEquals(text, FormulaGuard.unguard(text));
    }

    @Test
    void tellsATypedApostropheFromItsOwn() {
        assertEquals("''=1", FormulaGuard.guard("'=1"));
        assertEquals("'=1", FormulaGuard.unguard("''=1"));
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("stridetally.table.Generators#seeds")
    void comesBackExactlyForEveryText(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        for (int round = 0; round < 100; round++) {
            String text = Generators.text(random, "''  =+-@\t\n\uFEFF\uFF1Da1", 6);
            String guarded = FormulaGuard.guard(text);
            assertEquals(text, FormulaGuard.unguard(guarded));
            if (!guarded.isEmpty()) {
                assertNotEquals('=', guarded.charAt(0));
            }
        }
    }
}
