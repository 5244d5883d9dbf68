package stridetally.scoring;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import stridetally.ingest.ReadingKind;
import stridetally.ingest.SeriesNumbers;
import stridetally.measures.Catalogue;
import stridetally.model.Goal;
import stridetally.model.Level;
import stridetally.model.MeasureId;
import stridetally.model.Protocol;
import stridetally.model.SeriesKey;
import stridetally.model.Side;
import stridetally.model.TrialPlace;
import stridetally.model.Use;
import stridetally.units.Amount;

/** The share of tries without help, from the words of help of another measure. Worked by hand. */
class DerivedSharesTest {
    private static final int DAY = Math.toIntExact(LocalDate.of(2026, 10, 5).toEpochDay());
    private static final int ALONE = 0;
    private static final int HELPED = 4;

    private final SessionTable table = new SessionTable(new SeriesNumbers());
    private final List<DerivedTry> made = new ArrayList<>();
    private final List<String> gaps = new ArrayList<>();

    /** 3 of 4 tries whose help was written; refusing is no try, being unable is one that was made. */
    @Test
    void countsTheTriesThatWereMadeAndWhoseHelpWasWritten() {
        tries("line-steps", "", DAY, ALONE, ALONE, HELPED, Level.BLANK);
        one("line-steps", DAY, ReadingKind.REFUSED, ALONE);
        one("line-steps", DAY, ReadingKind.UNABLE, ALONE);
        derive(goal(Map.of("task", "line-steps")));
        assertEquals(List.of("0.75"), values());
        assertEquals(
                "3 of 4 tries of line-steps without help; help of 1 more was not written",
                made.get(0).madeOf());
        assertEquals(0, made.get(0).help());
    }

    @Test
    void helpThatWasNeverWrittenIsNotNone() {
        tries("line-steps", "", DAY, Level.BLANK, Level.BLANK);
        derive(goal(Map.of("task", "line-steps")));
        assertEquals(List.of(), values());
        assertEquals(
                List.of("independent-share of " + Tries.STUDENT.text() + " on 2026-10-05: not known, help was not"
                        + " written for the tries of line-steps of that day"),
                gaps);
    }

    @Test
    void aLoggedShareStandsInstead() {
        tries("line-steps", "", DAY, ALONE, HELPED);
        one("independent-share", DAY, ReadingKind.EXACT, ALONE);
        derive(goal(Map.of("task", "line-steps")));
        assertEquals(List.of(), values());
        assertEquals(List.of(), gaps);
    }

    @Test
    void onlyTriesMadeAsTheGoalSaysCount() {
        tries("line-steps", "surface=foam", DAY, HELPED, HELPED);
        tries("line-steps", "surface=floor", DAY, ALONE, HELPED);
        derive(goal(Map.of("task", "line-steps", "surface", "floor")));
        assertEquals(List.of("0.5"), values());
    }

    @Test
    void aTaskThatIsNoMeasureOrNoneAtAllDerivesNothing() {
        tries("line-steps", "", DAY, ALONE);
        derive(goal(Map.of("task", "stairs at recess")));
        derive(goal(Map.of()));
        derive(goal(Map.of("task", "independent-share")));
        assertEquals(List.of(), values());
    }

    @Test
    void twoGoalsOfOneTaskDeriveItOnce() {
        tries("line-steps", "", DAY, ALONE);
        derive(goal(Map.of("task", "line-steps")), goal(Map.of("task", "line-steps")));
        assertEquals(List.of("1"), values());
    }

    @Test
    void theGoalTakesWhatWasDerived() {
        tries("line-steps", "", DAY, ALONE, ALONE, HELPED);
        tries("line-steps", "", DAY + 7, ALONE, ALONE);
        Goal goal = goal(Map.of("task", "line-steps"));
        derive(goal);
        GoalMatch.Found found = new GoalMatch("L", table.numbers(), series -> 0)
                .find(goal, Catalogue.standard().find(goal.measure()).orElseThrow());
        assertEquals(1, found.taken().size());
        List<TrialGroup> sessions = table.index().of(found.taken().get(0).series());
        assertEquals(2, sessions.size());
        assertTrue(found.notTaken().isEmpty());
    }

    private List<String> values() {
        return made.stream().map(one -> new Amount(one.value()).text()).toList();
    }

    private void derive(Goal... goals) {
        DerivedShares.into(table, List.of(goals), Catalogue.standard()::find, new DerivedWalks.Taker() {
            @Override
            public void derived(DerivedTry one) {
                made.add(one);
            }

            @Override
            public void gap(WalkGap gap) {
                gaps.add(gap.sentence());
            }

            @Override
            public void alone(long tries) {
                throw new AssertionError("no walk");
            }
        });
    }

    private static Goal goal(Map<String, String> protocol) {
        return new GoalDraft()
                .goal()
                .withTerms(new MeasureId("independent-share"), new Protocol(new TreeMap<>(protocol)));
    }

    private void tries(String measure, String protocol, int day, int... helps) {
        for (int help : helps) {
            table.trial(series(measure, protocol), day, 0, 0, ReadingKind.EXACT, Amount.ONE, 1, help, 0, day);
        }
    }

    private void one(String measure, int day, ReadingKind kind, int help) {
        table.trial(series(measure, ""), day, 0, 0, kind, Amount.ONE, 1, help, 0, day);
    }

    private int series(String measure, String protocol) {
        TreeMap<String, String> keys = new TreeMap<>();
        if (!protocol.isEmpty()) {
            keys.put("surface", protocol.substring(protocol.indexOf('=') + 1));
        }
        return table.numbers()
                .number(new SeriesKey(
                        "",
                        Tries.STUDENT,
                        new MeasureId(measure),
                        Side.NONE,
                        new Protocol(keys),
                        TrialPlace.SCHOOL,
                        Use.PROBE));
    }
}
