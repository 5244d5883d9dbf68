package stridetally.recordings;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import stridetally.ingest.ByteSource;
import stridetally.problem.At;
import stridetally.problem.InputRefused;

/**
 * A plain table of samples: a heading row, then numbers and short words parted by commas, tabs or semicolons. Hot loop: ten
 * minutes at 1 kHz are 600 000 rows, so cells are read from the bytes and a number becomes no text on its way. A number of
 * up to 15 digits is exact by one division; a longer one goes to {@link Double#parseDouble}. Rows whose numbers are not numbers read as NaN.
 */
final class SampleTable {
    private static final long EXACT_DIGITS = 1_000_000_000_000_000L;
    private static final double[] POWERS = powers();
    private static final int BOM = 3;

    private final String name;
    private final byte[] bytes;
    private final byte delimiter;
    private final List<String> headings = new ArrayList<>();
    private int[] start = new int[8];
    private int[] end = new int[8];
    private int cells;
    private int at;
    private long line;

    private SampleTable(String name, byte[] bytes) {
        this.name = name;
        this.bytes = bytes;
        this.at = bytes.length >= BOM && (bytes[0] & 0xff) == 0xef && (bytes[1] & 0xff) == 0xbb ? BOM : 0;
        this.delimiter = delimiter();
        if (!next()) {
            throw new InputRefused(name + ": the file is empty; expected a heading row and samples below it");
        }
        for (int cell = 0; cell < cells; cell++) {
            headings.add(fold(text(cell)));
        }
    }

    /** Reads the whole of a source. Refuses what is no text. */
    static SampleTable of(ByteSource source) {
        try (InputStream in = source.open()) {
            byte[] bytes = in.readAllBytes();
            for (int i = 0; i < Math.min(bytes.length, 1 << 12); i++) {
                if (bytes[i] == 0) {
                    throw new InputRefused(source.name() + ": not text in UTF-8; save the recording as CSV");
                }
            }
            return new SampleTable(source.name(), bytes);
        } catch (IOException failed) {
            throw new InputRefused(source.name() + ": could not be read; check the disk and try again", failed);
        }
    }

    /** Headings are compared so. */
    static String fold(String heading) {
        return heading.strip().toLowerCase(Locale.ROOT).replace(' ', '_');
    }

    String name() {
        return name;
    }

    List<String> headings() {
        return List.copyOf(headings);
    }

    /** The column of a heading; -1 when there is none. */
    int column(String heading) {
        return headings.indexOf(heading);
    }

    /** At most so many rows are left, for the size of arrays. */
    int rowsAtMost() {
        int rows = 1;
        for (int i = at; i < bytes.length; i++) {
            rows += bytes[i] == '\n' ? 1 : 0;
        }
        return rows;
    }

    /** Goes to the next row that is not blank. */
    boolean next() {
        while (at < bytes.length) {
            line++;
            if (split()) {
                return true;
            }
        }
        return false;
    }

    /** The line of the file, from 1. */
    long line() {
        return line;
    }

    /** The place of a cell of this row. */
    At at(int column) {
        return new At(name, line, column + 1, column < headings.size() ? headings.get(column) : "");
    }

    /** The cell as text. */
    String text(int column) {
        if (column < 0 || column >= cells) {
            return "";
        }
        return new String(bytes, start[column], end[column] - start[column], StandardCharsets.UTF_8);
    }

    /** Whether the cell holds nothing. */
    boolean isBlank(int column) {
        return column < 0 || column >= cells || start[column] == end[column];
    }

    /** The cell as a finite number; NaN when it is none. */
    double number(int column) {
        if (isBlank(column)) {
            return Double.NaN;
        }
        int i = start[column];
        int stop = end[column];
        boolean negative = bytes[i] == '-';
        i += negative || bytes[i] == '+' ? 1 : 0;
        long digits = 0;
        int decimals = -1;
        boolean some = false;
        for (; i < stop; i++) {
            int letter = bytes[i];
            if (letter >= '0' && letter <= '9') {
                digits = digits * 10 + (letter - '0');
                decimals += decimals >= 0 ? 1 : 0;
                some = true;
                if (digits >= EXACT_DIGITS) {
                    return slow(column);
                }
            } else if (decimals < 0 && (letter == '.' || (letter == ',' && delimiter != ','))) {
                decimals = 0;
            } else {
                return slow(column);
            }
        }
        if (!some || decimals >= POWERS.length) {
            return slow(column);
        }
        double value = decimals > 0 ? digits / POWERS[decimals] : digits;
        return negative ? -value : value;
    }

    private double slow(int column) {
        String text = text(column).replace(',', '.');
        for (int i = 0; i < text.length(); i++) {
            if ("0123456789+-.eE".indexOf(text.charAt(i)) < 0) {
                return Double.NaN;
            }
        }
        try {
            double value = Double.parseDouble(text);
            return Double.isFinite(value) ? value : Double.NaN;
        } catch (NumberFormatException unreadable) {
            return Double.NaN;
        }
    }

    /** Splits one line into cells without blanks and quotes around them; false for a blank line. */
    private boolean split() {
        cells = 0;
        boolean some = false;
        int from = at;
        int i = at;
        while (true) {
            boolean stop = i == bytes.length || bytes[i] == '\n';
            if (stop || bytes[i] == delimiter) {
                add(from, i);
                some |= start[cells - 1] < end[cells - 1];
                from = i + 1;
            }
            if (stop) {
                at = i + 1;
                return some;
            }
            i++;
        }
    }

    private void add(int from, int to) {
        if (cells == start.length) {
            start = java.util.Arrays.copyOf(start, 2 * cells);
            end = java.util.Arrays.copyOf(end, 2 * cells);
        }
        int first = from;
        int last = to;
        while (first < last && isAround(bytes[first])) {
            first++;
        }
        while (last > first && isAround(bytes[last - 1])) {
            last--;
        }
        start[cells] = first;
        end[cells] = last;
        cells++;
    }

    private static boolean isAround(byte letter) {
        return letter == ' ' || letter == '\r' || letter == '\t' || letter == '"';
    }

    /** The sign that parts most cells of the heading row. */
    private byte delimiter() {
        int[] counts = new int[3];
        for (int i = at; i < bytes.length && bytes[i] != '\n'; i++) {
            counts[0] += bytes[i] == ',' ? 1 : 0;
            counts[1] += bytes[i] == ';' ? 1 : 0;
            counts[2] += bytes[i] == '\t' ? 1 : 0;
        }
        if (counts[1] > counts[0] && counts[1] >= counts[2]) {
            return ';';
        }
        return (byte) (counts[2] > counts[0] ? '\t' : ',');
    }

    private static double[] powers() {
        double[] powers = new double[19];
        powers[0] = 1;
        for (int i = 1; i < powers.length; i++) {
            powers[i] = powers[i - 1] * 10;
        }
        return powers;
    }
}
