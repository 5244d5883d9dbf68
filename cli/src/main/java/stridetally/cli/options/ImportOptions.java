package stridetally.cli.options;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import picocli.CommandLine.Model.CommandSpec;

/** How files come into a logbook. */
public final class ImportOptions {
    private final ValueOption<ImportKind> kind = ValueOption.of(
            "--kind",
            "KIND",
            ImportKind.class,
            new ImportKindWord(),
            "${COMPLETION-CANDIDATES} (guessed from the headings when they are clear).");

    private final ValueOption<String> label =
            ValueOption.text("--label", "TEXT", "Your own words for the entry (default: file name).");

    private final ValueOption<String> blankHelp = ValueOption.text(
            "--blank-help",
            "WORD",
            "What this form means by a blank help cell, such as independent (default: not recorded).");

    private final FlagOption names =
            new FlagOption("--names", "Turn the names of names.csv into codes before anything is written.");

    private final FlagOption secondObserver = new FlagOption(
            "--second-observer",
            "The trials are what another observer saw of the same tries: kept for agreement, never counted.");

    private final ValueOption<Path> columns = ValueOption.path(
            List.of("--columns"),
            "FILE",
            "A mapping that says how a form is laid out; --dry-run -o FILE.toml writes the one in use."
                    + " Kept in the logbook, for the next file with the same headings.");

    private final ValueOption<String> sheet = ValueOption.text(
            "--sheet", "NAME", "The sheet of a workbook (default: every visible one with known headings).");

    private final FlagOption begin = new FlagOption("--new", "Begin the logbook: DIR must be new or empty.");

    private final FlagOption replace =
            new FlagOption("--replace", "A try that is there with another value is replaced by the one of this file.");

    private final FlagOption dryRun = new FlagOption(
            "--dry-run",
            "Read and tell everything, also what each column was taken for; nothing goes into the logbook.");

    private final FlagOption strict =
            new FlagOption("--strict", "Take nothing at all when any row would be set aside (exit code 3).");

    /** Declares the options. */
    public void addTo(CommandSpec command) {
        kind.addTo(command);
        label.addTo(command);
        blankHelp.addTo(command);
        names.addTo(command);
        secondObserver.addTo(command);
        columns.addTo(command);
        sheet.addTo(command);
        begin.addTo(command);
        replace.addTo(command);
        dryRun.addTo(command);
        strict.addTo(command);
    }

    /** What the files hold, when said. */
    public Optional<ImportKind> kind() {
        return kind.typed();
    }

    /** The person's own words; blank for the file name. */
    public String label() {
        return label.typed().orElse("");
    }

    /** What a blank help cell means, when said. */
    public Optional<String> blankHelp() {
        return blankHelp.typed();
    }

    /** Turn names into codes. */
    public boolean names() {
        return names.typed();
    }

    /** Kept for agreement only. */
    public boolean secondObserver() {
        return secondObserver.typed();
    }

    /** The mapping of a form, when given. */
    public Optional<Path> columns() {
        return columns.typed();
    }

    /** The one sheet to read, when said. */
    public Optional<String> sheet() {
        return sheet.typed();
    }

    /** Begin a logbook. */
    public boolean begin() {
        return begin.typed();
    }

    /** Another value replaces the earlier one. */
    public boolean replace() {
        return replace.typed();
    }

    /** Write nothing. */
    public boolean dryRun() {
        return dryRun.typed();
    }

    /** All rows or none. */
    public boolean strict() {
        return strict.typed();
    }
}
