package stridetally.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import stridetally.simulate.Scenario;

/** What {@code simulate} writes, brought in and judged like any other log. */
final class MadeCaseloadTest {
    private static final String DUE = "2027-05-17";
    private static final String HALF_WAY = "2027-02-01";
    private static final List<String> OF_THE_FORECAST =
            List.of("forecast", "forecast_low80", "forecast_high80", "chance_line", "chance", "judgement", "reason");

    private static Desk made(Path folder, Scenario scenario) {
        Desk desk = new Desk(folder);
        assertEquals(
                0,
                desk.run("simulate --scenario " + scenario + " --goals 30 --seed 8 --out @made")
                        .exitCode());
        return desk;
    }

    private static void bring(Desk desk, String made) {
        Run run = desk.run("import --logbook @" + made + "/logbook @" + made + "/trials.csv --as-of 2027-06-01 -q");
        assertEquals(0, run.exitCode(), run.err());
    }

    @ParameterizedTest
    @EnumSource(Scenario.class)
    void theTruthOfTheCriterionIsWhatScoreCounts(Scenario scenario, @TempDir Path folder) {
        Desk desk = made(folder, scenario);
        bring(desk, "made");
        List<Map<String, String>> goals = Csv.of(desk.run("score @made/logbook --by goal --as-of " + DUE + " -q")
                        .out())
                .rows();
        Map<String, String> truth = Csv.of(desk.text("made/truth.csv")).rows().stream()
                .collect(Collectors.toMap(row -> Csv.cell(row, "goal"), row -> Csv.cell(row, "criterion_satisfied")));
        Set<String> answers = new HashSet<>(truth.values());
        assertEquals(Set.of("yes", "no", "not written"), answers);
        for (Map<String, String> goal : goals) {
            String satisfied = truth.getOrDefault(Csv.cell(goal, "goal"), "");
            if (!satisfied.equals("not written")) {
                assertEquals(satisfied.equals("yes"), !Csv.cell(goal, "met_on").isEmpty(), goal::toString);
            }
        }
        assertEquals(truth.size(), goals.size());
    }

    @Test
    void aJumpHasItsChangeOfStrategyAndALineThatEndsItsCaps(@TempDir Path folder) {
        Desk jump = made(folder.resolve("a"), Scenario.JUMP);
        // 84 days, a third of 36 weeks, after 2026-09-07
        assertTrue(jump.text("made/logbook/changes.csv").contains("made-001,made-001-goal,2026-11-30,"));
        Desk ceiling = made(folder.resolve("b"), Scenario.CEILING);
        List<Map<String, String>> trials =
                Csv.of(ceiling.text("made/trials.csv")).rows();
        assertTrue(
                trials.stream().anyMatch(row -> Csv.cell(row, "value").equals(">31.00")), "no try stopped at its cap");
        assertTrue(trials.stream().anyMatch(row -> Csv.cell(row, "of").equals("19")), "no walk to the end of the line");
        bring(ceiling, "made");
        String trend =
                ceiling.run("trend @made/logbook --as-of " + HALF_WAY + " -q").out();
        assertTrue(trend.contains("are capped (censored) and enter as what they bound"), trend);
    }

    @Test
    void neitherTheOrderOfRowsNorTheCodesChangeTheForecast(@TempDir Path folder) {
        Desk desk = made(folder, Scenario.MISSING_RUNS);
        for (String file : List.of("trials.csv", "logbook/students.csv", "logbook/goals.csv")) {
            desk.file("other/" + file, turned(desk.text("made/" + file)));
        }
        desk.file("other/logbook/logbook.toml", desk.text("made/logbook/logbook.toml"));
        bring(desk, "made");
        bring(desk, "other");
        List<Map<String, String>> one = trend(desk, "made");
        List<Map<String, String>> other = trend(desk, "other");
        assertEquals(one.size(), other.size());
        assertTrue(
                one.stream().filter(row -> !Csv.cell(row, "chance").isEmpty()).count() > 6);
        for (Map<String, String> row : one) {
            String renamed = renamed(Csv.cell(row, "goal"));
            Map<String, String> twin = other.stream()
                    .filter(candidate -> Csv.cell(candidate, "goal").equals(renamed))
                    .findFirst()
                    .orElseThrow();
            for (String column : OF_THE_FORECAST) {
                assertEquals(Csv.cell(row, column), Csv.cell(twin, column), column + " of " + renamed);
            }
        }
    }

    @Test
    void rulesOfThumbAreSaidOnlyWhenAskedForAndChangeNoJudgement(@TempDir Path folder) {
        Desk desk = made(folder, Scenario.BASE);
        bring(desk, "made");
        List<Map<String, String>> plain = trend(desk, "made");
        Run run = desk.run("trend @made/logbook --rules-of-thumb 4,6 --as-of " + HALF_WAY + " -q");
        List<Map<String, String>> ruled = Csv.of(run.out()).rows();
        for (int i = 0; i < plain.size(); i++) {
            assertEquals(Csv.cell(plain.get(i), "judgement"), Csv.cell(ruled.get(i), "judgement"));
            String reason = Csv.cell(plain.get(i), "reason");
            assertTrue(!reason.contains("rule of"), reason);
            assertTrue(Csv.cell(ruled.get(i), "reason").startsWith(reason + "; rule of the last sessions: "));
        }
        String report = "report @made/logbook --from 2026-09-07 --to " + HALF_WAY + " --student made-001 -q";
        assertTrue(!desk.run(report).out().contains("Beside the judgement"));
        assertTrue(
                desk.run(report + " --rules-of-thumb 3").out().contains("**Beside the judgement:** rule of the trend"));
        assertTrue(desk.run(report + " --rules-of-thumb 3 --format json").out().contains("\"rules_of_thumb\""));
        assertEquals(2, desk.run("trend @made/logbook --rules-of-thumb 3,4,5").exitCode());
    }

    private static List<Map<String, String>> trend(Desk desk, String made) {
        Run run = desk.run("trend @" + made + "/logbook --as-of " + HALF_WAY + " -q");
        assertEquals(0, run.exitCode(), run.err());
        return Csv.of(run.out()).rows();
    }

    /** The rows from last to first, under codes whose order is another. */
    private static String turned(String csv) {
        List<String> lines = new ArrayList<>(csv.lines().toList());
        String heading = lines.remove(0);
        Collections.reverse(lines);
        return heading + "\n" + lines.stream().map(line -> renamed(line) + "\n").collect(Collectors.joining());
    }

    /** made-001 to x-100, made-012 to x-210. */
    private static String renamed(String line) {
        return line.replaceAll("made-(\\d)(\\d)(\\d)", "x-$3$2$1");
    }
}
