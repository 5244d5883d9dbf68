package stridetally.trend;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import stridetally.scoring.Counting;
import stridetally.scoring.PlainSession;
import stridetally.scoring.SeriesWalk;
import stridetally.scoring.Session;
import stridetally.scoring.SessionScorer;

/**
 * The {@link Series} of a long log, the same as {@link Series#of} makes of scored sessions; a session of plain numbers
 * becomes a point without being an object between. Not for several threads.
 */
public final class SeriesMaker {
    private final SeriesWindow window;
    private final PlainSession plain = new PlainSession();

    /** Sessions outside the window are left out. */
    public SeriesMaker(SeriesWindow window) {
        this.window = window;
    }

    /** The series that the walk has gone to, whose sessions come in the order of days and labels. */
    public Series series(SeriesWalk walk, Counting counting) {
        SessionScorer scorer = SessionScorer.by(counting);
        boolean serves = PlainSession.serves(counting);
        List<Point> points = new ArrayList<>();
        List<HelpShare> help = new ArrayList<>();
        Optional<LocalDate> first = Optional.empty();
        while (walk.nextSession()) {
            LocalDate day = LocalDate.ofEpochDay(walk.day());
            if (!window.holds(day)) {
                continue;
            }
            first = first.isPresent() ? first : Optional.of(day);
            if (serves && plain.take(walk, counting)) {
                points.add(point(day, walk.label(), counting));
                help.add(new HelpShare(day, plain.size(), plain.size(), plain.size()));
            } else {
                Session session = scorer.score(walk.group());
                Point.of(session).ifPresent(points::add);
                HelpShare.of(session).ifPresent(help::add);
            }
        }
        Optional<LocalDate> firstPoint =
                points.isEmpty() ? Optional.empty() : Optional.of(points.get(0).date());
        Optional<LocalDate> firstSession = first;
        return new Series(window.baselineDate().or(() -> firstPoint).or(() -> firstSession), points, help);
    }

    private Point point(LocalDate day, String label, Counting counting) {
        int size = plain.size();
        return new Point(
                day,
                label,
                plain.valueSum(counting),
                plain.valueCount(counting),
                Optional.empty(),
                0,
                0,
                0,
                size,
                size,
                size);
    }
}
