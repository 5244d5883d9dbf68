package stridetally.table;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

/** Against the texts of cells, and thousandths against the text of the JDK. */
final class NumberBytesTest {
    private final NumberBytes numbers = new NumberBytes();
    private final ByteRows rows = new ByteRows();

    @Test
    void allThousandthsThatAreWrittenWithoutBeingRemembered() throws IOException {
        StringBuilder expected = new StringBuilder();
        for (int thousandths = 0; thousandths < 1_000_000; thousandths++) {
            rows.room(16);
            assertTrue(numbers.putThousandths(thousandths, rows));
            expected.append(thousandths / 1_000.0).append(',');
        }
        assertTrue(expected.toString().equals(written()), "some number is written otherwise");
    }

    @Test
    void thousandthsOfLargeNumbersAreNotForHere() throws IOException {
        assertFalse(numbers.putThousandths(1_000_000, rows));
        assertFalse(numbers.putThousandths(-1, rows));
        assertFalse(numbers.putThousandths(Long.MAX_VALUE, rows));
        assertEquals("", written());
    }

    @Test
    void anyNumberAtItsFirstTimeAndAgain() throws IOException {
        SplittableRandom random = new SplittableRandom(20261128);
        double[] some = new double[20_000];
        for (int k = 0; k < some.length; k++) {
            some[k] = k % 2 == 0
                    ? Math.sqrt(random.nextInt(100_000) / 20.0)
                    : (random.nextDouble() - 0.5) * Math.pow(10, random.nextInt(60) - 30);
        }
        StringBuilder expected = new StringBuilder();
        for (int k = 0; k < 3 * some.length; k++) {
            double number = some[k < some.length ? k : random.nextInt(some.length)];
            rows.room(32);
            numbers.put(number, rows);
            expected.append(Cell.number(number).plain()).append(',');
        }
        assertTrue(expected.toString().equals(written()), "some number is written otherwise");
    }

    @Test
    void zeroHasNoSignAndALongTextIsWrittenWhole() throws IOException {
        rows.room(128);
        numbers.put(-0.0, rows);
        numbers.put(-1.234567890123456E-300, rows);
        numbers.put(Double.MIN_VALUE, rows);
        assertEquals("0.0,-1.234567890123456E-300,4.9E-324,", written());
    }

    private String written() throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        rows.writeTo(out);
        return out.toString(StandardCharsets.UTF_8);
    }
}
