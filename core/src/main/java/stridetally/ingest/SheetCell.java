package stridetally.ingest;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.Locale;
import org.dhatim.fastexcel.reader.Cell;
import org.dhatim.fastexcel.reader.CellType;

/**
 * One cell of a sheet to the text that the same cell would have in a CSV: a date as ISO, a time as seconds, a number in
 * plain digits, a formula as the value saved with it. Nothing is computed.
 *
 * @param text what is read
 * @param formula whether the value was computed in the sheet
 * @param clock whether it is a time shown as hours and minutes, read as minutes and seconds
 */
record SheetCell(String text, boolean formula, boolean clock) {

    /** What stands for a formula without a saved value; no value and no word, so it is set aside with its place. */
    static final String NOT_CALCULATED = "#NOT CALCULATED";

    private static final SheetCell BLANK = new SheetCell("", false, false);

    /** A spreadsheet keeps 15 digits and writes 17. */
    private static final MathContext DIGITS = new MathContext(15, RoundingMode.HALF_EVEN);

    private static final BigDecimal DAY_SECONDS = BigDecimal.valueOf(86_400);
    private static final LocalDate BEFORE_1900 = LocalDate.of(1899, 12, 31);
    private static final LocalDate START_1904 = LocalDate.of(1904, 1, 1);

    /** The 1900 system has a 29 February 1900 that never was, day 60. */
    private static final int NEVER = 60;

    /** The last day of the year 9999. */
    private static final int LAST_DAY = 2_958_465;

    static SheetCell of(Cell cell, boolean from1904) {
        boolean formula = cell.getType() == CellType.FORMULA;
        Object value = cell.getValue();
        if (cell.getType() == CellType.EMPTY) {
            return BLANK;
        }
        if (value == null || (formula && value.toString().isEmpty() && cell.getRawValue() == null)) {
            String raw = cell.getRawValue();
            return new SheetCell(
                    formula ? (raw == null ? NOT_CALCULATED : raw) : (raw == null ? "" : raw), formula, false);
        }
        if (value instanceof BigDecimal number) {
            return number(number, cell, formula, from1904);
        }
        if (value instanceof Boolean yes) {
            return new SheetCell(yes ? "yes" : "no", formula, false);
        }
        return new SheetCell(value.toString(), formula, false);
    }

    private static SheetCell number(BigDecimal number, Cell cell, boolean formula, boolean from1904) {
        String format = SheetFormat.plain(cell.getDataFormatString());
        if (SheetFormat.isDate(format)) {
            return new SheetCell(day(number, from1904), formula, false);
        }
        if (SheetFormat.isTime(format)) {
            return time(number, format, formula);
        }
        if (format.endsWith("%")) {
            return new SheetCell(digits(number.multiply(BigDecimal.valueOf(100))) + "%", formula, false);
        }
        String plain = digits(number);
        boolean zeros = format.matches("0{2,20}") && number.signum() >= 0 && plain.indexOf('.') < 0;
        return new SheetCell(
                zeros && plain.length() < format.length()
                        ? "0".repeat(format.length() - plain.length()) + plain
                        : plain,
                formula,
                false);
    }

    private static String day(BigDecimal number, boolean from1904) {
        BigDecimal whole = number.setScale(0, RoundingMode.FLOOR);
        if (whole.signum() < 0 || whole.compareTo(BigDecimal.valueOf(LAST_DAY)) > 0) {
            return digits(number);
        }
        int count = whole.intValue();
        if (!from1904 && count == NEVER) {
            return "1900-02-29";
        }
        try {
            LocalDate day =
                    from1904 ? START_1904.plusDays(count) : BEFORE_1900.plusDays(count > NEVER ? count - 1L : count);
            return day.toString();
        } catch (DateTimeException beyondTheCalendar) {
            return digits(number);
        }
    }

    /**
     * A time is a part of a day. With seconds in its format it is that many seconds; shown as {@code 1:05} without
     * seconds it is what a person typed for 1 min 5 s, as the same sheet saved as CSV would say.
     */
    private static SheetCell time(BigDecimal number, String format, boolean formula) {
        BigDecimal seconds =
                number.multiply(DAY_SECONDS).setScale(3, RoundingMode.HALF_EVEN).stripTrailingZeros();
        boolean whole = seconds.scale() <= 0 && seconds.signum() >= 0;
        boolean minutes = whole && seconds.longValue() % 60 == 0;
        if (minutes && format.indexOf('h') >= 0 && format.indexOf('s') < 0) {
            long shown = seconds.longValue() / 60;
            return new SheetCell(String.format(Locale.ROOT, "%d:%02d", shown / 60, shown % 60), formula, true);
        }
        return new SheetCell(seconds.toPlainString() + " s", formula, false);
    }

    private static String digits(BigDecimal number) {
        BigDecimal rounded = number.round(DIGITS).stripTrailingZeros();
        return Math.abs(rounded.scale()) > 40 || rounded.precision() - rounded.scale() > 40
                ? number.toString()
                : rounded.toPlainString();
    }
}
