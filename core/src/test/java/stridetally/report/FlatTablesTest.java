package stridetally.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import stridetally.forecast.GoalReview;
import stridetally.model.Direction;
import stridetally.model.GoalId;
import stridetally.model.Side;
import stridetally.model.WordScale;
import stridetally.scoring.AttainmentLevels;
import stridetally.scoring.AttainmentLevels.Attained;
import stridetally.scoring.AttainmentScore.Rated;
import stridetally.scoring.GoalScore;
import stridetally.scoring.Session;
import stridetally.table.Cell;
import stridetally.trend.Series;
import stridetally.trend.SeriesWindow;
import stridetally.trend.TrendLine;
import stridetally.units.Amount;

/** The flat tables: the columns that scripts rely on, in their order, and what stands in them. */
class FlatTablesTest {

    @Test
    void theColumnsAreThePublishedOnes() {
        assertColumns(
                SessionTableRows.HEADINGS,
                "source,student,goal,measure,side,protocol,place,date,session,trials,counted,value,unit,best,mean,median,last,"
                        + "sd,independent_share,permitted_share,most_help,met,streak,reason");
        assertColumns(
                GoalRows.HEADINGS,
                "student,goal,measure,side,baseline,target,due,latest,latest_date,share_of_way,met_on,streak,level,weight,"
                        + "reason");
        assertColumns(
                StudentRows.HEADINGS,
                "student,goals,rated,unrated,t_score,t_score_weighted,met,on_course,too_close_to_call,off_course,"
                        + "too_few_sessions,not_yet_without_help,not_begun,not_met_by_its_date,ended,no_judgement,reason");
        assertColumns(
                PeriodRows.HEADINGS,
                "source,student,goal,measure,side,period,from,to,sessions,sessions_with_value,trials,counted,unit,median,low,"
                        + "high,independent_share,permitted_share,most_help,reason");
        assertColumns(
                TrendRows.HEADINGS,
                "source,student,goal,measure,side,protocol,place,unit,sessions,first,last,baseline,target,due,latest,"
                        + "slope_per_week,slope_se,slope_low95,slope_high95,intercept,r_squared,robust_slope,robust_low95,"
                        + "robust_high95,kendall_s,kendall_tau,kendall_p,lag1,needed_per_week,aim_today,latest_minus_aim,"
                        + "forecast,forecast_low80,forecast_high80,chance_line,chance,judgement,reason,beyond_error,error_limit95,error_df,error_source");
        assertColumns(ReportsCsvRow.HEADINGS, "goal,period,as_of,value,judgement,last_entry");
    }

    @Test
    void aSessionRowHasItsValuesAndWords() {
        GoalScore score = review(MadeCaseload.rich()).score();
        Session session = score.sides().get(0).sessions().get(5);
        List<Cell> row = new SessionTableRows("made-up", WordScale.HELP)
                .row(score.goal(), MadeCaseload.STEPS, Side.NONE, session);
        // Tries 9, 8 and one of 9 with minimal help, which does not count: mean and median of 9 and 8, best 9.
        assertEquals(
                "made-up,S-1,G-1,line-steps,,shoes=on,school clinic,2026-12-15,,3,2,8.5,steps,9.0,8.5,8.5,8.0",
                String.join(",", row.subList(0, 17).stream().map(Cell::plain).toList()));
        assertEquals("minimal", cell(SessionTableRows.HEADINGS, row, "most_help"));
        // Two of the three tries are at permitted help; none is independent.
        assertEquals(Double.toString(2 / 3.0), cell(SessionTableRows.HEADINGS, row, "permitted_share"));
        assertEquals("0.0", cell(SessionTableRows.HEADINGS, row, "independent_share"));
        assertEquals("no", cell(SessionTableRows.HEADINGS, row, "met"));
    }

    @Test
    void aCappedSessionKeepsItsSignAndASessionWithoutAValueItsReason() {
        GoalScore score = review(MadeCaseload.rich()).score();
        SessionTableRows rows = new SessionTableRows("made-up", WordScale.HELP);
        List<String> values = score.sides().get(0).sessions().stream()
                .map(one -> rows.row(score.goal(), MadeCaseload.STEPS, Side.NONE, one))
                .map(row -> cell(SessionTableRows.HEADINGS, row, "value") + ":"
                        + cell(SessionTableRows.HEADINGS, row, "reason"))
                .toList();
        // Of 11, at least 10 and 9 the middle one is at least 10.
        assertTrue(values.stream().anyMatch(one -> one.startsWith(">=10.0:")), values.toString());
        assertTrue(values.stream().anyMatch(one -> one.startsWith(":refused")), values.toString());
        assertTrue(values.stream().anyMatch(one -> one.startsWith(":every try needed more help")), values.toString());
    }

    @Test
    void aGoalRowHasItsLevelOrWhyNot() {
        GoalScore score = review(MadeCaseload.rich()).score();
        AttainmentLevels levels = new AttainmentLevels(
                new GoalId("G-1"),
                Direction.HIGHER,
                new java.util.TreeMap<>(java.util.Map.of(-2, Amount.of("4"), 0, Amount.of("12"), 2, Amount.of("16"))));
        List<Cell> rated = GoalRows.rows(score, Optional.of(levels)).get(0);
        assertEquals("0", cell(GoalRows.HEADINGS, rated, "level"));
        assertEquals("12.0", cell(GoalRows.HEADINGS, rated, "latest"));
        // (12 - 4) / (12 - 4).
        assertEquals("1.0", cell(GoalRows.HEADINGS, rated, "share_of_way"));
        List<Cell> unrated = GoalRows.rows(score, Optional.empty()).get(0);
        assertEquals("", cell(GoalRows.HEADINGS, unrated, "level"));
        assertTrue(cell(GoalRows.HEADINGS, unrated, "reason").contains("level: no attainment levels are written"));
    }

    /** Two goals at +1 and -1 of equal weight: T = 50 (Kiresuk and Sherman 1968: no goal above or below on balance). */
    @Test
    void aStudentRowHasBothScoresAndCountsItsJudgements() {
        List<Rated> goals = List.of(
                new Rated(new GoalId("A"), new Attained.AtLevel(1), Optional.empty()),
                new Rated(new GoalId("B"), new Attained.AtLevel(-1), Optional.empty()),
                new Rated(new GoalId("C"), new Attained.NotRated("no value"), Optional.empty()));
        StudentAttainment attainment = new StudentAttainment(goals.stream()
                .map(one -> new GoalAttainment(one, List.of(one.attained()), Optional.empty()))
                .toList());
        List<Cell> row = StudentRows.row(
                MadeCaseload.STUDENT,
                attainment,
                List.of(review(MadeCaseload.rich()).judgement()));
        assertEquals("50.0", cell(StudentRows.HEADINGS, row, "t_score"));
        assertEquals("", cell(StudentRows.HEADINGS, row, "t_score_weighted"));
        assertEquals("2", cell(StudentRows.HEADINGS, row, "rated"));
        assertEquals("C", cell(StudentRows.HEADINGS, row, "unrated"));
        assertEquals("1", cell(StudentRows.HEADINGS, row, "on_course"));
        assertEquals("0", cell(StudentRows.HEADINGS, row, "met"));
        assertEquals(
                "t_score_weighted: no weights are written; C is left out: no value",
                cell(StudentRows.HEADINGS, row, "reason"));
    }

    @Test
    void aPeriodRowHasTheMedianOfItsSessions() {
        GoalScore score = review(MadeCaseload.rich()).score();
        List<Cell> row = new PeriodRows("made-up", WordScale.HELP)
                .row(
                        score.goal(),
                        MadeCaseload.STEPS,
                        Side.NONE,
                        "winter",
                        PeriodFigures.of(
                                score.sides().get(0).sessions(), MadeCaseload.range("2026-11-23", "2027-03-05")));
        // Session medians 8, 8.5, 10, at least 10, 12: the middle one is 10, the highest may lie above 12.
        assertEquals("10.0", cell(PeriodRows.HEADINGS, row, "median"));
        assertEquals("8.0", cell(PeriodRows.HEADINGS, row, "low"));
        assertEquals(">=12.0", cell(PeriodRows.HEADINGS, row, "high"));
        assertEquals("6", cell(PeriodRows.HEADINGS, row, "sessions"));
        assertEquals("5", cell(PeriodRows.HEADINGS, row, "sessions_with_value"));
        assertEquals("18", cell(PeriodRows.HEADINGS, row, "trials"));
        assertEquals("14", cell(PeriodRows.HEADINGS, row, "counted"));
        assertEquals("minimal", cell(PeriodRows.HEADINGS, row, "most_help"));
    }

    @Test
    void aTrendRowIsBlankWithAReasonWhereNothingCanBeSaid() {
        List<Cell> row = new TrendRows("made-up", MeasurementError.NOT_COMPUTED)
                .rows(review(MadeCaseload.poor()))
                .get(0);
        assertEquals("0", cell(TrendRows.HEADINGS, row, "sessions"));
        assertEquals("", cell(TrendRows.HEADINGS, row, "slope_per_week"));
        assertEquals("", cell(TrendRows.HEADINGS, row, "chance"));
        assertEquals("not begun", cell(TrendRows.HEADINGS, row, "judgement"));
        assertTrue(cell(TrendRows.HEADINGS, row, "reason").contains("no session with a value"));
    }

    @Test
    void aSeriesWithoutAGoalHasNoJudgement() {
        GoalScore score = review(MadeCaseload.rich()).score();
        Series series = Series.of(score.sides().get(0).sessions(), SeriesWindow.upTo(LocalDate.parse("2027-03-05")));
        List<Cell> row = new TrendRows("made-up", MeasurementError.NOT_COMPUTED)
                .row(
                        new stridetally.model.SeriesKey(
                                "elsewhere",
                                MadeCaseload.STUDENT,
                                MadeCaseload.STEPS.id(),
                                Side.NONE,
                                stridetally.model.Protocol.NONE,
                                stridetally.model.TrialPlace.SCHOOL,
                                stridetally.model.Use.PROBE),
                        MadeCaseload.STEPS,
                        TrendLine.bare(series));
        assertEquals(TrendRows.HEADINGS.size(), row.size());
        assertEquals("elsewhere", cell(TrendRows.HEADINGS, row, "source"));
        assertEquals("9", cell(TrendRows.HEADINGS, row, "sessions"));
        assertEquals("", cell(TrendRows.HEADINGS, row, "judgement"));
    }

    @Test
    void whatWasToldIsKept() {
        TeamReport team = MadeCaseload.rich().team();
        List<Cell> row = ReportsCsvRow.row(
                team.goals().get(0), team.head().period(), team.head().asOf(), 12);
        assertEquals(
                "G-1,winter,2027-03-05,12.0,on course,12",
                String.join(",", row.stream().map(Cell::plain).toList()));
    }

    private static GoalReview review(MadeCaseload made) {
        return made.input().review().goals().get(0);
    }

    private static String cell(List<String> headings, List<Cell> row, String name) {
        return row.get(headings.indexOf(name)).plain();
    }

    private static void assertColumns(List<String> headings, String published) {
        assertEquals(published, String.join(",", headings));
    }
}
