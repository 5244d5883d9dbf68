package stridetally.cli.output;

import java.io.IOException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Predicate;
import stridetally.cli.files.Content;
import stridetally.cli.input.BareSeries;
import stridetally.cli.input.LogRead;
import stridetally.cli.input.ScoredLogbook;
import stridetally.cli.options.Format;
import stridetally.cli.options.NarrowOptions;
import stridetally.measures.Catalogue;
import stridetally.model.GoalSide;
import stridetally.model.SeriesKey;
import stridetally.model.Side;
import stridetally.model.StudentCode;
import stridetally.report.BothSides;
import stridetally.report.SidesRows;
import stridetally.scoring.GoalScore;
import stridetally.scoring.SeriesScore;
import stridetally.scoring.Session;
import stridetally.scoring.SideScore;
import stridetally.table.TableWriter;

/** The table of {@code score --by sides}. */
public final class SidesOutput {
    private SidesOutput() {}

    /** Days of every goal that looks at both sides, then of what such goals do not take. */
    public static Content logbook(
            ScoredLogbook book, Predicate<StudentCode> shown, NarrowOptions narrow, Format format) {
        return Content.text(out -> {
            SidesRows rows = new SidesRows(book.open().caseload().settings().id());
            TableWriter table = Tables.open(format, out, SidesRows.HEADINGS);
            for (GoalScore score : SessionOutput.sorted(book)) {
                if (score.sides().size() == 2 && shown.test(score.goal().student())) {
                    write(table, rows, score);
                }
            }
            Pairs pairs = new Pairs();
            BareSeries.scored(
                    book.scorer().index(),
                    book.scorer().seriesOutside(goal -> goal.side() == GoalSide.EACH || goal.side() == GoalSide.EITHER),
                    book.open().catalogue(),
                    narrow,
                    series -> {
                        if (shown.test(series.key().student())) {
                            pairs.add(series);
                        }
                    });
            pairs.write(table, rows, book.open().catalogue());
            table.finish();
        });
    }

    /** Days of every sided measure of a bare log. */
    public static Content log(LogRead log, NarrowOptions narrow, Format format) {
        return Content.text(out -> {
            SidesRows rows = new SidesRows(log.settings().id());
            TableWriter table = Tables.open(format, out, SidesRows.HEADINGS);
            Pairs pairs = new Pairs();
            BareSeries.forEach(log, narrow, pairs::add);
            pairs.write(table, rows, log.catalogue());
            table.finish();
        });
    }

    private static void write(TableWriter table, SidesRows rows, GoalScore score) throws IOException {
        List<Session> left = sessions(score, Side.LEFT);
        List<Session> right = sessions(score, Side.RIGHT);
        for (BothSides day : BothSides.of(left, right)) {
            table.row(rows.row(score.goal(), score.measure().orElseThrow(), day));
        }
    }

    private static List<Session> sessions(GoalScore score, Side side) {
        return score.sides().stream()
                .filter(one -> one.side() == side)
                .map(SideScore::sessions)
                .findFirst()
                .orElse(List.of());
    }

    /** Series that differ in their side only. */
    private static final class Pairs {
        private final Map<SeriesKey, Map<Side, List<Session>>> byKey = new LinkedHashMap<>();

        void add(SeriesScore series) {
            SeriesKey key = series.key();
            if (key.side() != Side.NONE) {
                SeriesKey both = new SeriesKey(
                        key.source(), key.student(), key.measure(), Side.NONE, key.protocol(), key.place(), key.use());
                byKey.computeIfAbsent(both, any -> new LinkedHashMap<>())
                        .computeIfAbsent(key.side(), any -> new ArrayList<>())
                        .addAll(series.sessions());
            }
        }

        void write(TableWriter table, SidesRows rows, Catalogue catalogue) throws IOException {
            for (Map.Entry<SeriesKey, Map<Side, List<Session>>> one : byKey.entrySet()) {
                List<BothSides> days = BothSides.of(
                        one.getValue().getOrDefault(Side.LEFT, List.of()),
                        one.getValue().getOrDefault(Side.RIGHT, List.of()));
                for (BothSides day : days) {
                    table.row(rows.row(
                            one.getKey(), catalogue.find(one.getKey().measure()).orElseThrow(), day));
                }
            }
        }
    }
}
