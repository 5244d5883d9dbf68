package stridetally.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import stridetally.measures.Measure;
import stridetally.measures.MeasureKind;
import stridetally.model.Level;
import stridetally.model.Trial;
import stridetally.model.WordScale;
import stridetally.scoring.ObserverPairs;
import stridetally.scoring.ObserverPairs.Pair;
import stridetally.stats.CriticalValue;
import stridetally.stats.Estimate;
import stridetally.stats.Interval;
import stridetally.stats.IntraclassCorrelation;
import stridetally.stats.Kappa;
import stridetally.stats.LimitsOfAgreement;
import stridetally.stats.PairAgreement;
import stridetally.table.Cell;
import stridetally.trend.TrendLine;
import stridetally.units.Reading;

/**
 * The rows of {@code score --agreement}: one figure of one measure and two observers. Three observers are three pairs. Shares are 0 to 1; differences, {@code sem-observers}
 * and {@code mdc95-observers} are in the unit of the {@code unit} column. Those two are the error between observers of one
 * and the same try, not the error from day to day.
 *
 * @param help the scale of help words
 * @param prompt the scale of prompt words
 */
public record AgreementRows(WordScale help, WordScale prompt) {
    /** The columns, in order. */
    public static final List<String> HEADINGS = List.of(
            "measure",
            "unit",
            "first_observer",
            "second_observer",
            "figure",
            "pairs",
            "first_alone",
            "second_alone",
            "value",
            "low95",
            "high95",
            "reason");

    /** As agreement is usually told (common practice, no source). */
    private static final int DECIMALS = 3;

    private static final String NOT_PAIRED = "tries that only one observer wrote are left out";

    /** Places of tries that are named before the rest is counted. */
    private static final int SHOWN = 6;

    /** A figure whose interval is not part of the table. */
    private static final Estimate<Interval> NO_INTERVAL = Estimate.notEstimable("no interval is computed");

    /** The rows of a measure and two observers. */
    public List<List<Cell>> rows(Measure measure, ObserverPairs.OfObservers observed) {
        Table table = new Table(measure, observed);
        Numbers numbers = Numbers.of(observed.pairs());
        values(table, measure.kind(), numbers);
        words(table, "help", help, observed.pairs(), Trial::help);
        words(table, "prompt", prompt, observed.pairs(), Trial::prompt);
        alone(table, observed);
        return List.copyOf(table.rows);
    }

    /** Observers with different numbers of tries: how many, and where they stand. */
    private static void alone(Table table, ObserverPairs.OfObservers observed) {
        int count = observed.firstAlone().size() + observed.secondAlone().size();
        if (count > 0) {
            List<String> where = new ArrayList<>();
            where.add(places("only the first wrote", observed.firstAlone()));
            where.add(places("only the second wrote", observed.secondAlone()));
            where.removeIf(String::isEmpty);
            table.row(
                    "tries-of-one-observer",
                    observed.pairs().size(),
                    Estimate.of((double) count),
                    NO_INTERVAL,
                    String.join("; ", where));
        }
    }

    private static String places(String who, List<Trial> tries) {
        if (tries.isEmpty()) {
            return "";
        }
        String shown = tries.stream()
                .limit(SHOWN)
                .map(one -> one.key().student().text() + " on " + one.date()
                        + (one.at().isBlank() ? "" : " (" + one.at() + ")"))
                .collect(Collectors.joining(", "));
        return who + ": " + shown + (tries.size() > SHOWN ? ", and " + (tries.size() - SHOWN) + " more" : "");
    }

    /** Values that both wrote as exact ones. */
    private static final class Numbers {
        private final double[] first;
        private final double[] second;

        /** Pairs with a capped value, without one, or with another number of tries on the row. */
        private final int left;

        Numbers(double[] first, double[] second, int left) {
            this.first = first;
            this.second = second;
            this.left = left;
        }

        static Numbers of(List<Pair> pairs) {
            List<Pair> exact = pairs.stream()
                    .filter(pair ->
                            comparable(pair.first().reading(), pair.second().reading()))
                    .toList();
            return new Numbers(
                    exact.stream()
                            .mapToDouble(pair -> number(pair.first().reading()))
                            .toArray(),
                    exact.stream()
                            .mapToDouble(pair -> number(pair.second().reading()))
                            .toArray(),
                    pairs.size() - exact.size());
        }

        private static boolean comparable(Reading one, Reading other) {
            if (one instanceof Reading.Tries tries && other instanceof Reading.Tries others) {
                return tries.given() == others.given();
            }
            return one instanceof Reading.Exact && other instanceof Reading.Exact;
        }

        private static double number(Reading reading) {
            return reading instanceof Reading.Exact exact
                    ? exact.amount().value()
                    : reading instanceof Reading.Tries tries ? tries.met() : 0;
        }

        String why() {
            return left == 0
                    ? ""
                    : Counted.of(left, "pair")
                            + " left out: capped, without a value, or with another number of tries on the row";
        }
    }

    private static void values(Table table, MeasureKind kind, Numbers numbers) {
        PairAgreement agreement = PairAgreement.of(numbers.first, numbers.second);
        String why = numbers.why();
        int n = numbers.first.length;
        table.share("exact-agreement", n, agreement.exact(), why);
        table.share("total-agreement", n, agreement.total(), "errors that cancel do not show in a total");
        table.share("mean-agreement-per-try", n, agreement.meanPerTry(), why);
        if (kind == MeasureKind.COUNT || kind == MeasureKind.EVENTS || kind == MeasureKind.TRIES) {
            table.share("occurrence-agreement", n, agreement.occurrence(), "marked is anything above 0");
            table.share("scored-agreement", n, agreement.scored(), why);
            table.share("unscored-agreement", n, agreement.unscored(), why);
            table.kappa("occurrence-kappa", n, agreement.occurrenceKappa());
        }
        Estimate<LimitsOfAgreement> limits = LimitsOfAgreement.of(numbers.first, numbers.second);
        table.row(
                "mean-difference",
                n,
                limits.map(LimitsOfAgreement::mean),
                limits.flatMap(one -> one.meanInterval(TrendLine.LEVEL)),
                "first observer less second");
        table.limit("limit-of-agreement-low", n, limits, Interval::low);
        table.limit("limit-of-agreement-high", n, limits, Interval::high);
        correlations(table, n, numbers);
    }

    private static void correlations(Table table, int n, Numbers numbers) {
        double[][] scores = new double[n][];
        for (int i = 0; i < n; i++) {
            scores[i] = new double[] {numbers.first[i], numbers.second[i]};
        }
        Estimate<IntraclassCorrelation> fit = IntraclassCorrelation.of(scores);
        for (IntraclassCorrelation.Form form : IntraclassCorrelation.Form.values()) {
            table.row(
                    form.id(),
                    n,
                    fit.flatMap(one -> one.value(form)),
                    fit.flatMap(one -> one.interval(form, TrendLine.LEVEL)),
                    "tries are the targets, taken as independent");
        }
        Estimate<Double> sem = fit.map(one -> Math.sqrt(one.withinTargets()));
        String between = "root of the mean square within tries: between observers of one try, not from day to day";
        table.share("sem-observers", n, sem, between);
        table.share(
                "mdc95-observers",
                n,
                sem.map(one -> CriticalValue.normal(TrendLine.LEVEL) * Math.sqrt(2) * one),
                between);
    }

    private static void words(
            Table table, String name, WordScale scale, List<Pair> pairs, Function<Trial, Optional<Level>> word) {
        int size = scale.words().size();
        int[][] counts = new int[size][size];
        int n = 0;
        for (Pair pair : pairs) {
            Optional<Level> one = word.apply(pair.first());
            Optional<Level> other = word.apply(pair.second());
            if (one.isPresent() && other.isPresent()) {
                counts[one.get().rank()][other.get().rank()]++;
                n++;
            }
        }
        int both = n;
        int same = 0;
        for (int i = 0; i < size; i++) {
            same += counts[i][i];
        }
        Estimate<Double> exact = both == 0
                ? Estimate.notEstimable("no try whose " + name + " both wrote")
                : Estimate.finite(same / (double) both);
        table.share(name + "-agreement", both, exact, "");
        Estimate<Kappa> kappa = Kappa.of(counts);
        table.kappa(name + "-kappa", both, kappa);
        String weights = "weighted by places on the scale of logbook.toml";
        table.weighted(name + "-kappa-linear", both, kappa, Kappa.Weights.LINEAR, weights);
        table.weighted(name + "-kappa-quadratic", both, kappa, Kappa.Weights.QUADRATIC, weights);
    }

    /** Rows being written. */
    private static final class Table {
        private final List<List<Cell>> rows = new ArrayList<>();
        private final Measure measure;
        private final ObserverPairs.OfObservers observed;

        Table(Measure measure, ObserverPairs.OfObservers observed) {
            this.measure = measure;
            this.observed = observed;
        }

        void share(String figure, int n, Estimate<Double> value, String note) {
            row(figure, n, value, NO_INTERVAL, note);
        }

        void kappa(String figure, int n, Estimate<Kappa> kappa) {
            row(figure, n, kappa.map(Kappa::value), kappa.flatMap(one -> one.interval(TrendLine.LEVEL)), "");
        }

        void weighted(String figure, int n, Estimate<Kappa> kappa, Kappa.Weights weights, String note) {
            row(
                    figure,
                    n,
                    kappa.flatMap(one -> one.weighted(weights)),
                    kappa.flatMap(one -> one.weightedInterval(weights, TrendLine.LEVEL)),
                    note);
        }

        void limit(String figure, int n, Estimate<LimitsOfAgreement> limits, Function<Interval, Double> end) {
            Estimate<Double> value =
                    limits.flatMap(one -> one.limits(TrendLine.LEVEL)).map(end);
            row(
                    figure,
                    n,
                    value,
                    limits.flatMap(one -> value.flatMap(limit -> one.limitInterval(limit, TrendLine.LEVEL))),
                    "mean difference and 1.96 standard deviations");
        }

        void row(String figure, int n, Estimate<Double> value, Estimate<Interval> interval, String note) {
            List<String> reasons = new ArrayList<>(List.of(value.reason()));
            if (value.isEstimated()) {
                reasons.add(note);
                reasons.add(
                        interval.isEstimated() || interval.equals(NO_INTERVAL) ? "" : "interval: " + interval.reason());
            }
            if (observed.firstAlone().size() + observed.secondAlone().size() > 0) {
                reasons.add(NOT_PAIRED);
            }
            rows.add(List.of(
                    Cell.text(measure.id().text()),
                    Cell.code(measure.unit().symbol()),
                    Cell.text(observed.first()),
                    Cell.text(observed.second()),
                    Cell.code(figure),
                    Cell.whole(n),
                    Cell.whole(observed.firstAlone().size()),
                    Cell.whole(observed.secondAlone().size()),
                    FigureCells.of(value, DECIMALS),
                    FigureCells.of(interval.map(Interval::low), DECIMALS),
                    FigureCells.of(interval.map(Interval::high), DECIMALS),
                    FigureCells.reasons(reasons)));
        }
    }
}
