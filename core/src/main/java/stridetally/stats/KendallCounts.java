package stridetally.stats;

import java.util.Arrays;

/**
 * What every rank statistic of y against x starts from: S = sum over pairs of sign(dx) sign(dy), the tied groups on both
 * sides, and Var(S). x and y are replaced by their {@link DenseRanks}, so S is a sum of whole numbers and does not depend on
 * the order of the points. Cost n log n.
 */
record KendallCounts(int points, long s, Ties ties, Ties tiesX) {

    /** Sums over groups of equal values, t being a group's size. */
    record Ties(double pairs, double triples, double weighted, boolean allEqual) {

        /** Of the sizes of the groups; a value that is alone is a group of one. */
        static Ties of(int[] groups) {
            double pairs = 0;
            double triples = 0;
            double weighted = 0;
            for (int size : groups) {
                double t = size;
                pairs += t * (t - 1);
                triples += t * (t - 1) * (t - 2);
                weighted += t * (t - 1) * (2 * t + 5);
            }
            return new Ties(pairs, triples, weighted, groups.length < 2);
        }

        boolean any() {
            return pairs > 0;
        }
    }

    /**
     * Counts pairs.
     *
     * @param rankOfY the ranks of y, in the order of {@code x}
     * @param groupsY how many there are of each
     */
    static KendallCounts of(double[] x, int[] rankOfY, int[] groupsY) {
        if (rises(x)) {
            // Nothing to be put in order, and no ties.
            int[] inOrder = new int[x.length];
            Arrays.setAll(inOrder, k -> k);
            return new KendallCounts(
                    x.length, score(inOrder, rankOfY), Ties.of(groupsY), new Ties(0, 0, 0, x.length < 2));
        }
        int[] rankOfX = DenseRanks.of(x);
        int[] groupsX = DenseRanks.groups(rankOfX);
        int[] byX = DenseRanks.places(rankOfX, groupsX);
        int[] rankX = new int[x.length];
        int[] rankY = new int[x.length];
        for (int k = 0; k < byX.length; k++) {
            rankX[k] = rankOfX[byX[k]];
            rankY[k] = rankOfY[byX[k]];
        }
        return new KendallCounts(x.length, score(rankX, rankY), Ties.of(groupsY), Ties.of(groupsX));
    }

    /** Whether each x is above the one before it, as the days of sessions are, one session a day. */
    static boolean rises(double[] x) {
        for (int k = 1; k < x.length; k++) {
            if (!(x[k] > x[k - 1])) {
                return false;
            }
        }
        return true;
    }

    /** Kendall's two-sided formula: the null variance of S given the ties on both sides; exactly 0 if one side is all equal. */
    double variance() {
        if (ties.allEqual() || tiesX.allEqual()) {
            return 0;
        }
        double n = points;
        double variance = (n * (n - 1) * (2 * n + 5) - ties.weighted() - tiesX.weighted()) / 18
                + ties.pairs() * tiesX.pairs() / (2 * n * (n - 1));
        return points < 3 ? variance : variance + ties.triples() * tiesX.triples() / (9 * n * (n - 1) * (n - 2));
    }

    /** Pairs with different x. */
    long pairsUsed() {
        return (long) points * (points - 1) / 2 - (long) (tiesX.pairs() / 2);
    }

    /** Points come in order of x; each group of equal x is counted against all earlier ones before it joins them. */
    private static long score(int[] rankX, int[] rankY) {
        int[] tree = new int[rankY.length + 1];
        long s = 0;
        int start = 0;
        for (int k = 0; k < rankX.length; k++) {
            if (rankX[k] != rankX[start]) {
                add(tree, rankY, start, k);
                start = k;
            }
            int below = countUpTo(tree, rankY[k]);
            int above = start - countUpTo(tree, rankY[k] + 1);
            s += below - above;
        }
        return s;
    }

    /** A Fenwick tree over the ranks of y (P. Fenwick 1994): counts in logarithmic time. */
    private static void add(int[] tree, int[] rankY, int from, int to) {
        for (int k = from; k < to; k++) {
            for (int node = rankY[k] + 1; node < tree.length; node += node & -node) {
                tree[node]++;
            }
        }
    }

    private static int countUpTo(int[] tree, int ranks) {
        int count = 0;
        for (int node = ranks; node > 0; node -= node & -node) {
            count += tree[node];
        }
        return count;
    }
}
