package stridetally.trend;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import stridetally.scoring.Session;
import stridetally.stats.ExactMeans;

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
        return points.stream().map(Point::date).findFirst();
    }

    /** The last point. */
    public Optional<Point> latest() {
        return points.isEmpty() ? Optional.empty() : Optional.of(points.get(points.size() - 1));
    }

    /** Real days from the origin to each point. */
    public double[] days() {
        return points.stream().mapToDouble(point -> day(point.date())).toArray();
    }

    /** The values, with their exact order and ties. */
    public ExactMeans values() {
        return ExactMeans.of(
                points.stream().mapToLong(Point::sum).toArray(),
                points.stream().mapToInt(Point::count).toArray());
    }

    /** Points whose value is only a bound. */
    public int bounded() {
        return (int) points.stream().filter(point -> point.bound().isPresent()).count();
    }

    /** Sessions whose recorded probes all needed more help than the goal permits. */
    public int assistedOnly() {
        return (int) help.stream().filter(HelpShare::assistedOnly).count();
    }

    /** Real days from the origin to a day; the origin must be known. */
    public long day(LocalDate date) {
        return ChronoUnit.DAYS.between(origin.orElseThrow(), date);
    }
}
