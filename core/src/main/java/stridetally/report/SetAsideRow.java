package stridetally.report;

import java.util.List;
import stridetally.model.StudentCode;
import stridetally.problem.ProblemCode;

/**
 * A row of a student that was not taken, told by its place and what is wrong with it: a cell of it might hold a name.
 *
 * @param at entry and line, or sheet cell
 * @param codes at least one
 */
public record SetAsideRow(StudentCode student, String at, List<ProblemCode> codes) {

    public SetAsideRow {
        codes = List.copyOf(codes);
    }
}
