package stridetally.cli.options;

import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.ScopeType;

/**
 * Options that every command takes, before or after its name. The root holds them once for all; a command never declares
 * them, and heeds {@code --quiet} by speaking through {@code Console}. Built in code because reading annotations is slow.
 */
public final class CommonOptions {
    private final OptionSpec quiet = OptionSpec.builder("-q", "--quiet")
            .scopeType(ScopeType.INHERIT)
            .description("Say only what must be known.")
            .build();

    private final OptionSpec colour = OptionSpec.builder("--color")
            .scopeType(ScopeType.INHERIT)
            .type(Colour.class)
            .converters(new Word<>(Colour.class))
            .paramLabel("WHEN")
            .description("Colour in the help: ${COMPLETION-CANDIDATES}. The default, auto, is colour on a terminal.")
            .build();

    private final OptionSpec debug = OptionSpec.builder("--debug")
            .scopeType(ScopeType.INHERIT)
            .description(
                    "Show the technical details of a failure. They may hold cells of the input: read before sharing.")
            .build();

    /** Declares the options. */
    public void addTo(CommandSpec root) {
        root.addOption(quiet).addOption(colour).addOption(debug);
    }

    /** Only what must be known. */
    public boolean quiet() {
        return Boolean.TRUE.equals(quiet.<Boolean>getValue());
    }

    /** When the help is coloured. */
    public Colour colour() {
        Colour typed = colour.getValue();
        return typed == null ? Colour.AUTO : typed;
    }

    /** Stack traces are shown. */
    public boolean debug() {
        return Boolean.TRUE.equals(debug.<Boolean>getValue());
    }
}
