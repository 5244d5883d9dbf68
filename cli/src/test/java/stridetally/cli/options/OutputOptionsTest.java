package stridetally.cli.options;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import picocli.CommandLine;
import picocli.CommandLine.Model.CommandSpec;

final class OutputOptionsTest {
    @ParameterizedTest
    @CsvSource({
        "out.csv, CSV",
        "out.MD, MARKDOWN",
        "out.markdown, MARKDOWN",
        "a.csv/out.json, JSON",
        "out.txt, MARKDOWN",
        "csv, MARKDOWN"
    })
    void theExtensionSetsTheFormat(String file, Format expected) {
        assertEquals(expected, parsed("-o", file).format(Format.MARKDOWN));
    }

    @Test
    void theTypedFormatWins() {
        assertEquals(Format.CSV, parsed("-o", "out.json", "--format", "csv").format(Format.MARKDOWN));
    }

    @Test
    void aDashIsStandardOutput() {
        assertEquals(Optional.empty(), parsed("-o", "-").target());
        assertEquals(Optional.empty(), parsed().target());
    }

    private static OutputOptions parsed(String... arguments) {
        OutputOptions options = new OutputOptions();
        CommandSpec command = CommandSpec.create();
        options.addTo(command);
        new CommandLine(command).parseArgs(arguments);
        return options;
    }
}
