package stridetally.cli.options;

import java.util.Arrays;
import java.util.function.Function;
import java.util.stream.Collectors;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;

/**
 * Reads one word of a closed list, as the enum writes it; capitals do not matter.
 *
 * @param <E> the list
 */
class Word<E extends Enum<E>> implements ITypeConverter<E> {
    private final Class<E> list;
    private final Function<E, String> written;

    /** Of a list that writes its words in {@code toString}. */
    Word(Class<E> list) {
        this(list, E::toString);
    }

    Word(Class<E> list, Function<E, String> written) {
        this.list = list;
        this.written = written;
    }

    @Override
    public E convert(String text) {
        for (E word : list.getEnumConstants()) {
            if (written.apply(word).equalsIgnoreCase(text)) {
                return word;
            }
        }
        String words = Arrays.stream(list.getEnumConstants()).map(written).collect(Collectors.joining(", "));
        throw new TypeConversionException("'" + text + "' is none of: " + words);
    }
}
