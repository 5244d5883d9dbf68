package stridetally.cohort;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

/** Groups, counted by hand and against counting in plain loops. */
class RollUpTest {
    private static final LocalDate DAY = LocalDate.parse("2026-10-05");

    private static final List<CohortSession> SESSIONS = List.of(
            session("S1", "g1", DAY, "", "Hill", "steps", "autumn", "stand-by", 5, 4, 5),
            // The other side of the same day: tries add up, the session is one.
            session("S1", "g1", DAY, "", "Hill", "steps", "autumn", "stand-by", 3, 3, 3),
            session("S1", "g1", DAY.plusDays(7), "", "Hill", "steps", "autumn", "independent", 5, 5, 5),
            session("S1", "g2", DAY, "", "Hill", "stance", "autumn", "independent", 2, 2, 2),
            session("S2", "g3", DAY, "", "Dale", "steps", "winter", "independent", 4, 0, 1));

    private static final List<CohortGoal> GOALS = List.of(
            new CohortGoal("S1", "g1", "Hill", "steps", "met", Optional.of(1.0)),
            new CohortGoal("S1", "g2", "Hill", "stance", "off course", Optional.of(0.2)),
            new CohortGoal("S2", "g3", "Dale", "steps", "off course", Optional.empty()),
            new CohortGoal("S3", "g4", "Dale", "jumps", "not begun", Optional.empty()));

    @Test
    void bySchool() {
        List<GroupRow> rows = RollUp.of(GroupBy.SCHOOL, SESSIONS, GOALS);
        assertEquals(List.of("Dale", "Hill"), rows.stream().map(GroupRow::group).toList());
        GroupRow dale = rows.get(0);
        assertEquals(2, dale.students(), "S3 has a goal and no session");
        assertEquals(2, dale.goals());
        assertEquals(1, dale.sessions());
        assertEquals(Map.of("off course", 1, "not begun", 1), dale.judgements());
        assertFalse(dale.median().isEstimated(), "no share of the way is known");
        GroupRow hill = rows.get(1);
        assertEquals(List.of(1, 2, 3, 15, 14, 15), counts(hill));
        assertEquals(0.6, hill.median().orElseThrow(), 1e-12);
        // Type 7 of .2 and 1: .2 + .25 * .8 and .2 + .75 * .8.
        assertEquals(0.4, hill.low().orElseThrow(), 1e-12);
        assertEquals(0.8, hill.high().orElseThrow(), 1e-12);
    }

    @Test
    void byMeasurePeriodAndHelp() {
        List<GroupRow> measures = RollUp.of(GroupBy.MEASURE, SESSIONS, GOALS);
        assertEquals(
                List.of("jumps", "stance", "steps"),
                measures.stream().map(GroupRow::group).toList());
        assertEquals(List.of(1, 1, 0, 0, 0, 0), counts(measures.get(0)));
        assertEquals(List.of(2, 2, 3, 17, 12, 14), counts(measures.get(2)));
        List<GroupRow> periods = RollUp.of(GroupBy.PERIOD, SESSIONS, GOALS);
        assertEquals(
                List.of("autumn", "winter"),
                periods.stream().map(GroupRow::group).toList());
        assertEquals(List.of(1, 2, 3, 15, 14, 15), counts(periods.get(0)));
        assertTrue(periods.get(0).judgements().isEmpty());
        List<GroupRow> help = RollUp.of(GroupBy.HELP, SESSIONS, GOALS);
        assertEquals(
                List.of("independent", "stand-by"),
                help.stream().map(GroupRow::group).toList());
        assertEquals(List.of(1, 1, 1, 8, 7, 8), counts(help.get(1)));
    }

    @Test
    void nothingToRollUpIsNoGroup() {
        for (GroupBy by : GroupBy.values()) {
            assertEquals(List.of(), RollUp.of(by, List.of(), List.of()));
        }
        assertThrows(
                IllegalArgumentException.class,
                () -> session("S1", "g1", DAY, "", "", "steps", "autumn", "independent", 1, 1, 1));
    }

    /** Whatever the words and the order of the rows, the sums are those of plain loops. */
    @Test
    void sumsAreThoseOfPlainLoops() {
        List<String> words = List.of("a", " a", "NA", "-", "null", "a,b", "\"", "=1+1", "\u00e1", "0", "true", "*");
        for (long seed = 0; seed < 20; seed++) {
            SplittableRandom random = new SplittableRandom(seed);
            List<CohortSession> sessions = new ArrayList<>();
            Map<String, Integer> tries = new HashMap<>();
            for (int row = 0; row < 60; row++) {
                String group = words.get(random.nextInt(words.size()));
                int made = random.nextInt(6);
                sessions.add(session("S" + random.nextInt(9), "g", DAY, "" + row, "x", "m", group, "h", made, 0, made));
                tries.merge(group, made, Integer::sum);
            }
            Map<String, Integer> summed = new HashMap<>();
            int all = 0;
            for (GroupRow row : RollUp.of(GroupBy.PERIOD, sessions, List.of())) {
                summed.put(row.group(), row.tries());
                all += row.sessions();
            }
            assertEquals(tries, summed, "seed " + seed);
            assertEquals(60, all, "seed " + seed);
        }
    }

    private static List<Integer> counts(GroupRow row) {
        return List.of(row.students(), row.goals(), row.sessions(), row.tries(), row.permitted(), row.known());
    }

    private static CohortSession session(
            String student,
            String goal,
            LocalDate day,
            String label,
            String school,
            String measure,
            String period,
            String help,
            int tries,
            int permitted,
            int known) {
        return new CohortSession(student, goal, day, label, school, measure, period, help, tries, permitted, known);
    }
}
