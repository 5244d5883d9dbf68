package stridetally.logbook;

import java.io.IOException;
import java.io.InputStream;
import java.io.Reader;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import stridetally.ingest.ColumnSamples;
import stridetally.ingest.FirstRows;
import stridetally.ingest.FormMapping;
import stridetally.ingest.KnownTrials;
import stridetally.ingest.LogRules;
import stridetally.ingest.TextSource;
import stridetally.ingest.TrialCells;
import stridetally.ingest.TrialLog;
import stridetally.problem.InputRefused;
import stridetally.problem.ProblemCode;
import stridetally.problem.ProblemTally;

/**
 * Brings files into a logbook one after another, each as an entry of its own. Without a writer it is a dry run: all is
 * read and told, and nothing is written.
 */
public final class ImportRun {
    private final Optional<LogbookWriter> writer;
    private final KnownTrials knownTrials;
    private final KnownVisits knownVisits;
    private final Logbook book;
    private final Set<String> sources = new HashSet<>();
    private final LogRules rules;
    private final TrialImport.Clash clash;
    private final String label;
    private final Forms forms;
    private int nextEntry;

    /**
     * Over one logbook.
     *
     * @param writer empty for a dry run
     * @param book as it stood when the writer took the lock
     * @param forms how logs of trials are laid out, where somebody said it
     */
    public ImportRun(
            Optional<LogbookWriter> writer,
            Logbook book,
            KnownTrials knownTrials,
            LogRules rules,
            TrialImport.Clash clash,
            String label,
            Forms forms) {
        this.writer = writer;
        this.knownTrials = knownTrials;
        this.knownVisits = KnownVisits.of(book);
        this.book = book;
        this.rules = rules;
        this.clash = clash;
        this.label = label;
        this.forms = forms;
        this.nextEntry = book.entries().stream().mapToInt(Entry::number).max().orElse(0) + 1;
    }

    /** One log of trials. */
    public ImportedFile trials(TextSource text) {
        FormMapping mapping = forms.of(FirstRows.of(text), rules.catalogue());
        TrialLog log = TrialLog.open(text, rules, mapping);
        Optional<EntryDraft> draft = writer.map(one ->
                one.draft(EntryKind.TRIALS, TrialCells.HEADINGS, log.form().keptHeadings()));
        try {
            ColumnSamples samples = new ColumnSamples();
            TrialImport.Outcome outcome =
                    new TrialImport(log, knownTrials, clash, nextEntry, Destinations.of(draft), samples).run();
            NewEntry facts = new NewEntry(
                    label(text), hash(text), outcome.rows(), outcome.known(), outcome.blank(), outcome.superseded());
            UsedForm used = UsedForm.of(log, mapping, samples);
            List<String> notes = notes(text, log, outcome);
            if (!mapping.name().isEmpty()) {
                notes.add(0, "read as " + mapping.name() + " says");
            }
            Optional<Integer> entry = commit(draft, facts, outcome.taken(), outcome.setAside(), notes);
            saveForm(used).ifPresent(notes::add);
            return new ImportedFile(
                    shown(text),
                    EntryKind.TRIALS.word(),
                    outcome.rows(),
                    outcome.taken(),
                    outcome.known(),
                    outcome.setAside(),
                    outcome.blank(),
                    LineRange.lines(outcome.superseded()),
                    entry,
                    outcome.problems(),
                    notes,
                    Optional.of(used));
        } finally {
            draft.ifPresent(EntryDraft::discard);
        }
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

    /** A sheet without the sign that joins it with a cell. */
    private static String shown(TextSource text) {
        String name = text.bytes().name();
        return name.endsWith("]!") ? name.substring(0, name.length() - 1) : name;
    }

    /** One attendance log. */
    public ImportedFile visits(TextSource text) {
        String name = text.bytes().name();
        ProblemTally problems = new ProblemTally();
        Optional<EntryDraft> draft =
                writer.map(one -> one.draft(EntryKind.VISITS, EntryKind.VISIT_COLUMNS, visitHeadings(text)));
        try (Reader reader = text.open()) {
            VisitImport visits = new VisitImport(
                    name, text.bytes().shortName(), rules, knownVisits, Destinations.of(draft), problems);
            VisitLog.Count count = VisitLog.read(reader, name, visits);
            NewEntry facts =
                    new NewEntry(label(text), hash(text), count.rows(), visits.known(), count.blank(), List.of());
            List<String> notes = noted(text);
            Optional<Integer> entry = commit(draft, facts, visits.taken(), visits.setAside(), notes);
            visits.remember();
            return new ImportedFile(
                    name,
                    EntryKind.VISITS.word(),
                    count.rows(),
                    visits.taken(),
                    visits.known(),
                    visits.setAside(),
                    count.blank(),
                    0,
                    entry,
                    problems,
                    notes,
                    Optional.empty());
        } catch (IOException failed) {
            throw unreadable(name, failed);
        } finally {
            draft.ifPresent(EntryDraft::discard);
        }
    }

    /** Refuses a log that cannot be used, so that of several files none is taken. */
    public void check(EntryKind kind, TextSource text) {
        if (kind == EntryKind.TRIALS) {
            TrialLog.open(text, rules, forms.of(FirstRows.of(text), rules.catalogue()));
        } else {
            visitHeadings(text);
        }
    }

    /**
     * A file without a row, taken or set aside, makes no entry. Nor does one that was brought in before and of which nothing
     * more can be taken: its rows lie aside already, and must not lie there twice. Also a dry run counts the entries that it
     * would make.
     */
    private Optional<Integer> commit(
            Optional<EntryDraft> draft, NewEntry facts, long taken, long setAside, List<String> notes) {
        boolean again = !sources.add(facts.sourceHash())
                || book.liveEntry(facts.sourceHash()).isPresent();
        if (taken == 0 && setAside > 0 && again) {
            notes.add("this file was brought in before; its rows that are set aside lie in the logbook already");
            return Optional.empty();
        }
        if (taken + setAside == 0) {
            return Optional.empty();
        }
        nextEntry++;
        return draft.map(rows -> writer.orElseThrow().commit(rows, facts).number());
    }

    private List<String> notes(TextSource text, TrialLog log, TrialImport.Outcome outcome) {
        List<String> notes = noted(text);
        notes.addAll(log.form().notes());
        notes.addAll(outcome.notes());
        List<String> unknown = log.form().first().unknown();
        if (!unknown.isEmpty()) {
            notes.add("columns not read: " + String.join(", ", unknown));
        }
        if (outcome.numbered() > 0) {
            notes.add(
                    outcome.numbered() + " rows have no try number; within a session their order in the file is taken,"
                            + " so equal rows are different tries");
        }
        long blank = outcome.problems().count(ProblemCode.HELP_BLANK);
        if (blank > 0 && rules.blankHelp().isEmpty()) {
            notes.add(Plural.rows(blank) + " without a word on help, kept as not recorded and counted for no goal that"
                    + " names a help. If this form leaves it blank for one meaning, say so:"
                    + " --blank-help independent");
        }
        return notes;
    }

    private static List<String> noted(TextSource text) {
        List<String> notes = new ArrayList<>();
        if (!text.note().isEmpty()) {
            notes.add(text.note());
        }
        return notes;
    }

    private String label(TextSource text) {
        String name = text.bytes().shortName();
        return !label.isEmpty() ? label : name.endsWith("]!") ? name.substring(0, name.length() - 1) : name;
    }

    private static List<String> visitHeadings(TextSource text) {
        try (Reader reader = text.open()) {
            return VisitLog.headings(reader, text.bytes().name());
        } catch (IOException failed) {
            throw unreadable(text.bytes().name(), failed);
        }
    }

    private static String hash(TextSource text) {
        try (InputStream in = text.bytes().open()) {
            return Hash.of(in);
        } catch (IOException failed) {
            throw unreadable(text.bytes().name(), failed);
        }
    }

    private static InputRefused unreadable(String name, IOException failed) {
        return new InputRefused(name + ": could not be read to its end; check the disk and try again", failed);
    }
}
