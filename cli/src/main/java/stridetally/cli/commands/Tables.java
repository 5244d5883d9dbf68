package stridetally.cli.commands;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Consumer;
import stridetally.cli.Console;
import stridetally.cli.files.FileSource;
import stridetally.cli.input.ManifestMeasures;
import stridetally.cli.input.RecordingFiles;
import stridetally.cli.options.ImportKind;
import stridetally.cli.options.ImportOptions;
import stridetally.ingest.FormMapping;
import stridetally.ingest.InputTables;
import stridetally.ingest.InputTables.SheetNames;
import stridetally.ingest.LogRules;
import stridetally.ingest.NamesToCodes;
import stridetally.ingest.TextSource;
import stridetally.logbook.Forms;
import stridetally.logbook.TableGuess;
import stridetally.problem.InputRefused;
import stridetally.recordings.RecordingKind;

/** The tables of the files of an import, each with what it holds. */
final class Tables {
    private final Console console;
    private final ImportOptions how;
    private final LogRules rules;
    private final Forms forms;
    private final Optional<NamesToCodes> names;
    private final Optional<Consumer<FormMapping>> draftWanted;
    private boolean leftOut;

    /** One table: a file of text, or a sheet of a workbook. */
    record Table(TextSource text, ImportKind kind) {}

    /** Over what is known of a logbook; {@code draftWanted} takes a mapping when the headings of no table are understood. */
    Tables(
            Console console,
            ImportOptions how,
            LogRules rules,
            Forms forms,
            Optional<NamesToCodes> names,
            Optional<Consumer<FormMapping>> draftWanted) {
        this.draftWanted = draftWanted;
        this.console = console;
        this.how = how;
        this.rules = rules;
        this.forms = forms;
        this.names = names;
    }

    /** The tables in order. Sheets without known headings are told and left out, as long as one has them. */
    List<Table> of(List<Path> files, Optional<FormMapping> given) {
        List<Table> tables = new ArrayList<>();
        for (Path file : files) {
            Optional<String> sheet = how.sheet().or(() -> given.flatMap(FormMapping::sheet));
            SheetNames shown = names.<SheetNames>map(one -> one::sheet).orElse(SheetNames.AS_WRITTEN);
            InputTables read = InputTables.of(new FileSource(file), sheet, shown);
            String path = names.map(one -> one.coded(file.toString())).orElse(file.toString());
            read.hidden().forEach(name -> console.note(path + ": sheet \"" + name + "\" is hidden and was not read"));
            tables.addAll(isManifest(read) ? List.of(manifest(file, read.only())) : known(read));
        }
        return tables;
    }

    /** Whether a recording, or a part of one, could not be used. */
    boolean leftOut() {
        return leftOut;
    }

    private boolean isManifest(InputTables read) {
        return how.kind()
                .map(kind -> kind == ImportKind.MANIFEST)
                .orElseGet(() -> recordings(read.tables().get(0))
                        .map(kind -> kind == RecordingKind.MANIFEST)
                        .orElse(false));
    }

    private static Optional<RecordingKind> recordings(TextSource text) {
        return text.sheet().isPresent() ? Optional.empty() : RecordingFiles.guess(text.bytes());
    }

    private Table manifest(Path file, TextSource text) {
        ManifestMeasures measures = ManifestMeasures.of(file, text, rules.catalogue());
        console.tell(measures.problems());
        leftOut |= measures.leftOut();
        return new Table(measures.log(), ImportKind.TRIALS);
    }

    private List<Table> known(InputTables read) {
        List<Table> known = new ArrayList<>();
        List<TextSource> others = new ArrayList<>();
        for (TextSource text : read.tables()) {
            TextSource coded = names.map(one -> one.coded(text)).orElse(text);
            kind(coded)
                    .filter(kind -> !toBeDrafted(kind, coded))
                    .ifPresentOrElse(kind -> known.add(new Table(text, kind)), () -> others.add(coded));
        }
        if (known.isEmpty()) {
            TextSource first = others.get(0);
            if (recordings(first).isPresent()) {
                throw new InputRefused(first.bytes().name()
                        + ": a recording does not say whose it is; name it in a manifest with the columns file, kind,"
                        + " student, date and import that");
            }
            throw draftWanted.isPresent() ? drafted(first) : TableGuess.refusal(first, rules, forms);
        }
        others.forEach(text -> console.note(text.bytes().name() + ": no headings we know; the sheet was not read"));
        return known;
    }

    /** Hands the mapping over, and says what to do with it. */
    private InputRefused drafted(TextSource text) {
        Optional<FormMapping> draft = TableGuess.draft(text, rules, forms);
        if (draft.isEmpty()) {
            return TableGuess.refusal(text, rules, forms);
        }
        draftWanted.ifPresent(wanted -> wanted.accept(draft.get()));
        return new InputRefused(text.bytes().name()
                + ": its headings do not say all that a log needs; fill in the mapping that was written and import with"
                + " --columns and it");
    }

    private boolean toBeDrafted(ImportKind kind, TextSource text) {
        return draftWanted.isPresent() && kind == ImportKind.TRIALS && !TableGuess.isUnderstood(text, rules, forms);
    }

    private Optional<ImportKind> kind(TextSource text) {
        return how.kind()
                .or(() -> TableGuess.of(text, rules, forms)
                        .map(word -> ImportKind.valueOf(word.toUpperCase(Locale.ROOT))));
    }
}
