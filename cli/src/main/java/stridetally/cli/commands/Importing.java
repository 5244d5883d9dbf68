package stridetally.cli.commands;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Function;
import stridetally.cli.Console;
import stridetally.cli.ExitCodes;
import stridetally.cli.commands.Tables.Table;
import stridetally.cli.files.Content;
import stridetally.cli.input.OpenLogbook;
import stridetally.cli.options.AsOfOption;
import stridetally.cli.options.Format;
import stridetally.cli.options.ImportKind;
import stridetally.cli.options.ImportOptions;
import stridetally.cli.options.OutputOptions;
import stridetally.cli.options.WritingOptions;
import stridetally.cli.output.GoalCheckTable;
import stridetally.cli.output.ImportTable;
import stridetally.ingest.FormMapping;
import stridetally.ingest.KnownTrials;
import stridetally.ingest.LogRules;
import stridetally.ingest.NamesToCodes;
import stridetally.logbook.EntryKind;
import stridetally.logbook.FormFile;
import stridetally.logbook.FormText;
import stridetally.logbook.Forms;
import stridetally.logbook.ImportRun;
import stridetally.logbook.ImportedFile;
import stridetally.logbook.KeptRun;
import stridetally.logbook.Logbook;
import stridetally.logbook.LogbookWriter;
import stridetally.logbook.TrialImport;
import stridetally.logbook.UsedForm;
import stridetally.model.Level;
import stridetally.problem.InputRefused;
import stridetally.report.GoalCheck;

/** Files into a logbook: the steps of {@code import FILE...}. */
final class Importing {
    private final Console console;
    private final Path folder;
    private final ImportOptions how;
    private final WritingOptions writing;
    private final AsOfOption asOf;
    private Optional<FormMapping> given = Optional.empty();

    Importing(Console console, Path folder, ImportOptions how, WritingOptions writing, AsOfOption asOf) {
        this.console = console;
        this.folder = folder;
        this.how = how;
        this.writing = writing;
        this.asOf = asOf;
    }

    int run(List<Path> files, OutputOptions output) {
        given = how.columns().map(path -> FormFile.read(path, path.toString()));
        Logbook before = how.begin() ? Logbook.plan(folder, idOf(folder)) : Logbook.open(folder, Optional.empty());
        OpenLogbook open = OpenLogbook.of(before);
        Tables found = new Tables(console, how, rules(open), forms(open), names(before), drafts(output));
        List<Table> tables = found.of(files, given);
        if (tables.size() > 1 || how.begin()) {
            check(tables, before);
        }
        if (how.strict() && found.leftOut()) {
            throw new InputRefused("--strict: a recording, or a part of one, could not be used, so nothing was taken");
        }
        if (how.strict()) {
            refuseAnySetAside(read(tables, before, Optional.empty()));
        }
        List<ImportedFile> done = how.dryRun() ? read(tables, before, Optional.empty()) : write(tables);
        done.forEach(this::tell);
        write(tables, done, output);
        boolean setAside = found.leftOut() || done.stream().anyMatch(file -> file.setAside() > 0);
        return setAside ? ExitCodes.SET_ASIDE : ExitCodes.DONE;
    }

    /** Where a mapping to be filled in goes, when one was asked for. */
    private Optional<Consumer<FormMapping>> drafts(OutputOptions output) {
        return how.dryRun() && isMapping(output)
                ? Optional.of(draft -> {
                    output.write(console, Content.text(out -> out.append(FormText.toBeFilledIn(draft))));
                    console.note("a mapping to be filled in is written to "
                            + output.target().orElseThrow());
                })
                : Optional.empty();
    }

    private static boolean isMapping(OutputOptions output) {
        return output.target().map(path -> path.toString().endsWith(".toml")).orElse(false);
    }

    /** A dry run into a TOML file writes the mapping that was used. */
    private static Content mapping(List<ImportedFile> done) {
        UsedForm form = done.stream()
                .flatMap(file -> file.form().stream())
                .findFirst()
                .orElseThrow(() -> new InputRefused("a mapping is written of a log of trials, and none was read"));
        return Content.text(out -> out.append(FormText.of(form.mapping())));
    }

    private List<ImportedFile> write(List<Table> tables) {
        if (how.begin()) {
            Logbook.create(folder, idOf(folder));
        }
        try (LogbookWriter writer = LogbookWriter.open(folder, asOf.journalTime(console.clock()))) {
            return read(tables, Logbook.open(folder, Optional.empty()), Optional.of(writer));
        }
    }

    /** Of several files none is taken when one cannot be used, and no new logbook is left behind. */
    private void check(List<Table> tables, Logbook book) {
        KeptRun kept = new KeptRun(Optional.empty(), book, names(book));
        for (Table table : tables) {
            table.kind().kept().ifPresent(kind -> kept.take(kind, table.text()));
        }
        ImportRun logs = logs(OpenLogbook.of(kept.book()), kind -> new KnownTrials(), Optional.empty());
        for (Table table : tables) {
            table.kind().entry().ifPresent(kind -> logs.check(kind, table.text()));
        }
    }

    /** Hand-kept tables come first, so that a roster or a scale of help words is known to the logs beside it. */
    private List<ImportedFile> read(List<Table> tables, Logbook book, Optional<LogbookWriter> writer) {
        List<ImportedFile> done = new ArrayList<>();
        KeptRun kept = new KeptRun(writer, book, names(book));
        for (Table table : tables) {
            table.kind().kept().ifPresent(kind -> done.add(kept.take(kind, table.text())));
        }
        OpenLogbook open = OpenLogbook.of(kept.book());
        if (!done.isEmpty() && (writer.isPresent() || how.dryRun())) {
            KeptRun.across(open.problems()).forEach(problem -> console.warn(problem.sentence()));
        }
        if (done.size() < tables.size()) {
            ImportRun logs = logs(open, open::knownTrials, writer);
            for (Table table : tables) {
                if (table.kind() == ImportKind.TRIALS) {
                    done.add(how.secondObserver() ? logs.secondObserver(table.text()) : logs.trials(table.text()));
                } else if (table.kind() == ImportKind.VISITS) {
                    done.add(logs.visits(table.text()));
                }
            }
        }
        return done;
    }

    private Optional<NamesToCodes> names(Logbook book) {
        return how.names() ? Optional.of(new NamesToCodes(book.names())) : Optional.empty();
    }

    private ImportRun logs(OpenLogbook open, Function<EntryKind, KnownTrials> known, Optional<LogbookWriter> writer) {
        TrialImport.Clash clash = how.replace() ? TrialImport.Clash.REPLACE : TrialImport.Clash.SET_ASIDE;
        return new ImportRun(
                writer, open.book(), known, rules(open), clash, how.label(), forms(open), names(open.book()));
    }

    private Forms forms(OpenLogbook open) {
        return new Forms(given, open.book().forms());
    }

    private LogRules rules(OpenLogbook open) {
        Optional<NamesToCodes> names = names(open.book());
        return new LogRules(
                open.caseload().settings(),
                open.catalogue(),
                names.isPresent() ? Optional.of(open.codes(names.get())) : open.roster(),
                asOf.day(console.clock()),
                writing.order(),
                writing.decimals(),
                how.blankHelp().map(word -> help(word, open)),
                open.caseload().settings().id());
    }

    /** Goals by themselves are answered with how they are written; beside logs that is a sentence. */
    private void write(List<Table> tables, List<ImportedFile> done, OutputOptions output) {
        if (how.dryRun() && isMapping(output)) {
            output.write(console, mapping(done));
            return;
        }
        Format format = output.format(Format.MARKDOWN);
        List<ImportKind> kinds = tables.stream().map(Table::kind).toList();
        if (!kinds.contains(ImportKind.GOALS) || how.dryRun()) {
            output.write(console, ImportTable.content(done, format));
            return;
        }
        List<GoalCheck> checks = GoalCheckTable.of(folder, asOf.day(console.clock()));
        console.note(GoalCheckTable.sentence(checks));
        if (kinds.stream().allMatch(kind -> kind == ImportKind.GOALS)) {
            done.forEach(file -> console.note(ImportTable.sentence(file)));
            output.write(console, GoalCheckTable.content(checks, format));
        } else {
            console.note("each part of each goal: import --check-goals --logbook " + folder);
            output.write(console, ImportTable.content(done, format));
        }
    }

    private void tell(ImportedFile file) {
        console.tell(file.problems());
        file.notes().forEach(note -> console.note(file.name() + ": " + note));
        if (how.dryRun()) {
            file.form().ifPresent(form -> form.columns().forEach(column -> console.note(file.name() + ": " + column)));
        }
    }

    private static void refuseAnySetAside(List<ImportedFile> tried) {
        long setAside = tried.stream().mapToLong(ImportedFile::setAside).sum();
        if (setAside > 0) {
            String first = tried.stream()
                    .filter(file -> file.setAside() > 0)
                    .flatMap(file -> file.problems().sentences().stream())
                    .findFirst()
                    .orElse("");
            throw new InputRefused("--strict: " + setAside + (setAside == 1 ? " row" : " rows")
                    + " would be set aside, so nothing was taken; the first: " + first);
        }
    }

    private static Level help(String word, OpenLogbook open) {
        return open.caseload()
                .settings()
                .help()
                .find(word)
                .orElseThrow(() -> new InputRefused("--blank-help: \"" + word + "\" is not a word of the help scale: "
                        + String.join(", ", open.caseload().settings().help().words())));
    }

    private static String idOf(Path folder) {
        Path name = folder.toAbsolutePath().normalize().getFileName();
        return name == null ? "logbook" : name.toString();
    }
}
