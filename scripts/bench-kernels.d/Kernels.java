// The statistics of one series, for scripts/bench-kernels.
package kernels;

import java.util.SplittableRandom;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import stridetally.stats.ExactMeans;
import stridetally.stats.MannKendall;
import stridetally.stats.StraightLine;
import stridetally.stats.TheilSenSlope;

@State(Scope.Thread)
public class Kernels {
    @Param({"50", "5000"})
    int sessions;

    private double[] days;
    private double[] values;
    private ExactMeans means;

    /** Sessions of five tries a week apart, values of two decimals that rise a little. */
    @Setup
    public void makeSeries() {
        SplittableRandom random = new SplittableRandom(20250901L);
        days = new double[sessions];
        long[] sums = new long[sessions];
        int[] counts = new int[sessions];
        for (int i = 0; i < sessions; i++) {
            days[i] = 7 * i;
            for (int tries = 0; tries < 5; tries++) {
                sums[i] += (500 + i / 2 + random.nextInt(400)) * 10_000_000L;
            }
            counts[i] = 5;
        }
        means = ExactMeans.of(sums, counts);
        values = means.values();
    }

    @Benchmark
    public Object theilSen() {
        return TheilSenSlope.of(days, means, 0.95);
    }

    @Benchmark
    public Object mannKendall() {
        return MannKendall.of(days, means);
    }

    @Benchmark
    public Object straightLine() {
        return StraightLine.fit(days, values);
    }
}
