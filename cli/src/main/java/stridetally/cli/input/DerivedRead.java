package stridetally.cli.input;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import stridetally.model.MeasureId;
import stridetally.model.Protocol;
import stridetally.model.SeriesKey;
import stridetally.model.Side;
import stridetally.model.StudentCode;
import stridetally.model.TrialPlace;
import stridetally.model.Use;
import stridetally.scoring.DerivedTry;
import stridetally.scoring.DerivedWalks;
import stridetally.scoring.WalkGap;

/** What followed from the parts of walks, and what did not. */
public final class DerivedRead implements DerivedWalks.Taker {
    private static final int SHOWN = 5;

    private static final SeriesKey NOBODY = new SeriesKey(
            "", new StudentCode("-"), new MeasureId("none"), Side.NONE, Protocol.NONE, TrialPlace.SCHOOL, Use.PROBE);

    private record SessionKey(SeriesKey key, LocalDate date, String label) {
        // By hand: a record makes its own at run time, which costs a small run ten milliseconds.
        @Override
        public boolean equals(@Nullable Object other) {
            return other instanceof SessionKey that
                    && key.equals(that.key)
                    && date.equals(that.date)
                    && label.equals(that.label);
        }

        @Override
        public int hashCode() {
            return 31 * (31 * key.hashCode() + date.hashCode()) + label.hashCode();
        }
    }

    /** Tries of a student from which a measure does not follow for one reason, told in one sentence. */
    private static final class Told {
        private final WalkGap first;
        private LocalDate from;
        private LocalDate to;
        private long tries;

        Told(WalkGap first) {
            this.first = first;
            this.from = first.date();
            this.to = first.date();
        }

        boolean takes(WalkGap gap) {
            return first.reason().equals(gap.reason())
                    && first.key().student().equals(gap.key().student())
                    && first.key().measure().equals(gap.key().measure());
        }

        void add(WalkGap gap) {
            tries++;
            from = gap.date().isBefore(from) ? gap.date() : from;
            to = gap.date().isAfter(to) ? gap.date() : to;
        }

        String sentence() {
            return tries == 1
                    ? first.sentence()
                    : first.key().measure().text() + " of "
                            + first.key().student().text() + ", " + tries
                            + (first.number() == 0 ? " sessions " : " tries ")
                            + (from.equals(to) ? "on " + from : "from " + from + " to " + to) + ": not known, "
                            + first.reason();
        }
    }

    /** Whether the tries themselves are wanted: a log of a country is not held as objects. */
    public enum Keep {
        TRIES,
        GAPS_ONLY
    }

    private final Keep keep;
    private final List<DerivedTry> tries = new ArrayList<>();
    private final Map<SessionKey, WalkGap> gaps = new LinkedHashMap<>();
    private final List<WalkGap> empty = new ArrayList<>();
    private final List<Told> told = new ArrayList<>();
    private final Set<SessionKey> made = new HashSet<>();
    private SeriesKey at = NOBODY;
    private long untold;
    private long alone;

    DerivedRead(Keep keep) {
        this.keep = keep;
    }

    @Override
    public void derived(DerivedTry one) {
        goTo(one.key());
        made.add(new SessionKey(one.key(), one.date(), one.label()));
        if (keep == Keep.TRIES) {
            tries.add(one);
        }
    }

    @Override
    public void gap(WalkGap gap) {
        goTo(gap.key());
        tell(gap);
        gaps.putIfAbsent(new SessionKey(gap.key(), gap.date(), gap.label()), gap);
    }

    private void tell(WalkGap gap) {
        for (Told one : told) {
            if (one.takes(gap)) {
                one.add(gap);
                return;
            }
        }
        if (told.size() == SHOWN) {
            untold++;
            return;
        }
        Told one = new Told(gap);
        one.add(gap);
        told.add(one);
    }

    /** Walks come student by student, so what is done with one student need not be held. */
    private void goTo(SeriesKey key) {
        if (!key.source().equals(at.source()) || !key.student().equals(at.student())) {
            close();
            at = key;
        }
    }

    private void close() {
        gaps.forEach((session, gap) -> {
            if (!made.contains(session)) {
                empty.add(gap);
            }
        });
        gaps.clear();
        made.clear();
    }

    @Override
    public void alone(long count) {
        alone += count;
    }

    /** The tries that were made, in the order of their students' walks. */
    public List<DerivedTry> tries() {
        return List.copyOf(tries);
    }

    /** One gap for each session of which nothing at all follows. */
    public List<WalkGap> emptySessions() {
        close();
        return List.copyOf(empty);
    }

    /** What the person should know. */
    public List<String> notes() {
        List<String> notes = new ArrayList<>();
        for (Told one : told) {
            notes.add(one.sentence());
        }
        if (untold > 0) {
            notes.add("  and " + untold + (untold == 1 ? " more try" : " more tries")
                    + " from which a measure does not follow");
        }
        return notes;
    }

    /** The same, and how many tries have one part only; a log of times that are a goal by themselves need not hear it. */
    public List<String> allNotes() {
        List<String> notes = notes();
        if (alone > 0) {
            notes.add((alone == 1 ? "1 try" : alone + " tries")
                    + " of a walk with one part only: speed, cadence and step length need two of time, distance and"
                    + " steps (a marked way may be written as distance=10 m in the protocol)");
        }
        return notes;
    }
}
