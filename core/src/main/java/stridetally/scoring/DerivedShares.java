package stridetally.scoring;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Function;
import stridetally.ingest.ReadingKind;
import stridetally.ingest.SeriesNumbers;
import stridetally.measures.Measure;
import stridetally.model.Goal;
import stridetally.model.Level;
import stridetally.model.MeasureId;
import stridetally.model.Protocol;
import stridetally.model.SeriesKey;
import stridetally.model.Side;
import stridetally.units.Amount;

/**
 * The share of tries that were done without help, as a measure of its own: a goal on {@code independent-share} whose
 * protocol names another measure as its {@code task} takes a value a session from the words of help of that measure's tries.
 * The whole is the tries that were made and whose help was written; a session without any has no value, which is told. A
 * logged value of the session stands instead, since both would count twice. The value carries the least help: help is what it
 * measures, so a goal's permitted help never leaves it out.
 */
public final class DerivedShares {
    private static final MeasureId SHARE = new MeasureId("independent-share");
    private static final String TASK = "task";

    private final SessionTable table;
    private final SessionIndex index;
    private final DerivedWalks.Taker taker;
    private final Set<WalkSession> logged = new HashSet<>();

    private DerivedShares(SessionTable table, DerivedWalks.Taker taker) {
        this.table = table;
        this.index = table.index();
        this.taker = taker;
    }

    /** Adds what follows to a complete table, for the goals that ask for it. */
    public static void into(
            SessionTable table,
            List<Goal> goals,
            Function<MeasureId, Optional<Measure>> measures,
            DerivedWalks.Taker taker) {
        DerivedShares shares = null;
        Set<SeriesKey> done = new HashSet<>();
        for (Goal goal : goals) {
            Optional<MeasureId> task = task(goal, measures);
            if (task.isPresent()) {
                if (shares == null) {
                    shares = new DerivedShares(table, taker);
                    shares.noteLogged();
                }
                shares.derive(goal, task.get(), done);
            }
        }
    }

    /** The measure whose tries a goal on this share is about; empty for any other goal. */
    static Optional<MeasureId> task(Goal goal, Function<MeasureId, Optional<Measure>> measures) {
        String named = goal.protocol().keys().getOrDefault(TASK, "");
        if (!goal.measure().equals(SHARE) || named.isEmpty()) {
            return Optional.empty();
        }
        MeasureId task = new MeasureId(named);
        return task.equals(SHARE) || measures.apply(task).isEmpty() ? Optional.empty() : Optional.of(task);
    }

    private void noteLogged() {
        for (int series = 0; series < index.seriesCount(); series++) {
            SeriesKey key = index.numbers().key(series);
            if (key.measure().equals(SHARE)) {
                for (TrialGroup session : index.of(series)) {
                    logged.add(session(key, session));
                }
            }
        }
    }

    private static WalkSession session(SeriesKey key, TrialGroup session) {
        return new WalkSession(Walker.of(key), session.day(), session.label());
    }

    /** The tries of a session and where they begin. */
    private static final class Tally {
        private int tries;
        private int helpWritten;
        private int independent;
        private long origin = Long.MAX_VALUE;

        void add(TrialGroup session, int row) {
            if (!session.kind(row).recorded()) {
                return;
            }
            int given = Math.max(1, session.given(row));
            tries += given;
            helpWritten += session.help(row) == Level.BLANK ? 0 : given;
            independent += session.help(row) == 0 ? given : 0;
            origin = Math.min(origin, session.origin(row));
        }
    }

    private void derive(Goal goal, MeasureId task, Set<SeriesKey> done) {
        Map<SeriesKey, Map<Integer, Map<String, Tally>>> found = new TreeMap<>(DerivedShares::compare);
        List<Integer> series = new ArrayList<>();
        for (int one = 0; one < index.seriesCount(); one++) {
            SeriesKey key = index.numbers().key(one);
            if (key.student().equals(goal.student()) && key.measure().equals(task) && serves(key.protocol(), goal)) {
                series.add(one);
            }
        }
        for (int one : series) {
            SeriesKey of = index.numbers().key(one);
            SeriesKey key =
                    new SeriesKey(of.source(), of.student(), SHARE, Side.NONE, goal.protocol(), of.place(), of.use());
            for (TrialGroup session : index.of(one)) {
                if (!logged.contains(session(key, session))) {
                    Tally tally = found.computeIfAbsent(key, any -> new TreeMap<>())
                            .computeIfAbsent(session.day(), any -> new TreeMap<>())
                            .computeIfAbsent(session.label(), any -> new Tally());
                    for (int row = 0; row < session.size(); row++) {
                        tally.add(session, row);
                    }
                }
            }
        }
        found.forEach((key, days) -> {
            if (done.add(key)) {
                days.forEach((day, labels) -> labels.forEach((label, tally) -> put(key, task, day, label, tally)));
            }
        });
    }

    /** Whether tries were made as the goal says, as far as both say it. */
    private static boolean serves(Protocol taken, Goal goal) {
        for (Map.Entry<String, String> named : goal.protocol().keys().entrySet()) {
            String said = taken.keys().getOrDefault(named.getKey(), named.getValue());
            if (!named.getKey().equals(TASK) && !said.equals(named.getValue())) {
                return false;
            }
        }
        return true;
    }

    /** In an order of their own, so that the same log in any order gives the same table. */
    private static int compare(SeriesKey one, SeriesKey other) {
        int byPlace = one.place().compareTo(other.place());
        int byUse = byPlace != 0 ? byPlace : one.use().compareTo(other.use());
        return byUse != 0 ? byUse : one.source().compareTo(other.source());
    }

    private void put(SeriesKey key, MeasureId task, int day, String label, Tally tally) {
        LocalDate date = LocalDate.ofEpochDay(day);
        if (tally.tries == 0) {
            return;
        }
        if (tally.helpWritten == 0) {
            taker.gap(new WalkGap(
                    key, date, label, 0, "help was not written for the tries of " + task.text() + " of that day"));
            return;
        }
        long value = Math.round(tally.independent * (double) Amount.ONE / tally.helpWritten);
        int without = tally.tries - tally.helpWritten;
        DerivedTry made = new DerivedTry(
                key,
                date,
                label,
                0,
                ReadingKind.EXACT,
                value,
                0,
                0,
                tally.origin,
                tally.independent + " of " + tally.helpWritten + " tries of " + task.text() + " without help"
                        + (without == 0 ? "" : "; help of " + without + " more was not written"));
        SeriesNumbers numbers = table.numbers();
        table.trial(
                numbers.number(key),
                day,
                numbers.label(label),
                0,
                made.kind(),
                value,
                1,
                made.help(),
                made.prompt(),
                made.origin());
        taker.derived(made);
    }
}
