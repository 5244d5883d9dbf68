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
import stridetally.report.BulkSeries;
import stridetally.report.BulkSessionRows;
import stridetally.report.BulkTrendRows;
import stridetally.report.MeasurementError;
import stridetally.report.SessionTableRows;
import stridetally.report.TrendRows;
import stridetally.scoring.Counting;
import stridetally.scoring.LogRuns;
import stridetally.scoring.SeriesWalk;
import stridetally.scoring.WalkGap;
import stridetally.scoring.WalkedSessions;
import stridetally.table.ByteRows;
import stridetally.table.CsvTable;
import stridetally.trend.SeriesColumns;

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
    static void trends(LogPasses passes, NarrowOptions narrow, OutputStream out) throws IOException {
        headings(TrendRows.HEADINGS, out);
        do {
            trends(passes.current(), narrow, out);
        } while (passes.advance());
    }

    /** Both tables from one walk over the sessions. */
    static void both(LogPasses passes, NarrowOptions narrow, OutputStream trends, OutputStream sessions)
            throws IOException {
        headings(SessionTableRows.HEADINGS, sessions);
        headings(TrendRows.HEADINGS, trends);
        do {
            LogRead log = passes.current();
            SeriesInOrder rows = new SeriesInOrder(() -> {
                Lines lines = new Lines(log, narrow);
                return (series, outs) -> lines.both(series, outs[0], outs[1]);
            });
            rows.write(BareSeries.inOrder(log, narrow), trends, sessions);
        } while (passes.advance());
        gaps(passes, narrow, sessions);
    }

    private static void sessions(LogRead log, NarrowOptions narrow, OutputStream out) throws IOException {
        SeriesInOrder rows = new SeriesInOrder(() -> {
            Lines lines = new Lines(log, narrow);
            return (series, outs) -> lines.sessions(series, outs[0]);
        });
        rows.write(BareSeries.inOrder(log, narrow), out);
    }

    private static void trends(LogRead log, NarrowOptions narrow, OutputStream out) throws IOException {
        SeriesInOrder rows = new SeriesInOrder(() -> {
            Lines lines = new Lines(log, narrow);
            return (series, outs) -> lines.trend(series, outs[0]);
        });
        rows.write(BareSeries.inOrder(log, narrow), out);
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

    /** Makes the lines of one series, or of several that count as one, after another; a thread's own. */
    private static final class Lines {
        private final LogRead log;
        private final LogRuns runs;
        private final NarrowOptions narrow;
        private final SeriesWalk walk;
        private final BulkSeries starts;
        private final BulkSessionRows sessionRows;
        private final BulkTrendRows trendRows;
        private final SeriesColumns points = new SeriesColumns();

        Lines(LogRead log, NarrowOptions narrow) {
            this.log = log;
            this.runs = (LogRuns) log.sessions();
            this.narrow = narrow;
            this.walk = runs.walk();
            String source = log.settings().id();
            SessionTableRows rows = new SessionTableRows(source, log.settings().help());
            this.starts = new BulkSeries(rows);
            this.sessionRows = new BulkSessionRows(rows);
            this.trendRows = new BulkTrendRows(new TrendRows(source, MeasurementError.NOT_COMPUTED));
        }

        void sessions(int[] series, ByteRows out) {
            BulkSeries.Start start = starts.of(key(series), measure(series));
            for (WalkedSessions session = walked(series); session.next(); ) {
                sessionRows.write(start, session, out);
            }
        }

        void trend(int[] series, ByteRows out) {
            points.clear();
            for (WalkedSessions session = walked(series); session.next(); ) {
                points.add(session);
            }
            trendRows.write(starts.of(key(series), measure(series)), points, points.lines(), out);
        }

        void both(int[] series, ByteRows trends, ByteRows sessions) {
            BulkSeries.Start start = starts.of(key(series), measure(series));
            points.clear();
            for (WalkedSessions session = walked(series); session.next(); ) {
                sessionRows.write(start, session, sessions);
                points.add(session);
            }
            trendRows.write(start, points, points.lines(), trends);
        }

        private WalkedSessions walked(int[] series) {
            Counting counting = Counting.bare(measure(series), narrow.summary(), narrow.helpUpTo())
                    .on(key(series));
            return new WalkedSessions(walk, series, counting);
        }

        private SeriesKey key(int[] series) {
            return runs.numbers().key(series[0]);
        }

        private Measure measure(int[] series) {
            return log.catalogue().find(key(series).measure()).orElseThrow();
        }
    }

    private static void headings(List<String> headings, OutputStream out) throws IOException {
        StringBuilder text = new StringBuilder();
        new CsvTable(text, headings).finish();
        new ByteRows().put(text).writeTo(out);
    }
}
