package stridetally.cli.options;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import picocli.CommandLine.Model.CommandSpec;

/** What a report is about and where it goes. */
public final class ReportOptions {
    private final ListOption<ReportFor> whom = ListOption.withCommas(
            "--for",
            "WHOM",
            ReportFor.class,
            new ReportForWord(),
            "team, family, caseload, review (the year of a student), groups (by school, measure, period, help), record"
                    + " (everything about a student); several with commas (default: team).");

    private final ValueOption<String> period = ValueOption.text(
            "--period", "NAME", "A period of logbook.toml; --as-of is then its last day unless given.");

    private final ValueOption<LocalDate> from = ValueOption.day("--from", "First day, with --to.");

    private final ValueOption<LocalDate> to = ValueOption.day("--to", "Last day, with --from.");

    private final ListOption<String> students = ListOption.repeated(
            "--student", "CODE", String.class, new TextWord(), "Only these students (may be repeated).");

    private final ValueOption<String> language = ValueOption.text(
            "--language",
            "CODE",
            "For the family: en or es (default: the student's in students.csv, else the first of logbook.toml).");

    private final FlagOption names =
            new FlagOption("--names", "Print the names of names.csv beside the codes, and in the letters.");

    private final FlagOption explain = new FlagOption(
            "--explain",
            "For the team: every figure, and the tries behind them with entry, line and place. For the review: every session and figure.");

    private final ValueOption<Path> folder = ValueOption.path(
            List.of("--out"),
            "DIR",
            "Write a document for each student into DIR, and note in reports.csv what was told.");

    private final FlagOption force =
            new FlagOption("--force", "Write into DIR although it holds files that are not ours.");

    /** Declares the options. */
    public void addTo(CommandSpec command) {
        whom.addTo(command);
        period.addTo(command);
        from.addTo(command);
        to.addTo(command);
        students.addTo(command);
        language.addTo(command);
        names.addTo(command);
        explain.addTo(command);
        folder.addTo(command);
        force.addTo(command);
    }

    /** List what is behind the figures. */
    public boolean explain() {
        return explain.typed();
    }

    /** Whom it is for, none twice. */
    public Set<ReportFor> whom() {
        return whom.typed().isEmpty() ? Set.of(ReportFor.TEAM) : EnumSet.copyOf(whom.typed());
    }

    /** The name of the period. */
    public Optional<String> period() {
        return period.typed();
    }

    /** The first day. */
    public Optional<LocalDate> from() {
        return from.typed();
    }

    /** The last day. */
    public Optional<LocalDate> to() {
        return to.typed();
    }

    /** The codes to show; all when there are none. */
    public List<String> students() {
        return students.typed();
    }

    /** The language of letters. */
    public Optional<String> language() {
        return language.typed();
    }

    /** Print names. */
    public boolean names() {
        return names.typed();
    }

    /** The folder of documents. */
    public Optional<Path> folder() {
        return folder.typed();
    }

    /** Write into a folder that is not ours. */
    public boolean force() {
        return force.typed();
    }
}
