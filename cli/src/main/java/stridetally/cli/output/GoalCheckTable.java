package stridetally.cli.output;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import stridetally.cli.files.Content;
import stridetally.cli.input.OpenLogbook;
import stridetally.cli.input.ScoredLogbook;
import stridetally.cli.options.ForecastWay;
import stridetally.cli.options.Format;
import stridetally.report.GoalCheck;
import stridetally.table.Cell;
import stridetally.table.TableWriter;

/** How the goals are written: one row a goal and part. */
public final class GoalCheckTable {
    private static final List<String> HEADINGS = List.of("goal", "student", "part", "state", "says");

    private GoalCheckTable() {}

    /** Every goal of a logbook, as on a day. */
    public static List<GoalCheck> of(Path folder, LocalDate asOf) {
        ScoredLogbook book = ScoredLogbook.of(OpenLogbook.at(folder, Optional.empty()), asOf, ForecastWay.OWN);
        return GoalCheck.of(book.review(), book.open().caseload(), ScoredLogbook.measures(book.open()));
    }

    /** The table in a format. */
    public static Content content(List<GoalCheck> checks, Format format) {
        return Content.text(out -> {
            TableWriter table = Tables.open(format, out, HEADINGS);
            for (GoalCheck check : checks) {
                check.parts()
                        .forEach((part, finding) -> table.row(List.of(
                                Cell.text(check.goal().id().text()),
                                Cell.text(check.goal().student().text()),
                                Cell.code(part.word()),
                                Cell.code(finding.state().word()),
                                Cell.text(finding.says()))));
            }
            table.finish();
        });
    }

    /** The counts in one sentence. */
    public static String sentence(List<GoalCheck> checks) {
        long missing = checks.stream()
                .mapToLong(check -> check.count(GoalCheck.State.MISSING))
                .sum();
        long doubtful = checks.stream()
                .mapToLong(check -> check.count(GoalCheck.State.DOUBTFUL))
                .sum();
        return checks.size() + (checks.size() == 1 ? " goal: " : " goals: ") + missing
                + (missing == 1 ? " part is" : " parts are") + " missing, " + doubtful + " doubtful";
    }
}
