package stridetally.cli.output;

import java.util.ArrayList;
import java.util.List;
import stridetally.logbook.ReportLine;
import stridetally.report.GoalPart;
import stridetally.report.ReportInput;
import stridetally.report.ReportsCsvRow;
import stridetally.report.TeamReport;
import stridetally.table.Cell;

/** What documents told, for {@code reports.csv}. */
public final class ToldLines {
    private ToldLines() {}

    /** A line a goal. */
    public static List<ReportLine> of(List<TeamReport> documents, ReportInput input) {
        List<ReportLine> lines = new ArrayList<>();
        for (TeamReport document : documents) {
            for (GoalPart part : document.goals()) {
                List<String> cells =
                        ReportsCsvRow.row(
                                        part,
                                        document.head().period(),
                                        input.review().asOf(),
                                        input.stamp().lastEntry())
                                .stream()
                                .map(Cell::plain)
                                .toList();
                lines.add(new ReportLine(
                        part.goal().id(),
                        cells.get(1),
                        input.review().asOf(),
                        cells.get(3),
                        cells.get(4),
                        input.stamp().lastEntry()));
            }
        }
        return lines;
    }
}
