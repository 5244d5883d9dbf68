package stridetally.ingest;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * How one file of trials is laid out.
 *
 * @param lastHeadingLine the line of its last heading row; what stands up to there is no data
 * @param headings by position; two heading rows are joined with a space
 * @param headingCells the cells of the last heading row as written, to know it again
 * @param columns what each position was taken for
 * @param tries a layout for each try of a row: one for a long log
 * @param sideBySide whether a blank value cell is only a try that was not made
 * @param said what the lines above the headings say for the whole form
 * @param notes what the person should know of how it was read
 */
public record TrialForm(
        long lastHeadingLine,
        List<String> headings,
        List<String> headingCells,
        List<ColumnMeaning> columns,
        List<TrialLayout> tries,
        boolean sideBySide,
        Map<TrialColumn, String> said,
        List<String> notes) {

    public TrialForm {
        headings = List.copyOf(headings);
        headingCells = List.copyOf(headingCells);
        columns = List.copyOf(columns);
        tries = List.copyOf(tries);
        said = Collections.unmodifiableMap(new TreeMap<>(said));
        notes = List.copyOf(notes);
    }

    /** The layout of the first try, for what holds for the whole row. */
    public TrialLayout first() {
        return tries.get(0);
    }

    /**
     * The headings under which a row of this form is kept by itself: its own, then those of what was said for the whole
     * form above them.
     *
     * @return {@link #headings} and the names of {@code said}
     */
    public List<String> keptHeadings() {
        List<String> kept = new ArrayList<>(headings);
        said.keySet().forEach(column -> kept.add(column.heading()));
        return kept;
    }

    /** Where a column stands among {@link #keptHeadings}, from 0; -1 when nothing says it. */
    public int keptColumn(TrialColumn column) {
        int said = List.copyOf(this.said.keySet()).indexOf(column);
        return said >= 0 ? headings.size() + said : first().column(column) - 1;
    }

    /** The cells of a row under {@link #keptHeadings}. */
    List<String> keptCells(List<String> cells) {
        if (said.isEmpty()) {
            return cells;
        }
        List<String> kept = new ArrayList<>(cells.subList(0, Math.min(cells.size(), headings.size())));
        while (kept.size() < headings.size()) {
            kept.add("");
        }
        kept.addAll(said.values());
        kept.addAll(cells.subList(Math.min(cells.size(), headings.size()), cells.size()));
        return kept;
    }

    /** The same form with dates that are counts, and a note on it. */
    TrialForm with(DayCount count, String note) {
        List<String> more = new ArrayList<>(notes);
        more.add(note);
        return new TrialForm(
                lastHeadingLine,
                headings,
                headingCells,
                columns,
                tries.stream().map(layout -> layout.with(count)).toList(),
                sideBySide,
                said,
                more);
    }

    /** The same form with one more note. */
    TrialForm noting(String note) {
        List<String> more = new ArrayList<>(notes);
        more.add(note);
        return new TrialForm(lastHeadingLine, headings, headingCells, columns, tries, sideBySide, said, more);
    }
}
