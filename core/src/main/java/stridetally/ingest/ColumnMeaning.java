package stridetally.ingest;

import java.util.Map;
import java.util.Optional;

/**
 * What one column of a form holds.
 *
 * @param column what its cells are; empty = the column is not to be read
 * @param sets what the heading says of the tries in it: measure, side, trial, use
 * @param unit the unit that the heading names; blank when none
 * @param why how this is known, for a person
 */
public record ColumnMeaning(Optional<TrialColumn> column, Map<TrialColumn, String> sets, String unit, String why) {
    /** A heading that says nothing we know. */
    static final ColumnMeaning NOT_KNOWN = new ColumnMeaning(Optional.empty(), Map.of(), "", "not known");

    static final ColumnMeaning NO_HEADING = new ColumnMeaning(Optional.empty(), Map.of(), "", "no heading");

    public ColumnMeaning {
        sets = Map.copyOf(sets);
    }

    /** A column by its own name. */
    static ColumnMeaning plain(TrialColumn column, String unit, String why) {
        return new ColumnMeaning(Optional.of(column), Map.of(), unit, why);
    }

    boolean notKnown() {
        return why.equals(NOT_KNOWN.why);
    }

    /** Whether it is one column for the whole row. */
    boolean ofTheRow() {
        return column.isPresent() && sets.isEmpty();
    }

    /** Whether its cells are values of tries that stand side by side. */
    boolean ofTries() {
        return column.equals(Optional.of(TrialColumn.VALUE)) && !sets.isEmpty();
    }

    /** Whether it belongs to some of the tries side by side, such as the help beside each. */
    boolean besideTries() {
        return column.isPresent() && !sets.isEmpty() && !ofTries();
    }

    /** In words: {@code value; measure single-leg-stance, side left}. */
    public String words() {
        if (column.isEmpty()) {
            return "nothing";
        }
        StringBuilder text = new StringBuilder(column.get().heading());
        sets.entrySet().stream()
                .sorted(Map.Entry.comparingByKey())
                .forEach(set -> text.append(text.indexOf(";") < 0 ? "; " : ", ")
                        .append(set.getKey().heading())
                        .append(' ')
                        .append(set.getValue()));
        if (!unit.isEmpty()) {
            text.append(" in ").append(unit);
        }
        return text.toString();
    }
}
