package stridetally.cli.options;

import java.util.Locale;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;

/** Reads a size such as {@code 600m} or {@code 2g}, in binary steps. */
final class SizeWord implements ITypeConverter<Long> {
    private static final String UNITS = "kmg";
    private static final int MOST_DIGITS = 6;

    @Override
    public Long convert(String text) {
        String folded = text.toLowerCase(Locale.ROOT);
        int unit = folded.isEmpty() ? -1 : UNITS.indexOf(folded.charAt(folded.length() - 1));
        String digits = folded.substring(0, Math.max(0, folded.length() - 1));
        boolean number = !digits.isEmpty()
                && digits.length() <= MOST_DIGITS
                && digits.chars().allMatch(letter -> letter >= '0' && letter <= '9');
        if (unit < 0 || !number || Long.parseLong(digits) == 0) {
            throw new TypeConversionException(
                    "'" + text + "' is no size; write a whole number and k, m or g, such as 600m");
        }
        return Long.parseLong(digits) << (10 * (unit + 1));
    }
}
