package stridetally.logbook;

import java.time.DateTimeException;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import stridetally.model.GoalId;
import stridetally.problem.InputRefused;
import stridetally.table.Cell;
import stridetally.table.Cells;
import stridetally.table.CsvTable;
import stridetally.units.IsoDay;

/** {@code reports.csv}: kept by the tool, never edited. */
final class ReportsFile {
    /** Its columns. */
    static final List<String> COLUMNS = List.of("goal", "period", "as_of", "value", "judgement", "last_entry");

    private ReportsFile() {}

    static List<ReportLine> read(LogbookFolder folder) {
        List<ReportLine> lines = new ArrayList<>();
        KeptTable table = KeptTable.read(folder.root().resolve(LogbookFolder.REPORTS), LogbookFolder.REPORTS, COLUMNS);
        for (Cells cells : table.rows()) {
            try {
                lines.add(new ReportLine(
                        new GoalId(cells.text("goal")),
                        cells.text("period"),
                        IsoDay.of(cells.text("as_of")),
                        cells.text("value"),
                        cells.text("judgement"),
                        Integer.parseInt(cells.text("last_entry"))));
            } catch (DateTimeException | IllegalArgumentException edited) {
                throw new InputRefused(
                        cells.at().text() + ": not a line that we write; it was edited; restore the file from a backup",
                        edited);
            }
        }
        return lines;
    }

    static List<ReportLine> with(List<ReportLine> before, List<ReportLine> added) {
        Set<ReportLine> all = new LinkedHashSet<>(before);
        all.addAll(added);
        return List.copyOf(all);
    }

    static String text(List<ReportLine> lines) {
        StringBuilder text = new StringBuilder();
        CsvTable table = new CsvTable(text, COLUMNS);
        for (ReportLine line : lines) {
            table.row(List.of(
                    Cell.text(line.goal().text()),
                    Cell.text(line.period()),
                    Cell.date(line.asOf()),
                    Cell.code(line.value()),
                    Cell.code(line.judgement()),
                    Cell.whole(line.lastEntry())));
        }
        table.finish();
        return text.toString();
    }
}
