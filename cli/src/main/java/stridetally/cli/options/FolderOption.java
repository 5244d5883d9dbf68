package stridetally.cli.options;

import java.nio.file.Path;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;

/** The folder that a command works on, named with an option that must be there. */
public final class FolderOption {
    private final OptionSpec spec;

    public FolderOption(String name, String label, String description) {
        this.spec = OptionSpec.builder(name)
                .required(true)
                .paramLabel(label)
                .type(Path.class)
                .converters(new PathWord())
                .description(description)
                .build();
    }

    /** Declares it. */
    public void addTo(CommandSpec command) {
        command.addOption(spec);
    }

    /** The path typed. */
    public Path path() {
        return spec.getValue();
    }
}
