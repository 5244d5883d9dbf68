package stridetally.cli.options;

import java.nio.file.Path;
import java.util.Optional;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.PositionalParamSpec;

/** A folder that a command may work on, named without an option. */
public final class FolderIfAny {
    private final PositionalParamSpec spec;

    public FolderIfAny(String label, String description) {
        this.spec = PositionalParamSpec.builder()
                .index("0")
                .arity("0..1")
                .paramLabel(label)
                .type(Path.class)
                .converters(new PathWord())
                .description(description)
                .build();
    }

    /** Declares it. */
    public void addTo(CommandSpec command) {
        command.addPositional(spec);
    }

    /** The path, when typed. */
    public Optional<Path> typed() {
        return Optional.ofNullable(spec.getValue());
    }
}
