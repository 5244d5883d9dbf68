package stridetally.cli.options;

import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;

/** Reads a whole number from a lowest to a highest one. */
public final class WholeWord implements ITypeConverter<Integer> {
    private final int lowest;
    private final int highest;

    public WholeWord(int lowest, int highest) {
        this.lowest = lowest;
        this.highest = highest;
    }

    @Override
    public Integer convert(String text) {
        try {
            int number = Integer.parseInt(text);
            if (number >= lowest && number <= highest) {
                return number;
            }
        } catch (NumberFormatException noNumber) {
            throw refusal(text);
        }
        throw refusal(text);
    }

    private TypeConversionException refusal(String text) {
        return new TypeConversionException("'" + text + "' is no whole number from " + lowest + " to " + highest);
    }
}
