package stridetally.cli.commands;

import java.nio.file.Path;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import stridetally.cli.Console;
import stridetally.cli.files.Content;
import stridetally.cli.files.OutputFolder;
import stridetally.cli.files.Overwrite;
import stridetally.cli.input.ReportRequest;
import stridetally.cli.input.ScoredLogbook;
import stridetally.cli.input.TriesBehind;
import stridetally.cli.options.PageFormat;
import stridetally.cli.options.PageOutputOptions;
import stridetally.cli.options.ReportFor;
import stridetally.cli.options.ReportOptions;
import stridetally.cli.output.AnnualOutput;
import stridetally.cli.output.GroupOutput;
import stridetally.cli.output.LetterOutput;
import stridetally.cli.output.RecordOutput;
import stridetally.cli.output.ReportOutput;
import stridetally.cli.output.ToldLines;
import stridetally.logbook.Entry;
import stridetally.logbook.Logbook;
import stridetally.logbook.LogbookWriter;
import stridetally.logbook.StudentRecord;
import stridetally.model.StudentCode;
import stridetally.problem.InputRefused;
import stridetally.report.AnnualReview;
import stridetally.report.CaseloadReport;
import stridetally.report.FamilyLetter;
import stridetally.report.GroupReport;
import stridetally.report.PageDetail;
import stridetally.report.ReportInput;
import stridetally.report.TeamReport;

/** The documents of one run of {@code report}: each kind is made and written to its place. */
final class Documents {
    private final Console console;
    private final ReportOptions about;
    private final PageOutputOptions output;
    private final Map<StudentCode, String> names;
    private final ReportRequest.Days days;
    private final Optional<OutputFolder> folder;
    private final PageFormat format;

    Documents(
            Console console,
            ReportOptions about,
            PageOutputOptions output,
            Map<StudentCode, String> names,
            ReportRequest.Days days) {
        this.console = console;
        this.about = about;
        this.output = output;
        this.names = names;
        this.days = days;
        this.folder =
                about.folder().map(path -> OutputFolder.open(path, about.force() ? Overwrite.FORCE : Overwrite.REFUSE));
        this.format = output.format(PageFormat.MARKDOWN);
    }

    /** Where what was told is noted. */
    record Journal(Path logbook, OffsetDateTime now) {}

    void of(ScoredLogbook scored, Set<ReportFor> kinds, Journal journal) {
        Predicate<StudentCode> shown = shown(scored);
        boolean periods = kinds.stream().anyMatch(kind -> !kind.ofTheYear());
        if (periods) {
            ReportInput input = ReportRequest.of(scored, days.period(), names);
            if (kinds.contains(ReportFor.CASELOAD)) {
                caseload(input, shown);
            }
            if (kinds.contains(ReportFor.TEAM)) {
                team(input, scored, shown, journal);
            }
            if (kinds.contains(ReportFor.FAMILY)) {
                family(input, scored, shown);
            }
        }
        if (kinds.contains(ReportFor.REVIEW) || kinds.contains(ReportFor.GROUPS)) {
            year(ReportRequest.of(scored, days.ofTheYear(), names), scored, kinds, shown);
        }
    }

    /** The record of each student that was named; it needs no goal and no figure. */
    void records(Logbook book) {
        if (about.students().isEmpty() || folder.isEmpty()) {
            throw new InputRefused(
                    "a record is of one student and goes into a folder: add --student CODE and --out DIR");
        }
        int last = book.entries().stream().mapToInt(Entry::number).max().orElse(0);
        ReportInput.Stamp stamp = new ReportInput.Stamp(book.settings().id(), last);
        for (String code : about.students()) {
            StudentRecord record = book.record(new StudentCode(code));
            if (record.parts().stream().allMatch(part -> part.rows().isEmpty())) {
                throw new InputRefused("the logbook holds nothing of a student with the code " + code);
            }
            Optional<String> name = Optional.ofNullable(names.get(record.code()));
            RecordOutput.write(record, stamp, name, folder.get(), format);
        }
        console.note("a record is confidential: whom it goes to is for the family, the school and the law to say");
    }

    private void caseload(ReportInput input, Predicate<StudentCode> shown) {
        CaseloadReport report = CaseloadReport.of(input, CaseloadReport.QUIET_DAYS, shown);
        write("caseload", ReportOutput.caseload(report, format));
    }

    private void year(ReportInput input, ScoredLogbook scored, Set<ReportFor> kinds, Predicate<StudentCode> shown) {
        if (kinds.contains(ReportFor.REVIEW)) {
            List<AnnualReview> reviews =
                    AnnualReview.all(input, scored.open().book().reports(), shown);
            if (reviews.isEmpty()) {
                throw new InputRefused("no review to write: no student shown has a goal in these days");
            }
            PageDetail detail = about.explain() ? PageDetail.EVERYTHING : PageDetail.SUMMARY;
            if (folder.isPresent()) {
                AnnualOutput.apart(reviews, detail, folder.get(), format);
            } else {
                output.write(console, AnnualOutput.together(reviews, detail, format));
            }
        }
        if (kinds.contains(ReportFor.GROUPS)) {
            write(
                    "groups",
                    GroupOutput.of(GroupReport.of(input, days.ofTheYear().days(), shown), format));
        }
    }

    private void write(String name, Content content) {
        if (folder.isPresent()) {
            folder.get().write(name + format.extension(), content);
        } else {
            output.write(console, content);
        }
    }

    private void family(ReportInput input, ScoredLogbook scored, Predicate<StudentCode> shown) {
        if (format != PageFormat.MARKDOWN && format != PageFormat.HTML) {
            throw new InputRefused("a letter is for people: --format markdown or html");
        }
        List<FamilyLetter> letters =
                LetterOutput.letters(input, scored.open().book().contact(), about.language(), shown, console);
        if (folder.isPresent()) {
            LetterOutput.apart(letters, folder.get(), format);
            console.note(letters.size() + " letters; read each before it goes out");
        } else {
            output.write(console, LetterOutput.together(letters, format));
        }
    }

    private void team(ReportInput input, ScoredLogbook scored, Predicate<StudentCode> shown, Journal journal) {
        TriesBehind.Detail detail = about.explain() ? TriesBehind.Detail.EVERY_TRY : TriesBehind.Detail.COUNTS;
        List<TeamReport> documents = ToldLines.withPast(ReportOutput.team(input, shown), input, scored, detail);
        if (folder.isPresent()) {
            ReportOutput.apart(documents, folder.get(), format);
            try (LogbookWriter writer = LogbookWriter.open(journal.logbook(), journal.now())) {
                writer.appendReports(ToldLines.of(documents, input));
            }
            console.note(documents.size() + " documents; reports.csv of the logbook notes what was told");
        } else {
            output.write(console, ReportOutput.together(documents, format));
        }
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
