package stridetally.logbook;

import java.io.IOException;
import java.io.InputStream;
import java.io.Reader;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import stridetally.ingest.KnownTrials;
import stridetally.ingest.LogRules;
import stridetally.ingest.TextSource;
import stridetally.ingest.TrialCells;
import stridetally.ingest.TrialLog;
import stridetally.problem.InputRefused;
import stridetally.problem.ProblemCode;
import stridetally.problem.ProblemTally;
import stridetally.problem.Severity;

/**
 * Brings files into a logbook one after another, each as an entry of its own. Without a writer it is a dry run: all is
 * read and told, and nothing is written.
 */
public final class ImportRun {
    private final Optional<LogbookWriter> writer;
    private final KnownTrials knownTrials;
    private final KnownVisits knownVisits;
    private final LogRules rules;
    private final TrialImport.Clash clash;
    private final String label;

    /**
     * Over one logbook.
     *
     * @param writer empty for a dry run
     * @param book as it stood when the writer took the lock
     */
    public ImportRun(
            Optional<LogbookWriter> writer,
            Logbook book,
            KnownTrials knownTrials,
            LogRules rules,
            TrialImport.Clash clash,
            String label) {
        this.writer = writer;
        this.knownTrials = knownTrials;
        this.knownVisits = KnownVisits.of(book);
        this.rules = rules;
        this.clash = clash;
        this.label = label;
    }

    /** One log of trials. */
    public ImportedFile trials(TextSource text) {
        TrialLog log = TrialLog.open(text, rules);
        Optional<EntryDraft> draft = writer.map(one ->
                one.draft(EntryKind.TRIALS, TrialCells.HEADINGS, log.layout().headings()));
        try {
            TrialImport.Outcome outcome = new TrialImport(log, knownTrials, clash, Destinations.of(draft)).run();
            NewEntry facts = new NewEntry(
                    label(text), hash(text), outcome.rows(), outcome.known(), outcome.blank(), outcome.superseded());
            List<String> notes = notes(text, log, outcome);
            return new ImportedFile(
                    text.bytes().name(),
                    EntryKind.TRIALS.word(),
                    outcome.rows(),
                    outcome.taken(),
                    outcome.known(),
                    outcome.setAside(),
                    outcome.blank(),
                    LineRange.lines(outcome.superseded()),
                    commit(draft, facts),
                    outcome.problems(),
                    notes);
        } finally {
            draft.ifPresent(EntryDraft::discard);
        }
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
            return new ImportedFile(
                    name,
                    EntryKind.VISITS.word(),
                    count.rows(),
                    visits.taken(),
                    visits.known(),
                    visits.setAside(),
                    count.blank(),
                    0,
                    commit(draft, facts),
                    problems,
                    noted(text));
        } catch (IOException failed) {
            throw unreadable(name, failed);
        } finally {
            draft.ifPresent(EntryDraft::discard);
        }
    }

    /**
     * A hand-kept table, which replaces the one in the logbook whole; the old one stays under {@code history/}. A row that
     * cannot be read stays in the table as it was written, is not read until it is mended there, and is told each time.
     */
    public ImportedFile kept(KeptKind kind, TextSource text) {
        String name = text.bytes().name();
        try (Reader reader = text.open()) {
            KeptImport table = KeptImport.read(reader, name, kind, rules.settings());
            ProblemTally problems = new ProblemTally();
            table.problems().forEach(problems::add);
            writer.ifPresent(one -> one.replaceFile(kind, table.rows()));
            long rows = table.rows().size();
            long unread = table.problems().stream()
                    .filter(problem -> problem.severity() == Severity.SET_ASIDE)
                    .map(problem -> problem.at().line())
                    .distinct()
                    .count();
            List<String> notes = new ArrayList<>(noted(text));
            writer.ifPresent(one -> notes.add(kind.file() + " was written anew; what it said before is in history/"));
            if (unread > 0) {
                notes.add(unread + (unread == 1 ? " row stays" : " rows stay") + " in " + kind.file()
                        + " as written and cannot be read until mended there");
            }
            return new ImportedFile(
                    name, kind.word(), rows, rows - unread, 0, unread, 0, 0, Optional.empty(), problems, notes);
        } catch (IOException failed) {
            throw unreadable(name, failed);
        }
    }

    /** A draft without a row, taken or set aside, makes no entry. */
    private Optional<Integer> commit(Optional<EntryDraft> draft, NewEntry facts) {
        return draft.filter(rows -> rows.taken() + rows.setAsideRows() > 0)
                .map(rows -> writer.orElseThrow().commit(rows, facts).number());
    }

    private List<String> notes(TextSource text, TrialLog log, TrialImport.Outcome outcome) {
        List<String> notes = new ArrayList<>(noted(text));
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

    private static List<String> noted(TextSource text) {
        return text.note().isEmpty() ? List.of() : List.of(text.note());
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
