package stridetally.logbook;

import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import stridetally.problem.RowProblem;
import stridetally.problem.Severity;

/**
 * A row that was not taken, kept with its reason.
 *
 * @param student the code as far as it could be read; blank when it could not
 * @param at where it stood in what was imported: line, or sheet cell
 * @param codes the problem codes, separated by blanks
 * @param reasons what was found and what was expected
 * @param mend what would mend it
 * @param cells the original cells
 */
public record SetAsideRow(String student, String at, String codes, String reasons, String mend, List<String> cells) {
    public SetAsideRow {
        cells = List.copyOf(cells);
    }

    /** Out of the problems that set the row aside; notes are left out. */
    public static SetAsideRow of(String student, String at, List<RowProblem> problems, List<String> cells) {
        List<RowProblem> grave = problems.stream()
                .filter(one -> one.severity() == Severity.SET_ASIDE)
                .toList();
        Set<String> codes = grave.stream().map(one -> one.code().name()).collect(Collectors.toCollection(TreeSet::new));
        return new SetAsideRow(
                student,
                at,
                String.join(" ", codes),
                grave.stream().map(SetAsideRow::reason).distinct().collect(Collectors.joining("; ")),
                grave.stream()
                        .map(RowProblem::mend)
                        .filter(one -> !one.isBlank())
                        .distinct()
                        .collect(Collectors.joining("; ")),
                cells);
    }

    private static String reason(RowProblem problem) {
        String column = problem.at().heading().isBlank() ? "" : problem.at().heading() + ": ";
        String found = problem.found().isBlank() ? "" : "found \"" + problem.found() + "\"";
        String expected = problem.expected().isBlank() ? "" : "expected " + problem.expected();
        return column + found + (found.isEmpty() || expected.isEmpty() ? "" : ", ") + expected;
    }
}
