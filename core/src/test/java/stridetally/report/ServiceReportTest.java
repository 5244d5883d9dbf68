package stridetally.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.time.LocalDate;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import stridetally.model.ServicePlan;
import stridetally.model.Visit;

/** Services given against planned. The calendar is counted by hand beside each number. */
class ServiceReportTest {

    /** 23 November 2026 is a Monday, 5 March 2027 a Friday: 15 weeks of 5 days, less the two weeks of the break. */
    @Test
    void weeklyMinutesAreForTheSchoolDaysOutsideBreaks() {
        assertEquals(60 * 65 / 5.0, planned(plan(60, "week")).orElseThrow());
    }

    /** From Monday 1 February to Friday 5 March 2027: 25 school days. */
    @Test
    void aPlanCountsFromItsFirstDay() {
        ServicePlan plan = new ServicePlan(
                MadeCaseload.STUDENT,
                Optional.of(LocalDate.parse("2027-02-01")),
                Optional.empty(),
                30,
                "week",
                "direct");
        assertEquals(30 * 25 / 5.0, planned(plan).orElseThrow());
    }

    /**
     * November: 6 of 21 school days (23 to 30); December: all 14 (23 less 9 of the break); January: all 20 (21 less 1);
     * February: all 20; March: 5 of 23.
     */
    @Test
    void monthlyMinutesAreSharedOutOverTheSchoolDaysOfTheMonth() {
        assertEquals(
                60 * 6 / 21.0 + 60 + 60 + 60 + 60 * 5 / 23.0,
                planned(plan(60, "month")).orElseThrow(),
                1e-9);
    }

    /** 31 August 2026 to 30 August 2027: 52 weeks of 5 days and one Monday, less 10 of the break: 251 school days. */
    @Test
    void yearlyMinutesAreSharedOutOverTheTwelveMonthsFromThePlansFirstDay() {
        ServicePlan plan = new ServicePlan(
                MadeCaseload.STUDENT, Optional.of(LocalDate.parse("2026-08-31")), Optional.empty(), 1000, "year", "");
        assertEquals(1000 * 65 / 251.0, planned(plan).orElseThrow(), 1e-9);
    }

    @Test
    void anUnknownRateIsSaidAndNotGuessed() {
        assertFalse(planned(plan(60, "fortnight")).isEstimated());
        assertFalse(planned(plan(60, "year")).isEstimated());
    }

    @Test
    void minutesArePlannedOnlyUpToTheDayOfTheReport() {
        MadeCaseload made = new MadeCaseload();
        made.services.add(plan(60, "week"));
        made.asOf = LocalDate.parse("2026-11-27");
        assertEquals(60.0, report(made).planned().orElseThrow());
    }

    @Test
    void visitsOutsideThePeriodDoNotCountAndMakeUpsAreMatchedByDate() {
        MadeCaseload made = MadeCaseload.rich();
        made.visits.add(MadeCaseload.visit("2026-11-20", Visit.Status.HELD, 45, "", ""));
        ServiceReport report = report(made);
        assertEquals(3, report.held());
        assertEquals(60, report.heldMinutes());
        assertEquals(1, report.heldWithoutMinutes());
        assertEquals(2, report.missedVisits());
        assertEquals(1, report.madeUp());
        assertEquals(1, report.makeUps());
    }

    private static ServicePlan plan(int minutes, String per) {
        return new ServicePlan(MadeCaseload.STUDENT, Optional.empty(), Optional.empty(), minutes, per, "direct");
    }

    private static stridetally.stats.Estimate<Double> planned(ServicePlan plan) {
        MadeCaseload made = new MadeCaseload();
        made.services.add(plan);
        return report(made).planned();
    }

    private static ServiceReport report(MadeCaseload made) {
        ReportPeriod period =
                ReportPeriod.named("winter", MadeCaseload.settings(), "").orElseThrow();
        return ServiceReport.of(made.caseload(), MadeCaseload.STUDENT, new ReportWindow(period, made.asOf));
    }
}
