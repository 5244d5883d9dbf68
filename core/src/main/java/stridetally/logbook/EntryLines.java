package stridetally.logbook;

import java.util.Arrays;
import java.util.List;

/**
 * Where the rows of one file come to stand in the entry that is made of it: an entry begins with its headings, and a row
 * with line breaks inside a cell takes several lines.
 */
final class EntryLines {
    private long[] inEntry = new long[256];
    private long[] inFile = new long[256];
    private int rows;
    private long next = 2;

    /** The line on which the next row will stand. */
    long next() {
        return next;
    }

    /** The row that stood on a line of the file stands in the entry. */
    void add(long fileLine, List<String> cells) {
        if (rows == inEntry.length) {
            inEntry = Arrays.copyOf(inEntry, rows * 2);
            inFile = Arrays.copyOf(inFile, rows * 2);
        }
        inEntry[rows] = next;
        inFile[rows] = fileLine;
        rows++;
        next += 1 + cells.stream().mapToLong(EntryLines::breaks).sum();
    }

    /** The line of the file that came to stand on a line of the entry. */
    long fileLine(long entryLine) {
        return inFile[Arrays.binarySearch(inEntry, 0, rows, entryLine)];
    }

    /** CRLF is one line break, as LF and CR are. */
    private static long breaks(String cell) {
        long breaks = 0;
        for (int place = 0; place < cell.length(); place++) {
            boolean lineFeed = cell.charAt(place) == '\n';
            boolean afterReturn = place > 0 && cell.charAt(place - 1) == '\r';
            if (cell.charAt(place) == '\r' || (lineFeed && !afterReturn)) {
                breaks++;
            }
        }
        return breaks;
    }
}
