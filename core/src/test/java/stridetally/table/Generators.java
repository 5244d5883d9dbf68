package stridetally.table;

import java.util.SplittableRandom;
import java.util.stream.LongStream;

/** Seeded texts for the property tests of this package. */
final class Generators {
    private Generators() {}

    /** Seeds; a failing test shows its seed in its name. */
    static LongStream seeds() {
        return LongStream.range(1, 201);
    }

    /** A text of up to {@code longest} characters out of an alphabet. */
    static String text(SplittableRandom random, String alphabet, int longest) {
        int length = random.nextInt(longest + 1);
        StringBuilder text = new StringBuilder(length);
        for (int place = 0; place < length; place++) {
            text.append(alphabet.charAt(random.nextInt(alphabet.length())));
        }
        return text.toString();
    }
}
