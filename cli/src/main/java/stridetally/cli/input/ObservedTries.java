package stridetally.cli.input;

import java.time.LocalDate;
import java.util.List;
import java.util.function.Consumer;
import java.util.function.Predicate;
import stridetally.ingest.ByteSource;
import stridetally.ingest.LogRow;
import stridetally.ingest.TextSource;
import stridetally.ingest.TrialCells;
import stridetally.ingest.TrialLog;
import stridetally.logbook.EntryReader;
import stridetally.measures.Catalogue;
import stridetally.model.Settings;
import stridetally.model.StudentCode;
import stridetally.model.Trial;
import stridetally.problem.ProblemTally;
import stridetally.problem.RowProblem;
import stridetally.scoring.ObserverPairs;

/**
 * The tries of a source as its observers wrote them, for agreement only.
 *
 * @param setAside rows of a bare log that were not taken
 * @param problems of its rows
 */
public record ObservedTries(
        ObserverPairs pairs, Settings settings, Catalogue catalogue, long setAside, ProblemTally problems) {

    /** The tries that stand in a logbook up to a day. */
    public static ObservedTries of(OpenLogbook open, LocalDate asOf, Predicate<StudentCode> shown) {
        ObserverPairs pairs = new ObserverPairs();
        Settings settings = open.caseload().settings();
        read(open.book().trials(), settings, trial -> counts(trial, asOf, shown), pairs::add);
        read(open.book().secondObserver(), settings, trial -> counts(trial, asOf, shown), pairs::addSecond);
        return new ObservedTries(pairs, settings, open.catalogue(), 0, new ProblemTally());
    }

    private static void read(EntryReader entries, Settings settings, Predicate<Trial> counts, Consumer<Trial> taker) {
        entries.forEach((entry, line, cells) -> {
            Trial trial = TrialCells.read(cells, settings, "entry " + entry + ", line " + line);
            if (counts.test(trial)) {
                taker.accept(trial);
            }
        });
    }

    /** The tries of a bare log up to a day. */
    public static ObservedTries of(ByteSource source, LogRead.How how, Predicate<StudentCode> shown) {
        Settings settings = Settings.usual("");
        TrialLog log = TrialLog.open(TextSource.of(source), LogRead.rules(settings, how, source));
        ProblemTally problems = new ProblemTally();
        Into into = new Into(how.asOf(), shown, problems);
        log.read(into);
        return new ObservedTries(into.pairs, settings, Catalogue.standard(), into.setAside, problems);
    }

    private static boolean counts(Trial trial, LocalDate asOf, Predicate<StudentCode> shown) {
        return !trial.date().isAfter(asOf) && shown.test(trial.key().student());
    }

    private static final class Into implements TrialLog.Taker {
        private final ObserverPairs pairs = new ObserverPairs();
        private final LocalDate asOf;
        private final Predicate<StudentCode> shown;
        private final ProblemTally problems;
        private long setAside;

        Into(LocalDate asOf, Predicate<StudentCode> shown, ProblemTally problems) {
            this.asOf = asOf;
            this.shown = shown;
            this.problems = problems;
        }

        @Override
        public void taken(Trial trial, LogRow row, List<RowProblem> notes) {
            notes.forEach(problems::add);
            if (counts(trial, asOf, shown)) {
                pairs.add(trial);
            }
        }

        @Override
        public void setAside(LogRow row, List<RowProblem> reasons) {
            reasons.forEach(problems::add);
            setAside++;
        }
    }
}
