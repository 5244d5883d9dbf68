package stridetally.table;

import java.nio.charset.StandardCharsets;

/**
 * Numbers as {@link Cell#plain} writes them, each with the comma behind it, remembered: the values of a log repeat, and making
 * the text of a double is dearer than looking it up. A fixed number of places, the last number of each. Not for several
 * threads.
 */
public final class NumberBytes {
    private static final int PLACES = 1 << 14;

    private final long[] bits = new long[PLACES];
    private final byte[][] texts = new byte[PLACES][];

    /** The cell of a finite number, and the comma behind it. */
    public byte[] of(double number) {
        double shown = number + 0.0;
        long own = Double.doubleToRawLongBits(shown);
        int place = (int) ((own * 0x9E3779B97F4A7C15L) >>> 50);
        byte[] text = texts[place];
        if (text == null || bits[place] != own) {
            text = (Cell.number(shown).plain() + ",").getBytes(StandardCharsets.US_ASCII);
            texts[place] = text;
            bits[place] = own;
        }
        return text;
    }
}
