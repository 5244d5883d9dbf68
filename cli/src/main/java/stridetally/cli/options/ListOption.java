package stridetally.cli.options;

import java.util.List;
import java.util.Optional;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;

/**
 * An option that may be repeated, or hold several values with commas.
 *
 * @param <T> what one value is read into
 */
public final class ListOption<T> {
    private final OptionSpec spec;

    private ListOption(OptionSpec spec) {
        this.spec = spec;
    }

    /** One value each time it is typed. */
    public static <T> ListOption<T> repeated(
            String name, String label, Class<T> type, ITypeConverter<T> reader, String description) {
        return new ListOption<>(builder(name, label, type, reader, description).build());
    }

    /** Several values with commas. */
    public static <T> ListOption<T> withCommas(
            String name, String label, Class<T> type, ITypeConverter<T> reader, String description) {
        return new ListOption<>(
                builder(name, label, type, reader, description).splitRegex(",").build());
    }

    private static <T> OptionSpec.Builder builder(
            String name, String label, Class<T> type, ITypeConverter<T> reader, String description) {
        return OptionSpec.builder(name)
                .paramLabel(label)
                .type(List.class)
                .auxiliaryTypes(type)
                .arity("1")
                .converters(reader)
                .description(description);
    }

    /** Declares the option. */
    public void addTo(CommandSpec command) {
        command.addOption(spec);
    }

    /** What was typed, in its order; empty when nothing was. */
    public List<T> typed() {
        return Optional.<List<T>>ofNullable(spec.getValue()).orElse(List.of());
    }
}
