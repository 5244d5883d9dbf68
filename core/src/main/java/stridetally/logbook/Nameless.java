package stridetally.logbook;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import stridetally.ingest.NamesToCodes;
import stridetally.model.StudentCode;
import stridetally.problem.ProblemCode;

/**
 * Rows that are set aside while names are turned into codes: what stands in the student cell and is no code may be a name
 * that nobody has written down, so it is left out; so is a row that could not be cut into cells. The place is kept, and the
 * source still has the name.
 *
 * @param column of the students, from 0; -1 when there is none
 */
record Nameless(Set<StudentCode> codes, int column) {
    private static final List<String> UNCUT = List.of(ProblemCode.QUOTE_BROKEN.name(), ProblemCode.ROW_TOO_LONG.name());

    Nameless {
        codes = Set.copyOf(codes);
    }

    SetAsideRow row(SetAsideRow row) {
        List<String> cells = new ArrayList<>(row.cells());
        if (List.of(row.codes().split(" ", -1)).stream().anyMatch(UNCUT::contains)) {
            cells.clear();
        } else if (column >= 0
                && column < cells.size()
                && !maySay(cells.get(column).strip())) {
            cells.set(column, "");
        }
        return new SetAsideRow(row.student(), row.at(), row.codes(), row.reasons(), row.mend(), cells);
    }

    /** The cells of a row of a log as they would be set aside; one that could not be cut has a single cell. */
    List<String> cells(List<String> written, int width) {
        List<String> cells = new ArrayList<>(written);
        if (cells.size() == 1 && width > 1) {
            cells.clear();
        } else if (column >= 0
                && column < cells.size()
                && !maySay(cells.get(column).strip())) {
            cells.set(column, "");
        }
        return cells;
    }

    boolean maySay(String student) {
        return student.isEmpty() || student.equals(NamesToCodes.SEVERAL) || codes.contains(new StudentCode(student));
    }
}
