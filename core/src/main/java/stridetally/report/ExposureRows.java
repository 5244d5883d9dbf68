package stridetally.report;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.function.Function;
import stridetally.measures.Measure;
import stridetally.model.DateRange;
import stridetally.model.SeriesKey;
import stridetally.scoring.EventCount;
import stridetally.stats.Interval;
import stridetally.stats.PoissonInterval;
import stridetally.table.Cell;
import stridetally.trend.TrendLine;

/**
 * The rows of {@code score --by exposure}: events over tries, metres or minutes, in one period or over all days. Only sessions
 * whose exposure is known are in a rate, with their own events; how many are not is in {@code sessions_without}.
 *
 * @param source id of the logbook
 */
public record ExposureRows(String source) {
    /** The columns, in order. */
    public static final List<String> HEADINGS = List.of(
            "source",
            "student",
            "measure",
            "side",
            "protocol",
            "place",
            "use",
            "period",
            "from",
            "to",
            "events",
            "over",
            "exposure",
            "rate",
            "low95",
            "high95",
            "sessions",
            "sessions_without",
            "reason");

    private record Over(String word, Function<EventCount, OptionalDouble> exposure, Function<EventCount, String> why) {}

    /** The rows of a series over some days; none when no event was counted in them. */
    public List<List<Cell>> rows(
            SeriesKey key, Measure measure, String period, DateRange days, List<EventCount> counts) {
        List<EventCount> within =
                counts.stream().filter(one -> days.holds(one.date())).toList();
        if (within.isEmpty()) {
            return List.of();
        }
        String tries = measure.protocolKeys().contains("line_length") ? "traverses" : "tries";
        return List.of(
                        new Over(tries, one -> OptionalDouble.of(one.tries()), one -> ""),
                        new Over("metres", EventCount::metres, EventCount::metresWhy),
                        new Over("minutes", EventCount::minutes, EventCount::minutesWhy))
                .stream()
                .map(over -> row(key, measure, period, days, within, over))
                .toList();
    }

    private List<Cell> row(
            SeriesKey key, Measure measure, String period, DateRange days, List<EventCount> counts, Over over) {
        long events = 0;
        double exposure = 0;
        int known = 0;
        Set<String> reasons = new LinkedHashSet<>();
        for (EventCount one : counts) {
            OptionalDouble amount = over.exposure().apply(one);
            if (amount.isPresent()) {
                events += one.events();
                exposure += amount.getAsDouble();
                known++;
            } else {
                reasons.add(over.why().apply(one));
            }
        }
        List<Cell> cells = new ArrayList<>(List.of(
                Cell.text(key.source().isBlank() ? source : key.source()),
                Cell.text(key.student().text()),
                Cell.text(key.measure().text()),
                Cell.code(key.side().word()),
                Cell.text(key.protocol().text()),
                Cell.code(key.place().word()),
                Cell.code(key.use().word()),
                Cell.text(period),
                Cell.date(days.first()),
                Cell.date(days.last())));
        if (known == 0) {
            cells.addAll(List.of(Cell.blank(), Cell.code(over.word())));
            cells.addAll(FigureCells.blanks(4));
        } else {
            Interval interval = PoissonInterval.of(events, TrendLine.LEVEL);
            cells.addAll(List.of(
                    Cell.whole(events),
                    Cell.code(over.word()),
                    Cell.number(exposure),
                    Cell.number(events / exposure, RATE),
                    Cell.number(interval.low() / exposure, RATE),
                    Cell.number(interval.high() / exposure, RATE)));
        }
        cells.add(Cell.whole(counts.size()));
        cells.add(Cell.whole(counts.size() - known));
        cells.add(FigureCells.reasons(reasons));
        return ColumnDecimals.of(cells, HEADINGS, measure);
    }

    private static final int RATE = 3;
}
