package stridetally.cli.commands;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.function.Predicate;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import stridetally.cli.Console;
import stridetally.cli.ExitCodes;
import stridetally.cli.files.OutputFolder;
import stridetally.cli.files.Overwrite;
import stridetally.cli.input.ReportRequest;
import stridetally.cli.input.ScoredLogbook;
import stridetally.cli.input.Sources;
import stridetally.cli.input.TriesBehind;
import stridetally.cli.options.AsOfOption;
import stridetally.cli.options.IsoDate;
import stridetally.cli.options.PageFormat;
import stridetally.cli.options.PageOutputOptions;
import stridetally.cli.options.ReportFor;
import stridetally.cli.options.ReportOptions;
import stridetally.cli.output.ReportOutput;
import stridetally.cli.output.ToldLines;
import stridetally.logbook.Logbook;
import stridetally.logbook.LogbookWriter;
import stridetally.model.StudentCode;
import stridetally.problem.InputRefused;
import stridetally.report.CaseloadReport;
import stridetally.report.ReportInput;
import stridetally.report.TeamReport;

/** {@code report}: the documents of a period, for the team or for the caseload at a glance. */
@Command(
        description =
                "For the team: a document a student, a part a goal. For the caseload: every goal in one table, those"
                        + " that need attention first. With --out the documents are files, and reports.csv notes what was told.",
        footer = "  stridetally report samples/out/logbook --period winter --student fh-003")
public final class ReportCommand implements Callable<Integer> {
    private final Console console;

    @Parameters(paramLabel = "LOGBOOK", description = "The logbook.")
    private Path logbook = Path.of("");

    @Mixin
    private final ReportOptions about = new ReportOptions();

    @Option(
            names = "--known",
            paramLabel = "DATE",
            converter = IsoDate.class,
            description = "Read the logbook as it was known on DATE.")
    private @Nullable LocalDate known;

    @Mixin
    private final AsOfOption asOf = new AsOfOption();

    @Mixin
    private final PageOutputOptions output = new PageOutputOptions();

    public ReportCommand(Console console) {
        this.console = console;
    }

    @Override
    public Integer call() {
        Logbook book = Logbook.open(logbook, Optional.ofNullable(known));
        ReportInput.PeriodChoice period =
                ReportRequest.period(book.settings(), about.period(), about.from(), about.to());
        LocalDate day = asOf.typed()
                .or(() -> ReportRequest.lastDay(book.settings(), period))
                .orElseGet(() -> asOf.day(console.clock()));
        ScoredLogbook scored = new Sources(console).logbook(book, logbook, day);
        Map<StudentCode, String> names = about.names() ? book.names() : Map.of();
        ReportInput input = ReportRequest.of(scored, period, names);
        PageFormat format = output.format(PageFormat.MARKDOWN);
        if (about.whom() == ReportFor.CASELOAD) {
            CaseloadReport report = CaseloadReport.of(input, CaseloadReport.QUIET_DAYS, shown(scored));
            Optional<OutputFolder> folder = folder();
            if (folder.isPresent()) {
                folder.get().write("caseload" + format.extension(), ReportOutput.caseload(report, format));
            } else {
                output.write(console, ReportOutput.caseload(report, format));
            }
            return ExitCodes.DONE;
        }
        team(input, scored, format);
        return ExitCodes.DONE;
    }

    private void team(ReportInput input, ScoredLogbook scored, PageFormat format) {
        TriesBehind.Detail detail = about.explain() ? TriesBehind.Detail.EVERY_TRY : TriesBehind.Detail.COUNTS;
        List<TeamReport> documents = ToldLines.withPast(ReportOutput.team(input, shown(scored)), input, scored, detail);
        Optional<OutputFolder> folder = folder();
        if (folder.isPresent()) {
            ReportOutput.apart(documents, folder.get(), format);
            try (LogbookWriter writer = LogbookWriter.open(logbook, asOf.journalTime(console.clock()))) {
                writer.appendReports(ToldLines.of(documents, input));
            }
            console.note(documents.size() + " documents; reports.csv of the logbook notes what was told");
        } else {
            output.write(console, ReportOutput.together(documents, format));
        }
    }

    private Optional<OutputFolder> folder() {
        return about.folder().map(path -> OutputFolder.open(path, about.force() ? Overwrite.FORCE : Overwrite.REFUSE));
    }

    private Predicate<StudentCode> shown(ScoredLogbook scored) {
        List<String> unknown = new ArrayList<>(about.students());
        scored.scores().forEach(score -> unknown.remove(score.goal().student().text()));
        if (!unknown.isEmpty()) {
            throw new InputRefused("no goal of a student with the code " + String.join(", ", unknown)
                    + "; look at students.csv and goals.csv");
        }
        return code -> about.students().isEmpty() || about.students().contains(code.text());
    }
}
