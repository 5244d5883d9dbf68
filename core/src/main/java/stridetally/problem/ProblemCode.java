package stridetally.problem;

import static stridetally.problem.Severity.COUNTED;
import static stridetally.problem.Severity.NOTE;
import static stridetally.problem.Severity.SET_ASIDE;

/**
 * The stable names of what can be wrong with one row or one hand-kept record. Scripts may rely on them; a name is never
 * reused for another fact.
 */
public enum ProblemCode {
    STUDENT_MISSING(SET_ASIDE),
    STUDENT_UNKNOWN(SET_ASIDE),
    DATE_MISSING(SET_ASIDE),
    DATE_UNREADABLE(SET_ASIDE),
    DATE_IMPOSSIBLE(SET_ASIDE),
    DATE_AHEAD(SET_ASIDE),
    DATE_SHORT_YEAR(NOTE),
    MEASURE_MISSING(SET_ASIDE),
    MEASURE_UNKNOWN(SET_ASIDE),
    VALUE_MISSING(SET_ASIDE),
    VALUE_UNREADABLE(SET_ASIDE),
    VALUE_IMPOSSIBLE(SET_ASIDE),
    VALUE_UNUSUAL(NOTE),
    VALUE_MARKED(NOTE),
    UNIT_UNKNOWN(SET_ASIDE),
    UNIT_OF_ANOTHER_KIND(SET_ASIDE),
    UNIT_UNCLEAR(SET_ASIDE),
    OF_UNREADABLE(SET_ASIDE),
    OF_TOO_SMALL(SET_ASIDE),
    TRIAL_UNREADABLE(SET_ASIDE),
    HELP_UNKNOWN(SET_ASIDE),
    HELP_BLANK(COUNTED),
    PROMPT_UNKNOWN(SET_ASIDE),
    SIDE_UNKNOWN(SET_ASIDE),
    SIDE_MISSING(NOTE),
    SIDE_NOT_USED(NOTE),
    PROTOCOL_UNREADABLE(SET_ASIDE),
    PROTOCOL_KEY_UNKNOWN(SET_ASIDE),
    USE_UNKNOWN(SET_ASIDE),
    PLACE_UNKNOWN(SET_ASIDE),
    PLACE_BLANK(COUNTED),
    CELLS_TOO_MANY(SET_ASIDE),
    CELLS_TOO_FEW(COUNTED),
    QUOTE_BROKEN(SET_ASIDE),
    ROW_TOO_LONG(SET_ASIDE),
    DUPLICATE(SET_ASIDE),
    CONFLICT(SET_ASIDE),
    FIELD_MISSING(SET_ASIDE),
    FIELD_UNREADABLE(SET_ASIDE),
    GOAL_STUDENT_UNKNOWN(NOTE),
    GOAL_UNCLEAR(NOTE),
    PRECAUTION_UNKNOWN(NOTE),
    COLUMN_UNKNOWN(NOTE),
    SAMPLE_TIME(SET_ASIDE),
    SAMPLE_UNREADABLE(SET_ASIDE),
    STRIDE_DROPPED(NOTE),
    RECORDING_DOUBTFUL(NOTE),
    RECORDING_REFUSED(SET_ASIDE);

    private final Severity severity;

    ProblemCode(Severity severity) {
        this.severity = severity;
    }

    /** Whether a row with this problem is taken or set aside. */
    public Severity severity() {
        return severity;
    }
}
