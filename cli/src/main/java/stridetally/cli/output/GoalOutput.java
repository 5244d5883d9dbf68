package stridetally.cli.output;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Predicate;
import stridetally.cli.files.Content;
import stridetally.cli.input.ScoredLogbook;
import stridetally.cli.options.Format;
import stridetally.forecast.GoalJudgement;
import stridetally.forecast.GoalReview;
import stridetally.model.Attainment;
import stridetally.model.GoalId;
import stridetally.model.StudentCode;
import stridetally.report.GoalAttainment;
import stridetally.report.GoalRows;
import stridetally.report.PeriodFigures;
import stridetally.report.PeriodRows;
import stridetally.report.ReportPeriod;
import stridetally.report.StudentAttainment;
import stridetally.report.StudentRows;
import stridetally.scoring.GoalScore;
import stridetally.scoring.SideScore;
import stridetally.table.TableWriter;

/** The tables of {@code score --by goal}, {@code --by student} and {@code --by period}. */
public final class GoalOutput {
    private GoalOutput() {}

    /** A row a goal and side. */
    public static Content goals(ScoredLogbook book, Predicate<StudentCode> shown, Format format) {
        return Content.text(out -> {
            TableWriter table = Tables.open(format, out, GoalRows.HEADINGS);
            shown(book, shown)
                    .forEach(score -> GoalRows.rows(score, GoalAttainment.levels(score, attainment(book)))
                            .forEach(table::row));
            table.finish();
        });
    }

    /** A row a student. */
    public static Content students(ScoredLogbook book, Predicate<StudentCode> shown, Format format) {
        return Content.text(out -> {
            TableWriter table = Tables.open(format, out, StudentRows.HEADINGS);
            Map<GoalId, GoalJudgement> judged = new LinkedHashMap<>();
            for (GoalReview review : book.review().goals()) {
                judged.put(review.goal().id(), review.judgement());
            }
            Map<StudentCode, List<GoalScore>> byStudent = new TreeMap<>();
            shown(book, shown)
                    .forEach(score -> byStudent
                            .computeIfAbsent(score.goal().student(), any -> new ArrayList<>())
                            .add(score));
            byStudent.forEach((student, goals) -> {
                StudentAttainment attained = new StudentAttainment(goals.stream()
                        .map(score -> GoalAttainment.of(score, attainment(book)))
                        .toList());
                table.row(StudentRows.row(
                        student,
                        attained,
                        goals.stream()
                                .flatMap(score -> java.util.Optional.ofNullable(
                                        judged.get(score.goal().id()))
                                        .stream())
                                .toList()));
            });
            table.finish();
        });
    }

    /** A row a period, goal and side; the periods are those of the student's school. */
    public static Content periods(ScoredLogbook book, Predicate<StudentCode> shown, Format format) {
        return Content.text(out -> {
            var settings = book.open().caseload().settings();
            PeriodRows rows = new PeriodRows(settings.id(), settings.help());
            TableWriter table = Tables.open(format, out, PeriodRows.HEADINGS);
            List<String> names = settings.periods().stream()
                    .map(period -> period.name())
                    .distinct()
                    .toList();
            for (GoalScore score : shown(book, shown)) {
                String school = book.open()
                        .caseload()
                        .student(score.goal().student())
                        .map(student -> student.school())
                        .orElse("");
                for (String name : names) {
                    ReportPeriod.named(name, settings, school)
                            .filter(period -> !period.days().first().isAfter(book.asOf()))
                            .ifPresent(period -> write(table, rows, score, period));
                }
            }
            table.finish();
        });
    }

    private static void write(TableWriter table, PeriodRows rows, GoalScore score, ReportPeriod period) {
        for (SideScore side : score.sides()) {
            table.row(rows.row(
                    score.goal(),
                    score.measure().orElseThrow(),
                    side.side(),
                    period.name(),
                    PeriodFigures.of(side.sessions(), period.days())));
        }
    }

    private static List<GoalScore> shown(ScoredLogbook book, Predicate<StudentCode> shown) {
        return SessionOutput.sorted(book).stream()
                .filter(score -> shown.test(score.goal().student()))
                .toList();
    }

    private static List<Attainment> attainment(ScoredLogbook book) {
        return book.open().caseload().attainment();
    }
}
