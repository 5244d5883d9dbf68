package stridetally.report;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.TreeSet;
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
            return levels.stream()
                    .filter(one -> one.level().equals(level))
                    .mapToInt(HelpCounts.AtLevel::tries)
                    .sum();
        }
    }

    /** By level of help. */
    static HelpTable ofHelp(GoalEvidence.HelpByUse help) {
        return of(columns(help).stream()
                .map(one -> new Column(one.help(), one.helpNotWritten()))
                .toList());
    }

    /** By prompt. */
    static HelpTable ofPrompts(GoalEvidence.HelpByUse help) {
        return of(columns(help).stream()
                .map(one -> new Column(one.prompt(), one.promptNotWritten()))
                .toList());
    }

    private static List<HelpCounts> columns(GoalEvidence.HelpByUse help) {
        return List.of(help.probeNow(), help.practiceNow(), help.probeBefore(), help.practiceBefore());
    }

    private static HelpTable of(List<Column> columns) {
        TreeSet<Level> levels = new TreeSet<>(Comparator.comparingInt(Level::rank));
        columns.forEach(column -> column.levels().forEach(one -> levels.add(one.level())));
        List<Row> rows = new ArrayList<>();
        for (Level level : levels) {
            rows.add(
                    row(level.word(), columns.stream().map(one -> one.at(level)).toList()));
        }
        List<Integer> notWritten = columns.stream().map(Column::notWritten).toList();
        if (notWritten.stream().anyMatch(count -> count > 0)) {
            rows.add(row("not written", notWritten));
        }
        return new HelpTable(rows);
    }

    private static Row row(String word, List<Integer> counts) {
        return new Row(word, counts.get(0), counts.get(1), counts.get(2), counts.get(3));
    }
}
