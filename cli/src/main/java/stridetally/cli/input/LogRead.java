package stridetally.cli.input;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import stridetally.ingest.ByteSource;
import stridetally.ingest.DateOrder;
import stridetally.ingest.InputTables;
import stridetally.ingest.LogRow;
import stridetally.ingest.LogRules;
import stridetally.ingest.SeriesNumbers;
import stridetally.ingest.TextSource;
import stridetally.ingest.TrialFeed;
import stridetally.ingest.TrialLog;
import stridetally.measures.Catalogue;
import stridetally.model.Settings;
import stridetally.model.Trial;
import stridetally.problem.ProblemTally;
import stridetally.problem.RowProblem;
import stridetally.scoring.DerivedWalks;
import stridetally.scoring.LegLengths;
import stridetally.scoring.SessionTable;
import stridetally.units.DecimalMark;

/**
 * A bare log of trials, read into sessions: no goals, no roster, every recorded trial counts.
 *
 * @param setAside rows that were not taken
 * @param ahead tries after the day of the run, which are left out
 * @param walks what followed from the parts of walks; its tries are in the table
 */
public record LogRead(
        SessionTable table,
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

    /** Reads a log to its end; rows stream. */
    public static LogRead of(ByteSource source, How how) {
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
                table,
                settings,
                Catalogue.standard(),
                count.rows(),
                into.setAside,
                count.blank(),
                into.ahead,
                problems,
                note(text, log, count),
                walks);
    }

    private static String note(TextSource text, TrialLog log, TrialLog.Count count) {
        List<String> notes = new ArrayList<>();
        if (!text.note().isEmpty()) {
            notes.add(text.note());
        }
        notes.addAll(log.form().notes());
        notes.addAll(count.notes());
        return String.join("; ", notes);
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
