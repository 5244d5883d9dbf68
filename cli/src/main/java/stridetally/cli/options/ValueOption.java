package stridetally.cli.options;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;

/**
 * An option with a value, built in code: reading annotations costs a small run more than its rows.
 *
 * @param <T> what the value is read into
 */
public final class ValueOption<T> {
    private final OptionSpec spec;

    private ValueOption(OptionSpec spec) {
        this.spec = spec;
    }

    /** Read by a converter, which refuses what it cannot read. */
    public static <T> ValueOption<T> of(
            List<String> names, String label, Class<T> type, ITypeConverter<T> reader, String description) {
        return new ValueOption<>(OptionSpec.builder(names.toArray(new String[0]))
                .paramLabel(label)
                .type(type)
                .converters(reader)
                .description(description)
                .build());
    }

    /** The same with one name. */
    public static <T> ValueOption<T> of(
            String name, String label, Class<T> type, ITypeConverter<T> reader, String description) {
        return of(List.of(name), label, type, reader, description);
    }

    /** One that must be typed: a file or folder. */
    public static ValueOption<Path> neededPath(String name, String label, String description) {
        return new ValueOption<>(OptionSpec.builder(name)
                .required(true)
                .paramLabel(label)
                .type(Path.class)
                .converters(new PathWord())
                .description(description)
                .build());
    }

    /** A day of the calendar. */
    public static ValueOption<LocalDate> day(String name, String description) {
        return of(name, "DATE", LocalDate.class, new IsoDate(), description);
    }

    /** A whole number within its limits, both included. */
    public static ValueOption<Integer> whole(String name, int lowest, int highest, String description) {
        return of(name, "N", Integer.class, new WholeWord(lowest, highest), description);
    }

    /** Any text. */
    public static ValueOption<String> text(String name, String label, String description) {
        return of(name, label, String.class, new TextWord(), description);
    }

    /** A file or folder. */
    public static ValueOption<Path> path(List<String> names, String label, String description) {
        return of(names, label, Path.class, new PathWord(), description);
    }

    /** One that helps do not show: for tests and measurements. */
    public static <T> ValueOption<T> hidden(String name, Class<T> type, ITypeConverter<T> reader) {
        return new ValueOption<>(OptionSpec.builder(name)
                .hidden(true)
                .type(type)
                .converters(reader)
                .build());
    }

    /** Declares the option. */
    public void addTo(CommandSpec command) {
        command.addOption(spec);
    }

    /** The value of an option that must be typed. */
    public T value() {
        return typed().orElseThrow();
    }

    /** What was typed. */
    public Optional<T> typed() {
        return Optional.ofNullable(spec.getValue());
    }
}
