package stridetally.report;

import java.time.LocalDate;
import stridetally.table.Cell;

/** The days of a long log as bytes, each made once. Not for several threads. */
final class BulkDays {
    /** So many days more than asked for get a place. */
    private static final int AROUND = 366;

    private final String behind;
    private int first;
    private byte[][] texts = new byte[0][];

    /** With what stands behind each of them. */
    BulkDays(String behind) {
        this.behind = behind;
    }

    /** A day, in days since 1970-01-01. */
    byte[] of(int day) {
        if (day < first || day >= first + texts.length) {
            widen(day);
        }
        byte[] text = texts[day - first];
        if (text == null) {
            text = BulkCells.bytes(Cell.date(LocalDate.ofEpochDay(day)).plain() + behind);
            texts[day - first] = text;
        }
        return text;
    }

    private void widen(int day) {
        int low = texts.length == 0 ? day - AROUND : Math.min(first, day - AROUND);
        int high = texts.length == 0 ? day + AROUND : Math.max(first + texts.length, day + AROUND);
        byte[][] wider = new byte[high - low][];
        System.arraycopy(texts, 0, wider, texts.length == 0 ? 0 : first - low, texts.length);
        texts = wider;
        first = low;
    }
}
