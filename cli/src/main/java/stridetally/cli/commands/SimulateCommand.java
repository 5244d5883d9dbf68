package stridetally.cli.commands;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import picocli.CommandLine.Model.CommandSpec;
import stridetally.cli.Console;
import stridetally.cli.ExitCodes;
import stridetally.cli.Subcommand;
import stridetally.cli.files.OutputFolder;
import stridetally.cli.files.Overwrite;
import stridetally.cli.options.FlagOption;
import stridetally.cli.options.Format;
import stridetally.cli.options.ListOption;
import stridetally.cli.options.OutputOptions;
import stridetally.cli.options.ScenarioWord;
import stridetally.cli.options.ShareWord;
import stridetally.cli.options.ValueOption;
import stridetally.cli.options.WholeWord;
import stridetally.cli.output.CalibrationTable;
import stridetally.simulate.Calibration;
import stridetally.simulate.CalibrationCell;
import stridetally.simulate.MadeLogbook;
import stridetally.simulate.Scenario;

/** {@code simulate}: made-up caseloads with known truth, as files, or judged and counted. */
public final class SimulateCommand implements Subcommand {
    private static final int USUAL_GOALS = 45;
    private static final int USUAL_CASELOADS = 4;
    private static final int MOST = 100_000;

    private final Console console;
    private final ListOption<Scenario> scenarios = ListOption.withCommas(
            "--scenario",
            "WORD",
            Scenario.class,
            new ScenarioWord(),
            "${COMPLETION-CANDIDATES}; several with commas; usually all.");
    private final ValueOption<Integer> goals =
            ValueOption.whole("--goals", 1, MOST, "Goals in a caseload (usually " + USUAL_GOALS + ").");
    private final ValueOption<Integer> caseloads = ValueOption.whole(
            "--caseloads", 1, MOST, "Caseloads a scenario and week (usually " + USUAL_CASELOADS + ").");
    private final ListOption<Integer> weeks = ListOption.withCommas(
            "--weeks",
            "N",
            Integer.class,
            new WholeWord(1, Calibration.LAST_WEEK),
            "Judged after so many of 36 weeks.");
    private final ValueOption<Integer> seed =
            ValueOption.whole("--seed", 0, Integer.MAX_VALUE, "The same seed makes the same caseloads (usually 1).");
    private final ValueOption<Double> right = ValueOption.of(
            "--right",
            "SHARE",
            Double.class,
            new ShareWord(),
            "Say from how many weeks and sessions on so many calls are right.");
    private final FlagOption chances =
            new FlagOption("--chances", "Print how the chance of the criterion kept its word instead.");
    private final ValueOption<Path> folder =
            ValueOption.path(List.of("--out"), "DIR", "Write a caseload of the first scenario into DIR.");
    private final OutputOptions output = new OutputOptions();

    public SimulateCommand(Console console) {
        this.console = console;
    }

    @Override
    public void declare(CommandSpec spec) {
        spec.usageMessage()
                .description("With --out: the files of a logbook, a log of tries to import, and truth.csv. Without:"
                        + " judges made-up caseloads by four points, own line, pooled forecast and the limit, and prints"
                        + " how often each was right; with --right also from how many weeks and sessions on the pooled"
                        + " forecast is right that often.")
                .footer("  stridetally simulate --scenario base --caseloads 2 --weeks 9,18");
        scenarios.addTo(spec);
        goals.addTo(spec);
        caseloads.addTo(spec);
        weeks.addTo(spec);
        seed.addTo(spec);
        right.addTo(spec);
        chances.addTo(spec);
        folder.addTo(spec);
        output.addTo(spec);
    }

    @Override
    public Integer call() {
        if (folder.typed().isPresent()) {
            Path made = folder.typed().get();
            write(OutputFolder.open(made, Overwrite.REFUSE));
            console.note("made-up logbook in " + made + "; import trials.csv into its folder logbook");
            return ExitCodes.DONE;
        }
        Calibration calibration = Calibration.run(
                scenarios(),
                weeks.typed().isEmpty() ? Calibration.WEEKS : weeks.typed(),
                goals.typed().orElse(USUAL_GOALS),
                caseloads.typed().orElse(USUAL_CASELOADS),
                seed());
        Format format = output.format(Format.CSV);
        output.write(
                console,
                chances.typed()
                        ? CalibrationTable.chances(calibration, format)
                        : CalibrationTable.lines(calibration, format));
        right.typed()
                .ifPresent(share -> scenarios()
                        .forEach(scenario -> console.note(power(scenario, calibration.rightFrom(scenario, share)))));
        return ExitCodes.DONE;
    }

    private List<Scenario> scenarios() {
        return scenarios.typed().isEmpty() ? List.of(Scenario.values()) : scenarios.typed();
    }

    private int seed() {
        return seed.typed().orElse(1);
    }

    private static String power(Scenario scenario, Optional<CalibrationCell> from) {
        return scenario + ": "
                + from.map(cell -> "the pooled forecast is right so often from week " + cell.weeks()
                                + " on, after about " + Math.round(cell.sessions()) + " sessions")
                        .orElse("the pooled forecast is not right so often in the last of these weeks");
    }

    private void write(OutputFolder out) {
        MadeLogbook made = new MadeLogbook(scenarios().get(0), goals.typed().orElse(USUAL_GOALS), seed());
        file(out, "logbook/logbook.toml", made.settings());
        file(out, "logbook/students.csv", made.students());
        file(out, "logbook/goals.csv", made.goals());
        file(out, "logbook/changes.csv", made.changes());
        file(out, "trials.csv", made.trials());
        file(out, "truth.csv", made.truth());
    }

    private static void file(OutputFolder out, String name, String text) {
        out.write(name, stream -> stream.write(text.getBytes(StandardCharsets.UTF_8)));
    }
}
