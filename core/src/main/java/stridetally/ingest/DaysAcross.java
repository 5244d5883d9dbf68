package stridetally.ingest;

import java.util.List;
import java.util.Optional;
import stridetally.problem.At;
import stridetally.problem.InputRefused;
import stridetally.table.Row;

/** A sheet that lies on its side: the days stand in one row, where we read a day from each row. */
final class DaysAcross {
    private DaysAcross() {}

    /** The first row that is nothing but days, two at least, behind one cell at most. */
    static Optional<Row> in(List<Row> firstRows) {
        return firstRows.stream().filter(DaysAcross::isDays).findFirst();
    }

    /** What to do with it. */
    static InputRefused refusal(String file, Row row) {
        return new InputRefused(At.row(file, row.line()).text()
                + ": the days stand side by side; expected a row for each day. Turn the table in the spreadsheet (copy it,"
                + " paste special, transpose), write Date over the days, and import again; student, measure and"
                + " year, where no column says them, go under [constants] of a mapping (--columns)");
    }

    private static boolean isDays(Row row) {
        int days = 0;
        for (int column = 1; column < row.cells().size(); column++) {
            String cell = row.cells().get(column).strip();
            if (!cell.isEmpty() && !isDay(cell)) {
                return false;
            }
            days += cell.isEmpty() ? 0 : 1;
        }
        return days > 1;
    }

    /** With a year, or as people head a column: {@code Sept 14}, {@code 9/14}. */
    private static boolean isDay(String cell) {
        return isDayWithYear(cell) || isDayWithYear(cell + " 2000") || isDayWithYear(cell + "/2000");
    }

    private static boolean isDayWithYear(String cell) {
        return DayText.read(cell, DateOrder.MONTH_FIRST).day().isPresent()
                || DayText.read(cell, DateOrder.DAY_FIRST).day().isPresent();
    }
}
