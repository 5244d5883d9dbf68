package stridetally.cli.commands;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import stridetally.cli.Console;
import stridetally.cli.ExitCodes;
import stridetally.cli.files.FileSource;
import stridetally.cli.input.OpenLogbook;
import stridetally.cli.options.AsOfOption;
import stridetally.cli.options.Format;
import stridetally.cli.options.ImportKind;
import stridetally.cli.options.ImportOptions;
import stridetally.cli.options.OutputOptions;
import stridetally.cli.options.WritingOptions;
import stridetally.cli.output.GoalCheckTable;
import stridetally.cli.output.ImportTable;
import stridetally.ingest.KnownTrials;
import stridetally.ingest.LogRules;
import stridetally.ingest.NamesToCodes;
import stridetally.ingest.TextSource;
import stridetally.logbook.EntryKind;
import stridetally.logbook.ImportRun;
import stridetally.logbook.ImportedFile;
import stridetally.logbook.KeptKind;
import stridetally.logbook.KeptRun;
import stridetally.logbook.Logbook;
import stridetally.logbook.LogbookWriter;
import stridetally.logbook.TableGuess;
import stridetally.logbook.TrialImport;
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

    Importing(Console console, Path folder, ImportOptions how, WritingOptions writing, AsOfOption asOf) {
        this.console = console;
        this.folder = folder;
        this.how = how;
        this.writing = writing;
        this.asOf = asOf;
    }

    int run(List<Path> files, OutputOptions output) {
        List<TextSource> sources =
                files.stream().map(FileSource::new).map(TextSource::of).toList();
        List<ImportKind> kinds = sources.stream().map(this::kind).toList();
        Logbook before = how.begin() ? Logbook.plan(folder, idOf(folder)) : Logbook.open(folder, Optional.empty());
        if (files.size() > 1 || how.begin()) {
            check(sources, kinds, before);
        }
        if (how.strict()) {
            refuseAnySetAside(read(sources, kinds, before, Optional.empty()));
        }
        List<ImportedFile> done = how.dryRun() ? read(sources, kinds, before, Optional.empty()) : write(sources, kinds);
        done.forEach(this::tell);
        write(kinds, done, output);
        return done.stream().anyMatch(file -> file.setAside() > 0) ? ExitCodes.SET_ASIDE : ExitCodes.DONE;
    }

    private List<ImportedFile> write(List<TextSource> sources, List<ImportKind> kinds) {
        if (how.begin()) {
            Logbook.create(folder, idOf(folder));
        }
        try (LogbookWriter writer = LogbookWriter.open(folder, asOf.journalTime(console.clock()))) {
            return read(sources, kinds, Logbook.open(folder, Optional.empty()), Optional.of(writer));
        }
    }

    /** Of several files none is taken when one cannot be used, and no new logbook is left behind. */
    private void check(List<TextSource> sources, List<ImportKind> kinds, Logbook book) {
        KeptRun tables = new KeptRun(Optional.empty(), book, names(book));
        ImportRun logs = logs(OpenLogbook.of(book), kind -> new KnownTrials(), Optional.empty());
        for (int file = 0; file < sources.size(); file++) {
            TextSource source = sources.get(file);
            Optional<KeptKind> table = kinds.get(file).kept();
            table.ifPresent(kind -> tables.check(kind, source));
            kinds.get(file).entry().ifPresent(kind -> logs.check(kind, source));
        }
    }

    /** Hand-kept tables come first, so that a roster or a scale of help words is known to the logs beside it. */
    private List<ImportedFile> read(
            List<TextSource> sources, List<ImportKind> kinds, Logbook book, Optional<LogbookWriter> writer) {
        List<ImportedFile> done = new ArrayList<>();
        KeptRun tables = new KeptRun(writer, book, names(book));
        for (int file = 0; file < sources.size(); file++) {
            Optional<KeptKind> table = kinds.get(file).kept();
            if (table.isPresent()) {
                done.add(tables.take(table.get(), sources.get(file)));
            }
        }
        OpenLogbook open = OpenLogbook.of(tables.book());
        if (!done.isEmpty() && (writer.isPresent() || how.dryRun())) {
            KeptRun.across(open.problems()).forEach(problem -> console.warn(problem.sentence()));
        }
        if (done.size() < sources.size()) {
            ImportRun logs = logs(open, open::knownTrials, writer);
            for (int file = 0; file < sources.size(); file++) {
                if (kinds.get(file) == ImportKind.TRIALS) {
                    done.add(
                            how.secondObserver()
                                    ? logs.secondObserver(sources.get(file))
                                    : logs.trials(sources.get(file)));
                } else if (kinds.get(file) == ImportKind.VISITS) {
                    done.add(logs.visits(sources.get(file)));
                }
            }
        }
        return done;
    }

    private Optional<NamesToCodes> names(Logbook book) {
        return how.names() ? Optional.of(new NamesToCodes(book.names())) : Optional.empty();
    }

    private ImportRun logs(OpenLogbook open, Function<EntryKind, KnownTrials> known, Optional<LogbookWriter> writer) {
        Optional<NamesToCodes> names = names(open.book());
        LogRules rules = new LogRules(
                open.caseload().settings(),
                open.catalogue(),
                names.isPresent() ? Optional.of(open.codes(names.get())) : open.roster(),
                asOf.day(console.clock()),
                writing.order(),
                writing.decimals(),
                how.blankHelp().map(word -> help(word, open)),
                open.caseload().settings().id());
        TrialImport.Clash clash = how.replace() ? TrialImport.Clash.REPLACE : TrialImport.Clash.SET_ASIDE;
        return new ImportRun(writer, open.book(), known, rules, clash, how.label(), names);
    }

    private ImportKind kind(TextSource source) {
        return how.kind()
                .orElseGet(() -> ImportKind.valueOf(TableGuess.of(source).toUpperCase(java.util.Locale.ROOT)));
    }

    /** Goals by themselves are answered with how they are written; beside logs that is a sentence. */
    private void write(List<ImportKind> kinds, List<ImportedFile> done, OutputOptions output) {
        Format format = output.format(Format.MARKDOWN);
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
