package stridetally.cli.options;

import java.nio.file.Path;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;

/** How files come into a logbook. */
public final class ImportOptions {
    @Option(
            names = "--kind",
            paramLabel = "KIND",
            converter = ImportKindWord.class,
            description = "${COMPLETION-CANDIDATES} (guessed from the headings when they are clear).")
    private @Nullable ImportKind kind;

    @Option(names = "--label", paramLabel = "TEXT", description = "Your own words for the entry (default: file name).")
    private String label = "";

    @Option(
            names = "--blank-help",
            paramLabel = "WORD",
            description = "What this form means by a blank help cell, such as independent (default: not recorded).")
    private @Nullable String blankHelp;

    @Option(names = "--names", description = "Turn the names of names.csv into codes before anything is written.")
    private boolean names;

    @Option(
            names = "--second-observer",
            description =
                    "The trials are what another observer saw of the same tries: kept for agreement, never counted.")
    private boolean secondObserver;

    @Option(
            names = "--columns",
            paramLabel = "FILE",
            description = "A mapping that says how a form is laid out; --dry-run -o FILE.toml writes the one in use."
                    + " Kept in the logbook, for the next file with the same headings.")
    private @Nullable Path columns;

    @Option(
            names = "--sheet",
            paramLabel = "NAME",
            description = "The sheet of a workbook (default: every visible one with known headings).")
    private @Nullable String sheet;

    @Option(names = "--new", description = "Begin the logbook: DIR must be new or empty.")
    private boolean begin;

    @Option(
            names = "--replace",
            description = "A try that is there with another value is replaced by the one of this file.")
    private boolean replace;

    @Option(
            names = "--dry-run",
            description =
                    "Read and tell everything, also what each column was taken for; nothing goes into the logbook.")
    private boolean dryRun;

    @Option(names = "--strict", description = "Take nothing at all when any row would be set aside (exit code 3).")
    private boolean strict;

    /** What the files hold, when said. */
    public Optional<ImportKind> kind() {
        return Optional.ofNullable(kind);
    }

    /** The person's own words; blank for the file name. */
    public String label() {
        return label;
    }

    /** What a blank help cell means, when said. */
    public Optional<String> blankHelp() {
        return Optional.ofNullable(blankHelp);
    }

    /** Turn names into codes. */
    public boolean names() {
        return names;
    }

    /** Kept for agreement only. */
    public boolean secondObserver() {
        return secondObserver;
    }

    /** The mapping of a form, when given. */
    public Optional<Path> columns() {
        return Optional.ofNullable(columns);
    }

    /** The one sheet to read, when said. */
    public Optional<String> sheet() {
        return Optional.ofNullable(sheet);
    }

    /** Begin a logbook. */
    public boolean begin() {
        return begin;
    }

    /** Another value replaces the earlier one. */
    public boolean replace() {
        return replace;
    }

    /** Write nothing. */
    public boolean dryRun() {
        return dryRun;
    }

    /** All rows or none. */
    public boolean strict() {
        return strict;
    }
}
