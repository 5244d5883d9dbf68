package stridetally.cli.output;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import stridetally.cli.input.ScoredLogbook;
import stridetally.cli.input.TriesBehind;
import stridetally.logbook.ReportLine;
import stridetally.model.Goal;
import stridetally.model.GoalId;
import stridetally.report.GoalPart;
import stridetally.report.GoalPast;
import stridetally.report.ReportInput;
import stridetally.report.ReportsCsvRow;
import stridetally.report.TeamReport;
import stridetally.table.Cell;

/** What documents told, for {@code reports.csv}. */
public final class ToldLines {
    private ToldLines() {}

    /** The documents with what was told of their goals before, and with every try when asked. */
    public static List<TeamReport> withPast(
            List<TeamReport> documents, ReportInput input, ScoredLogbook book, TriesBehind.Detail detail) {
        List<ReportLine> lines = book.open().book().reports();
        Map<GoalId, ReportLine> told = new HashMap<>();
        for (ReportLine own : of(documents, input)) {
            Optional<ReportLine> before = GoalPast.before(lines, own);
            if (before.isPresent()) {
                told.put(own.goal(), before.get());
            }
        }
        List<Goal> goals = new ArrayList<>();
        for (TeamReport document : documents) {
            for (GoalPart part : document.goals()) {
                goals.add(part.goal());
            }
        }
        Map<GoalId, GoalPast> past = TriesBehind.of(book, goals, told, detail);
        List<TeamReport> withPast = new ArrayList<>();
        for (TeamReport document : documents) {
            withPast.add(document.with(past));
        }
        return withPast;
    }

    /** A line a goal. */
    public static List<ReportLine> of(List<TeamReport> documents, ReportInput input) {
        List<ReportLine> lines = new ArrayList<>();
        for (TeamReport document : documents) {
            for (GoalPart part : document.goals()) {
                List<Cell> cells = ReportsCsvRow.row(
                        part,
                        document.head().period(),
                        input.review().asOf(),
                        input.stamp().lastEntry());
                lines.add(new ReportLine(
                        part.goal().id(),
                        cells.get(1).plain(),
                        input.review().asOf(),
                        cells.get(3).plain(),
                        cells.get(4).plain(),
                        input.stamp().lastEntry()));
            }
        }
        return lines;
    }
}
