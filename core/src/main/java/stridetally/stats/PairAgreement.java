package stridetally.stats;

import java.util.function.IntPredicate;
import java.util.stream.IntStream;

/**
 * Agreement of two observers on the same tries, as shares from 0 to 1. {@code first[i]} and {@code second[i]} are what
 * they wrote for try i: counts, seconds, any amounts from 0 on; a negative or non-finite one is the caller's mistake.
 * Each share answers another question, and the total flatters: errors that cancel do not show in it.
 *
 * @source johnston-pennypacker1993: total, mean count per interval, exact count, interval-by-interval, scored, unscored
 */
public final class PairAgreement {
    private final double[] first;
    private final double[] second;

    private PairAgreement(double[] first, double[] second) {
        this.first = first;
        this.second = second;
    }

    /** Over pairs; both arrays of the same length. */
    public static PairAgreement of(double[] first, double[] second) {
        Checks.requireSameLength(first.length, second.length);
        requireAmounts(first, "first");
        requireAmounts(second, "second");
        return new PairAgreement(first.clone(), second.clone());
    }

    /** Smaller total over larger total. None when both are 0. */
    public Estimate<Double> total() {
        double one = IntStream.range(0, first.length).mapToDouble(i -> first[i]).sum();
        double other =
                IntStream.range(0, first.length).mapToDouble(i -> second[i]).sum();
        return one == 0 && other == 0 ? Estimate.notEstimable("both totals are 0") : Estimate.finite(ratio(one, other));
    }

    /** Mean over tries of the smaller amount over the larger one; two zeros agree fully. At least 1 try. */
    public Estimate<Double> meanPerTry() {
        return first.length == 0
                ? noTry()
                : Estimate.finite(IntStream.range(0, first.length)
                        .mapToDouble(i -> ratio(first[i], second[i]))
                        .average()
                        .orElseThrow());
    }

    /** Tries with equal amounts, of all tries. At least 1 try. */
    public Estimate<Double> exact() {
        return share(i -> true, i -> first[i] == second[i]);
    }

    /** Tries that both or neither marked, of all tries: marked is anything above 0. At least 1 try. */
    public Estimate<Double> occurrence() {
        return share(i -> true, i -> (first[i] > 0) == (second[i] > 0));
    }

    /** Tries that both marked, of those that either marked. */
    public Estimate<Double> scored() {
        return share(i -> first[i] > 0 || second[i] > 0, i -> first[i] > 0 && second[i] > 0);
    }

    /** Tries that neither marked, of those that either left unmarked. */
    public Estimate<Double> unscored() {
        return share(i -> first[i] == 0 || second[i] == 0, i -> first[i] == 0 && second[i] == 0);
    }

    /** Kappa of marked and not marked. */
    public Estimate<Kappa> occurrenceKappa() {
        int[][] table = new int[2][2];
        for (int i = 0; i < first.length; i++) {
            table[first[i] > 0 ? 1 : 0][second[i] > 0 ? 1 : 0]++;
        }
        return Kappa.of(table);
    }

    private Estimate<Double> share(IntPredicate asked, IntPredicate agreed) {
        long of = IntStream.range(0, first.length).filter(asked).count();
        long agree = IntStream.range(0, first.length).filter(asked.and(agreed)).count();
        return of == 0 ? noTry() : Estimate.finite(agree / (double) of);
    }

    private static double ratio(double one, double other) {
        return one == other ? 1 : Math.min(one, other) / Math.max(one, other);
    }

    private static Estimate<Double> noTry() {
        return Estimate.notEstimable("no try to be held against");
    }

    private static void requireAmounts(double[] values, String name) {
        Checks.requireFinite(values, name);
        for (double value : values) {
            if (value < 0) {
                throw new IllegalArgumentException(name + " holds a negative amount: " + value);
            }
        }
    }
}
