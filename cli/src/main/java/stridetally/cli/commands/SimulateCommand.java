package stridetally.cli.commands;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.OptionalInt;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import stridetally.cli.Console;
import stridetally.cli.ExitCodes;
import stridetally.cli.files.OutputFolder;
import stridetally.cli.files.Overwrite;
import stridetally.cli.options.Format;
import stridetally.cli.options.OutputOptions;
import stridetally.cli.options.ScenarioWord;
import stridetally.cli.output.CalibrationTable;
import stridetally.simulate.Calibration;
import stridetally.simulate.MadeLogbook;
import stridetally.simulate.Scenario;

/** {@code simulate}: made-up caseloads with known truth, as files, or judged and counted. */
@Command(
        description =
                "With --out: the files of a logbook, a log of tries to import, and truth.csv. Without: judges made-up"
                        + " caseloads by four points, own line, pooled forecast and the limit, and prints how often each was"
                        + " right; with --right also from how many weeks on the pooled forecast is right that often.",
        footer = "  stridetally simulate --scenario base --caseloads 2 --weeks 9,18")
public final class SimulateCommand implements Callable<Integer> {
    private final Console console;

    @Option(
            names = "--scenario",
            paramLabel = "WORD",
            converter = ScenarioWord.class,
            split = ",",
            description = "${COMPLETION-CANDIDATES}; several with commas; usually all.")
    private List<Scenario> scenarios = List.of(Scenario.values());

    @Option(names = "--goals", paramLabel = "N", description = "Goals in a caseload (usually 45).")
    private int goals = 45;

    @Option(names = "--caseloads", paramLabel = "N", description = "Caseloads a scenario and week (usually 4).")
    private int caseloads = 4;

    @Option(names = "--weeks", paramLabel = "N", split = ",", description = "Judged after so many of 36 weeks.")
    private List<Integer> weeks = Calibration.WEEKS;

    @Option(names = "--seed", paramLabel = "N", description = "The same seed makes the same caseloads (usually 1).")
    private long seed = 1;

    @Option(
            names = "--right",
            paramLabel = "SHARE",
            description = "Say from how many weeks on so many calls are right.")
    private @Nullable Double right;

    @Option(names = "--chances", description = "Print how the chance of the criterion kept its word instead.")
    private boolean chances;

    @Option(names = "--out", paramLabel = "DIR", description = "Write a caseload of the first scenario into DIR.")
    private @Nullable Path folder;

    @Mixin
    private final OutputOptions output = new OutputOptions();

    public SimulateCommand(Console console) {
        this.console = console;
    }

    @Override
    public Integer call() {
        if (folder != null) {
            write(OutputFolder.open(folder, Overwrite.REFUSE));
            console.note("made-up logbook in " + folder + "; import trials.csv into its folder logbook");
            return ExitCodes.DONE;
        }
        Calibration calibration = Calibration.run(scenarios, weeks, goals, caseloads, seed);
        Format format = output.format(Format.CSV);
        output.write(
                console,
                chances ? CalibrationTable.chances(calibration, format) : CalibrationTable.lines(calibration, format));
        if (right != null) {
            scenarios.forEach(scenario -> console.note(power(scenario, calibration.weeksUntil(scenario, right))));
        }
        return ExitCodes.DONE;
    }

    private static String power(Scenario scenario, OptionalInt from) {
        return scenario + ": "
                + (from.isPresent()
                        ? "the pooled forecast is right so often from week " + from.getAsInt() + " on"
                        : "the pooled forecast is not right so often in any of these weeks");
    }

    private void write(OutputFolder out) {
        MadeLogbook made = new MadeLogbook(scenarios.get(0), goals, seed);
        file(out, "logbook/logbook.toml", made.settings());
        file(out, "logbook/students.csv", made.students());
        file(out, "logbook/goals.csv", made.goals());
        file(out, "trials.csv", made.trials());
        file(out, "truth.csv", made.truth());
    }

    private static void file(OutputFolder out, String name, String text) {
        out.write(name, stream -> stream.write(text.getBytes(StandardCharsets.UTF_8)));
    }
}
