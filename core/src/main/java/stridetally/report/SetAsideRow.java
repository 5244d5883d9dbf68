package stridetally.report;

import stridetally.model.StudentCode;
import stridetally.problem.ProblemCode;

/**
 * A row of a student that was not taken, told by its place and code alone: a cell of it might hold a name.
 *
 * @param at entry and line, or sheet cell
 */
public record SetAsideRow(StudentCode student, String at, ProblemCode code) {}
