package stridetally.logbook;

import java.io.IOException;
import java.io.InputStream;
import java.io.Reader;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import stridetally.ingest.KnownTrials;
import stridetally.ingest.LogRules;
import stridetally.ingest.NamesToCodes;
import stridetally.ingest.TextSource;
import stridetally.ingest.TrialCells;
import stridetally.ingest.TrialColumn;
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
    private final Function<EntryKind, KnownTrials> knownOf;
    private final Map<EntryKind, KnownTrials> knownTrials = new EnumMap<>(EntryKind.class);
    private final KnownVisits knownVisits;
    private final Logbook book;
    private final Set<String> sources = new HashSet<>();
    private final Set<LineRange> closed = new HashSet<>();
    private final LogRules rules;
    private final TrialImport.Clash clash;
    private final String label;
    private int nextEntry;
    private final Optional<NamesToCodes> names;

    /**
     * Over one logbook.
     *
     * @param writer empty for a dry run
     * @param book as it stood when the writer took the lock
     * @param names when names are to be turned into codes; the roster of the rules then has every code
     * @param knownOf the trials that stand, by the kind of their entries
     */
    public ImportRun(
            Optional<LogbookWriter> writer,
            Logbook book,
            Function<EntryKind, KnownTrials> knownOf,
            LogRules rules,
            TrialImport.Clash clash,
            String label,
            Optional<NamesToCodes> names) {
        this.writer = writer;
        this.knownOf = knownOf;
        this.book = book;
        this.knownVisits = KnownVisits.of(book);
        this.rules = rules;
        this.clash = clash;
        this.label = names.map(one -> one.coded(label)).orElse(label);
        this.names = names;
        this.nextEntry = book.entries().stream().mapToInt(Entry::number).max().orElse(0) + 1;
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
        MendedFile file = MendedFile.of(original, Mends.of(book, closed));
        if (file.rows() == 0) {
            return nothingLeft(asked, original, file.mends());
        }
        EntryKind kind = file.kind().orElse(asked);
        String sourceHash = hash(original);
        refuseOtherKind(original, kind, sourceHash);
        TrialLog log = TrialLog.open(file.text(), rules);
        Optional<Nameless> nameless = nameless(log.layout().column(TrialColumn.STUDENT) - 1);
        ofSource(file.mends(), original, sourceHash, log.layout().headings().size(), nameless);
        Optional<EntryDraft> draft = writer.map(
                one -> one.draft(kind, TrialCells.HEADINGS, log.layout().headings()));
        try {
            TrialImport.Outcome outcome = new TrialImport(
                            log, known(kind), clash, nextEntry, Destinations.of(draft, nameless), file.mends())
                    .run();
            Tally tally =
                    new Tally(outcome.rows(), outcome.taken(), outcome.known(), outcome.setAside(), outcome.blank());
            return imported(
                    kind,
                    original,
                    file.mends(),
                    tally,
                    outcome.superseded(),
                    draft,
                    sourceHash,
                    outcome.problems(),
                    notes(original, log, outcome));
        } finally {
            draft.ifPresent(EntryDraft::discard);
        }
    }

    /** One attendance log. */
    public ImportedFile visits(TextSource written) {
        TextSource original = coded(written);
        String name = original.bytes().name();
        MendedFile file = MendedFile.of(original, Mends.of(book, closed));
        if (file.rows() == 0) {
            return nothingLeft(EntryKind.VISITS, original, file.mends());
        }
        TextSource text = file.text();
        ProblemTally problems = new ProblemTally();
        List<String> headings = visitHeadings(text);
        Optional<Nameless> nameless =
                nameless(headings.stream().map(KeptTable::fold).toList().indexOf("student"));
        ofSource(file.mends(), original, hash(original), headings.size(), nameless);
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
            Tally tally = new Tally(count.rows(), visits.taken(), visits.known(), visits.setAside(), count.blank());
            ImportedFile done = imported(
                    EntryKind.VISITS,
                    original,
                    file.mends(),
                    tally,
                    List.of(),
                    draft,
                    hash(original),
                    problems,
                    noted(original));
            visits.remember();
            return done;
        } catch (IOException failed) {
            throw unreadable(name, failed);
        } finally {
            draft.ifPresent(EntryDraft::discard);
        }
    }

    /** What was counted in a log as it was read. */
    private record Tally(long rows, long taken, long known, long setAside, long blank) {}

    /** Commits, and tells what became of the file. Rows of a set-aside file that stay open are not set aside anew. */
    private ImportedFile imported(
            EntryKind kind,
            TextSource text,
            Mends mends,
            Tally tally,
            List<LineRange> superseded,
            Optional<EntryDraft> draft,
            String sourceHash,
            ProblemTally problems,
            List<String> notes) {
        long blank = mends.blank(tally.blank());
        long rows = tally.rows() - tally.blank() + blank + mends.skipped();
        long known = tally.known() + mends.skipped();
        NewEntry facts = new NewEntry(
                label(text), sourceHash, rows, known + mends.stillOpen(), blank, superseded, mends.closed());
        List<String> all = new ArrayList<>(notes);
        all.addAll(mends.notes());
        Optional<Integer> entry = commit(draft, facts, tally, mends, all);
        closed.addAll(mends.closed());
        return new ImportedFile(
                text.bytes().name(),
                kind.word(),
                rows,
                tally.taken(),
                known,
                tally.setAside(),
                blank,
                LineRange.lines(superseded),
                entry,
                problems,
                all);
    }

    /** A set-aside file all of whose rows were closed before. */
    private static ImportedFile nothingLeft(EntryKind kind, TextSource text, Mends mends) {
        long blank = mends.blank(0);
        return new ImportedFile(
                text.bytes().name(),
                kind.word(),
                mends.skipped() + blank,
                0,
                mends.skipped(),
                0,
                blank,
                0,
                Optional.empty(),
                new ProblemTally(),
                mends.notes());
    }

    /** Rows of the same file that were set aside before are the same rows. */
    private static void ofSource(
            Mends mends, TextSource text, String sourceHash, int width, Optional<Nameless> nameless) {
        if (!mends.mendedFile()) {
            mends.ofSource(
                    sourceHash,
                    text.bytes().shortName(),
                    width,
                    row -> nameless.map(without -> without.row(row, width)).orElse(row));
        }
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

    /** Refuses a log that cannot be used, so that of several files none is taken. */
    public void check(EntryKind kind, TextSource written) {
        MendedFile file = MendedFile.of(coded(written), Mends.of(book, Set.of()));
        if (file.rows() > 0 && kind == EntryKind.TRIALS) {
            TrialLog.open(file.text(), rules);
        } else if (file.rows() > 0) {
            look(file.text());
        }
    }

    private static void look(TextSource visits) {
        String name = visits.bytes().name();
        try (Reader reader = visits.open()) {
            VisitLog.read(reader, name, VisitLog.Taker.NOBODY);
        } catch (IOException failed) {
            throw unreadable(name, failed);
        }
    }

    /**
     * A file without a row, taken or set aside, makes no entry, unless it closes rows. Nor does one that was brought in
     * before and of which nothing more can be taken: its rows lie aside already. Also a dry run counts the entries that it
     * would make.
     */
    private Optional<Integer> commit(
            Optional<EntryDraft> draft, NewEntry facts, Tally tally, Mends mends, List<String> notes) {
        boolean again = !sources.add(facts.sourceHash())
                || book.liveEntry(facts.sourceHash()).isPresent();
        boolean nothingMore = tally.taken() == 0 && facts.mended().isEmpty();
        if (again && nothingMore && tally.setAside() > 0 && !mends.mendedFile()) {
            notes.add("this file was brought in before; its rows that are set aside lie in the logbook already");
            return Optional.empty();
        }
        if (nothingMore && tally.setAside() <= mends.stillOpen()) {
            return Optional.empty();
        }
        nextEntry++;
        return draft.map(rows -> writer.orElseThrow().commit(rows, facts).number());
    }

    private List<String> notes(TextSource text, TrialLog log, TrialImport.Outcome outcome) {
        List<String> notes = noted(text);
        if (!log.layout().unknown().isEmpty()) {
            notes.add("columns not read: " + String.join(", ", log.layout().unknown()));
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

    private List<String> noted(TextSource text) {
        List<String> notes = new ArrayList<>();
        if (!text.note().isEmpty()) {
            notes.add(text.note());
        }
        names.ifPresent(
                any -> notes.add("names were turned into codes, in notes as well; a name that names.csv does not"
                        + " hold is told by its place only, and a note may still hold one"));
        return notes;
    }

    private String label(TextSource text) {
        return label.isEmpty() ? text.bytes().shortName() : label;
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
