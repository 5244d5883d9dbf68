package stridetally.cli.output;

import java.io.IOException;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import stridetally.cli.files.Content;
import stridetally.cli.input.LogRead;
import stridetally.cli.input.ScoredLogbook;
import stridetally.cli.options.Format;
import stridetally.cli.options.NarrowOptions;
import stridetally.measures.Catalogue;
import stridetally.measures.Measure;
import stridetally.measures.MeasureKind;
import stridetally.model.DateRange;
import stridetally.model.Goal;
import stridetally.model.Protocol;
import stridetally.model.SeriesKey;
import stridetally.model.StudentCode;
import stridetally.report.ExposureRows;
import stridetally.report.ReportPeriod;
import stridetally.scoring.EventCount;
import stridetally.scoring.EventCounter;
import stridetally.scoring.SessionIndex;
import stridetally.table.TableWriter;

/** The table of {@code score --by exposure}. */
public final class ExposureOutput {
    private ExposureOutput() {}

    /** Every series of events, over all its days and in each period that has begun. */
    public static Content logbook(ScoredLogbook book, Predicate<StudentCode> shown, Format format) {
        return Content.text(out -> {
            TableWriter table = Tables.open(format, out, ExposureRows.HEADINGS);
            ExposureRows rows =
                    new ExposureRows(book.open().caseload().settings().id());
            SessionIndex index = book.scorer().index();
            EventCounter counter =
                    new EventCounter(index, book.open().caseload().visits());
            for (int series : events(index, book.open().catalogue(), key -> shown.test(key.student()))) {
                SeriesKey key = index.numbers().key(series);
                Protocol usual = book.scorer().goalsOf(series).stream()
                        .findFirst()
                        .map(Goal::protocol)
                        .orElse(Protocol.NONE);
                List<EventCount> counts = counter.of(series, usual);
                Measure measure = book.open().catalogue().find(key.measure()).orElseThrow();
                write(table, rows, key, measure, counts);
                for (ReportPeriod period : Periods.begun(book, key.student())) {
                    for (var row : rows.rows(key, measure, period.name(), period.days(), counts)) {
                        table.row(row);
                    }
                }
            }
            table.finish();
        });
    }

    /** Every series of events of a bare log; it has no visits, so minutes come from times only. */
    public static Content log(LogRead log, NarrowOptions narrow, Format format) {
        return Content.text(out -> {
            TableWriter table = Tables.open(format, out, ExposureRows.HEADINGS);
            ExposureRows rows = new ExposureRows(log.settings().id());
            SessionIndex index = log.index();
            EventCounter counter = new EventCounter(index, List.of());
            Predicate<SeriesKey> shown = key -> narrow.shows(key.student())
                    && narrow.places().contains(key.place())
                    && narrow.uses().contains(key.use());
            for (int series : events(index, log.catalogue(), shown)) {
                SeriesKey key = index.numbers().key(series);
                write(
                        table,
                        rows,
                        key,
                        log.catalogue().find(key.measure()).orElseThrow(),
                        counter.of(series, Protocol.NONE));
            }
            table.finish();
        });
    }

    private static void write(
            TableWriter table, ExposureRows rows, SeriesKey key, Measure measure, List<EventCount> counts)
            throws IOException {
        Optional<DateRange> all = counts.isEmpty()
                ? Optional.empty()
                : Optional.of(new DateRange(
                        counts.get(0).date(), counts.get(counts.size() - 1).date()));
        if (all.isPresent()) {
            for (var row : rows.rows(key, measure, "", all.get(), counts)) {
                table.row(row);
            }
        }
    }

    private static List<Integer> events(SessionIndex index, Catalogue catalogue, Predicate<SeriesKey> shown) {
        List<Integer> series = new ArrayList<>();
        for (int one = 0; one < index.seriesCount(); one++) {
            SeriesKey key = index.numbers().key(one);
            boolean events = catalogue
                    .find(key.measure())
                    .filter(measure -> measure.kind() == MeasureKind.EVENTS)
                    .isPresent();
            if (events && shown.test(key)) {
                series.add(one);
            }
        }
        series.sort(Comparator.comparing(
                        (Integer one) -> index.numbers().key(one).student())
                .thenComparing(one -> index.numbers().key(one).measure())
                .thenComparing(one -> index.numbers().key(one).side())
                .thenComparing(one -> index.numbers().key(one).protocol().text())
                .thenComparing(one -> index.numbers().key(one).place())
                .thenComparing(one -> index.numbers().key(one).use()));
        return series;
    }
}
