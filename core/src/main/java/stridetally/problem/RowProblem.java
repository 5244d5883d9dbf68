package stridetally.problem;

/**
 * One thing that is wrong with one row: where, what was found, what was expected, what to do.
 *
 * @param found the offending cell as written, never the whole row; blank when the cell may hold a name or free text
 * @param expected what would have been taken
 * @param mend what the person can do about it
 */
public record RowProblem(ProblemCode code, At at, String found, String expected, String mend) {

    /** Whether the row is taken or set aside. */
    public Severity severity() {
        return code.severity();
    }

    /** One line for a person: place, code, found, expected, what to do. */
    public String sentence() {
        StringBuilder text = new StringBuilder(at.text()).append(": ").append(code);
        if (!at.heading().isBlank()) {
            text.append(" (").append(at.heading()).append(')');
        }
        if (!found.isBlank()) {
            text.append(": found \"").append(found).append('"');
        }
        if (!expected.isBlank()) {
            text.append("; expected ").append(expected);
        }
        if (!mend.isBlank()) {
            text.append("; ").append(mend);
        }
        return text.toString();
    }
}
