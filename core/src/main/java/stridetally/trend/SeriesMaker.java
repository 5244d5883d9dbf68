package stridetally.trend;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import stridetally.scoring.PlainSession;
import stridetally.scoring.Session;
import stridetally.scoring.WalkedSessions;

/**
 * The {@link Series} of a long log, the same as {@link Series#of} makes of scored sessions; a session of plain numbers
 * becomes a point without being an object between. Not for several threads.
 */
public final class SeriesMaker {
    private final SeriesWindow window;
    private final List<Point> points = new ArrayList<>();
    private final List<HelpShare> help = new ArrayList<>();
    private Optional<LocalDate> first = Optional.empty();

    /** Sessions outside the window are left out. */
    public SeriesMaker(SeriesWindow window) {
        this.window = window;
    }

    /** Adds the session that the walk has come to; they come in the order of days and labels. */
    public void add(WalkedSessions session) {
        LocalDate day = LocalDate.ofEpochDay(session.day());
        if (!window.holds(day)) {
            return;
        }
        first = first.isPresent() ? first : Optional.of(day);
        if (session.isPlain()) {
            int size = session.plain().size();
            points.add(point(day, session));
            help.add(new HelpShare(day, size, size, size));
        } else {
            Session scored = session.scored();
            Point.of(scored).ifPresent(points::add);
            HelpShare.of(scored).ifPresent(help::add);
        }
    }

    /** The series of what was added. */
    public Series series() {
        Optional<LocalDate> firstPoint =
                points.isEmpty() ? Optional.empty() : Optional.of(points.get(0).date());
        Optional<LocalDate> firstSession = first;
        return new Series(window.baselineDate().or(() -> firstPoint).or(() -> firstSession), points, help);
    }

    private static Point point(LocalDate day, WalkedSessions session) {
        PlainSession plain = session.plain();
        int size = plain.size();
        return new Point(
                day,
                session.label(),
                plain.valueSum(session.counting()),
                plain.valueCount(session.counting()),
                Optional.empty(),
                0,
                0,
                0,
                size,
                size,
                size);
    }
}
