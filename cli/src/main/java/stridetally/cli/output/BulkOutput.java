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
import stridetally.scoring.WalkedSessions;
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
        SeriesInOrder rows = new SeriesInOrder(() -> {
            Lines lines = new Lines(log, runs, narrow);
            return (series, outs) -> lines.sessions(series, outs[0]);
        });
        rows.write(BareSeries.inOrder(log, narrow), out);
    }

    /** The table of {@code trend}. */
    static void trends(LogRead log, LogRuns runs, NarrowOptions narrow, SeriesWindow window, OutputStream out)
            throws IOException {
        headings(TrendRows.HEADINGS, out);
        SeriesInOrder rows = new SeriesInOrder(() -> {
            Lines lines = new Lines(log, runs, narrow);
            return (series, outs) -> lines.trend(series, window, outs[0]);
        });
        rows.write(BareSeries.inOrder(log, narrow), out);
    }

    /** Both tables from one walk over the sessions. */
    static void both(
            LogRead log,
            LogRuns runs,
            NarrowOptions narrow,
            SeriesWindow window,
            OutputStream trends,
            OutputStream sessions)
            throws IOException {
        headings(TrendRows.HEADINGS, trends);
        headings(SessionTableRows.HEADINGS, sessions);
        SeriesInOrder rows = new SeriesInOrder(() -> {
            Lines lines = new Lines(log, runs, narrow);
            return (series, outs) -> lines.both(series, window, outs[0], outs[1]);
        });
        rows.write(BareSeries.inOrder(log, narrow), trends, sessions);
    }

    /** Makes the lines of one series after another; a thread's own. */
    private static final class Lines {
        private final LogRead log;
        private final LogRuns runs;
        private final NarrowOptions narrow;
        private final SeriesWalk walk;
        private final BulkSessionRows sessionRows;
        private final TrendRows trendRows;
        private final StringBuilder text = new StringBuilder();
        private final CsvTable trendTable = new CsvTable(text, TrendRows.HEADINGS);

        Lines(LogRead log, LogRuns runs, NarrowOptions narrow) {
            this.log = log;
            this.runs = runs;
            this.narrow = narrow;
            this.walk = runs.walk();
            this.sessionRows = new BulkSessionRows(
                    new SessionTableRows(log.settings().id(), log.settings().help()));
            this.trendRows = new TrendRows(log.settings().id(), MeasurementError.NOT_COMPUTED);
        }

        void sessions(int series, ByteRows out) {
            BulkSessionRows.OfSeries rows = sessionRows.of(key(series), measure(series));
            for (WalkedSessions session = walked(series); session.next(); ) {
                rows.write(session, out);
            }
        }

        void trend(int series, SeriesWindow window, ByteRows out) {
            SeriesMaker points = new SeriesMaker(window);
            for (WalkedSessions session = walked(series); session.next(); ) {
                points.add(session);
            }
            trend(series, points, out);
        }

        void both(int series, SeriesWindow window, ByteRows trends, ByteRows sessions) {
            BulkSessionRows.OfSeries rows = sessionRows.of(key(series), measure(series));
            SeriesMaker points = new SeriesMaker(window);
            for (WalkedSessions session = walked(series); session.next(); ) {
                rows.write(session, sessions);
                points.add(session);
            }
            trend(series, points, trends);
        }

        private void trend(int series, SeriesMaker points, ByteRows out) {
            text.setLength(0);
            trendTable.row(trendRows.row(key(series), measure(series), TrendLine.bare(points.series())));
            out.put(text);
        }

        private WalkedSessions walked(int series) {
            Counting counting = Counting.bare(measure(series), narrow.summary(), narrow.helpUpTo())
                    .on(key(series));
            return new WalkedSessions(walk, series, counting);
        }

        private SeriesKey key(int series) {
            return runs.numbers().key(series);
        }

        private Measure measure(int series) {
            return log.catalogue().find(key(series).measure()).orElseThrow();
        }
    }

    private static void headings(List<String> headings, OutputStream out) throws IOException {
        StringBuilder text = new StringBuilder();
        new CsvTable(text, headings).finish();
        new ByteRows().put(text).writeTo(out);
    }
}
