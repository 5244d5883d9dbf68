package stridetally.cli.options;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.PositionalParamSpec;

/** The files that a command works on, any number, named without an option. */
public final class FilesArgument {
    private final PositionalParamSpec spec;

    /** Any number, or none. */
    public FilesArgument(String label, String description) {
        this("0..*", label, description);
    }

    /** One at least. */
    public static FilesArgument needed(String label, String description) {
        return new FilesArgument("1..*", label, description);
    }

    private FilesArgument(String arity, String label, String description) {
        this.spec = PositionalParamSpec.builder()
                .index("0..*")
                .arity(arity)
                .paramLabel(label)
                .type(List.class)
                .auxiliaryTypes(Path.class)
                .converters(new PathWord())
                .description(description)
                .build();
    }

    /** Declares them. */
    public void addTo(CommandSpec command) {
        command.addPositional(spec);
    }

    /** The paths typed, in their order. */
    public List<Path> paths() {
        return Optional.<List<Path>>ofNullable(spec.getValue()).orElse(List.of());
    }
}
