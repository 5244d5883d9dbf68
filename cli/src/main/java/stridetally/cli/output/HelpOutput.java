package stridetally.cli.output;

import java.io.IOException;
import java.util.Optional;
import java.util.function.Predicate;
import stridetally.cli.files.Content;
import stridetally.cli.input.ScoredLogbook;
import stridetally.cli.options.Format;
import stridetally.model.DateRange;
import stridetally.model.Goal;
import stridetally.model.Period;
import stridetally.model.StudentCode;
import stridetally.model.Use;
import stridetally.report.GoalEvidence;
import stridetally.report.HelpRows;
import stridetally.report.ReportPeriod;
import stridetally.scoring.GoalScore;
import stridetally.table.TableWriter;

/** The table of {@code score --by help}. */
public final class HelpOutput {
    private HelpOutput() {}

    /** Rows of every goal and period of the student's school that has begun. */
    public static Content of(ScoredLogbook book, Predicate<StudentCode> shown, Format format) {
        return Content.text(out -> {
            var settings = book.open().caseload().settings();
            HelpRows rows = new HelpRows(settings.help(), settings.prompt());
            TableWriter table = Tables.open(format, out, HelpRows.HEADINGS);
            for (GoalScore score : SessionOutput.sorted(book)) {
                if (shown.test(score.goal().student())) {
                    for (ReportPeriod period : Periods.begun(book, score.goal().student())) {
                        write(table, rows, book, score.goal(), period);
                    }
                }
            }
            table.finish();
        });
    }

    private static void write(TableWriter table, HelpRows rows, ScoredLogbook book, Goal goal, ReportPeriod period)
            throws IOException {
        for (var row : rows.rows(
                goal,
                period.name(),
                period.days(),
                tries(book, goal, Optional.of(period.days())),
                tries(book, goal, period.previous().map(Period::days)))) {
            table.row(row);
        }
    }

    private static HelpRows.Tries tries(ScoredLogbook book, Goal goal, Optional<DateRange> days) {
        return days.map(range -> new HelpRows.Tries(
                        book.scorer().help(goal, Use.PROBE, range),
                        book.scorer().help(goal, Use.PRACTICE, range)))
                .orElse(new HelpRows.Tries(GoalEvidence.NO_HELP, GoalEvidence.NO_HELP));
    }
}
