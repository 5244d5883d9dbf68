package stridetally.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import stridetally.model.MeasureId;
import stridetally.model.Protocol;
import stridetally.model.SeriesKey;
import stridetally.model.Side;
import stridetally.model.Trial;
import stridetally.model.TrialPlace;
import stridetally.model.Use;
import stridetally.units.Amount;
import stridetally.units.Reading;

/** "Ready when": school or clinic probes only, at its help, in two sessions or more. */
class ProbesTest {
    private static final Reading SIX = new Reading.Exact(Amount.of("6"));
    private static final Reading FIVE = new Reading.Exact(Amount.of("5"));

    private final Probes probes = new Probes(MadeLadder.DAY);

    @Test
    void twoSessionsRunningAtTheHelpAreNeeded() {
        add("2027-02-22", SIX, "stand-by");
        assertEquals(Readiness.State.NOT_YET, turn());
        add("2027-03-01", SIX, "independent");
        assertEquals(Readiness.State.READY, turn());
    }

    @Test
    void aLaterSessionThatFallsShortUndoesIt() {
        add("2027-02-15", SIX, "stand-by");
        add("2027-02-22", SIX, "stand-by");
        add("2027-03-01", FIVE, "stand-by");
        assertEquals(Readiness.State.NOT_YET, turn());
    }

    @Test
    void triesAtHomePracticeMoreHelpAndUnwrittenHelpDoNotCount() {
        for (String day : new String[] {"2027-02-22", "2027-03-01"}) {
            probes.add(trial(day, SIX, "stand-by", TrialPlace.HOME, Use.PROBE, "line-steps", Side.NONE));
            probes.add(trial(day, SIX, "stand-by", TrialPlace.SCHOOL, Use.PRACTICE, "line-steps", Side.NONE));
        }
        assertTrue(said().contains("no probe yet"), said());
        add("2027-02-22", SIX, "hand-held one");
        add("2027-03-01", SIX, "");
        assertTrue(said().contains("met in 0 of 2 sessions"), said());
    }

    @Test
    void moreThanHalfOfTheTriesOfASessionDecide() {
        for (String day : new String[] {"2027-02-22", "2027-03-01"}) {
            add(day, SIX, "stand-by");
            add(day, new Reading.NotObtained(Reading.Why.UNABLE), "stand-by");
        }
        assertEquals(Readiness.State.NOT_YET, turn(), "half is not enough");
        for (String day : new String[] {"2027-02-22", "2027-03-01"}) {
            add(day, new Reading.AtLeast(Amount.of("6")), "stand-by");
            add(day, new Reading.NotObtained(Reading.Why.ABSENT), "");
        }
        assertEquals(Readiness.State.READY, turn(), "an absence is no try");
    }

    @Test
    void mostOfTheLineServesTooAndOldOrLaterSessionsDoNot() {
        for (String day : new String[] {"2026-11-02", "2026-11-09", "2027-03-08"}) {
            probes.add(trial(
                    day,
                    new Reading.Exact(Amount.of("0.8")),
                    "stand-by",
                    TrialPlace.CLINIC,
                    Use.PROBE,
                    "line-share",
                    Side.NONE));
        }
        assertTrue(said().contains("too long ago"), said());
        probes.add(trial(
                "2027-03-01",
                new Reading.Exact(Amount.of("0.75")),
                "stand-by",
                TrialPlace.CLINIC,
                Use.PROBE,
                "line-share",
                Side.NONE));
        assertEquals(Readiness.State.READY, turn());
    }

    @Test
    void bothDirectionsAreNeededWhereAMeasureHasSides() {
        Rung chain = MadeLadder.shipped().find("line-chain").orElseThrow();
        for (String day : new String[] {"2027-02-22", "2027-03-01"}) {
            probes.add(trial(day, SIX, "stand-by", TrialPlace.SCHOOL, Use.PROBE, "side-steps", Side.LEFT));
        }
        assertEquals(
                "side-steps>=6, right: no probe yet",
                probes.readiness(MadeLadder.STUDENT, chain).text());
        for (String day : new String[] {"2027-02-22", "2027-03-01"}) {
            probes.add(trial(day, SIX, "stand-by", TrialPlace.SCHOOL, Use.PROBE, "side-steps", Side.RIGHT));
        }
        assertEquals(
                Readiness.State.READY,
                probes.readiness(MadeLadder.STUDENT, chain).state());
    }

    private void add(String day, Reading reading, String help) {
        probes.add(trial(day, reading, help, TrialPlace.SCHOOL, Use.PROBE, "line-steps", Side.NONE));
    }

    private Readiness.State turn() {
        return probes.readiness(
                        MadeLadder.STUDENT,
                        MadeLadder.shipped().find("line-turn").orElseThrow())
                .state();
    }

    private String said() {
        return probes.readiness(
                        MadeLadder.STUDENT,
                        MadeLadder.shipped().find("line-turn").orElseThrow())
                .text();
    }

    private static Trial trial(
            String day, Reading reading, String help, TrialPlace place, Use use, String measure, Side side) {
        return new Trial(
                new SeriesKey("", MadeLadder.STUDENT, new MeasureId(measure), side, Protocol.NONE, place, use),
                LocalDate.parse(day),
                "",
                1,
                reading,
                help.isEmpty() ? Optional.empty() : Optional.of(MadeLadder.help(help)),
                Optional.empty(),
                "",
                "",
                "",
                "",
                "");
    }
}
