package stridetally.scoring;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import stridetally.model.Direction;
import stridetally.model.GoalId;
import stridetally.scoring.AttainmentLevels.Attained;
import stridetally.scoring.AttainmentScore.LeftOut;
import stridetally.scoring.AttainmentScore.Rated;
import stridetally.units.Amount;

/** Levels from values, and who is left out of the score. */
class AttainmentTest {

    @ParameterizedTest(name = "{0} {1}: {2} -> {3}")
    @CsvSource(delimiter = '|', textBlock = """
            # best level whose value is reached
            HIGHER | -2=2 -1=4 0=6 1=8 2=10 | 10:1   | 2
            HIGHER | -2=2 -1=4 0=6 1=8 2=10 | 19:2   | 1
            HIGHER | -2=2 -1=4 0=6 1=8 2=10 | 6:1    | 0
            HIGHER | -2=2 -1=4 0=6 1=8 2=10 | 5.9:1  | -1
            # worse than the lowest level stays at the lowest: leaving it out would flatter the score
            HIGHER | -2=2 -1=4 0=6 1=8 2=10 | 1:1    | -2
            LOWER  | -2=20 -1=15 0=12 1=10 2=8 | 8:1    | 2
            LOWER  | -2=20 -1=15 0=12 1=10 2=8 | 12.1:1 | -1
            LOWER  | -2=20 -1=15 0=12 1=10 2=8 | 30:1   | -2
            # below -1 only -2 is left
            HIGHER | -1=4 0=6               | 3:1    | -2
            HIGHER | 0=6 1=8                | 3:1    | not rated
            HIGHER | 0=6 1=5                | 7:1    | not rated
            HIGHER | 0=6 1=6                | 7:1    | not rated
            HIGHER | ''                     | 7:1    | not rated
            # a cap at the highest level is that level; below it the true value may be at a higher one
            HIGHER | -2=2 -1=4 0=6 1=8 2=10 | >=10:1 | 2
            HIGHER | -2=2 -1=4 0=6 1=8 2=10 | >=8:1  | not rated
            LOWER  | -2=20 -1=15 0=12 1=10 2=8 | >=30:1 | -2
            LOWER  | -2=20 -1=15 0=12 1=10 2=8 | >=9:1  | not rated
            """)
    void levelOfAValue(Direction better, String levels, String value, String expected) {
        Attained attained = levels(better, levels).of(value(value));
        assertEquals(expected, attained instanceof Attained.AtLevel at ? String.valueOf(at.level()) : "not rated");
    }

    @Test
    void aLevelBeyondTheFiveIsRefused() {
        assertThrows(IllegalArgumentException.class, () -> levels(Direction.HIGHER, "-3=1"));
    }

    @Test
    void aGoalWithoutARatingIsLeftOutOfBothSumsAndNamed() {
        // One goal left, at +1: 50 + 10 whatever its weight.
        AttainmentScore.Scored score = assertInstanceOf(
                AttainmentScore.Scored.class,
                AttainmentScore.of(List.of(
                        new Rated(new GoalId("A"), new Attained.AtLevel(1), Optional.of(Amount.of("7"))),
                        new Rated(new GoalId("B"), new Attained.NotRated("no value"), Optional.of(Amount.of("3"))),
                        new Rated(new GoalId("C"), new Attained.AtLevel(-2), Optional.empty()))));
        assertEquals(60.0, score.t(), 1e-12);
        assertEquals(1, score.goals());
        assertEquals(
                List.of(
                        new LeftOut(new GoalId("B"), "no value"),
                        new LeftOut(new GoalId("C"), "it has no weight above 0, while other goals have one")),
                score.leftOut());
    }

    @Test
    void withoutAnyWeightAllWeighTheSameAndThatIsSaid() {
        AttainmentScore.Scored score = assertInstanceOf(
                AttainmentScore.Scored.class,
                AttainmentScore.of(List.of(new Rated(new GoalId("A"), new Attained.AtLevel(0), Optional.empty()))));
        assertEquals(AttainmentScore.Weighting.ALL_EQUAL, score.weighting());
    }

    @Test
    void withoutARatedGoalThereIsNoScore() {
        assertInstanceOf(AttainmentScore.NotScored.class, AttainmentScore.of(List.of()));
    }

    private static AttainmentLevels levels(Direction better, String text) {
        TreeMap<Integer, Amount> values = new TreeMap<>();
        for (String one : text.isEmpty() ? new String[0] : text.split(" ", -1)) {
            String[] parts = one.split("=", -1);
            values.put(Integer.parseInt(parts[0]), Amount.of(parts[1]));
        }
        return new AttainmentLevels(new GoalId("G1"), better, values);
    }

    private static SessionValue value(String text) {
        boolean capped = text.startsWith(">=");
        String[] parts = (capped ? text.substring(2) : text).split(":", -1);
        long sum = Amount.of(parts[0]).billionths();
        int count = Integer.parseInt(parts[1]);
        return capped ? new SessionValue.Bounded(Bound.AT_LEAST, sum, count) : new SessionValue.Known(sum, count);
    }

    /** By hand: from 4 to 12 is a way of 8, so -1 is 8, +1 is 14 and +2 is 16; below half of the way is -2. */
    @Test
    void levelsAreDerivedFromBaselineAndTarget() {
        GoalDraft draft = new GoalDraft();
        draft.baseline = "4";
        draft.target = "12";
        AttainmentLevels levels =
                AttainmentLevels.derived(draft.goal(), Direction.HIGHER).orElseThrow();
        assertEquals(AttainmentLevels.Origin.DERIVED, levels.origin());
        String[] values = {"4", "7.9", "8", "11.9", "12", "13.9", "14", "15.9", "16", "40"};
        int[] expected = {-2, -2, -1, -1, 0, 0, 1, 1, 2, 2};
        for (int i = 0; i < values.length; i++) {
            assertEquals(
                    new AttainmentLevels.Attained.AtLevel(expected[i]),
                    levels.of(new SessionValue.Known(Amount.of(values[i]).billionths(), 1)),
                    values[i]);
        }
    }

    @Test
    void fewerIsBetterDerivesDownwardsAndAWorseTargetDerivesNothing() {
        GoalDraft draft = new GoalDraft();
        draft.baseline = "12";
        draft.target = "4";
        assertEquals(
                "8",
                AttainmentLevels.derived(draft.goal(), Direction.LOWER)
                        .orElseThrow()
                        .values()
                        .firstEntry()
                        .getValue()
                        .text());
        assertTrue(AttainmentLevels.derived(draft.goal(), Direction.HIGHER).isEmpty());
    }
}
