package stridetally.ingest;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import stridetally.table.Row;

/**
 * One or two rows as headings. A title in the upper row stands over the columns to its right up to the next title, and
 * two names are joined with a space; over a lower heading that says all by itself, a title from further left says nothing.
 */
record HeadingRows(long lastLine, List<String> headings, List<String> lastCells) {

    static HeadingRows one(Row row) {
        List<String> headings = new ArrayList<>();
        for (String cell : row.cells()) {
            headings.add(cell.strip());
        }
        return new HeadingRows(row.line(), headings, row.cells());
    }

    static HeadingRows two(Row upper, Row lower, HeadingReader reader) {
        int width = Math.max(upper.cells().size(), lower.cells().size());
        List<String> lowers = new ArrayList<>();
        for (int column = 0; column < width; column++) {
            lowers.add(cell(lower, column));
        }
        List<String> joined = new ArrayList<>();
        String title = "";
        for (int column = 0; column < width; column++) {
            String above = cell(upper, column);
            String below = lowers.get(column);
            title = above.isEmpty() ? title : above;
            boolean once = Collections.frequency(lowers, below) == 1;
            boolean saysAll = once && (TrialColumn.named(below).isPresent() || namesMeasure(below, reader));
            if (above.isEmpty() && (below.isEmpty() || saysAll)) {
                joined.add(below);
            } else {
                joined.add((title + " " + below).strip());
            }
        }
        return new HeadingRows(lower.line(), joined, lower.cells());
    }

    /** Whether a row can only be the lower of two heading rows: it qualifies, and names no student and no day. */
    static boolean qualifies(Row upper, Row lower, HeadingReader reader) {
        int qualifying = 0;
        for (int column = 0; column < lower.cells().size(); column++) {
            String below = cell(lower, column);
            if (below.isEmpty()) {
                continue;
            }
            Optional<TrialColumn> above = TrialColumn.named(cell(upper, column));
            boolean key = above.equals(Optional.of(TrialColumn.STUDENT)) || above.equals(Optional.of(TrialColumn.DATE));
            if (key || !says(below, reader)) {
                return false;
            }
            qualifying++;
        }
        return qualifying > 1;
    }

    private static boolean says(String heading, HeadingReader reader) {
        return HeadingReader.isNumber(heading)
                || HeadingReader.isUnit(heading)
                || reader.read(heading).isPresent();
    }

    private static boolean namesMeasure(String heading, HeadingReader reader) {
        return reader.read(heading)
                .map(meaning -> meaning.sets().containsKey(TrialColumn.MEASURE))
                .orElse(false);
    }

    private static String cell(Row row, int column) {
        return column < row.cells().size() ? row.cells().get(column).strip() : "";
    }
}
