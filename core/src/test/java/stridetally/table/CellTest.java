package stridetally.table;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

/** The text of a number, against the exact decimals of java.math.BigDecimal. */
final class CellTest {

    @Test
    void aNumberHasTheFewestDigitsThatTellIt() {
        SplittableRandom random = new SplittableRandom(20261128);
        for (int round = 0; round < 20_000; round++) {
            double number = round % 2 == 0
                    ? Math.sqrt(random.nextInt(1, 100_000) / 20.0)
                    : (random.nextDouble() - 0.5) * Math.pow(10, random.nextInt(60) - 30);
            String text = Cell.number(number).plain();
            assertEquals(number, Double.parseDouble(text), text);
            int digits = new BigDecimal(text).stripTrailingZeros().precision();
            if (digits > 1) {
                for (RoundingMode to : new RoundingMode[] {RoundingMode.DOWN, RoundingMode.UP}) {
                    MathContext fewer = new MathContext(digits - 1, to);
                    assertNotEquals(number, new BigDecimal(number).round(fewer).doubleValue(), text);
                }
            }
        }
    }

    /** Before JDK 19 {@code Double.toString} gives this one eighteen digits. */
    @Test
    void whateverTheJdk() {
        assertEquals(
                "2.5354834979793027E17",
                Cell.number(Double.parseDouble("253548349797930272")).plain());
    }
}
