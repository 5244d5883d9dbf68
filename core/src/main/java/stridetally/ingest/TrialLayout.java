package stridetally.ingest;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import stridetally.problem.InputRefused;
import stridetally.problem.Spelling;
import stridetally.table.FormulaGuard;

/**
 * Which cell of a row is which column of a trial log.
 *
 * @param index position of each column that is there, from 0
 * @param headings the headings as written, by position
 * @param unitOfHeading unit named in the value heading, as in {@code Time (s)}; blank when none
 * @param unknown headings that were not taken for any column
 */
public record TrialLayout(
        Map<TrialColumn, Integer> index, List<String> headings, String unitOfHeading, List<String> unknown) {

    private static final Set<TrialColumn> REQUIRED =
            Set.of(TrialColumn.STUDENT, TrialColumn.DATE, TrialColumn.MEASURE, TrialColumn.VALUE);

    /** Columns of our own output that an import looks past. */
    private static final Set<String> OUR_EXTRAS =
            Set.of("goal", "counted", "meets", "why", "entry", "line", "at", "as written");

    public TrialLayout {
        index = Map.copyOf(index);
        headings = List.copyOf(headings);
        unknown = List.copyOf(unknown);
    }

    /** Reads a header row. Refuses a file in which a required column is missing or named twice. */
    public static TrialLayout of(List<String> header, String file) {
        Map<TrialColumn, Integer> index = new EnumMap<>(TrialColumn.class);
        List<String> unknown = new ArrayList<>();
        String unit = "";
        for (int position = 0; position < header.size(); position++) {
            String written = header.get(position).strip();
            Optional<TrialColumn> column = columnOf(written);
            if (column.isEmpty()) {
                String bare = written.replaceFirst("\\s*[(\\[].*[)\\]]\\s*$", "");
                column = columnOf(bare);
                if (column.isPresent() && column.get() == TrialColumn.VALUE) {
                    unit = written.substring(bare.length())
                            .replaceAll("[()\\[\\]]", "")
                            .strip();
                }
            }
            if (column.isEmpty()) {
                if (!written.isEmpty() && !OUR_EXTRAS.contains(TrialColumn.fold(written))) {
                    unknown.add(written);
                }
                continue;
            }
            Integer before = index.put(column.get(), position);
            if (before != null) {
                throw new InputRefused(file + ":1: columns " + (before + 1) + " and " + (position + 1)
                        + " are both taken for \"" + column.get().heading()
                        + "\"; rename one of them and import again");
            }
        }
        String lacks = lacks(header);
        if (!lacks.isEmpty()) {
            throw new InputRefused(
                    file + ":1: " + lacks + ". Add the heading row, or rename the columns, and try again");
        }
        return new TrialLayout(index, header, unit, unknown);
    }

    /** Whether these headings name all that a trial log needs. */
    public static boolean fits(List<String> header) {
        return lacks(header).isEmpty();
    }

    /** What these headings lack to be those of a trial log, what was expected and what was found; blank when nothing. */
    public static String lacks(List<String> header) {
        Set<TrialColumn> there = EnumSet.noneOf(TrialColumn.class);
        List<String> unknown = new ArrayList<>();
        for (String written : header) {
            columnOf(bare(written)).ifPresentOrElse(there::add, () -> unknown.add(written));
        }
        List<String> missing = new ArrayList<>();
        for (TrialColumn column : TrialColumn.values()) {
            if (REQUIRED.contains(column) && !there.contains(column)) {
                String near = Spelling.nearest(column.heading(), unknown)
                        .map(heading -> " (did you mean the column \"" + heading + "\"?)")
                        .orElse("");
                missing.add(column.heading() + near);
            }
        }
        String found = there.isEmpty() && header.size() <= 1
                ? "one column only; is it separated by something other than a comma, semicolon, tab or |?"
                : header.size() + " columns";
        return missing.isEmpty()
                ? ""
                : "no heading for " + String.join(", ", missing)
                        + "; expected the first row to name student, date, measure and value; found " + found;
    }

    /** A heading without a unit in brackets behind it. */
    private static String bare(String written) {
        String heading = written.strip();
        return columnOf(heading).isPresent() ? heading : heading.replaceFirst("\\s*[(\\[].*[)\\]]\\s*$", "");
    }

    /** Whether a heading is one that a trial log knows. */
    public static boolean isKnown(String written) {
        return columnOf(written.strip()).isPresent();
    }

    private static Optional<TrialColumn> columnOf(String written) {
        return TrialColumn.of(written);
    }

    /** The text of a column in a row, without a formula guard; blank when the column or the cell is not there. */
    public String text(List<String> cells, TrialColumn column) {
        Integer position = index.get(column);
        return position == null || position >= cells.size()
                ? ""
                : FormulaGuard.unguard(cells.get(position)).strip();
    }

    /** Position of a column, from 1; 0 when it is not there. */
    public int column(TrialColumn column) {
        Integer position = index.get(column);
        return position == null ? 0 : position + 1;
    }

    /** The heading of a column as it was written; the canonical one when it is not there. */
    public String heading(TrialColumn column) {
        Integer position = index.get(column);
        return position == null ? column.heading() : headings.get(position);
    }
}
