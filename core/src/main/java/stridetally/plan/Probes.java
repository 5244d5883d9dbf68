package stridetally.plan;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.NavigableMap;
import java.util.TreeMap;
import stridetally.measures.Sidedness;
import stridetally.model.Direction;
import stridetally.model.Level;
import stridetally.model.MeasureId;
import stridetally.model.Side;
import stridetally.model.StudentCode;
import stridetally.model.Trial;
import stridetally.model.TrialPlace;
import stridetally.model.Use;
import stridetally.units.Amount;
import stridetally.units.Reading;

/**
 * The probes of a caseload by student, measure, side and session: only tries that were measured, at school or in the clinic,
 * up to a day. Tries at home and practice say nothing of being ready.
 */
public final class Probes {
    /** A last session older than this proves nothing: our choice. */
    static final int FRESH_DAYS = 84;

    private final LocalDate asOf;
    private final Map<Key, TreeMap<When, List<Trial>>> tries = new HashMap<>();

    private record Key(StudentCode student, MeasureId measure, Side side) {}

    private record When(LocalDate date, String session) {
        static final Comparator<When> ORDER = Comparator.comparing(When::date).thenComparing(When::session);
    }

    public Probes(LocalDate asOf) {
        this.asOf = asOf;
    }

    /** Takes a try, if it is one that counts here. */
    public void add(Trial trial) {
        boolean counts = trial.key().use() == Use.PROBE
                && trial.key().place() != TrialPlace.HOME
                && !trial.date().isAfter(asOf)
                && trial.reading().recorded();
        if (counts) {
            tries.computeIfAbsent(
                            new Key(
                                    trial.key().student(),
                                    trial.key().measure(),
                                    trial.key().side()),
                            key -> new TreeMap<>(When.ORDER))
                    .computeIfAbsent(new When(trial.date(), trial.session()), when -> new ArrayList<>())
                    .add(trial);
        }
    }

    /** Whether a student is ready for a rung. */
    public Readiness readiness(StudentCode student, Rung rung) {
        if (rung.ready().isEmpty()) {
            return new Readiness(Readiness.State.READY, "ready from the start");
        }
        Ready ready = rung.ready().get();
        List<String> why = new ArrayList<>();
        for (Ready.Bar bar : ready.bars()) {
            Readiness one = readiness(student, ready, bar);
            if (one.state() == Readiness.State.READY) {
                return one;
            }
            why.add(one.text());
        }
        return new Readiness(Readiness.State.NOT_YET, String.join("; ", why));
    }

    private Readiness readiness(StudentCode student, Ready ready, Ready.Bar bar) {
        List<Readiness> sides = new ArrayList<>();
        boolean both = bar.measure().sidedness() == Sidedness.REQUIRED;
        for (Side side : both ? List.of(Side.LEFT, Side.RIGHT) : List.of(Side.values())) {
            NavigableMap<When, List<Trial>> sessions =
                    tries.getOrDefault(new Key(student, bar.measure().id(), side), new TreeMap<>(When.ORDER));
            if (both || !sessions.isEmpty()) {
                sides.add(readiness(sessions, ready, bar, side));
            }
        }
        if (sides.isEmpty()) {
            return notYet(bar.text() + ": no probe yet");
        }
        return sides.stream()
                .filter(one -> one.state() == Readiness.State.NOT_YET)
                .findFirst()
                .orElseGet(() -> sides.get(0));
    }

    private Readiness readiness(NavigableMap<When, List<Trial>> sessions, Ready ready, Ready.Bar bar, Side side) {
        String what = bar.text() + (side == Side.NONE ? "" : ", " + side.word());
        int met = 0;
        for (List<Trial> session : sessions.descendingMap().values()) {
            if (!isMet(session, ready, bar)) {
                break;
            }
            met++;
        }
        if (sessions.isEmpty()) {
            return notYet(what + ": no probe yet");
        }
        LocalDate last = sessions.lastKey().date();
        if (met >= ready.sessions() && last.isBefore(asOf.minusDays(FRESH_DAYS))) {
            return notYet(what + ": last probed on " + last + ", too long ago");
        }
        return met >= ready.sessions()
                ? new Readiness(Readiness.State.READY, what + ": met in the last " + met + " sessions, to " + last)
                : notYet(what + ": met in " + met + " of " + ready.sessions() + " sessions running, to " + last);
    }

    /** More than half of the tries, so that neither one lucky try nor one stumble decides; a blank help is not "without". */
    private static boolean isMet(List<Trial> session, Ready ready, Ready.Bar bar) {
        int met = 0;
        for (Trial one : session) {
            boolean helped = one.help().map(Level::rank).orElse(Integer.MAX_VALUE)
                    > ready.help().rank();
            met += !helped && reaches(one.reading(), bar) ? 1 : 0;
        }
        return 2 * met > session.size();
    }

    private static boolean reaches(Reading reading, Ready.Bar bar) {
        boolean higher = bar.better() == Direction.HIGHER;
        if (reading instanceof Reading.Exact exact) {
            int compared = exact.amount().compareTo(bar.value());
            return higher ? compared >= 0 : compared <= 0;
        }
        if (reading instanceof Reading.AtLeast least) {
            return higher && least.amount().compareTo(bar.value()) >= 0;
        }
        if (reading instanceof Reading.AtMost most) {
            return !higher && most.amount().compareTo(bar.value()) <= 0;
        }
        return reading instanceof Reading.Tries tries && higher && share(tries).compareTo(bar.value()) >= 0;
    }

    private static Amount share(Reading.Tries tries) {
        return new Amount(tries.met() * Amount.ONE / tries.given());
    }

    private static Readiness notYet(String text) {
        return new Readiness(Readiness.State.NOT_YET, text);
    }
}
