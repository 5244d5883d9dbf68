package stridetally.cli.commands;

import java.time.LocalDate;
import java.util.Map;
import java.util.Set;
import picocli.CommandLine.Model.CommandSpec;
import stridetally.cli.Console;
import stridetally.cli.ExitCodes;
import stridetally.cli.Subcommand;
import stridetally.cli.input.ReportRequest;
import stridetally.cli.input.ScoredLogbook;
import stridetally.cli.input.Sources;
import stridetally.cli.options.AsOfOption;
import stridetally.cli.options.ForecastOption;
import stridetally.cli.options.KnownOption;
import stridetally.cli.options.PageOutputOptions;
import stridetally.cli.options.PathArgument;
import stridetally.cli.options.ReportFor;
import stridetally.cli.options.ReportOptions;
import stridetally.cli.options.RulesOption;
import stridetally.logbook.Logbook;
import stridetally.model.StudentCode;
import stridetally.problem.InputRefused;

/**
 * {@code report}: the documents of a period, for the team, for families, or for the caseload at a glance; the year of a
 * student, the caseload in groups, and a student's record.
 */
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
                                + " HTML. For the caseload: every goal in one table, those that need attention first. The"
                                + " annual review, the groups and the record are of the year up to --as-of unless --from and"
                                + " --to are given. With --out the documents are files, and reports.csv notes what the team"
                                + " was told.")
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
        Set<ReportFor> kinds = about.whom();
        if (kinds.size() > 1 && about.folder().isEmpty()) {
            throw new InputRefused("several kinds of documents go into a folder: add --out DIR");
        }
        Logbook book = Logbook.open(logbook.path(), known.typed());
        ReportRequest.Days days = ReportRequest.days(book.settings(), about, asOf, console.clock());
        Map<StudentCode, String> names = about.names() ? book.names() : Map.of();
        Documents documents = new Documents(console, about, output, names, days);
        if (kinds.contains(ReportFor.RECORD)) {
            documents.records(book);
        }
        if (!kinds.equals(Set.of(ReportFor.RECORD))) {
            LocalDate day = days.asOf();
            ScoredLogbook scored = new Sources(console)
                    .logbook(book, logbook.path(), day, forecast.way())
                    .beside(rules.rules());
            documents.of(scored, kinds, new Documents.Journal(logbook.path(), asOf.journalTime(console.clock())));
        }
        return ExitCodes.DONE;
    }
}
