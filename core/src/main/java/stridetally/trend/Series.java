package stridetally.trend;

import java.time.LocalDate;
import java.util.ArrayList;
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
        List<Session> within = new ArrayList<>();
        for (Session session : sessions) {
            if (window.holds(session.date())) {
                within.add(session);
            }
        }
        within.sort(Session::compareDayTo);
        List<Point> points = new ArrayList<>();
        List<HelpShare> help = new ArrayList<>();
        for (Session session : within) {
            Optional<Point> point = Point.of(session);
            if (point.isPresent()) {
                points.add(point.get());
            }
            Optional<HelpShare> share = HelpShare.of(session);
            if (share.isPresent()) {
                help.add(share.get());
            }
        }
        return new Series(origin(window, points, within), points, help);
    }

    private static Optional<LocalDate> origin(SeriesWindow window, List<Point> points, List<Session> sessions) {
        if (window.baselineDate().isPresent()) {
            return window.baselineDate();
        }
        if (!points.isEmpty()) {
            return Optional.of(points.get(0).date());
        }
        return sessions.isEmpty()
                ? Optional.empty()
                : Optional.of(sessions.get(0).date());
    }

    /** Date of the first point. */
    public Optional<LocalDate> first() {
        return points.isEmpty() ? Optional.empty() : Optional.of(points.get(0).date());
    }

    /** The last point. */
    public Optional<Point> latest() {
        return points.isEmpty() ? Optional.empty() : Optional.of(points.get(points.size() - 1));
    }

    /** Real days from the origin to each point. */
    public double[] days() {
        double[] days = new double[points.size()];
        long first = days.length == 0 ? 0 : origin.orElseThrow().toEpochDay();
        for (int i = 0; i < days.length; i++) {
            days[i] = points.get(i).date().toEpochDay() - first;
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
        int assisted = 0;
        for (HelpShare share : help) {
            assisted += share.assistedOnly() ? 1 : 0;
        }
        return assisted;
    }

    /** Real days from the origin to a day; the origin must be known. */
    public long day(LocalDate date) {
        return date.toEpochDay() - origin.orElseThrow().toEpochDay();
    }
}
