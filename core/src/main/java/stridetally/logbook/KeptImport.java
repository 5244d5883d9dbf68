package stridetally.logbook;

import java.io.Reader;
import java.util.ArrayList;
import java.util.List;
import stridetally.model.Settings;
import stridetally.problem.Checked;
import stridetally.problem.InputRefused;
import stridetally.problem.RowProblem;
import stridetally.problem.Severity;
import stridetally.table.Cells;

/**
 * A table of a hand-kept kind that is to replace the one in the logbook. Rows with a problem are kept as they are, since
 * the file is the person's own and its problems are told whenever it is read; columns we do not know are left behind, and
 * told.
 *
 * @param rows cells in the order of the kind's columns, for {@link LogbookWriter#replaceFile}
 */
public record KeptImport(List<List<String>> rows, List<RowProblem> problems) {
    public KeptImport {
        rows = List.copyOf(rows);
        problems = List.copyOf(problems);
    }

    /** Reads a table; {@code file} is the name for messages. Refuses it when a required column is missing. */
    public static KeptImport read(Reader reader, String file, KeptKind kind, Settings settings) {
        KeptTable table = KeptTable.read(reader, file, kind.columns()).requiring(kind.required());
        refuseWhatWouldBeLost(table);
        List<RowProblem> problems = new ArrayList<>(table.problems());
        List<List<String>> rows = new ArrayList<>();
        for (Cells cells : table.rows()) {
            problems.addAll(check(kind, settings, cells).problems());
            rows.add(kind.columns().stream().map(cells::text).toList());
        }
        return new KeptImport(rows, problems);
    }

    /** The table is replaced whole, so a row that has no place in it would be gone. */
    private static void refuseWhatWouldBeLost(KeptTable table) {
        for (RowProblem problem : table.problems()) {
            if (problem.severity() == Severity.SET_ASIDE) {
                throw new InputRefused(problem.sentence()
                        + "; the table replaces the one in the logbook, so every row of" + " it must be readable");
            }
        }
        if (table.rows().isEmpty()) {
            throw new InputRefused(table.file() + ": a heading row and no rows below it; nothing to read");
        }
    }

    private static Checked<?> check(KeptKind kind, Settings settings, Cells cells) {
        return switch (kind) {
            case STUDENTS -> KeptRows.student(cells);
            case GOALS -> new GoalRows(settings).read(cells);
            case BODIES -> KeptRows.body(cells);
            case BENCHMARKS -> KeptRows.benchmark(cells);
            case ATTAINMENT -> KeptRows.attainment(cells);
            case CHANGES -> KeptRows.change(cells);
            case SERVICES -> KeptRows.service(cells);
            case REMARKS -> KeptRows.remark(cells);
        };
    }
}
