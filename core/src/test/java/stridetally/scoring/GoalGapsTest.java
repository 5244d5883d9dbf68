package stridetally.scoring;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import stridetally.measures.Measure;
import stridetally.measures.MeasureKind;
import stridetally.measures.Sidedness;
import stridetally.model.Direction;
import stridetally.model.GoalAim;
import stridetally.model.GoalSide;
import stridetally.model.Summary;
import stridetally.scoring.GoalGap.Code;
import stridetally.units.Amount;

/** One goal per gap; the goal of the draft itself has none. */
class GoalGapsTest {

    static Stream<Arguments> gaps() {
        return Stream.of(
                gap(draft -> {}),
                gap(draft -> draft.target = "", Code.TARGET_MISSING),
                gap(draft -> draft.due = "", Code.DUE_MISSING),
                gap(draft -> draft.baseline = "", Code.BASELINE_MISSING),
                gap(draft -> draft.baselineDate = "", Code.BASELINE_UNDATED),
                gap(draft -> draft.target = "4", Code.TARGET_EQUALS_BASELINE),
                gap(draft -> draft.target = "3", Code.TARGET_ON_WRONG_SIDE),
                // To keep a level is not to better it.
                gap(draft -> {
                    draft.target = "4";
                    draft.aim = GoalAim.KEEP;
                }),
                gap(draft -> draft.target = "201", Code.TARGET_IMPOSSIBLE, Code.TARGET_ABOVE_CAP),
                gap(draft -> draft.target = "12", Code.TARGET_ABOVE_CAP),
                gap(draft -> draft.due = "2025-09-01", Code.DUE_BEFORE_BASELINE),
                gap(
                        draft -> {
                            draft.from = "2025-09-10";
                            draft.until = "2025-09-09";
                        },
                        Code.UNTIL_BEFORE_FROM),
                gap(draft -> draft.side = GoalSide.LEFT, Code.SIDE_WITHOUT_SIDES),
                gap(draft -> draft.criterion = "", Code.CRITERION_MISSING),
                gap(draft -> draft.criterion = "4/5", Code.CRITERION_MISSING),
                gap(draft -> draft.criterion = "6/5x2", Code.CRITERION_IMPOSSIBLE),
                gap(draft -> draft.criterion = "x0", Code.CRITERION_IMPOSSIBLE),
                gap(draft -> draft.help = "", Code.HELP_MISSING),
                gap(draft -> draft.protocol = Map.of("colour", "red"), Code.PROTOCOL_KEY_UNKNOWN));
    }

    private static Arguments gap(Consumer<GoalDraft> change, Code... codes) {
        return Arguments.of(List.of(codes), change);
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("gaps")
    void namesEveryGapAndNoOther(List<Code> codes, Consumer<GoalDraft> change) {
        GoalDraft draft = new GoalDraft();
        change.accept(draft);
        assertEquals(codes, codes(draft, Optional.of(Tries.steps())));
    }

    @Test
    void halfACriterion() {
        GoalDraft draft = new GoalDraft();
        draft.criterion = "4/x2";
        assertEquals(List.of(Code.CRITERION_HALF_WRITTEN), codes(draft, Optional.of(Tries.steps())));
    }

    @Test
    void criterionAsManyAsGivenOverOneSessionIsPossible() {
        GoalDraft draft = new GoalDraft();
        draft.criterion = "5/5x1";
        assertEquals(List.of(), codes(draft, Optional.of(Tries.steps())));
    }

    @Test
    void aStudentThatTheRosterDoesNotHave() {
        GoalDraft draft = new GoalDraft();
        draft.roster = List.of("S9");
        assertEquals(List.of(Code.STUDENT_UNKNOWN), codes(draft, Optional.of(Tries.steps())));
        draft.roster = List.of("S9", "S1");
        assertEquals(List.of(), codes(draft, Optional.of(Tries.steps())));
    }

    @Test
    void aGoalThatFollowsAnUnknownOne() {
        GoalDraft draft = new GoalDraft();
        draft.follows = "G0";
        assertEquals(List.of(Code.FOLLOWS_UNKNOWN), codes(draft, Optional.of(Tries.steps())));
        draft.follows = "G1";
        assertEquals(List.of(), codes(draft, Optional.of(Tries.steps())));
    }

    @Test
    void noPlace() {
        GoalDraft draft = new GoalDraft();
        draft.places = Set.of();
        assertEquals(List.of(Code.PLACES_MISSING), codes(draft, Optional.of(Tries.steps())));
    }

    @Test
    void aSidedMeasureWithoutASide() {
        assertEquals(List.of(Code.SIDE_MISSING), codes(new GoalDraft(), Optional.of(Tries.sided())));
    }

    @Test
    void aMeasureThatTheCatalogueDoesNotHave() {
        assertEquals(List.of(Code.MEASURE_UNKNOWN), codes(new GoalDraft(), Optional.empty()));
    }

    @Test
    void lowerIsBetter() {
        GoalDraft draft = new GoalDraft();
        Measure time = Tries.measure(MeasureKind.DURATION, Optional.of(Direction.LOWER), Summary.BEST, Sidedness.NONE);
        assertEquals(List.of(Code.TARGET_ON_WRONG_SIDE), codes(draft, Optional.of(time)));
        draft.baseline = "20";
        assertEquals(List.of(), codes(draft, Optional.of(time)));
    }

    @Test
    void neitherWayIsBetter() {
        Measure cadence = Tries.measure(MeasureKind.FREQUENCY, Optional.empty(), Summary.MEAN, Sidedness.NONE);
        assertEquals(List.of(Code.NO_BETTER_WAY), codes(new GoalDraft(), Optional.of(cadence)));
    }

    private static List<Code> codes(GoalDraft draft, Optional<Measure> measure) {
        // Tries were stopped at 10, the target of the draft.
        return GoalGaps.of(draft.goal(), draft.caseload(), id -> measure, Optional.of(Amount.of("10"))).stream()
                .map(GoalGap::code)
                .toList();
    }
}
