package stridetally.report;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import stridetally.model.Level;
import stridetally.scoring.HelpCounts;

/**
 * Tries at each level of a scale, least first: probe beside practice, this period beside the one before. Counts of words,
 * never averaged.
 *
 * @param rows only levels that occur; the last one is of tries whose level was not written, if any
 */
public record HelpTable(List<Row> rows) {

    public HelpTable {
        rows = List.copyOf(rows);
    }

    /** One level. */
    public record Row(String word, int probeNow, int practiceNow, int probeBefore, int practiceBefore) {}

    private record Column(List<HelpCounts.AtLevel> levels, int notWritten) {
        int at(Level level) {
            int tries = 0;
            for (HelpCounts.AtLevel one : levels) {
                tries += one.level().equals(level) ? one.tries() : 0;
            }
            return tries;
        }
    }

    /** By level of help. */
    static HelpTable ofHelp(GoalEvidence.HelpByUse help) {
        List<Column> columns = new ArrayList<>();
        for (HelpCounts one : columns(help)) {
            columns.add(new Column(one.help(), one.helpNotWritten()));
        }
        return of(columns);
    }

    /** By prompt. */
    static HelpTable ofPrompts(GoalEvidence.HelpByUse help) {
        List<Column> columns = new ArrayList<>();
        for (HelpCounts one : columns(help)) {
            columns.add(new Column(one.prompt(), one.promptNotWritten()));
        }
        return of(columns);
    }

    private static List<HelpCounts> columns(GoalEvidence.HelpByUse help) {
        return List.of(help.probeNow(), help.practiceNow(), help.probeBefore(), help.practiceBefore());
    }

    private static HelpTable of(List<Column> columns) {
        Map<Integer, Level> levels = new TreeMap<>();
        List<Integer> notWritten = new ArrayList<>();
        for (Column column : columns) {
            notWritten.add(column.notWritten());
            for (HelpCounts.AtLevel one : column.levels()) {
                levels.putIfAbsent(one.level().rank(), one.level());
            }
        }
        List<Row> rows = new ArrayList<>();
        for (Level level : levels.values()) {
            List<Integer> tries = new ArrayList<>();
            for (Column column : columns) {
                tries.add(column.at(level));
            }
            rows.add(row(level.word(), tries));
        }
        if (Collections.max(notWritten) > 0) {
            rows.add(row("not written", notWritten));
        }
        return new HelpTable(rows);
    }

    /** All rows together. */
    Row all() {
        int[] sums = new int[4];
        for (Row row : rows) {
            sums[0] += row.probeNow;
            sums[1] += row.practiceNow;
            sums[2] += row.probeBefore;
            sums[3] += row.practiceBefore;
        }
        return new Row("all", sums[0], sums[1], sums[2], sums[3]);
    }

    private static Row row(String word, List<Integer> counts) {
        return new Row(word, counts.get(0), counts.get(1), counts.get(2), counts.get(3));
    }
}
