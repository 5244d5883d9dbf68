package stridetally.ingest;

import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import stridetally.problem.Spelling;
import stridetally.table.FormulaGuard;

/**
 * Which cell of a row is which column of one try. A long log has one layout; a form with tries side by side has one for
 * each, with constants for what the headings say (measure, side, number).
 *
 * @param index position of each column that is there, from 0
 * @param headings the headings as written, by position
 * @param unitOfHeading unit named in the value heading, as in {@code Time (s)}; blank when none
 * @param unknown headings that were not taken for any column
 * @param form what holds for every row
 * @param otherTries positions of the other tries of the row, and of what belongs to them alone
 */
public record TrialLayout(
        Map<TrialColumn, Integer> index,
        List<String> headings,
        String unitOfHeading,
        List<String> unknown,
        FormRules form,
        Set<Integer> otherTries) {

    private static final Set<TrialColumn> REQUIRED =
            Set.of(TrialColumn.STUDENT, TrialColumn.DATE, TrialColumn.MEASURE, TrialColumn.VALUE);

    public TrialLayout {
        EnumMap<TrialColumn, Integer> positions = new EnumMap<>(TrialColumn.class);
        positions.putAll(index);
        index = Collections.unmodifiableMap(positions);
        headings = List.copyOf(headings);
        unknown = List.copyOf(unknown);
        otherTries = Set.copyOf(otherTries);
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
            TrialColumn.named(bare(written)).ifPresentOrElse(there::add, () -> unknown.add(written));
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
        return TrialColumn.named(heading).isPresent() ? heading : heading.replaceFirst("\\s*[(\\[].*[)\\]]\\s*$", "");
    }

    /** Whether a heading is one that a trial log knows. */
    public static boolean isKnown(String written) {
        return TrialColumn.named(written.strip()).isPresent();
    }

    /** What a column says in a row, in the words we know; blank when nothing says it. */
    public String text(List<String> cells, TrialColumn column) {
        return form.reads(column, written(cells, column));
    }

    /** The cell of a column as it was written, without a formula guard; blank when the column or the cell is not there. */
    public String written(List<String> cells, TrialColumn column) {
        Integer position = index.get(column);
        return position == null || position >= cells.size()
                ? ""
                : FormulaGuard.unguard(cells.get(position)).strip();
    }

    /** The cells of a row without the other tries of it, for what is kept of this one alone. */
    List<String> alone(List<String> cells) {
        if (otherTries.isEmpty()) {
            return cells;
        }
        List<String> own = new ArrayList<>(cells);
        otherTries.stream().filter(position -> position < own.size()).forEach(position -> own.set(position, ""));
        return own;
    }

    /** This layout with dates that are counts. */
    TrialLayout with(DayCount count) {
        return new TrialLayout(index, headings, unitOfHeading, unknown, form.with(count), otherTries);
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
