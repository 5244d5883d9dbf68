package stridetally.cli.output;

import java.io.IOException;
import java.io.OutputStream;
import java.util.List;
import stridetally.cli.input.BareSeries;
import stridetally.cli.input.LogPasses;
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
import stridetally.scoring.WalkGap;
import stridetally.table.ByteRows;
import stridetally.table.CsvTable;
import stridetally.trend.SeriesMaker;
import stridetally.trend.SeriesWindow;
import stridetally.trend.TrendLine;

/**
 * The CSV tables of long logs: the same bytes as those of a small one, made by several threads, range of students by range
 * of students.
 */
final class BulkOutput {
    private BulkOutput() {}

    /** Whether what was read is a long log. */
    static boolean serves(LogPasses passes) {
        return passes.current().sessions() instanceof LogRuns;
    }

    /** The table of {@code score}. */
    static void sessions(LogPasses passes, NarrowOptions narrow, OutputStream out) throws IOException {
        headings(SessionTableRows.HEADINGS, out);
        do {
            sessions(passes.current(), narrow, out);
        } while (passes.advance());
        gaps(passes, narrow, out);
    }

    /** The table of {@code trend}. */
    static void trends(LogPasses passes, NarrowOptions narrow, SeriesWindow window, OutputStream out)
            throws IOException {
        headings(TrendRows.HEADINGS, out);
        do {
            trends(passes.current(), narrow, window, out);
        } while (passes.advance());
    }

    /** Both tables from the same reading. */
    static void both(
            LogPasses passes, NarrowOptions narrow, SeriesWindow window, OutputStream trends, OutputStream sessions)
            throws IOException {
        headings(SessionTableRows.HEADINGS, sessions);
        headings(TrendRows.HEADINGS, trends);
        do {
            sessions(passes.current(), narrow, sessions);
            trends(passes.current(), narrow, window, trends);
        } while (passes.advance());
        gaps(passes, narrow, sessions);
    }

    private static void sessions(LogRead log, NarrowOptions narrow, OutputStream out) throws IOException {
        new SeriesInOrder(() -> sessions(log, runs(log), narrow)).write(BareSeries.inOrder(log, narrow), out);
    }

    private static void trends(LogRead log, NarrowOptions narrow, SeriesWindow window, OutputStream out)
            throws IOException {
        new SeriesInOrder(() -> trends(log, runs(log), narrow, window)).write(BareSeries.inOrder(log, narrow), out);
    }

    private static LogRuns runs(LogRead log) {
        return (LogRuns) log.sessions();
    }

    /** Sessions of which nothing follows from their walks, behind all others. */
    private static void gaps(LogPasses passes, NarrowOptions narrow, OutputStream out) throws IOException {
        LogRead log = passes.current();
        SessionTableRows rows =
                new SessionTableRows(log.settings().id(), log.settings().help());
        StringBuilder text = new StringBuilder();
        CsvTable table = new CsvTable(text, SessionTableRows.HEADINGS);
        text.setLength(0);
        for (WalkGap gap : passes.walks().emptySessions()) {
            if (BareSeries.shows(narrow, gap.key())) {
                log.catalogue().find(gap.key().measure()).ifPresent(measure -> table.row(rows.gap(gap, measure)));
            }
        }
        new ByteRows().put(text).writeTo(out);
    }

    private static SeriesInOrder.Maker sessions(LogRead log, LogRuns runs, NarrowOptions narrow) {
        SeriesWalk walk = runs.walk();
        BulkSessionRows rows = new BulkSessionRows(
                new SessionTableRows(log.settings().id(), log.settings().help()));
        return (series, out) -> {
            SeriesKey key = runs.numbers().key(series[0]);
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
            SeriesKey key = runs.numbers().key(series[0]);
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
