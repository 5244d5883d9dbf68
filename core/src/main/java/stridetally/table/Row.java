package stridetally.table;

import java.util.List;

/** The cells of one record and the line, from 1, on which it begins. */
public record Row(long line, List<String> cells) {
    public Row {
        cells = List.copyOf(cells);
    }

    /** Whether no cell holds anything but blanks, as spreadsheets write for an empty row. */
    public boolean blank() {
        for (String cell : cells) {
            if (!cell.isBlank()) {
                return false;
            }
        }
        return true;
    }
}
