package stridetally.report;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import stridetally.scoring.Session;
import stridetally.stats.StraightLine;

/**
 * Where days and values stand on a drawn chart. Lengths are those of the drawing: four to a millimetre on paper.
 *
 * @param low lowest value that the field shows, in the unit shown
 * @param high highest one
 */
record ChartFrame(DayAxis days, ValueAxis values, double factor, double low, double high) {
    static final double WIDTH = 640;
    static final double LEFT = 48;
    static final double RIGHT = 612;
    static final double TOP = 44;
    static final double BOTTOM = 244;
    /** The middle of the strip of sessions without a value. */
    static final double STRIP = 258;
    /** The axis of days. */
    static final double AXIS = 272;

    private static final double INNER = 12;

    static ChartFrame of(ChartData data) {
        double factor = data.unit().factor().doubleValue();
        List<Double> shown = values(data).stream().map(value -> value * factor).toList();
        double low = shown.stream().mapToDouble(Double::doubleValue).min().orElse(0);
        double high = shown.stream().mapToDouble(Double::doubleValue).max().orElse(1);
        List<Double> all = new ArrayList<>(shown);
        // A wide range of the forecast may take as much room above and below as the values themselves, and no more.
        double room = high - low;
        data.outlook().ifPresent(outlook -> {
            all.add(Math.max(low - room, outlook.low80() * factor));
            all.add(Math.min(high + room, outlook.high80() * factor));
        });
        ValueAxis axis = ValueAxis.of(all, data.unit().decimals());
        return new ChartFrame(days(data), axis, factor, axis.low(), axis.high());
    }

    private static List<Double> values(ChartData data) {
        return Stream.of(
                        data.baseline().stream(),
                        data.target().stream(),
                        data.outlook().map(one -> one.value()).stream(),
                        data.sessions().stream()
                                .flatMap(session -> Measured.of(session.value()).value().stream())
                                .map(Measured::value),
                        ownLine(data).stream().flatMap(line -> Stream.of(line.firstValue(), line.lastValue())))
                .flatMap(some -> some)
                .toList();
    }

    private static DayAxis days(ChartData data) {
        List<LocalDate> all = Stream.of(
                        data.baselineDate().stream(),
                        data.due().stream(),
                        Stream.of(data.asOf()),
                        data.sessions().stream().map(Session::date))
                .flatMap(some -> some)
                .sorted()
                .toList();
        return DayAxis.of(all.get(0), all.get(all.size() - 1));
    }

    /** The student's own line from the first session with a value to the last, in the measure's unit. */
    record OwnEnds(LocalDate first, double firstValue, LocalDate last, double lastValue) {}

    static Optional<OwnEnds> ownLine(ChartData data) {
        var series = data.trend().series();
        if (series.latest().isEmpty()) {
            return Optional.empty();
        }
        LocalDate first = series.first().orElseThrow();
        LocalDate last = series.latest().get().date();
        return data.trend()
                .own()
                .line()
                .value()
                .map(line -> new OwnEnds(first, at(line, series.day(first)), last, at(line, series.day(last))));
    }

    private static double at(StraightLine line, long day) {
        return line.at((double) day).point();
    }

    double x(LocalDate day) {
        return LEFT + INNER + days.share(day) * (RIGHT - LEFT - 2 * INNER);
    }

    /** The height of a value in the measure's unit; a value beyond the field stands at its edge. */
    double y(double value) {
        return shownY(Math.min(high, Math.max(low, value * factor)));
    }

    /** The height of a value in the unit shown. */
    double shownY(double shown) {
        return BOTTOM - (shown - low) / (high - low) * (BOTTOM - TOP);
    }

    /** Whether a value in the measure's unit lies beyond the field. */
    boolean isBeyond(double value) {
        return value * factor < low || value * factor > high;
    }
}
