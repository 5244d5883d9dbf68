package stridetally.stats;

import java.util.Arrays;
import java.util.Comparator;
import java.util.stream.IntStream;

/** Sorting by places, and the pairs that a merge sort finds out of order. */
final class Sorting {
    private Sorting() {}

    /** Takes a pair of places. */
    interface Pairs {
        /** {@code first} stands before {@code second}. */
        void take(int first, int second);
    }

    /** The places 0 to size - 1 in an order; equal ones stay as they are. */
    static int[] indices(int size, Comparator<Integer> order) {
        Integer[] indices = IntStream.range(0, size).boxed().toArray(Integer[]::new);
        Arrays.sort(indices, order);
        return Arrays.stream(indices).mapToInt(Integer::intValue).toArray();
    }

    /** How many pairs stand with the larger one first. Sorts the values. */
    static long inversions(double[] values) {
        return inversions(values, new double[values.length], 0, values.length);
    }

    private static long inversions(double[] values, double[] spare, int from, int to) {
        if (to - from < 2) {
            return 0;
        }
        int middle = (from + to) >>> 1;
        long found = inversions(values, spare, from, middle) + inversions(values, spare, middle, to);
        int left = from;
        int right = middle;
        for (int k = from; k < to; k++) {
            if (right == to || (left < middle && values[left] <= values[right])) {
                spare[k] = values[left++];
            } else {
                spare[k] = values[right++];
                found += middle - left;
            }
        }
        System.arraycopy(spare, from, values, from, to - from);
        return found;
    }

    /** Each pair of places that stand in {@code order} with the larger value first. Reorders {@code order}. */
    static void eachInversion(int[] order, double[] values, Pairs pairs) {
        eachInversion(order, values, new int[order.length], 0, order.length, pairs);
    }

    private static void eachInversion(int[] order, double[] values, int[] spare, int from, int to, Pairs pairs) {
        if (to - from < 2) {
            return;
        }
        int middle = (from + to) >>> 1;
        eachInversion(order, values, spare, from, middle, pairs);
        eachInversion(order, values, spare, middle, to, pairs);
        int left = from;
        int right = middle;
        for (int k = from; k < to; k++) {
            if (right == to || (left < middle && values[order[left]] <= values[order[right]])) {
                spare[k] = order[left++];
            } else {
                for (int larger = left; larger < middle; larger++) {
                    pairs.take(order[larger], order[right]);
                }
                spare[k] = order[right++];
            }
        }
        System.arraycopy(spare, from, order, from, to - from);
    }
}
