package stridetally.cli.options;

import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;
import stridetally.units.IsoDay;

/** Reads a date of the command line: ISO only, so that no order of day and month is guessed. */
public final class IsoDate implements ITypeConverter<LocalDate> {
    @Override
    public LocalDate convert(String text) {
        try {
            return IsoDay.of(text);
        } catch (DateTimeParseException notADate) {
            throw new TypeConversionException(
                    "'" + text + "' is not a date of the calendar; write year-month-day, as 2026-01-16");
        }
    }
}
