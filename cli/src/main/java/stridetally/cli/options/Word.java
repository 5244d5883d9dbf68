package stridetally.cli.options;

import java.util.ArrayList;
import java.util.List;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;

/**
 * Reads one word of a closed list, as the enum writes it; capitals do not matter.
 *
 * @param <E> the list
 */
class Word<E extends Enum<E>> implements ITypeConverter<E> {
    private final Class<E> list;

    Word(Class<E> list) {
        this.list = list;
    }

    /** How a word of the list is written. */
    String written(E word) {
        return word.toString();
    }

    @Override
    public E convert(String text) {
        List<String> words = new ArrayList<>();
        for (E word : list.getEnumConstants()) {
            if (written(word).equalsIgnoreCase(text)) {
                return word;
            }
            words.add(written(word));
        }
        throw new TypeConversionException("'" + text + "' is none of: " + String.join(", ", words));
    }
}
