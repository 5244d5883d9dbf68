package stridetally.recordings;

import java.util.Arrays;

/** Numbers by foot, with their mean and spread. Two passes, so that a mean far from zero costs no digits. */
final class Values {
    private final double[][] of = {new double[64], new double[64]};
    private final int[] count = new int[2];

    void add(boolean right, double value) {
        if (Double.isNaN(value)) {
            return;
        }
        int foot = right ? 1 : 0;
        if (count[foot] == of[foot].length) {
            of[foot] = Arrays.copyOf(of[foot], 2 * count[foot]);
        }
        of[foot][count[foot]++] = value;
    }

    int count(boolean right) {
        return count[right ? 1 : 0];
    }

    int all() {
        return count[0] + count[1];
    }

    double sum(boolean right) {
        double sum = 0;
        for (int i = 0; i < count(right); i++) {
            sum += of[right ? 1 : 0][i];
        }
        return sum;
    }

    double mean(boolean right) {
        return sum(right) / count(right);
    }

    double mean() {
        return (sum(true) + sum(false)) / all();
    }

    /** Standard deviation with n - 1. */
    double deviation(boolean right) {
        double mean = mean(right);
        double squares = 0;
        for (int i = 0; i < count(right); i++) {
            double off = of[right ? 1 : 0][i] - mean;
            squares += off * off;
        }
        return Math.sqrt(squares / (count(right) - 1));
    }
}
