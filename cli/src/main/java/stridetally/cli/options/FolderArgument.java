package stridetally.cli.options;

import java.nio.file.Path;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.PositionalParamSpec;

/** The folder that a command works on, named without an option. */
public final class FolderArgument {
    private final PositionalParamSpec spec;

    public FolderArgument(String label, String description) {
        this.spec = PositionalParamSpec.builder()
                .index("0")
                .arity("1")
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

    /** The path typed. */
    public Path path() {
        return spec.getValue();
    }
}
