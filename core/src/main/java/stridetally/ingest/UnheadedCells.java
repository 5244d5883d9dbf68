package stridetally.ingest;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import stridetally.problem.At;

/** Cells that stand under no heading: they are not read, and told. */
final class UnheadedCells {
    private final String file;
    private final int[] positions;
    private final long[] found;
    private final long[] firstLine;

    UnheadedCells(String file, List<String> headings) {
        this.file = file;
        int[] without = new int[headings.size()];
        int count = 0;
        for (int position = 0; position < headings.size(); position++) {
            if (headings.get(position).isEmpty()) {
                without[count++] = position;
            }
        }
        this.positions = Arrays.copyOf(without, count);
        this.found = new long[positions.length];
        this.firstLine = new long[positions.length];
    }

    void look(List<String> cells, long line) {
        for (int which = 0; which < positions.length; which++) {
            if (positions[which] < cells.size() && !cells.get(positions[which]).isBlank()) {
                firstLine[which] = found[which] == 0 ? line : firstLine[which];
                found[which]++;
            }
        }
    }

    List<String> notes() {
        List<String> notes = new ArrayList<>();
        for (int which = 0; which < positions.length; which++) {
            if (found[which] > 0) {
                String first = new At(file, firstLine[which], positions[which] + 1, "").text();
                notes.add("column " + (positions[which] + 1) + " has no heading; its " + found[which]
                        + (found[which] == 1 ? " cell was" : " cells were") + " not read, the first at " + first);
            }
        }
        return notes;
    }
}
