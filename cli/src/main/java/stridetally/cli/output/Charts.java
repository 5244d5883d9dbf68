package stridetally.cli.output;

import java.io.IOException;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.function.Predicate;
import stridetally.cli.files.Content;
import stridetally.cli.files.OutputFolder;
import stridetally.cli.input.BareSeries;
import stridetally.cli.input.LogRead;
import stridetally.cli.input.ScoredLogbook;
import stridetally.cli.options.NarrowOptions;
import stridetally.forecast.GoalReview;
import stridetally.model.StudentCode;
import stridetally.report.ChartData;
import stridetally.report.SvgChart;
import stridetally.report.TextChart;
import stridetally.trend.Series;
import stridetally.trend.SeriesWindow;
import stridetally.trend.TrendLine;

/** The charts of {@code trend}, as files or in plain characters. */
public final class Charts {
    private final List<ChartData> charts;

    private Charts(List<ChartData> charts) {
        this.charts = charts;
    }

    /** A chart for each goal and side, by student and goal. */
    public static Charts logbook(ScoredLogbook book, Predicate<StudentCode> shown) {
        return new Charts(book.review().goals().stream()
                .filter(review -> shown.test(review.goal().student()))
                .sorted(Comparator.comparing(
                                (GoalReview review) -> review.goal().student())
                        .thenComparing(review -> review.goal().id()))
                .flatMap(review -> ChartData.of(review, book.open().caseload(), book.asOf()).stream())
                .toList());
    }

    /** A chart for each series of a bare log. */
    public static Charts log(LogRead log, NarrowOptions narrow, SeriesWindow window) {
        List<ChartData> charts = new ArrayList<>();
        BareSeries.forEach(
                log,
                narrow,
                series -> charts.add(ChartData.bare(
                        series,
                        TrendLine.bare(Series.of(series.sessions(), window)),
                        log.catalogue().find(series.key().measure()).orElseThrow(),
                        log.settings(),
                        window.asOf())));
        return new Charts(charts);
    }

    /** One after another, in plain characters. */
    public Content drawn() {
        return Content.text(out -> {
            String between = "";
            for (ChartData chart : charts) {
                out.append(between);
                line(TextChart.heading(chart), out);
                for (String line : TextChart.of(chart).lines()) {
                    line(line, out);
                }
                between = "\n";
            }
        });
    }

    /** A file for each; the names are those of the goals or series. */
    public void files(OutputFolder folder) {
        Set<String> taken = new HashSet<>();
        for (ChartData chart : charts) {
            String plain = chart.title().replaceAll("[^A-Za-z0-9.-]+", "-").toLowerCase(Locale.ROOT);
            String name = plain;
            for (int again = 2; !taken.add(name); again++) {
                name = plain + "-" + again;
            }
            folder.write(name + ".svg", Content.text(out -> SvgChart.write(chart, out)));
        }
    }

    private static void line(String words, Appendable out) throws IOException {
        out.append(words).append('\n');
    }
}
