package stridetally.cli.options;

import java.util.Arrays;
import java.util.stream.Collectors;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;

/**
 * Reads one word of a closed list, as the enum writes it in {@code toString}; capitals do not matter.
 *
 * @param <E> the list
 */
class Word<E extends Enum<E>> implements ITypeConverter<E> {
    private final Class<E> list;

    Word(Class<E> list) {
        this.list = list;
    }

    @Override
    public E convert(String text) {
        for (E word : list.getEnumConstants()) {
            if (word.toString().equalsIgnoreCase(text)) {
                return word;
            }
        }
        String words = Arrays.stream(list.getEnumConstants()).map(E::toString).collect(Collectors.joining(", "));
        throw new TypeConversionException("'" + text + "' is none of: " + words);
    }
}
