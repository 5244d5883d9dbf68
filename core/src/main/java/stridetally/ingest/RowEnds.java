package stridetally.ingest;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import stridetally.problem.InputRefused;
import stridetally.table.Row;

/**
 * Rows of a form that are no tries: totals below a table, and its headings once more. A second table behind a blank row
 * is refused, because its columns may be others. Words are common practice, no source; the Spanish ones our translation.
 */
final class RowEnds {
    private static final Set<String> TOTALS = Set.of(
            "total",
            "totals",
            "grand total",
            "sum",
            "mean",
            "average",
            "avg",
            "ave",
            "median",
            "promedio",
            "media",
            "suma",
            "totales");

    private final String file;
    private final TrialForm form;
    private final List<Long> totals = new ArrayList<>();
    private final List<Long> headingsAgain = new ArrayList<>();
    private boolean afterBlank;

    RowEnds(String file, TrialForm form) {
        this.file = file;
        this.form = form;
    }

    void blank() {
        afterBlank = true;
    }

    /** Whether a row is no try; counted and remembered when it is none. */
    boolean isNoTry(Row row) {
        String date = form.first().written(row.cells(), TrialColumn.DATE);
        if (!date.isEmpty() && Character.isDigit(date.charAt(0))) {
            afterBlank = false;
            return false;
        }
        if (isHeadingAgain(row)) {
            headingsAgain.add(row.line());
            afterBlank = false;
            return true;
        }
        if (afterBlank && isHeading(row)) {
            throw new InputRefused(
                    file + ":" + row.line() + ": a second table begins here, behind a blank row; save each"
                            + " table as a file or sheet of its own and import them one after another");
        }
        afterBlank = false;
        if (isTotal(row, date)) {
            totals.add(row.line());
            return true;
        }
        return false;
    }

    /** Whether the headings of the form stand there once more. */
    boolean isHeadingAgain(Row row) {
        return same(row.cells(), form.headingCells());
    }

    /** Takes over what was found in the next part of the file, which begins so many lines further down. */
    void add(RowEnds next, long lines) {
        next.totals.forEach(line -> totals.add(line + lines));
        next.headingsAgain.forEach(line -> headingsAgain.add(line + lines));
    }

    /** How many rows were no tries. */
    long count() {
        return (long) totals.size() + headingsAgain.size();
    }

    /** What is told of them. */
    List<String> notes() {
        List<String> notes = new ArrayList<>();
        if (!totals.isEmpty()) {
            notes.add("rows of totals or means are no tries and are counted as blank: line " + lines(totals));
        }
        if (!headingsAgain.isEmpty()) {
            notes.add("the headings stand there again and are counted as blank: line " + lines(headingsAgain));
        }
        return notes;
    }

    /** A totals word where a key would stand, and no day. */
    private boolean isTotal(Row row, String date) {
        TrialLayout layout = form.first();
        boolean dateColumn = layout.column(TrialColumn.DATE) > 0;
        Optional<String> first =
                row.cells().stream().filter(cell -> !cell.isBlank()).findFirst();
        boolean word = isWord(layout.written(row.cells(), TrialColumn.STUDENT))
                || isWord(date)
                || first.filter(RowEnds::isWord).isPresent();
        return word && (!dateColumn || date.isEmpty() || isWord(date));
    }

    private static boolean isWord(String cell) {
        return TOTALS.contains(TrialColumn.fold(cell));
    }

    static boolean isHeading(Row row) {
        Set<TrialColumn> named = EnumSet.noneOf(TrialColumn.class);
        row.cells().forEach(cell -> TrialColumn.named(cell).ifPresent(named::add));
        return named.size() > 1 && (named.contains(TrialColumn.STUDENT) || named.contains(TrialColumn.DATE));
    }

    private static boolean same(List<String> cells, List<String> headings) {
        for (int column = 0; column < Math.max(cells.size(), headings.size()); column++) {
            if (!cell(cells, column).equals(cell(headings, column))) {
                return false;
            }
        }
        return true;
    }

    private static String cell(List<String> cells, int column) {
        return column < cells.size() ? TrialColumn.fold(cells.get(column)) : "";
    }

    private static String lines(List<Long> lines) {
        List<String> shown = lines.stream().limit(10).map(Object::toString).toList();
        return String.join(", ", shown)
                + (lines.size() > shown.size() ? ", and " + (lines.size() - shown.size()) + " more" : "");
    }
}
