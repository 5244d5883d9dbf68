package stridetally.report;

import java.util.List;
import stridetally.model.Change;
import stridetally.model.Student;
import stridetally.scoring.AttainmentScore;
import stridetally.stats.Estimate;

/**
 * The documents as nested JSON. Amounts are unrounded, in the measure's unit; a figure that cannot be had is null with its
 * reason beside it. Levels of help are words, in the order of their scale.
 */
public final class ReportJson {
    private final JsonPage page;
    private final GoalJson goals;

    private ReportJson(Appendable out) {
        page = new JsonPage(out);
        goals = new GoalJson(page);
    }

    /** The team's document of one student. */
    public static void write(TeamReport report, Appendable out) {
        ReportJson json = new ReportJson(out);
        json.team(report);
        json.page.finish();
    }

    /** The documents of several students, as one array. */
    public static void write(List<TeamReport> reports, Appendable out) {
        ReportJson json = new ReportJson(out);
        json.page.array(reports, json::team);
        json.page.finish();
    }

    /** The caseload. */
    public static void write(CaseloadReport report, Appendable out) {
        ReportJson json = new ReportJson(out);
        json.page.object(() -> json.caseload(report));
        json.page.finish();
    }

    private void team(TeamReport report) {
        page.object(() -> {
            head(report.head());
            page.object("services", () -> services(report.services()));
            page.array("goals", report.goals(), part -> page.object(() -> goals.write(part)));
            page.object("attainment", () -> attainment(report.attainment()));
            page.object("method", () -> method(report.method()));
        });
    }

    private void head(TeamReport.Head head) {
        page.text("student", head.code().text());
        head.name().ifPresent(name -> page.text("name", name));
        page.text("grade", head.student().map(Student::grade));
        page.text("school", head.student().map(Student::school));
        page.texts("precautions", head.student().map(Student::precautions).orElse(List.of()));
        page.object("period", () -> period(head.period()));
        page.date("as_of", head.asOf());
        stamp(head.stamp());
        page.array(
                "set_aside",
                head.setAside(),
                row -> page.object(() -> {
                    page.text("at", row.at());
                    page.texts("codes", row.codes().stream().map(Enum::name).toList());
                }));
        page.whole("tries_ahead", head.ahead());
    }

    private void period(ReportPeriod period) {
        page.text("name", period.name());
        page.date("from", period.days().first());
        page.date("to", period.days().last());
        page.text("previous", period.previous().map(one -> one.name()));
    }

    private void stamp(ReportInput.Stamp stamp) {
        page.text("logbook", stamp.logbook());
        page.whole("last_entry", stamp.lastEntry());
    }

    private void services(ServiceReport services) {
        page.date("from", services.days().map(days -> days.first()));
        page.date("to", services.days().map(days -> days.last()));
        page.array(
                "plans",
                services.plans(),
                plan -> page.object(() -> {
                    page.whole("minutes", plan.minutes());
                    page.text("per", plan.per());
                    page.text("kind", plan.kind());
                    page.whole("school_days", plan.schoolDays());
                    page.figure("planned_minutes", plan.inPeriod());
                }));
        page.figure("planned_minutes", services.planned());
        page.text("rule", PlannedMinutes.RULE);
        page.whole("visits_held", services.held());
        page.whole("minutes_held", services.heldMinutes());
        page.whole("visits_held_without_minutes", services.heldWithoutMinutes());
        page.array(
                "missed",
                services.missed(),
                missed -> page.object(() -> {
                    page.text("why", missed.status().word());
                    page.whole("visits", missed.visits());
                    page.array(
                            "reasons",
                            List.copyOf(missed.reasons().entrySet()),
                            reason -> page.object(() -> {
                                page.text("reason", reason.getKey());
                                page.whole("visits", reason.getValue());
                            }));
                }));
        page.whole("missed_made_up", services.madeUp());
        page.whole("make_up_visits", services.makeUps());
    }

    private void attainment(StudentAttainment attainment) {
        score("t_score", attainment.equal());
        attainment.weighted().ifPresent(score -> score("t_score_weighted", score));
        page.texts(
                "levels_derived",
                attainment.derived().stream().map(goal -> goal.text()).toList());
        page.array(
                "left_out",
                attainment.equal().leftOut(),
                one -> page.object(() -> {
                    page.text("goal", one.goal().text());
                    page.text("reason", one.reason());
                }));
    }

    private void score(String name, AttainmentScore score) {
        page.figure(
                name,
                score instanceof AttainmentScore.Scored scored
                        ? Estimate.of(scored.t())
                        : Estimate.notEstimable(((AttainmentScore.NotScored) score).reason()));
    }

    private void method(TeamReport.Method method) {
        page.text("forecast", method.forecast());
        page.number("on_course_from", method.thresholds().onCourse());
        page.number("off_course_up_to", method.thresholds().offCourse());
        page.whole("fewest_sessions", method.thresholds().fewestPoints());
        page.whole("stale_weeks", method.thresholds().staleWeeks());
        page.whole("long_break_weeks", method.thresholds().longBreakWeeks());
        page.number("assisted_share", method.thresholds().assistedShare());
    }

    private void caseload(CaseloadReport report) {
        page.text("period", report.period());
        page.date("as_of", report.asOf());
        stamp(report.stamp());
        page.array(
                "counts",
                report.counts(),
                one -> page.object(() -> {
                    page.text("judgement", Attention.word(one.judgement()));
                    page.whole("goals", one.goals());
                }));
        page.array("goals", report.rows(), row -> page.object(() -> goals.write(row, report.part(row))));
        page.array("changes", report.changes(), this::change);
        page.whole("quiet_days", report.quietDays());
        page.array(
                "students_without_a_try",
                report.quiet(),
                one -> page.object(() -> {
                    page.text("student", one.student().text());
                    page.date("last", one.last());
                }));
        page.object("visits", () -> visits(report.visits()));
        page.whole("rows_set_aside", report.setAside());
        page.object("method", () -> method(report.method()));
    }

    private void change(Change change) {
        page.object(() -> {
            page.text("student", change.student().text());
            page.text("goal", change.goal().map(goal -> goal.text()));
            page.date("date", change.date());
            page.text("change", change.what());
        });
    }

    private void visits(VisitTotals totals) {
        page.whole("students", totals.students());
        page.number("planned_minutes", totals.planned());
        page.whole("students_without_planned_minutes", totals.withoutPlan());
        page.whole("visits_held", totals.held());
        page.whole("minutes_held", totals.heldMinutes());
        page.whole("visits_held_without_minutes", totals.withoutMinutes());
        page.array(
                "missed",
                totals.missed(),
                one -> page.object(() -> {
                    page.text("why", one.status().word());
                    page.whole("visits", one.visits());
                }));
    }
}
