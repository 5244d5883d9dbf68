package stridetally.cli.commands;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;
import picocli.CommandLine.Model.CommandSpec;
import stridetally.cli.Console;
import stridetally.cli.ExitCodes;
import stridetally.cli.Subcommand;
import stridetally.cli.files.OutputFolder;
import stridetally.cli.files.Overwrite;
import stridetally.cli.input.ReportRequest;
import stridetally.cli.input.ScoredLogbook;
import stridetally.cli.input.Sources;
import stridetally.cli.input.TriesBehind;
import stridetally.cli.options.AsOfOption;
import stridetally.cli.options.ForecastOption;
import stridetally.cli.options.KnownOption;
import stridetally.cli.options.PageFormat;
import stridetally.cli.options.PageOutputOptions;
import stridetally.cli.options.PathArgument;
import stridetally.cli.options.ReportFor;
import stridetally.cli.options.ReportOptions;
import stridetally.cli.options.RulesOption;
import stridetally.cli.output.LetterOutput;
import stridetally.cli.output.ReportOutput;
import stridetally.cli.output.ToldLines;
import stridetally.logbook.Logbook;
import stridetally.logbook.LogbookWriter;
import stridetally.model.StudentCode;
import stridetally.problem.InputRefused;
import stridetally.report.CaseloadReport;
import stridetally.report.FamilyLetter;
import stridetally.report.ReportInput;
import stridetally.report.TeamReport;

/** {@code report}: the documents of a period, for the team, for families, or for the caseload at a glance. */
public final class ReportCommand implements Subcommand {
    private final Console console;

    private final PathArgument logbook = PathArgument.needed("LOGBOOK", "The logbook.");
    private final ReportOptions about = new ReportOptions();
    private final KnownOption known = new KnownOption();
    private final ForecastOption forecast = new ForecastOption();
    private final RulesOption rules = new RulesOption();
    private final AsOfOption asOf = new AsOfOption();
    private final PageOutputOptions output = new PageOutputOptions();

    public ReportCommand(Console console) {
        this.console = console;
    }

    @Override
    public void declare(CommandSpec spec) {
        spec.usageMessage()
                .description(
                        "For the team: a document a student, a part a goal. For the family: a letter a student, Markdown or"
                                + " HTML. For the caseload: every goal in one table, those that need attention first. With --out"
                                + " the documents are files, and reports.csv notes what the team was told.")
                .footer("  stridetally report samples/out/logbook --period winter --student fh-003");
        logbook.addTo(spec);
        about.addTo(spec);
        known.addTo(spec);
        forecast.addTo(spec);
        rules.addTo(spec);
        asOf.addTo(spec);
        output.addTo(spec);
    }

    @Override
    public Integer call() {
        Logbook book = Logbook.open(logbook.path(), known.typed());
        ReportInput.PeriodChoice period =
                ReportRequest.period(book.settings(), about.period(), about.from(), about.to());
        LocalDate day = asOf.typed()
                .or(() -> ReportRequest.lastDay(book.settings(), period))
                .orElseGet(() -> asOf.day(console.clock()));
        ScoredLogbook scored = new Sources(console)
                .logbook(book, logbook.path(), day, forecast.way())
                .beside(rules.rules());
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
        if (about.whom() == ReportFor.FAMILY) {
            family(input, scored, format);
        } else {
            team(input, scored, format);
        }
        return ExitCodes.DONE;
    }

    private void family(ReportInput input, ScoredLogbook scored, PageFormat format) {
        if (format != PageFormat.MARKDOWN && format != PageFormat.HTML) {
            throw new InputRefused("a letter is for people: --format markdown or html");
        }
        List<FamilyLetter> letters =
                LetterOutput.letters(input, scored.open().book().contact(), about.language(), shown(scored), console);
        Optional<OutputFolder> folder = folder();
        if (folder.isPresent()) {
            LetterOutput.apart(letters, folder.get(), format);
            console.note(letters.size() + " letters; read each before it goes out");
        } else {
            output.write(console, LetterOutput.together(letters, format));
        }
    }

    private void team(ReportInput input, ScoredLogbook scored, PageFormat format) {
        TriesBehind.Detail detail = about.explain() ? TriesBehind.Detail.EVERY_TRY : TriesBehind.Detail.COUNTS;
        List<TeamReport> documents = ToldLines.withPast(ReportOutput.team(input, shown(scored)), input, scored, detail);
        Optional<OutputFolder> folder = folder();
        if (folder.isPresent()) {
            ReportOutput.apart(documents, folder.get(), format);
            try (LogbookWriter writer = LogbookWriter.open(logbook.path(), asOf.journalTime(console.clock()))) {
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
