package stridetally.ingest;

import java.util.List;

/**
 * How one file of trials is laid out.
 *
 * @param lastHeadingLine the line of its last heading row; what stands up to there is no data
 * @param headings by position; two heading rows are joined with a space
 * @param headingCells the cells of the last heading row as written, to know it again
 * @param columns what each position was taken for
 * @param tries a layout for each try of a row: one for a long log
 * @param sideBySide whether a blank value cell is only a try that was not made
 * @param notes what the person should know of how it was read
 */
public record TrialForm(
        long lastHeadingLine,
        List<String> headings,
        List<String> headingCells,
        List<ColumnMeaning> columns,
        List<TrialLayout> tries,
        boolean sideBySide,
        List<String> notes) {

    public TrialForm {
        headings = List.copyOf(headings);
        headingCells = List.copyOf(headingCells);
        columns = List.copyOf(columns);
        tries = List.copyOf(tries);
        notes = List.copyOf(notes);
    }

    /** The layout of the first try, for what holds for the whole row. */
    public TrialLayout first() {
        return tries.get(0);
    }

    /** The same form with dates that are counts, and a note on it. */
    TrialForm with(DayCount count, String note) {
        List<String> more = new java.util.ArrayList<>(notes);
        more.add(note);
        return new TrialForm(
                lastHeadingLine,
                headings,
                headingCells,
                columns,
                tries.stream().map(layout -> layout.with(count)).toList(),
                sideBySide,
                more);
    }

    /** The same form with one more note. */
    TrialForm noting(String note) {
        List<String> more = new java.util.ArrayList<>(notes);
        more.add(note);
        return new TrialForm(lastHeadingLine, headings, headingCells, columns, tries, sideBySide, more);
    }
}
