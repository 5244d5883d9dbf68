package stridetally.table;

/**
 * Writes numbers as {@link Cell#plain} does, each with the comma behind it, and remembers them: the values of a log repeat, and
 * making the text of a double is dearer than looking it up. A text is held as bytes eight at a time, the highest of which is its
 * length. Hot loop. Not for several threads.
 */
public final class NumberBytes {
    /** A fixed number of places, the last number of each. */
    private static final int PLACE_BITS = 13;

    /** The number, and three times eight bytes of its text. */
    private static final int STEP = 4;

    private static final int TEXT = (STEP - 1) * Long.BYTES;
    private static final int LENGTH_SHIFT = Long.SIZE - Byte.SIZE;

    /** Up to 999.999, eight bytes hold the text and the comma. */
    private static final int THOUSANDTHS = 1_000_000;

    private static final int THOUSAND = 1_000;
    private static final long TEXT_MASK = (1L << LENGTH_SHIFT) - 1;

    private final long[] known = new long[STEP << PLACE_BITS];

    /** The signs before the point, of each whole number. */
    private final long[] wholes = new long[THOUSAND];

    /** The point, the signs behind it and the comma, of each number of thousandths. */
    private final long[] parts = new long[THOUSAND];

    /** Appends the cell of a finite number, and the comma behind it, to rows that have room for 32 bytes more. */
    public void put(double number, ByteRows out) {
        double shown = number + 0.0;
        long own = Double.doubleToRawLongBits(shown);
        int place = (int) ((own * 0x9E3779B97F4A7C15L) >>> (Long.SIZE - PLACE_BITS)) * STEP;
        long[] table = known;
        if ((table[place] != own || table[place + 3] == 0) && !learn(shown, own, place)) {
            out.put(text(shown)).put(',');
            return;
        }
        long last = table[place + 3];
        out.putWithin(table[place + 1], table[place + 2], last, (int) (last >>> LENGTH_SHIFT));
    }

    /**
     * The same for a whole number of thousandths, when there are few: the values of tries, and most means of them, are such.
     * False, with nothing appended, for too many.
     */
    public boolean putThousandths(long thousandths, ByteRows out) {
        if (thousandths < 0 || thousandths >= THOUSANDTHS) {
            return false;
        }
        int number = (int) thousandths;
        int before = number / THOUSAND;
        long whole = wholes[before];
        long part = parts[number - before * THOUSAND];
        if (whole == 0 || part == 0) {
            learn(number);
            return putThousandths(thousandths, out);
        }
        int length = (int) (whole >>> LENGTH_SHIFT);
        long text = (whole & TEXT_MASK) | (part << (length * Byte.SIZE));
        out.putWithin(text, length + (int) (part >>> LENGTH_SHIFT));
        return true;
    }

    private void learn(int thousandths) {
        String text = text(thousandths / (double) THOUSAND);
        int point = text.indexOf('.');
        wholes[thousandths / THOUSAND] = counted(text.substring(0, point));
        parts[thousandths % THOUSAND] = counted(text.substring(point) + ",");
    }

    /** Less than eight signs and their number. */
    private static long counted(String few) {
        return eight(few, 0) | (long) few.length() << LENGTH_SHIFT;
    }

    /** False for a text that is too long to be remembered. */
    private boolean learn(double shown, long own, int place) {
        String text = text(shown);
        if (text.length() + 1 >= TEXT) {
            return false;
        }
        known[place] = own;
        known[place + 1] = eight(text, 0);
        known[place + 2] = eight(text, Long.BYTES);
        known[place + 3] = eight(text, 2 * Long.BYTES) | (text.length() + 1L) << LENGTH_SHIFT;
        int within = text.length() % Long.BYTES;
        known[place + 1 + text.length() / Long.BYTES] |= (long) ',' << (within * Byte.SIZE);
        return true;
    }

    /** Up to eight signs of a text from a place on, the first one lowest. */
    private static long eight(String text, int from) {
        long eight = 0;
        int end = Math.min(text.length(), from + Long.BYTES);
        for (int place = end - 1; place >= from; place--) {
            eight = eight << Byte.SIZE | text.charAt(place);
        }
        return eight;
    }

    private static String text(double shown) {
        return Cell.number(shown).plain();
    }
}
