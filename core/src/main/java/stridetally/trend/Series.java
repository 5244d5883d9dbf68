package stridetally.trend;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import stridetally.scoring.Session;
import stridetally.stats.ExactMeans;
import stridetally.stats.RankedPoints;

/**
 * The points of one side of a goal, or of one bare series, in day order. Two sessions of a day, told apart by their
 * labels, are two points.
 *
 * @param origin day 0 of the time axis: the baseline date, else the first point, else the first session; empty without any
 * @param points sessions with a value
 * @param help every session with recorded probes
 */
public record Series(Optional<LocalDate> origin, List<Point> points, List<HelpShare> help) {

    public Series {
        points = List.copyOf(points);
        help = List.copyOf(help);
        if (origin.isEmpty() && !points.isEmpty()) {
            throw new IllegalArgumentException("points without an origin");
        }
    }

    /** The series of some sessions, in any order; those outside the window are left out. */
    public static Series of(List<Session> sessions, SeriesWindow window) {
        List<Session> within = sessions.stream()
                .filter(session -> window.holds(session.date()))
                .sorted(Comparator.comparing(Session::date).thenComparing(Session::label))
                .toList();
        List<Point> points =
                within.stream().flatMap(session -> Point.of(session).stream()).toList();
        List<HelpShare> help = within.stream()
                .flatMap(session -> HelpShare.of(session).stream())
                .toList();
        Optional<LocalDate> firstPoint = points.stream().map(Point::date).findFirst();
        Optional<LocalDate> firstSession = within.stream().map(Session::date).findFirst();
        return new Series(window.baselineDate().or(() -> firstPoint).or(() -> firstSession), points, help);
    }

    /** Date of the first point. */
    public Optional<LocalDate> first() {
        return points.isEmpty() ? Optional.empty() : Optional.of(points.get(0).date());
    }

    /** The values with their ranks, for every rank statistic of the series. */
    RankedPoints ranked() {
        return RankedPoints.of(days(), values());
    }

    /** The last point. */
    public Optional<Point> latest() {
        return points.isEmpty() ? Optional.empty() : Optional.of(points.get(points.size() - 1));
    }

    /** Real days from the origin to each point. */
    public double[] days() {
        double[] days = new double[points.size()];
        for (int i = 0; i < days.length; i++) {
            days[i] = day(points.get(i).date());
        }
        return days;
    }

    /** The values, with their exact order and ties. */
    public ExactMeans values() {
        long[] sums = new long[points.size()];
        int[] counts = new int[sums.length];
        for (int i = 0; i < sums.length; i++) {
            sums[i] = points.get(i).sum();
            counts[i] = points.get(i).count();
        }
        return ExactMeans.of(sums, counts);
    }

    /** Points whose value is only a bound. */
    public int bounded() {
        int bounded = 0;
        for (Point point : points) {
            bounded += point.bound().isPresent() ? 1 : 0;
        }
        return bounded;
    }

    /** Sessions whose recorded probes all needed more help than the goal permits. */
    public int assistedOnly() {
        return (int) help.stream().filter(HelpShare::assistedOnly).count();
    }

    /** Real days from the origin to a day; the origin must be known. */
    public long day(LocalDate date) {
        return date.toEpochDay() - origin.orElseThrow().toEpochDay();
    }
}
