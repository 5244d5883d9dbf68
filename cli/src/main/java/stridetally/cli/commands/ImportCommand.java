package stridetally.cli.commands;

import java.nio.file.Path;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParameterException;
import stridetally.cli.Console;
import stridetally.cli.Subcommand;
import stridetally.cli.options.AsOfOption;
import stridetally.cli.options.FilesArgument;
import stridetally.cli.options.ImportOptions;
import stridetally.cli.options.MendOptions;
import stridetally.cli.options.OutputOptions;
import stridetally.cli.options.ValueOption;
import stridetally.cli.options.WritingOptions;

/** {@code import}: field logs into a logbook, and what is done to its entries afterwards. */
public final class ImportCommand implements Subcommand {
    private final Console console;

    private final FilesArgument files =
            new FilesArgument("FILE", "CSV, TSV or .xlsx files, one row a try or tries side by side.");
    private final ValueOption<Path> logbook = ValueOption.neededPath("--logbook", "DIR", "The logbook.");
    private final ImportOptions how = new ImportOptions();
    private final WritingOptions writing = new WritingOptions();
    private final MendOptions mend = new MendOptions();
    private final AsOfOption asOf = new AsOfOption();
    private final OutputOptions output = new OutputOptions();
    private @Nullable CommandSpec spec;

    public ImportCommand(Console console) {
        this.console = console;
    }

    @Override
    public void declare(CommandSpec declared) {
        spec = declared;
        declared.usageMessage()
                .description(
                        "Each file of trials or visits becomes one entry. Good rows are taken, bad rows are set aside with"
                                + " their reason, rows that are there already are counted: rows = taken + known + set aside + blank."
                                + " A hand-kept table (students, goals, ...) replaces the one in the logbook.")
                .footer(
                        "  stridetally import samples/logs/2026-autumn-pt.csv --logbook mylogs --new --as-of 2026-11-20");
        files.addTo(declared);
        logbook.addTo(declared);
        how.addTo(declared);
        writing.addTo(declared);
        mend.addTo(declared);
        asOf.addTo(declared);
        output.addTo(declared);
    }

    @Override
    public Integer call() {
        checkUsage();
        Mending mending = new Mending(console, logbook.value(), asOf.journalTime(console.clock()));
        if (mend.status()) {
            return mending.status(asOf.day(console.clock()), mend.known(), mend.quietDays(), output);
        }
        if (mend.checkGoals()) {
            return mending.checkGoals(asOf.day(console.clock()), output);
        }
        if (mend.undo().isPresent()) {
            return mending.undo(mend.undo().getAsInt(), mend.why());
        }
        if (mend.dismiss().isPresent()) {
            return mending.dismiss(mend.dismiss().get(), mend.why());
        }
        return new Importing(console, logbook.value(), how, writing, asOf).run(files.paths(), output);
    }

    private void checkUsage() {
        boolean filesOrNew = !files.paths().isEmpty() || how.begin();
        if (mend.asked() > 1 || (mend.asked() == 1) == filesOrNew) {
            refuse("name files to import, or one of --status, --check-goals, --undo, --dismiss without files");
        }
        if ((mend.undo().isPresent() || mend.dismiss().isPresent())
                && mend.why().isBlank()) {
            refuse("say why, with --why; the reason is kept in the journal");
        }
        if (mend.known().isPresent() && !mend.status()) {
            refuse("--known goes with --status: what is written is written now");
        }
    }

    private void refuse(String sentence) {
        if (spec != null) {
            throw new ParameterException(spec.commandLine(), sentence);
        }
    }
}
