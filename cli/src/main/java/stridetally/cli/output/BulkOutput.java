package stridetally.cli.output;

import java.io.IOException;
import java.io.OutputStream;
import java.util.List;
import stridetally.cli.input.BareSeries;
import stridetally.cli.input.LogRead;
import stridetally.cli.options.NarrowOptions;
import stridetally.measures.Measure;
import stridetally.model.SeriesKey;
import stridetally.report.BulkSessionRows;
import stridetally.report.MeasurementError;
import stridetally.report.SessionTableRows;
import stridetally.report.TrendRows;
import stridetally.scoring.Counting;
import stridetally.scoring.LogRuns;
import stridetally.scoring.SeriesWalk;
import stridetally.table.ByteRows;
import stridetally.table.CsvTable;
import stridetally.trend.SeriesMaker;
import stridetally.trend.SeriesWindow;
import stridetally.trend.TrendLine;

/** The CSV tables of a long log: the same bytes as those of a small one, made by several threads. */
final class BulkOutput {
    private BulkOutput() {}

    /** The table of {@code score}. */
    static void sessions(LogRead log, LogRuns runs, NarrowOptions narrow, OutputStream out) throws IOException {
        headings(SessionTableRows.HEADINGS, out);
        new SeriesInOrder(() -> sessions(log, runs, narrow)).write(BareSeries.inOrder(log, narrow), out);
    }

    /** The table of {@code trend}. */
    static void trends(LogRead log, LogRuns runs, NarrowOptions narrow, SeriesWindow window, OutputStream out)
            throws IOException {
        headings(TrendRows.HEADINGS, out);
        new SeriesInOrder(() -> trends(log, runs, narrow, window)).write(BareSeries.inOrder(log, narrow), out);
    }

    private static SeriesInOrder.Maker sessions(LogRead log, LogRuns runs, NarrowOptions narrow) {
        SeriesWalk walk = runs.walk();
        BulkSessionRows rows = new BulkSessionRows(
                new SessionTableRows(log.settings().id(), log.settings().help()));
        return (series, out) -> {
            SeriesKey key = runs.numbers().key(series);
            Measure measure = log.catalogue().find(key.measure()).orElseThrow();
            walk.over(series);
            rows.write(key, measure, counting(key, measure, narrow), walk, out);
        };
    }

    private static SeriesInOrder.Maker trends(LogRead log, LogRuns runs, NarrowOptions narrow, SeriesWindow window) {
        TrendRows rows = new TrendRows(log.settings().id(), MeasurementError.NOT_COMPUTED);
        SeriesMaker points = new SeriesMaker(window);
        SeriesWalk walk = runs.walk();
        StringBuilder text = new StringBuilder();
        CsvTable table = new CsvTable(text, TrendRows.HEADINGS);
        return (series, out) -> {
            SeriesKey key = runs.numbers().key(series);
            Measure measure = log.catalogue().find(key.measure()).orElseThrow();
            walk.over(series);
            TrendLine line = TrendLine.bare(points.series(walk, counting(key, measure, narrow)));
            text.setLength(0);
            table.row(rows.row(key, measure, line));
            out.put(text);
        };
    }

    private static Counting counting(SeriesKey key, Measure measure, NarrowOptions narrow) {
        return Counting.bare(measure, narrow.summary(), narrow.helpUpTo()).on(key);
    }

    private static void headings(List<String> headings, OutputStream out) throws IOException {
        StringBuilder text = new StringBuilder();
        new CsvTable(text, headings).finish();
        new ByteRows().put(text).writeTo(out);
    }
}
