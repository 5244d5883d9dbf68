package stridetally.cli.output;

import java.io.IOException;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import stridetally.cli.files.Content;
import stridetally.cli.input.BareSeries;
import stridetally.cli.input.LogPasses;
import stridetally.cli.input.LogRead;
import stridetally.cli.input.ScoredLogbook;
import stridetally.cli.options.Format;
import stridetally.cli.options.NarrowOptions;
import stridetally.measures.Catalogue;
import stridetally.measures.Measure;
import stridetally.model.StudentCode;
import stridetally.model.Use;
import stridetally.report.SessionTableRows;
import stridetally.scoring.GoalScore;
import stridetally.scoring.SeriesScore;
import stridetally.scoring.Session;
import stridetally.scoring.SideScore;
import stridetally.scoring.WalkGap;
import stridetally.table.TableWriter;

/** The table of {@code score --by session}. */
public final class SessionOutput {
    private SessionOutput() {}

    /** Sessions of every goal, then of what was measured beside the goals. */
    public static Content logbook(
            ScoredLogbook book, Predicate<StudentCode> shown, NarrowOptions narrow, Format format) {
        return Content.text(out -> {
            var settings = book.open().caseload().settings();
            SessionTableRows rows = new SessionTableRows(settings.id(), settings.help());
            TableWriter table = Tables.open(format, out, SessionTableRows.HEADINGS);
            for (GoalScore score : sorted(book)) {
                Optional<Measure> measure = score.measure();
                if (measure.isPresent() && shown.test(score.goal().student())) {
                    for (SideScore side : score.sides()) {
                        for (Session session : side.sessions()) {
                            table.row(rows.row(score.goal(), measure.get(), side.side(), session));
                        }
                    }
                }
            }
            BareSeries.scored(
                    book.scorer().index(),
                    book.scorer().seriesWithoutGoal(),
                    book.open().catalogue(),
                    narrow,
                    series -> {
                        if (shown.test(series.key().student())) {
                            write(table, rows, series, measure(book, series));
                        }
                    });
            for (WalkGap gap : book.walks().emptySessions()) {
                if (shown.test(gap.key().student()) && gap.key().use() == Use.PROBE) {
                    write(table, rows, gap, book.open().catalogue());
                }
            }
            table.finish();
        });
    }

    /** Sessions of every series of bare logs; as CSV whatever number of ranges they are read in. */
    public static Content logs(LogPasses passes, NarrowOptions narrow, Format format) {
        return format == Format.CSV && BulkOutput.serves(passes)
                ? out -> BulkOutput.sessions(passes, narrow, out)
                : log(passes.current(), narrow, format);
    }

    /** Sessions of every series of bare logs that were read at once. */
    public static Content log(LogRead log, NarrowOptions narrow, Format format) {
        return Content.text(out -> write(log, narrow, format, out));
    }

    private static void write(LogRead log, NarrowOptions narrow, Format format, Appendable out) throws IOException {
        SessionTableRows rows =
                new SessionTableRows(log.settings().id(), log.settings().help());
        TableWriter table = Tables.open(format, out, SessionTableRows.HEADINGS);
        BareSeries.forEach(
                log,
                narrow,
                series -> write(
                        table,
                        rows,
                        series,
                        log.catalogue().find(series.key().measure()).orElseThrow()));
        for (WalkGap gap : log.walks().emptySessions()) {
            if (BareSeries.shows(narrow, gap.key())) {
                write(table, rows, gap, log.catalogue());
            }
        }
        table.finish();
    }

    private static void write(TableWriter table, SessionTableRows rows, WalkGap gap, Catalogue catalogue) {
        catalogue.find(gap.key().measure()).ifPresent(measure -> table.row(rows.gap(gap, measure)));
    }

    static List<GoalScore> sorted(ScoredLogbook book) {
        return book.scores().stream()
                .sorted(Comparator.comparing((GoalScore score) -> score.goal().student())
                        .thenComparing(score -> score.goal().id()))
                .toList();
    }

    private static Measure measure(ScoredLogbook book, SeriesScore series) {
        return book.open().catalogue().find(series.key().measure()).orElseThrow();
    }

    private static void write(TableWriter table, SessionTableRows rows, SeriesScore series, Measure measure) {
        for (Session session : series.sessions()) {
            table.row(rows.row(series.key(), measure, session));
        }
    }
}
