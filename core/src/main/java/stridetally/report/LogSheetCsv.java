package stridetally.report;

import java.util.ArrayList;
import java.util.List;
import stridetally.plan.LogLine;
import stridetally.plan.LogSheet;
import stridetally.table.Cell;
import stridetally.table.CsvTable;
import stridetally.units.Unit;

/**
 * A blank log as a table that {@code import} takes back as it is: tries stand side by side, and a cell that stays blank is a
 * try not made. Only {@code value n} and {@code help n} are to be typed, and {@code prompt n} where a goal speaks of prompts.
 */
public final class LogSheetCsv {
    static final String VALUE = "value ";
    static final String HELP = "help ";
    static final String PROMPT = "prompt ";
    private static final List<String> FILLED =
            List.of("student", "date", "measure", "side", "protocol", "use", "place", "unit");

    private LogSheetCsv() {}

    /** Writes one or more logs as one table: as many tries as the longest of them has. */
    public static void write(List<LogSheet> sheets, Appendable out) {
        List<String> headings = headings(sheets);
        CsvTable table = new CsvTable(out, headings);
        for (LogSheet sheet : sheets) {
            for (LogLine line : sheet.lines()) {
                List<Cell> cells = filled(sheet, line);
                cells.addAll(FigureCells.blanks(headings.size() - cells.size()));
                table.row(cells);
            }
        }
        table.finish();
    }

    /** What is filled in before, then each try's own. */
    static List<String> headings(List<LogSheet> sheets) {
        int tries = sheets.stream().mapToInt(LogSheet::tries).max().orElseThrow();
        boolean prompts = sheets.stream().anyMatch(LogSheet::asksPrompt);
        List<String> headings = new ArrayList<>(FILLED);
        for (int number = 1; number <= tries; number++) {
            headings.add(VALUE + number);
            headings.add(HELP + number);
            if (prompts) {
                headings.add(PROMPT + number);
            }
        }
        return headings;
    }

    /** The cells of a line that are filled in before. */
    static List<Cell> filled(LogSheet sheet, LogLine line) {
        return new ArrayList<>(List.of(
                Cell.text(line.goal().student().text()),
                Cell.date(sheet.date()),
                Cell.text(line.measure().id().text()),
                Cell.code(line.side().word()),
                Cell.text(line.goal().protocol().text()),
                Cell.code("probe"),
                Cell.code("school"),
                Cell.code(unit(line.measure().unit()))));
    }

    /** Shares and counts of tries may be written in several ways, so no unit is put before them. */
    private static String unit(Unit unit) {
        return switch (unit) {
            case PROPORTION, COUNT, TRIES, POINTS -> "";
            default -> unit.symbol();
        };
    }
}
