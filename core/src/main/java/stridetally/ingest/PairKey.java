package stridetally.ingest;

import java.util.Arrays;
import stridetally.table.ByteLongs;

/**
 * The cells that say which series a row belongs to, as one text: the student's first, each behind its length. That of the row
 * before is kept, since the tries of a session have the same. Hot loop. A thread's own.
 */
final class PairKey {
    /** No text: a cell is not plain. */
    static final int ODD = -1;

    private static final TrialColumn[] COLUMNS = {
        TrialColumn.STUDENT,
        TrialColumn.MEASURE,
        TrialColumn.UNIT,
        TrialColumn.SOURCE,
        TrialColumn.SIDE,
        TrialColumn.PROTOCOL,
        TrialColumn.USE,
        TrialColumn.PLACE
    };

    private static final int LONGEST_CELL = 255;
    private static final int ROOM = COLUMNS.length * (LONGEST_CELL + 1) + Long.BYTES;

    private final int[] columns;
    private final int student;
    private byte[] text = new byte[ROOM];
    private byte[] last = new byte[ROOM];
    private boolean known;

    /** Where the cell of each column lies within the text, behind its length. */
    private int[] starts;

    private int[] lastStarts;

    PairKey(BulkForm form) {
        this.student = form.column(TrialColumn.STUDENT);
        this.columns = columns(form);
        // The student's stays first, see taskStart.
        Arrays.sort(columns, 1, columns.length);
        this.starts = new int[columns.length];
        this.lastStarts = new int[columns.length];
    }

    /** The columns that say which series a row belongs to, the student's first. */
    static int[] columns(BulkForm form) {
        return Arrays.stream(COLUMNS)
                .mapToInt(form::column)
                .filter(column -> column >= 0)
                .toArray();
    }

    /**
     * Whether the cells are those of the text that was remembered.
     *
     * @param same first cells that are those of that row
     */
    boolean isLast(ByteRecords records, int same) {
        // The student's first: in a log without order it is another one.
        if (!known || (student >= same && !isLastCell(records, 0))) {
            return false;
        }
        // The columns are in order but for the student's, which comes first.
        for (int which = columns.length - 1; which > 0 && columns[which] >= same; which--) {
            if (!isLastCell(records, which)) {
                return false;
            }
        }
        return true;
    }

    private boolean isLastCell(ByteRecords records, int which) {
        int column = columns[which];
        int start = records.start(column);
        int size = records.end(column) - start;
        int kept = lastStarts[which];
        return (last[kept] & 0xff) == size
                && !records.hasDoubled(column)
                && ByteLongs.same(last, kept + 1, records.bytes(), start, size);
    }

    /** Lays the cells of a row into {@link #text} and says how long it is, or {@link #ODD}. */
    int lay(ByteRecords records) {
        byte[] bytes = records.bytes();
        int length = 0;
        for (int which = 0; which < columns.length; which++) {
            int column = columns[which];
            int start = records.start(column);
            int size = records.end(column) - start;
            if (size > LONGEST_CELL || records.hasDoubled(column)) {
                return ODD;
            }
            starts[which] = length;
            text[length++] = (byte) size;
            copy(bytes, start, size, length);
            length += size;
        }
        return length;
    }

    /** Eight bytes at a time, of which some lie behind the cell and are written over by the next one. */
    private void copy(byte[] bytes, int start, int size, int to) {
        if (start + size + Long.BYTES > bytes.length) {
            System.arraycopy(bytes, start, text, to, size);
            return;
        }
        for (int place = 0; place < size; place += Long.BYTES) {
            ByteLongs.put(text, to + place, ByteLongs.at(bytes, start + place));
        }
    }

    /** The text that was laid last. */
    byte[] text() {
        return text;
    }

    /** Where the cells of the task begin in it: behind the student. */
    int taskStart() {
        return (text[0] & 0xff) + 1;
    }

    /** The text that was laid last is that of the row before now. */
    void remember() {
        byte[] spare = last;
        last = text;
        text = spare;
        int[] spareStarts = lastStarts;
        lastStarts = starts;
        starts = spareStarts;
        known = true;
    }

    /** Nothing is known of the row before. */
    void forget() {
        known = false;
    }
}
