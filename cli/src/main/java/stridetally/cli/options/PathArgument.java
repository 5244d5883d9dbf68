package stridetally.cli.options;

import java.nio.file.Path;
import java.util.Optional;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.PositionalParamSpec;

/** The file or folder that a command works on, named without an option. */
public final class PathArgument {
    private final PositionalParamSpec spec;

    private PathArgument(String arity, String label, String description) {
        this.spec = PositionalParamSpec.builder()
                .index("0")
                .arity(arity)
                .paramLabel(label)
                .type(Path.class)
                .converters(new PathWord())
                .description(description)
                .build();
    }

    /** One that must be there. */
    public static PathArgument needed(String label, String description) {
        return new PathArgument("1", label, description);
    }

    /** One that may be left out. */
    public static PathArgument ifAny(String label, String description) {
        return new PathArgument("0..1", label, description);
    }

    /** Declares it. */
    public void addTo(CommandSpec command) {
        command.addPositional(spec);
    }

    /** The path, when typed. */
    public Optional<Path> typed() {
        return Optional.ofNullable(spec.getValue());
    }

    /** The path of one that must be there. */
    public Path path() {
        return typed().orElseThrow();
    }
}
