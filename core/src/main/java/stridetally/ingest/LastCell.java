package stridetally.ingest;

import stridetally.table.ByteLongs;

/** A plain cell behind the words of a row, such as the observer's, which is often that of the row before. Hot loop. */
final class LastCell {
    private static final int LONGEST = 64;

    private final byte[] text = new byte[LONGEST];

    /** With its delimiter; 0 when none is known. */
    private int size;

    /** Behind the cell that begins at a place and its delimiter; below 0 when it is not plain, or not at hand as a whole. */
    int over(ByteRecords records, int place) {
        byte[] bytes = records.bytes();
        if (size > 0 && place + size <= records.limit() && ByteLongs.same(text, 0, bytes, place, size)) {
            return place + size;
        }
        int end = records.overCell(place);
        if (end > 0 && end - place <= LONGEST) {
            size = end - place;
            System.arraycopy(bytes, place, text, 0, size);
        }
        return end;
    }
}
