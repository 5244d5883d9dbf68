package stridetally.report;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import stridetally.model.Benchmark;
import stridetally.model.Direction;
import stridetally.stats.ExactMeans;
import stridetally.trend.Point;

/**
 * A short-term step and the last session value up to its day.
 *
 * @param latest the last session with a value up to that day; empty when there is none
 */
public record BenchmarkLine(LocalDate by, Measured value, Optional<Point> latest, Standing standing) {

    /** Where the child stands to it. */
    public enum Standing {
        REACHED("reached"),
        NOT_REACHED("not reached"),
        NOT_KNOWN("not known"),
        AHEAD("still ahead");

        private final String word;

        Standing(String word) {
            this.word = word;
        }

        /** The word of the page. */
        public String word() {
            return word;
        }
    }

    /** The steps of a goal against the points of one of its sides, by day. */
    static List<BenchmarkLine> of(
            List<Benchmark> benchmarks, List<Point> points, Optional<Direction> better, LocalDate asOf) {
        List<Benchmark> inOrder = new ArrayList<>(benchmarks);
        inOrder.sort((one, other) -> one.by().compareTo(other.by()));
        List<BenchmarkLine> lines = new ArrayList<>();
        for (Benchmark one : inOrder) {
            lines.add(line(one, points, better, asOf));
        }
        return lines;
    }

    private static BenchmarkLine line(Benchmark step, List<Point> points, Optional<Direction> better, LocalDate asOf) {
        Optional<Point> latest = Optional.empty();
        for (Point point : points) {
            latest = point.date().isAfter(step.by()) ? latest : Optional.of(point);
        }
        Standing now =
                latest.isEmpty() || better.isEmpty() ? Standing.NOT_KNOWN : standing(latest.get(), step, better.get());
        boolean open = step.by().isAfter(asOf) && now != Standing.REACHED;
        return new BenchmarkLine(step.by(), Measured.of(step.value()), latest, open ? Standing.AHEAD : now);
    }

    private static Standing standing(Point point, Benchmark step, Direction better) {
        ExactMeans pair =
                ExactMeans.of(new long[] {point.sum(), step.value().billionths()}, new int[] {point.count(), 1});
        boolean reached = better.sign() * pair.compare(0, 1) >= 0;
        if (point.bound().isEmpty()) {
            return reached ? Standing.REACHED : Standing.NOT_REACHED;
        }
        boolean trueIsBetter = better.sign() * (point.bound().get() == stridetally.scoring.Bound.AT_LEAST ? 1 : -1) > 0;
        if (trueIsBetter) {
            return reached ? Standing.REACHED : Standing.NOT_KNOWN;
        }
        return reached ? Standing.NOT_KNOWN : Standing.NOT_REACHED;
    }
}
