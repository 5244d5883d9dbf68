package stridetally.cli.options;

import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;

/** Reads a share from 0 to 1, such as .8. */
public final class ShareWord implements ITypeConverter<Double> {
    @Override
    public Double convert(String text) {
        try {
            double share = Double.parseDouble(text);
            if (share >= 0 && share <= 1) {
                return share;
            }
        } catch (NumberFormatException noNumber) {
            throw refusal(text);
        }
        throw refusal(text);
    }

    private static TypeConversionException refusal(String text) {
        return new TypeConversionException("'" + text + "' is no share from 0 to 1, such as 0.8");
    }
}
