package stridetally.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonParser;
import java.io.IOException;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.LongStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import stridetally.forecast.GoalReview;
import stridetally.model.StudentCode;
import stridetally.table.Cell;

/** What must hold of every rendering, over caseloads drawn from a seed. */
class ReportPropertyTest {
    private static final List<String> NEVER =
            List.of("NaN", "Infinity", "Optional", "Estimate", "student ***", "[", "{");

    static LongStream seeds() {
        return LongStream.range(0, 60);
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void noPageForPeopleShowsWhatOnlyAProgramUnderstands(long seed) {
        ReportInput input = RandomCaseload.of(seed).input();
        StringBuilder out = new StringBuilder();
        for (StudentCode student : TeamReport.students(input)) {
            TeamMarkdown.write(TeamReport.of(input, student).orElseThrow(), out);
        }
        CaseloadMarkdown.write(CaseloadReport.of(input, CaseloadReport.QUIET_DAYS), out);
        for (String word : NEVER) {
            assertFalse(out.toString().contains(word), word);
        }
        assertFalse(Pattern.compile("\\bnull\\b").matcher(out).find(), "null");
        Matcher wrongPlural = Pattern.compile(
                        "[^\n]*(?<![0-9.])1 (tries|sessions|visits|rows|goals|minutes|days|weeks|steps)\\b")
                .matcher(out.toString().replaceAll("[0-9.]+ of (the )?[0-9.]+", ""));
        assertFalse(wrongPlural.find(), () -> wrongPlural.group());
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void flatTablesHaveACellForEachColumnAndAReasonForEachBlankFigure(long seed) {
        ReportInput input = RandomCaseload.of(seed).input();
        TrendRows trend = new TrendRows("made-up", MeasurementError.NOT_COMPUTED);
        int reason = TrendRows.HEADINGS.indexOf("reason");
        int latest = TrendRows.HEADINGS.indexOf("latest");
        for (GoalReview review : input.review().goals()) {
            for (List<Cell> row : trend.rows(review)) {
                assertEquals(TrendRows.HEADINGS.size(), row.size());
                boolean blank = row.subList(latest, reason).stream().anyMatch(cell -> cell instanceof Cell.Blank);
                assertTrue(!blank || row.get(reason) instanceof Cell.Text);
            }
            for (List<Cell> row : GoalRows.rows(review.score(), java.util.Optional.empty())) {
                assertEquals(GoalRows.HEADINGS.size(), row.size());
            }
        }
        StringBuilder out = new StringBuilder();
        ReportCsv.write(CaseloadReport.of(input, CaseloadReport.QUIET_DAYS), out);
        for (String word : List.of("NaN", "Infinity", "Optional", "null", "student ***")) {
            assertFalse(out.toString().contains(word), word);
        }
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void jsonParsesAndEveryMissingFigureHasItsReason(long seed) throws IOException {
        ReportInput input = RandomCaseload.of(seed).input();
        StringBuilder out = new StringBuilder();
        List<TeamReport> reports = TeamReport.students(input).stream()
                .map(student -> TeamReport.of(input, student).orElseThrow())
                .toList();
        ReportJson.write(reports, out);
        StringBuilder caseload = new StringBuilder();
        ReportJson.write(CaseloadReport.of(input, CaseloadReport.QUIET_DAYS), caseload);
        for (String text : List.of(out.toString(), caseload.toString())) {
            try (JsonParser parser = new JsonFactory().createParser(text)) {
                while (parser.nextToken() != null) {
                    assertTrue(parser.currentName() == null
                            || !parser.currentName().isEmpty());
                }
            }
            assertFalse(text.contains("NaN") || text.contains("Infinity") || text.contains("\"null\""));
            assertFalse(Pattern.compile("\"value\" : null(?!,\\s+\"reason\" : \"[^\"])")
                    .matcher(text)
                    .find());
        }
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void theSameCaseloadGivesTheSameCharacters(long seed) {
        assertEquals(everything(seed), everything(seed));
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void noLineOfAChartIsWiderThanItMayBe(long seed) {
        ReportInput input = RandomCaseload.of(seed).input();
        for (StudentCode student : TeamReport.students(input)) {
            TeamReport.of(input, student).orElseThrow().goals().stream()
                    .flatMap(part -> part.sides().stream())
                    .flatMap(side -> side.chart().lines().stream())
                    .forEach(line -> assertTrue(line.codePointCount(0, line.length()) <= TextChart.WIDTH, line));
        }
    }

    private static String everything(long seed) {
        ReportInput input = RandomCaseload.of(seed).input();
        StringBuilder out = new StringBuilder();
        CaseloadReport caseload = CaseloadReport.of(input, CaseloadReport.QUIET_DAYS);
        CaseloadMarkdown.write(caseload, out);
        ReportJson.write(caseload, out);
        ReportCsv.write(caseload, out);
        TeamReport.students(input)
                .forEach(student ->
                        TeamMarkdown.write(TeamReport.of(input, student).orElseThrow(), out));
        return out.toString();
    }
}
