package stridetally.stats;

import java.util.concurrent.atomic.AtomicReferenceArray;
import org.apache.commons.statistics.distribution.NormalDistribution;
import org.apache.commons.statistics.distribution.TDistribution;
import org.jspecify.annotations.Nullable;

/**
 * Two-sided critical values and p values of the normal and the t distribution: the one place where they come from, so
 * that no two figures on a page rest on different tables. z at level 0.95 is 1.95996398454005, never 1.96 or 2.
 *
 * @source commons-statistics 1.2, distribution: NormalDistribution, TDistribution
 */
public final class CriticalValue {

    private static final NormalDistribution STANDARD_NORMAL = NormalDistribution.of(0, 1);

    private static final double USUAL_LEVEL = 0.95;
    private static final double USUAL_NORMAL = searchedNormal(USUAL_LEVEL);

    /** The t of the usual level by degrees of freedom, once they were searched: every line of a caseload asks for one. */
    private static final AtomicReferenceArray<@Nullable Double> USUAL = new AtomicReferenceArray<>(500);

    private CriticalValue() {}

    /** The z with {@code level} of the standard normal distribution between -z and z; level inside (0, 1). */
    public static double normal(double level) {
        Checks.requireLevel(level);
        return level == USUAL_LEVEL ? USUAL_NORMAL : searchedNormal(level);
    }

    private static double searchedNormal(double level) {
        return STANDARD_NORMAL.inverseSurvivalProbability((1 - level) / 2);
    }

    /** The t with {@code level} of Student's t distribution between -t and t; level inside (0, 1), at least 1 degree of freedom. */
    public static double student(double level, int degreesOfFreedom) {
        Checks.requireLevel(level);
        if (level != USUAL_LEVEL || degreesOfFreedom >= USUAL.length()) {
            return searched(level, degreesOfFreedom);
        }
        Double known = USUAL.get(degreesOfFreedom);
        if (known == null) {
            known = searched(level, degreesOfFreedom);
            USUAL.set(degreesOfFreedom, known);
        }
        return known;
    }

    private static double searched(double level, int degreesOfFreedom) {
        return TDistribution.of(degreesOfFreedom).inverseSurvivalProbability((1 - level) / 2);
    }

    /** The chance of a standard normal value at least as far from zero as {@code z}. */
    public static double normalTwoSided(double z) {
        return Math.min(1, 2 * STANDARD_NORMAL.survivalProbability(Math.abs(z)));
    }

    /** The chance of a standard normal value below {@code z}. */
    public static double normalBelow(double z) {
        return STANDARD_NORMAL.cumulativeProbability(z);
    }

    /** The chance of a t value at least as far from zero as {@code t}; at least 1 degree of freedom. */
    public static double studentTwoSided(double t, int degreesOfFreedom) {
        return Math.min(1, 2 * TDistribution.of(degreesOfFreedom).survivalProbability(Math.abs(t)));
    }
}
