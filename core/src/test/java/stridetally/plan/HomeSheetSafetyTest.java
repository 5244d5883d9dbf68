package stridetally.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import stridetally.model.Level;
import stridetally.model.MeasureId;
import stridetally.model.Precaution;
import stridetally.model.WordScale;
import stridetally.stats.Estimate;

/**
 * No precaution lets its task through, and no task that stays at school comes home: over every set of precautions, every rung
 * and every kind of approval. What is barred is written here anew from the list, not taken from the code under test.
 */
class HomeSheetSafetyTest {
    /** Which tasks a precaution bars (the plain meaning of the words; the rest is our choice). */
    private static final Map<Precaution, Set<Task>> BARS = Map.of(
            Precaution.NECK, EnumSet.of(Task.JUMP),
            Precaution.NO_JUMPS, EnumSet.of(Task.JUMP),
            Precaution.NO_BEAM, EnumSet.of(Task.BEAM),
            Precaution.NO_STAIRS, EnumSet.of(Task.STAIRS),
            Precaution.NO_EYES_CLOSED, EnumSet.of(Task.EYES_CLOSED),
            Precaution.SEIZURES, EnumSet.of(Task.BEAM, Task.STAIRS, Task.EYES_CLOSED),
            Precaution.HEART, EnumSet.of(Task.JUMP, Task.STAIRS),
            Precaution.BONES,
                    EnumSet.of(Task.JUMP, Task.BEAM, Task.STAIRS, Task.EYES_CLOSED, Task.BACKWARD, Task.ONE_LEG));

    private static final Set<Task> AT_SCHOOL =
            EnumSet.of(Task.BEAM, Task.EYES_CLOSED, Task.BACKWARD, Task.STAIRS, Task.JUMP);

    private enum When {
        NONE,
        HOLDS,
        ENDED,
        AHEAD,
        LAPSED
    }

    private static Optional<Approval> approval(When when, Rung rung, Level help) {
        LocalDate day = MadeLadder.DAY;
        return switch (when) {
            case NONE -> Optional.empty();
            case HOLDS -> Optional.of(MadeLadder.approval(rung, day.minusDays(7), Optional.of(day), help));
            case ENDED -> Optional.of(MadeLadder.approval(rung, day.minusDays(7), Optional.of(day.minusDays(1)), help));
            case AHEAD -> Optional.of(MadeLadder.approval(rung, day.plusDays(1), Optional.empty(), help));
            case LAPSED ->
                Optional.of(
                        MadeLadder.approval(rung, day.minusWeeks(Approval.WEEKS).minusDays(1), Optional.empty(), help));
        };
    }

    private static List<Set<Precaution>> everySet() {
        List<Set<Precaution>> sets = new ArrayList<>();
        Precaution[] all = Precaution.values();
        for (int bits = 0; bits < 1 << all.length; bits++) {
            Set<Precaution> set = EnumSet.noneOf(Precaution.class);
            for (int which = 0; which < all.length; which++) {
                if ((bits >> which & 1) == 1) {
                    set.add(all[which]);
                }
            }
            sets.add(set);
        }
        return sets;
    }

    @Test
    void noPrecautionLetsItsTaskThrough() {
        Ladder ladder = MadeLadder.shipped();
        int printed = 0;
        for (Set<Precaution> set : everySet()) {
            List<String> words = set.stream().map(Precaution::word).toList();
            for (Rung rung : ladder.rungs()) {
                for (When when : When.values()) {
                    for (String help : WordScale.HELP.words()) {
                        Approvals approvals = new Approvals(approval(when, rung, MadeLadder.help(help)).stream()
                                .toList());
                        Estimate<HomeSheet> sheet = HomeSheet.of(
                                MadeLadder.student(words), ladder, approvals, Optional.empty(), MadeLadder.DAY);
                        if (sheet.isEstimated()) {
                            printed++;
                            assertEquals(List.of(rung), rungs(sheet));
                            assertMayGoHome(set, rung, when, help);
                        } else {
                            assertFalse(sheet.reason().isBlank());
                        }
                    }
                }
            }
        }
        assertTrue(printed > 10_000, printed + " sheets were looked at");
    }

    private static void assertMayGoHome(Set<Precaution> set, Rung rung, When when, String help) {
        String what = set + " " + rung.id() + " " + when + " " + help;
        assertEquals(When.HOLDS, when, what);
        assertFalse(set.isEmpty() || set.contains(Precaution.OTHER), what);
        assertFalse(set.contains(Precaution.NONE) && set.size() > 1, what);
        assertTrue(rung.tasks().stream().noneMatch(AT_SCHOOL::contains), what);
        for (Precaution one : set) {
            Set<Task> barred = BARS.getOrDefault(one, Set.of());
            assertTrue(rung.tasks().stream().noneMatch(barred::contains), what);
        }
        assertFalse(List.of("minimal", "moderate", "maximal", "dependent").contains(help), what);
    }

    private static List<Rung> rungs(Estimate<HomeSheet> sheet) {
        return sheet.orElseThrow().rungs().stream()
                .map(HomeSheet.HomeRung::rung)
                .toList();
    }

    /** The same for a ladder in which every single task is a rung, whatever the person typed in not_with. */
    @Test
    void whatTheFileLeavesOutOfNotWithIsBarredAllTheSame() {
        for (Task task : Task.values()) {
            Rung rung = rung(task, Rung.Home.NO);
            for (Map.Entry<Precaution, Set<Task>> bar : BARS.entrySet()) {
                assertEquals(
                        bar.getValue().contains(task),
                        !rung.barredBy(Set.of(bar.getKey())).isEmpty(),
                        task + " " + bar.getKey());
            }
        }
    }

    @Test
    void noRungCanBeMadeThatBringsHomeWhatStaysAtSchool() {
        for (Task task : Task.values()) {
            if (AT_SCHOOL.contains(task)) {
                assertThrows(IllegalArgumentException.class, () -> rung(task, Rung.Home.YES), task.word());
            } else {
                assertEquals(Rung.Home.YES, rung(task, Rung.Home.YES).home());
            }
        }
    }

    /** The measures and the words say what is done, too. */
    @Test
    void theMeasureOrTheWordsOfARungNameItsTask() {
        for (String measure : List.of(
                "beam-steps",
                "back-steps",
                "back-time",
                "single-leg-stance-closed",
                "stairs-time",
                "jump-distance",
                "jump-count",
                "leap-distance",
                "hop-count",
                "hop-distance")) {
            assertThrows(
                    IllegalArgumentException.class,
                    () -> new Rung(
                            "r",
                            Set.of(Task.FORWARD),
                            new MeasureId(measure),
                            Optional.empty(),
                            Optional.empty(),
                            Set.of(),
                            Rung.Home.YES,
                            Map.of()),
                    measure);
        }
        for (String words : List.of(
                "Jump over it",
                "Hop three times",
                "Leaping",
                "Walk backwards",
                "Three steps back now",
                "With your eyes closed",
                "Close both eyes",
                "On the low beam",
                "Up the stairs",
                "Salte la cinta",
                "Ande hacia atrás",
                "De espaldas",
                "Cierre los ojos",
                "Por la viga",
                "Suba la escalera",
                "Suba un escalón")) {
            Rung.Words said = new Rung.Words("Walk", words, "a", "b", "c");
            assertThrows(
                    IllegalArgumentException.class,
                    () -> new Rung(
                            "r",
                            Set.of(Task.FORWARD),
                            new MeasureId("line-steps"),
                            Optional.empty(),
                            Optional.empty(),
                            Set.of(),
                            Rung.Home.YES,
                            Map.of("en", said)),
                    words);
        }
    }

    @Test
    void aSheetCannotBeMadeAroundTheGate() {
        Ladder ladder = MadeLadder.shipped();
        Rung leg = ladder.find("one-leg").orElseThrow();
        Approval approval =
                MadeLadder.approval(leg, MadeLadder.DAY, Optional.empty(), MadeLadder.help("hand-held one"));
        HomeSheet.HomeRung rung = new HomeSheet.HomeRung(leg, approval, HomeHelp.ONE_HAND);
        for (List<String> words : List.of(List.of("bones"), List.of("other"), List.<String>of(), List.of("hip"))) {
            assertThrows(
                    IllegalArgumentException.class,
                    () -> new HomeSheet(
                            MadeLadder.student(words),
                            MadeLadder.DAY,
                            Caution.of(words),
                            Optional.empty(),
                            List.of(rung)));
        }
        // The precautions of another child do not help.
        assertThrows(
                IllegalArgumentException.class,
                () -> new HomeSheet(
                        MadeLadder.student(List.of("bones")),
                        MadeLadder.DAY,
                        Caution.of(List.of("none")),
                        Optional.empty(),
                        List.of(rung)));
    }

    @Test
    void aBlankStrangeOrContradictoryCellSaysWhyThereIsNoSheet() {
        assertTrue(why().contains("blank"));
        assertTrue(why("hip").contains("not on the list"));
        assertTrue(why("other", "neck").contains("other"));
        assertTrue(why("none", "neck").contains("none beside another"));
        assertTrue(why("none").contains("no rung is approved"));
    }

    private static String why(String... words) {
        return HomeSheet.of(
                        MadeLadder.student(List.of(words)),
                        MadeLadder.shipped(),
                        Approvals.NONE,
                        Optional.empty(),
                        MadeLadder.DAY)
                .reason();
    }

    private static Rung rung(Task task, Rung.Home home) {
        return new Rung(
                "r",
                Set.of(task),
                new MeasureId("success"),
                Optional.empty(),
                Optional.empty(),
                Set.of(),
                home,
                Map.of());
    }
}
