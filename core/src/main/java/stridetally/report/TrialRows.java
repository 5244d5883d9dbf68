package stridetally.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import stridetally.ingest.TrialCells;
import stridetally.ingest.TrialColumn;
import stridetally.scoring.TrialVerdict;
import stridetally.table.Cell;

/**
 * The rows of {@code score --by trial}: the columns of a trial as {@code import} reads them, then what a goal makes of it
 * and where it stands. {@code goal} holds the ids of all goals that take it, joined by spaces.
 */
public final class TrialRows {
    private static final int TRIAL_COLUMNS = TrialColumn.values().length;

    /** The columns, in order. */
    public static final List<String> HEADINGS = Stream.concat(
                    TrialCells.HEADINGS.subList(0, TRIAL_COLUMNS).stream(),
                    Stream.of("goal", "counted", "meets", "why", "entry", "line", "at", "as_written"))
            .toList();

    private TrialRows() {}

    /**
     * The row of a trial.
     *
     * @param cells of its entry, see {@link TrialCells#HEADINGS}
     * @param verdict empty when no goal takes it
     */
    public static List<Cell> row(
            List<String> cells, String goals, Optional<TrialVerdict> verdict, int entry, long line) {
        List<Cell> row = new ArrayList<>();
        for (int column = 0; column < TRIAL_COLUMNS; column++) {
            row.add(Cell.text(cells.get(column)));
        }
        row.add(Cell.text(goals));
        row.add(Cell.code(verdict.map(one -> one.counted() ? "yes" : "no").orElse("")));
        row.add(Cell.code(verdict.map(one -> one.meets().word()).orElse("")));
        row.add(Cell.text(verdict.map(TrialVerdict::why).orElse("no goal takes it")));
        row.add(Cell.whole(entry));
        row.add(Cell.whole(line));
        row.add(Cell.text(cells.get(TRIAL_COLUMNS)));
        row.add(Cell.text(cells.size() > TRIAL_COLUMNS + 1 ? cells.get(TRIAL_COLUMNS + 1) : ""));
        return row;
    }
}
