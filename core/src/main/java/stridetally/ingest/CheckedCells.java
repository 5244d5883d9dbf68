package stridetally.ingest;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import stridetally.problem.At;
import stridetally.problem.ProblemCode;
import stridetally.problem.RowProblem;
import stridetally.problem.Severity;

/** The cells of one row while they are looked at, and what was found wrong with them so far. */
final class CheckedCells {
    /** A longer cell is not repeated in a message: it may be free text that slid into the wrong column. Ours. */
    private static final int LONGEST_SHOWN = 24;

    private static final int COLUMNS = TrialColumn.values().length;

    private final TrialLayout layout;
    private final String file;
    private final List<String> cells;
    private final long line;
    private final List<RowProblem> problems = new ArrayList<>();

    /** By the position of a column; null where it was not asked for yet. */
    private final @Nullable String[] asked = new String[COLUMNS];

    CheckedCells(TrialLayout layout, String file, List<String> cells, long line) {
        this.layout = layout;
        this.file = file;
        this.cells = cells;
        this.line = line;
    }

    List<RowProblem> problems() {
        return problems;
    }

    TrialLayout layout() {
        return layout;
    }

    String text(TrialColumn column) {
        int position = column.position();
        String known = asked[position];
        if (known == null) {
            known = layout.text(cells, column);
            asked[position] = known;
        }
        return known;
    }

    /** The cell itself, before a mapping reads it. */
    String written(TrialColumn column) {
        return layout.written(cells, column);
    }

    boolean setAside() {
        for (RowProblem problem : problems) {
            if (problem.severity() == Severity.SET_ASIDE) {
                return true;
            }
        }
        return false;
    }

    At at(TrialColumn column) {
        return new At(file, line, layout.column(column), layout.heading(column));
    }

    void tell(TrialColumn column, ProblemCode code, String found, String expected, String mend) {
        boolean shown = found.length() <= LONGEST_SHOWN && found.indexOf('\n') < 0 && found.indexOf('\r') < 0;
        problems.add(new RowProblem(code, at(column), shown ? found : "", expected, mend));
    }

    void countCells() {
        int headings = layout.headings().size();
        if (cells.size() > headings
                && cells.subList(headings, cells.size()).stream().anyMatch(cell -> !cell.isBlank())) {
            problems.add(new RowProblem(
                    ProblemCode.CELLS_TOO_MANY,
                    At.row(file, line),
                    cells.size() + " cells",
                    headings + " cells, as the heading row has",
                    "put cells that hold the separator in double quotes"));
        } else if (cells.size() < headings) {
            problems.add(new RowProblem(
                    ProblemCode.CELLS_TOO_FEW,
                    At.row(file, line),
                    cells.size() + " cells",
                    headings + " cells",
                    "the missing cells at the end are read as blank"));
        }
    }
}
