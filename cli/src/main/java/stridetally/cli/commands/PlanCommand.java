package stridetally.cli.commands;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.function.Supplier;
import picocli.CommandLine.Model.CommandSpec;
import stridetally.cli.Console;
import stridetally.cli.ExitCodes;
import stridetally.cli.Subcommand;
import stridetally.cli.files.Content;
import stridetally.cli.files.OutputFolder;
import stridetally.cli.files.Overwrite;
import stridetally.cli.input.PracticeInput;
import stridetally.cli.options.AsOfOption;
import stridetally.cli.options.KnownOption;
import stridetally.cli.options.PageFormat;
import stridetally.cli.options.PageOutputOptions;
import stridetally.cli.options.PathArgument;
import stridetally.cli.options.PlanOptions;
import stridetally.cli.output.ContactWords;
import stridetally.cli.output.PlanOutput;
import stridetally.logbook.Logbook;
import stridetally.measures.FamilyWords;
import stridetally.model.Caseload;
import stridetally.model.Contact;
import stridetally.model.StudentCode;
import stridetally.plan.HomeSheet;
import stridetally.plan.LogSheet;
import stridetally.plan.StudentPlan;
import stridetally.report.HomeSheetPages;
import stridetally.report.HomeSheetPages.Page;

/** {@code plan}: what to practise next, home sheets, blank logs. */
public final class PlanCommand implements Subcommand {
    private final Console console;

    private final PathArgument logbook = PathArgument.needed("LOGBOOK", "The logbook.");
    private final PlanOptions about = new PlanOptions();
    private final KnownOption known = new KnownOption();
    private final AsOfOption asOf = new AsOfOption();
    private final PageOutputOptions output = new PageOutputOptions();

    public PlanCommand(Console console) {
        this.console = console;
    }

    @Override
    public void declare(CommandSpec spec) {
        spec.usageMessage()
                .description(
                        "next: for the therapist, each rung of the ladder of line and balance tasks, ready or not and why."
                                + " home: a sheet a student in English and Spanish, only of rungs that approved.csv allows"
                                + " on the day and that no precaution bars; none where precautions are blank or other."
                                + " log: blank logs of the coming week, a school and weekday each, that import takes back."
                                + " The treating therapist, medical orders and school rules come before any of them.")
                .footer("  stridetally plan samples/out/logbook --as-of 2027-03-05 --for home");
        logbook.addTo(spec);
        about.addTo(spec);
        known.addTo(spec);
        asOf.addTo(spec);
        output.addTo(spec);
    }

    @Override
    public Integer call() {
        Logbook book = Logbook.open(logbook.path(), known.typed());
        LocalDate day = asOf.day(console.clock());
        PracticeInput input = PracticeInput.of(book, about.students(), day, console);
        switch (about.what()) {
            case NEXT -> next(input);
            case HOME -> home(input, book);
            case LOG -> log(input, book.contact());
        }
        return ExitCodes.DONE;
    }

    private void next(PracticeInput input) {
        PageFormat format = output.format(PageFormat.MARKDOWN);
        List<StudentPlan> plans = input.plans(console);
        write(PlanOutput.plans(plans, format), () -> PlanOutput.plansApart(plans, format));
    }

    private void home(PracticeInput input, Logbook book) {
        PageFormat format = output.format(PageFormat.MARKDOWN);
        Map<StudentCode, String> names = about.names() ? book.names() : Map.of();
        Contact contact = book.contact();
        ContactWords.tellLacking(contact, FamilyWords.languages(), console);
        List<Page> pages = PlanOutput.pages(input.homeSheets(console), names, contact);
        write(PlanOutput.sheets(pages, format), () -> PlanOutput.sheetsApart(pages, format));
        for (HomeSheet sheet : HomeSheetPages.ofMorePages(pages)) {
            console.note("the home sheet of " + sheet.student().code().text() + " has "
                    + sheet.rungs().size() + " tasks and goes on to a second page; fewer may be better");
        }
        console.note(pages.size() + (pages.size() == 1 ? " home sheet" : " home sheets")
                + "; read and show each before it goes home");
    }

    private void log(PracticeInput input, Contact contact) {
        Caseload caseload = input.open().caseload();
        if (output.isWorkbook()) {
            output.write(console, PlanOutput.workbook(input.logs(console), caseload.settings()));
            return;
        }
        PageFormat format = output.format(PageFormat.CSV);
        List<LogSheet> sheets = input.logs(console);
        write(
                PlanOutput.logs(sheets, caseload, contact, format),
                () -> PlanOutput.logsApart(sheets, caseload, contact));
    }

    private void write(Content together, Supplier<Map<String, Content>> apart) {
        if (about.folder().isEmpty()) {
            output.write(console, together);
            return;
        }
        Overwrite overwrite = about.force() ? Overwrite.FORCE : Overwrite.REFUSE;
        OutputFolder folder = OutputFolder.open(about.folder().get(), overwrite);
        apart.get().forEach(folder::write);
    }
}
