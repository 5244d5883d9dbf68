package stridetally.cli.options;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;

/** What a report is about and where it goes. */
public final class ReportOptions {
    @Option(
            names = "--for",
            paramLabel = "WHOM",
            converter = ReportForWord.class,
            description = "${COMPLETION-CANDIDATES} (default: team).")
    private ReportFor whom = ReportFor.TEAM;

    @Option(
            names = "--period",
            paramLabel = "NAME",
            description = "A period of logbook.toml; --as-of is then its last day unless given.")
    private @Nullable String period;

    @Option(names = "--from", paramLabel = "DATE", converter = IsoDate.class, description = "First day, with --to.")
    private @Nullable LocalDate from;

    @Option(names = "--to", paramLabel = "DATE", converter = IsoDate.class, description = "Last day, with --from.")
    private @Nullable LocalDate to;

    @Option(names = "--student", paramLabel = "CODE", description = "Only these students (may be repeated).")
    private List<String> students = List.of();

    @Option(names = "--names", description = "Print the names of names.csv beside the codes.")
    private boolean names;

    @Option(
            names = "--explain",
            description = "For the team: list the sessions and tries behind the figures, with entry, line and place.")
    private boolean explain;

    @Option(
            names = "--out",
            paramLabel = "DIR",
            description = "Write a document for each student into DIR, and note in reports.csv what was told.")
    private @Nullable Path folder;

    @Option(names = "--force", description = "Write into DIR although it holds files that are not ours.")
    private boolean force;

    /** List what is behind the figures. */
    public boolean explain() {
        return explain;
    }

    /** Whom it is for. */
    public ReportFor whom() {
        return whom;
    }

    /** The name of the period. */
    public Optional<String> period() {
        return Optional.ofNullable(period);
    }

    /** The first day. */
    public Optional<LocalDate> from() {
        return Optional.ofNullable(from);
    }

    /** The last day. */
    public Optional<LocalDate> to() {
        return Optional.ofNullable(to);
    }

    /** The codes to show; all when there are none. */
    public List<String> students() {
        return students;
    }

    /** Print names. */
    public boolean names() {
        return names;
    }

    /** The folder of documents. */
    public Optional<Path> folder() {
        return Optional.ofNullable(folder);
    }

    /** Write into a folder that is not ours. */
    public boolean force() {
        return force;
    }
}
