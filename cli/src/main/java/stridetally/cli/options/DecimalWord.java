package stridetally.cli.options;

import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;
import stridetally.units.DecimalMark;

/** Reads the word of {@code --decimal}. */
final class DecimalWord implements ITypeConverter<DecimalMark> {
    @Override
    public DecimalMark convert(String text) {
        return switch (text) {
            case "point" -> DecimalMark.POINT;
            case "comma" -> DecimalMark.COMMA;
            default -> throw new TypeConversionException("'" + text + "' is none of: point, comma");
        };
    }
}
