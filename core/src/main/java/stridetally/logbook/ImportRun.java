package stridetally.logbook;

import java.io.IOException;
import java.io.Reader;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import stridetally.ingest.ColumnSamples;
import stridetally.ingest.FirstRows;
import stridetally.ingest.FormMapping;
import stridetally.ingest.KnownTrials;
import stridetally.ingest.LogRules;
import stridetally.ingest.NamesToCodes;
import stridetally.ingest.TextSource;
import stridetally.ingest.TrialCells;
import stridetally.ingest.TrialColumn;
import stridetally.ingest.TrialLog;
import stridetally.problem.InputRefused;
import stridetally.problem.ProblemTally;

/**
 * Brings files into a logbook one after another, each as an entry of its own. Without a writer it is a dry run: all is
 * read and told, and nothing is written.
 */
public final class ImportRun {
    private final Optional<LogbookWriter> writer;
    private final Function<EntryKind, KnownTrials> knownOf;
    private final Map<EntryKind, KnownTrials> knownTrials = new EnumMap<>(EntryKind.class);
    private final KnownVisits knownVisits;
    private final Logbook book;
    private final LogRules rules;
    private final TrialImport.Clash clash;
    private final Forms forms;
    private final Optional<NamesToCodes> names;
    private final ImportNotes notes;
    private final ImportedEntries entries;

    /**
     * Over one logbook.
     *
     * @param writer empty for a dry run
     * @param book as it stood when the writer took the lock
     * @param knownOf the trials that stand, by the kind of their entries
     * @param forms how logs of trials are laid out, where somebody said it
     * @param names when names are to be turned into codes; the roster of the rules then has every code
     */
    public ImportRun(
            Optional<LogbookWriter> writer,
            Logbook book,
            Function<EntryKind, KnownTrials> knownOf,
            LogRules rules,
            TrialImport.Clash clash,
            String label,
            Forms forms,
            Optional<NamesToCodes> names) {
        this.writer = writer;
        this.knownOf = knownOf;
        this.book = book;
        this.knownVisits = KnownVisits.of(book);
        this.rules = rules;
        this.clash = clash;
        this.forms = forms;
        this.names = names;
        this.notes = new ImportNotes(rules, names);
        this.entries = new ImportedEntries(
                writer, book, names.map(one -> one.coded(label)).orElse(label));
    }

    /** One log of trials. */
    public ImportedFile trials(TextSource text) {
        return trials(EntryKind.TRIALS, text);
    }

    /** One log of trials as another observer saw them, for agreement only. */
    public ImportedFile secondObserver(TextSource text) {
        return trials(EntryKind.SECOND_OBSERVER, text);
    }

    private ImportedFile trials(EntryKind asked, TextSource written) {
        TextSource original = coded(written);
        MendedFile file = MendedFile.of(original, Mends.of(book, entries.closed()));
        if (file.rows() == 0) {
            return ImportedEntries.nothingLeft(asked, original, file.mends());
        }
        EntryKind kind = file.kind().orElse(asked);
        String sourceHash = ImportedEntries.hash(original);
        refuseOtherKind(original, kind, sourceHash);
        FormMapping mapping = mapping(file);
        TrialLog log = TrialLog.open(file.text(), rules, mapping);
        List<String> headings = log.form().keptHeadings();
        Optional<Nameless> nameless = nameless(log.form().keptColumn(TrialColumn.STUDENT));
        EarlierLook.begin(file, kind, original, sourceHash, headings, nameless);
        EarlierLook.at(log, file.mends());
        Optional<EntryDraft> draft = writer.map(one -> one.draft(kind, TrialCells.HEADINGS, headings));
        try {
            ColumnSamples samples = new ColumnSamples();
            TrialImport.Outcome outcome = new TrialImport(
                            log,
                            known(kind),
                            clash,
                            entries.next(),
                            Destinations.of(draft, nameless),
                            samples,
                            file.mends())
                    .run();
            UsedForm used = UsedForm.of(log, mapping, samples);
            ImportedEntries.Read read = new ImportedEntries.Read(
                    kind,
                    original,
                    sourceHash,
                    ImportedEntries.Tally.of(outcome),
                    outcome.superseded(),
                    outcome.problems(),
                    notes.of(original, log, mapping, outcome));
            ImportedFile done = entries.enter(read, file.mends(), draft);
            return done.with(used, saveForm(used));
        } finally {
            draft.ifPresent(EntryDraft::discard);
        }
    }

    /** One attendance log. */
    public ImportedFile visits(TextSource written) {
        TextSource original = coded(written);
        String name = original.bytes().name();
        MendedFile file = MendedFile.of(original, Mends.of(book, entries.closed()));
        if (file.rows() == 0) {
            return ImportedEntries.nothingLeft(EntryKind.VISITS, original, file.mends());
        }
        TextSource text = file.text();
        String sourceHash = ImportedEntries.hash(original);
        ProblemTally problems = new ProblemTally();
        List<String> headings = visitHeadings(text);
        Optional<Nameless> nameless =
                nameless(headings.stream().map(KeptTable::fold).toList().indexOf("student"));
        EarlierLook.begin(file, EntryKind.VISITS, original, sourceHash, headings, nameless);
        EarlierLook.at(text, original.bytes().shortName(), file.mends());
        Optional<EntryDraft> draft = writer.map(one -> one.draft(EntryKind.VISITS, EntryKind.VISIT_COLUMNS, headings));
        try (Reader reader = text.open()) {
            VisitImport visits = new VisitImport(
                    name,
                    original.bytes().shortName(),
                    rules,
                    knownVisits,
                    Destinations.of(draft, nameless),
                    problems,
                    file.mends());
            VisitLog.Count count = VisitLog.read(reader, name, visits);
            ImportedEntries.Tally tally = new ImportedEntries.Tally(
                    count.rows(), visits.taken(), visits.known(), visits.setAside(), count.blank());
            ImportedEntries.Read read = new ImportedEntries.Read(
                    EntryKind.VISITS, original, sourceHash, tally, List.of(), problems, notes.of(original));
            ImportedFile done = entries.enter(read, file.mends(), draft);
            visits.remember();
            return done;
        } catch (IOException failed) {
            throw ImportedEntries.unreadable(name, failed);
        } finally {
            draft.ifPresent(EntryDraft::discard);
        }
    }

    /** Refuses a log that cannot be used, so that of several files none is taken. */
    public void check(EntryKind kind, TextSource written) {
        MendedFile file = MendedFile.of(coded(written), Mends.of(book, Set.of()));
        if (file.rows() > 0 && kind == EntryKind.TRIALS) {
            TrialLog.open(file.text(), rules, mapping(file));
        } else if (file.rows() > 0) {
            EarlierLook.through(file.text(), VisitLog.Taker.NOBODY);
        }
    }

    /** A mended file has its one row of headings at the top, wherever they stood in the form. */
    private FormMapping mapping(MendedFile file) {
        FormMapping mapping = forms.of(FirstRows.of(file.text()), rules.catalogue());
        return file.mends().mendedFile() ? mapping.headedByOneRow() : mapping;
    }

    /** A mapping given for this run is kept in the logbook, where the next file with these headings finds it. */
    private Optional<String> saveForm(UsedForm used) {
        if (writer.isEmpty() || forms.given().isEmpty()) {
            return Optional.empty();
        }
        FormMapping kept = forms.given().get().of(used.mapping().headings());
        return writer.get()
                .saveForm(kept)
                .map(file -> "the mapping is kept as " + file + " and used for the next file with these headings");
    }

    private TextSource coded(TextSource text) {
        return names.map(one -> one.coded(text)).orElse(text);
    }

    private Optional<Nameless> nameless(int column) {
        return names.flatMap(any -> rules.roster()).map(codes -> new Nameless(codes, column));
    }

    private KnownTrials known(EntryKind kind) {
        return knownTrials.computeIfAbsent(kind, knownOf);
    }

    /** What one observer saw would count twice if it were also brought in as another's. */
    private void refuseOtherKind(TextSource text, EntryKind kind, String sourceHash) {
        book.liveEntry(sourceHash).filter(entry -> entry.kind() != kind).ifPresent(entry -> {
            throw new InputRefused(text.bytes().name() + ": this file is entry " + entry.text() + " already, of "
                    + entry.kind().word() + "; take it back first (--undo " + entry.text()
                    + ") if it was brought in as the wrong kind");
        });
    }

    private static List<String> visitHeadings(TextSource text) {
        try (Reader reader = text.open()) {
            return VisitLog.headings(reader, text.bytes().name());
        } catch (IOException failed) {
            throw ImportedEntries.unreadable(text.bytes().name(), failed);
        }
    }
}
