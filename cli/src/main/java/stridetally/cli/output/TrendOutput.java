package stridetally.cli.output;

import java.io.OutputStream;
import java.util.Comparator;
import java.util.function.Predicate;
import stridetally.cli.files.Content;
import stridetally.cli.input.BareSeries;
import stridetally.cli.input.LogPasses;
import stridetally.cli.input.LogRead;
import stridetally.cli.input.ScoredLogbook;
import stridetally.cli.options.Format;
import stridetally.cli.options.NarrowOptions;
import stridetally.forecast.GoalReview;
import stridetally.model.StudentCode;
import stridetally.report.MeasurementError;
import stridetally.report.TrendRows;
import stridetally.scoring.SeriesScore;
import stridetally.table.TableWriter;
import stridetally.trend.Series;
import stridetally.trend.SeriesWindow;
import stridetally.trend.TrendLine;

/** The table of {@code trend}. */
public final class TrendOutput {
    private TrendOutput() {}

    /** A row a goal and side, then a row for each series that no goal takes. */
    public static Content logbook(
            ScoredLogbook book, Predicate<StudentCode> shown, NarrowOptions narrow, Format format) {
        return Content.text(out -> {
            TrendRows rows = new TrendRows(book.open().caseload().settings().id(), book.error());
            TableWriter table = Tables.open(format, out, TrendRows.HEADINGS);
            book.review().goals().stream()
                    .filter(review -> shown.test(review.goal().student()))
                    .sorted(Comparator.comparing(
                                    (GoalReview review) -> review.goal().student())
                            .thenComparing(review -> review.goal().id()))
                    .forEach(review -> rows.rows(review).forEach(table::row));
            SeriesWindow window = SeriesWindow.upTo(book.asOf());
            BareSeries.scored(
                    book.scorer().index(),
                    book.scorer().seriesWithoutGoal(),
                    book.open().catalogue(),
                    narrow,
                    series -> {
                        if (shown.test(series.key().student())) {
                            table.row(rows.row(
                                    series.key(),
                                    book.open()
                                            .catalogue()
                                            .find(series.key().measure())
                                            .orElseThrow(),
                                    line(series, window)));
                        }
                    });
            table.finish();
        });
    }

    /** A row a series of bare logs; as CSV whatever number of ranges they are read in. */
    public static Content logs(LogPasses passes, NarrowOptions narrow, SeriesWindow window, Format format) {
        return format == Format.CSV && BulkOutput.serves(passes)
                ? out -> BulkOutput.trends(passes, narrow, out)
                : log(passes.current(), narrow, window, format);
    }

    /** The same as CSV from one reading with the sessions, which go to a stream of their own. */
    public static Content beside(LogPasses passes, NarrowOptions narrow, SeriesWindow window, OutputStream sessions) {
        return BulkOutput.serves(passes)
                ? out -> BulkOutput.both(passes, narrow, out, sessions)
                : out -> {
                    SessionOutput.log(passes.current(), narrow, Format.CSV).writeTo(sessions);
                    log(passes.current(), narrow, window, Format.CSV).writeTo(out);
                };
    }

    private static Content log(LogRead log, NarrowOptions narrow, SeriesWindow window, Format format) {
        return Content.text(out -> {
            TrendRows rows = new TrendRows(log.settings().id(), MeasurementError.NOT_COMPUTED);
            TableWriter table = Tables.open(format, out, TrendRows.HEADINGS);
            BareSeries.forEach(
                    log,
                    narrow,
                    series -> table.row(rows.row(
                            series.key(),
                            log.catalogue().find(series.key().measure()).orElseThrow(),
                            line(series, window))));
            table.finish();
        });
    }

    private static TrendLine line(SeriesScore series, SeriesWindow window) {
        return TrendLine.bare(Series.of(series.sessions(), window));
    }
}
