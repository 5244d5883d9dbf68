package stridetally.cli.input;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import stridetally.ingest.BulkLog;
import stridetally.ingest.ByteSource;
import stridetally.ingest.DateOrder;
import stridetally.ingest.InputTables;
import stridetally.ingest.LogRow;
import stridetally.ingest.LogRules;
import stridetally.ingest.SeriesNumbers;
import stridetally.ingest.TextSource;
import stridetally.ingest.TrialFeed;
import stridetally.ingest.TrialForm;
import stridetally.ingest.TrialLog;
import stridetally.ingest.WhichReader;
import stridetally.measures.Catalogue;
import stridetally.model.Settings;
import stridetally.model.Trial;
import stridetally.model.Use;
import stridetally.problem.ProblemTally;
import stridetally.problem.RowProblem;
import stridetally.scoring.DerivedWalks;
import stridetally.scoring.LegLengths;
import stridetally.scoring.LogRuns;
import stridetally.scoring.SeriesSessions;
import stridetally.scoring.SessionIndex;
import stridetally.scoring.SessionTable;
import stridetally.scoring.TrialRuns;
import stridetally.units.DecimalMark;

/**
 * A bare log of trials, read into sessions: no goals, no roster, every recorded trial counts.
 *
 * @param setAside rows that were not taken
 * @param ahead tries after the day of the run, which are left out
 * @param walks what followed from the parts of walks; its tries are in the table
 */
public record LogRead(
        SeriesSessions sessions,
        Settings settings,
        Catalogue catalogue,
        long rows,
        long setAside,
        long blank,
        long ahead,
        ProblemTally problems,
        String note,
        DerivedRead walks) {

    /** How a bare log is read, besides what it says itself. */
    public record How(LocalDate asOf, DateOrder order, DecimalMark decimals) {}

    /** Smaller logs are read by the usual reader, which needs fewer classes to start. Ours. */
    private static final long LONG_LOG = 1 << 20;

    /** Reads a log to its end; rows stream. A long one goes through {@link BulkLog} where it can. */
    public static LogRead of(ByteSource source, How how, WhichReader which, Set<Use> uses) {
        boolean fast = which == WhichReader.FAST || (which == WhichReader.BY_SIZE && source.size() >= LONG_LOG);
        return fast ? inBulk(source, how, uses).orElseGet(() -> of(source, how)) : of(source, how);
    }

    private static Optional<LogRead> inBulk(ByteSource source, How how, Set<Use> uses) {
        Settings settings = Settings.usual("");
        BulkLog.How<TrialRuns> bulk = new BulkLog.How<>(
                rules(settings, how), how.asOf(), Runtime.getRuntime().availableProcessors(), TrialRuns::new);
        Optional<BulkLog<TrialRuns>> read = BulkLog.read(source, bulk);
        if (read.isEmpty()) {
            return Optional.empty();
        }
        LogRuns runs =
                new LogRuns(read.get().parts().stream().map(BulkLog.Part::sink).toList());
        // Probes and practice as one session need the place of each row in the file, which only the usual reader keeps.
        // What follows from the parts of walks needs a table of tries, which only the usual reader keeps too.
        if ((uses.size() > 1 && runs.has(Use.PRACTICE)) || DerivedWalks.parts(runs.numbers())) {
            return Optional.empty();
        }
        return read.map(log -> new LogRead(
                runs,
                settings,
                Catalogue.standard(),
                log.count().rows(),
                log.setAside(),
                log.count().blank(),
                log.ahead(),
                log.problems(),
                note("", log.form(), log.count()),
                new DerivedRead(DerivedRead.Keep.GAPS_ONLY)));
    }

    private static LogRead of(ByteSource source, How how) {
        Settings settings = Settings.usual("");
        TextSource text = InputTables.of(source, Optional.empty()).only();
        TrialLog log = TrialLog.open(text, rules(settings, how));
        SeriesNumbers numbers = new SeriesNumbers();
        SessionTable table = new SessionTable(numbers);
        ProblemTally problems = new ProblemTally();
        Into into = new Into(new TrialFeed(numbers, settings, table), how.asOf(), problems);
        TrialLog.Count count = log.read(into);
        DerivedRead walks = new DerivedRead(DerivedRead.Keep.GAPS_ONLY);
        DerivedWalks.into(table, Catalogue.standard()::find, LegLengths.none(), walks);
        return new LogRead(
                table.index(),
                settings,
                Catalogue.standard(),
                count.rows(),
                into.setAside,
                count.blank(),
                into.ahead,
                problems,
                note(text.note(), log.form(), count),
                walks);
    }

    private static String note(String ofText, TrialForm form, TrialLog.Count count) {
        List<String> notes = new ArrayList<>();
        if (!ofText.isEmpty()) {
            notes.add(ofText);
        }
        notes.addAll(form.notes());
        notes.addAll(count.notes());
        return String.join("; ", notes);
    }

    /** The sessions with their tries, as the usual reader keeps them. */
    public SessionIndex index() {
        if (sessions instanceof SessionIndex index) {
            return index;
        }
        throw new IllegalStateException("the log was read by the fast reader, which keeps no such index");
    }

    /** The rules of a bare log. */
    public static LogRules rules(Settings settings, How how) {
        return new LogRules(
                settings,
                Catalogue.standard(),
                Optional.empty(),
                LocalDate.MAX,
                how.order(),
                how.decimals(),
                Optional.empty(),
                settings.id());
    }

    private static final class Into implements TrialLog.Taker {
        private final TrialFeed feed;
        private final ProblemTally problems;
        private final LocalDate asOf;
        private long setAside;
        private long ahead;

        Into(TrialFeed feed, LocalDate asOf, ProblemTally problems) {
            this.feed = feed;
            this.asOf = asOf;
            this.problems = problems;
        }

        @Override
        public void taken(Trial trial, LogRow row, List<RowProblem> notes) {
            if (trial.date().isAfter(asOf)) {
                ahead++;
                return;
            }
            for (RowProblem note : notes) {
                problems.add(note);
            }
            feed.push(trial, row.line());
        }

        @Override
        public void setAside(LogRow row, List<RowProblem> reasons) {
            for (RowProblem reason : reasons) {
                problems.add(reason);
            }
            setAside++;
        }
    }
}
