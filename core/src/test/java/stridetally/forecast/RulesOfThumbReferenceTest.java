package stridetally.forecast;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;
import stridetally.model.Direction;
import stridetally.model.Goal;
import stridetally.model.GoalAim;
import stridetally.stats.Estimate;
import stridetally.stats.ReferenceCases;
import stridetally.trend.MadeGoal;
import stridetally.trend.MadeSeries;
import stridetally.trend.TrendLine;

/** The rules of thumb against the decisions and slopes that R gives for the same ten weeks. */
class RulesOfThumbReferenceTest {
    private static final Set<String> DECISIONS = Set.of("rule3_change", "rule4_change", "rule4_raise");
    private static final LocalDate START = MadeSeries.DAY_ZERO;
    private static final Goal GOAL = new MadeGoal()
            .baseline("20")
            .baselineDate(START.toString())
            .target("40")
            .due(START.plusDays(126).toString())
            .made();

    private static List<String> said(ReferenceCases cases, String fixture, int sessions) {
        TrendLine trend = TrendLine.of(
                GOAL,
                MadeSeries.of(
                        cases.numbers("day", "case", fixture),
                        cases.texts("y", "case", fixture).toList()),
                START.plusDays(63));
        return new RulesOfThumb(sessions, sessions).sentences(GoalAim.REACH, Optional.of(Direction.HIGHER), trend);
    }

    @TestFactory
    Stream<DynamicTest> consecutiveSessions() {
        ReferenceCases cases = ReferenceCases.of("aimline", "weekly");
        return cases.checks(row -> {
            if (!DECISIONS.contains(row.quantity())) {
                return Optional.empty();
            }
            int sessions = row.quantity().startsWith("rule3") ? 3 : 4;
            String asked = row.quantity().endsWith("change") ? "asks for a change" : "asks for a harder target";
            String rule = said(cases, row.fixture(), sessions).get(0);
            return Optional.of(Estimate.of(rule.contains(asked) ? 1.0 : 0.0));
        });
    }

    @TestFactory
    Stream<DynamicTest> trendAgainstTheAimLine() {
        // slopes a week from the same file: 1.085, 0.388, 0.818, 1.703 and 0.982, all against 1.111
        ReferenceCases cases = ReferenceCases.of("aimline", "weekly");
        return Stream.of("on_track", "below_four", "below_three", "above_four", "touch")
                .map(fixture -> DynamicTest.dynamicTest(
                        fixture,
                        () -> assertEquals(
                                fixture.equals("above_four"),
                                said(cases, fixture, 4).get(1).contains("changes faster than the aim line"))));
    }
}
