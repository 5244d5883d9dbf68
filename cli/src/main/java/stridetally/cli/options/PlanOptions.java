package stridetally.cli.options;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import picocli.CommandLine.Model.CommandSpec;

/** What a plan is for and where it goes. */
public final class PlanOptions {
    private final ValueOption<PlanFor> what = ValueOption.of(
            "--for", "WHAT", PlanFor.class, new PlanForWord(), "${COMPLETION-CANDIDATES} (default: next).");

    private final ListOption<String> students = ListOption.repeated(
            "--student", "CODE", String.class, new TextWord(), "Only these students (may be repeated).");

    private final FlagOption names =
            new FlagOption("--names", "Print the names of names.csv on the home sheets instead of a line to fill in.");

    private final ValueOption<Path> folder = ValueOption.path(
            List.of("--out"), "DIR", "Write a file for each student, or for each school and weekday, into DIR.");

    private final FlagOption force =
            new FlagOption("--force", "Write into DIR although it holds files that are not ours.");

    /** Declares the options. */
    public void addTo(CommandSpec command) {
        what.addTo(command);
        students.addTo(command);
        names.addTo(command);
        folder.addTo(command);
        force.addTo(command);
    }

    /** What is made. */
    public PlanFor what() {
        return what.typed().orElse(PlanFor.NEXT);
    }

    /** The codes to show; all when there are none. */
    public List<String> students() {
        return students.typed();
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
