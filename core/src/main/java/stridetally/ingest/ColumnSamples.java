package stridetally.ingest;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.TreeMap;
import stridetally.measures.Measure;
import stridetally.model.Trial;

/**
 * The first three values of each column of a form, as written and as taken, for a person who looks at how a form is read.
 * Cells that may hold a name or free text are never shown.
 */
public final class ColumnSamples {
    private static final int SHOWN = 3;
    private static final int LOOKED_AT = 200;
    private static final Set<TrialColumn> NOT_SHOWN =
            EnumSet.of(TrialColumn.STUDENT, TrialColumn.OBSERVER, TrialColumn.NOTE, TrialColumn.ACTIVITY);

    private final TreeMap<Integer, List<String>> shown = new TreeMap<>();
    private int looked;

    /** One taken try. */
    public void look(Trial trial, Measure measure, LogRow row) {
        if (looked >= LOOKED_AT) {
            return;
        }
        looked++;
        List<String> after = TrialCells.of(trial, measure);
        row.layout().index().forEach((column, position) -> {
            String before = row.layout().written(row.cells(), column);
            List<String> samples = shown.computeIfAbsent(position, any -> new ArrayList<>());
            if (samples.size() < SHOWN && !before.isEmpty() && !NOT_SHOWN.contains(column)) {
                String unit = column == TrialColumn.VALUE ? " " + after.get(TrialColumn.UNIT.position()) : "";
                samples.add("\"" + before + "\" -> " + (after.get(column.position()) + unit).strip());
            }
        });
    }

    /** What is shown of a column, by position from 0. */
    public List<String> of(int position) {
        return List.copyOf(shown.getOrDefault(position, List.of()));
    }
}
