package stridetally.cli.options;

import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;
import stridetally.ingest.DateOrder;

/** Reads the word of {@code --date-order}. */
final class DateOrderWord implements ITypeConverter<DateOrder> {
    @Override
    public DateOrder convert(String text) {
        return switch (text) {
            case "day-first" -> DateOrder.DAY_FIRST;
            case "month-first" -> DateOrder.MONTH_FIRST;
            default -> throw new TypeConversionException("'" + text + "' is none of: day-first, month-first");
        };
    }
}
