package stridetally.forecast;

/**
 * What the caseload has in common, on the scale of 0 = baseline, 1 = target.
 *
 * @param levelMean mean of the students' lines at the baseline date
 * @param levelSpread standard deviation of these
 * @param wayMean mean of the change from baseline date to due date
 * @param waySpread standard deviation of these
 * @param noiseMean mean of the logarithm of the day-to-day standard deviation
 * @param noiseSpread standard deviation of these logarithms
 * @param carry correlation of two sessions a week apart
 * @param odd share of students whose line starts elsewhere than their baseline says, by a standard deviation of half the way
 */
public record Hyper(
        double levelMean,
        double levelSpread,
        double wayMean,
        double waySpread,
        double noiseMean,
        double noiseSpread,
        double carry,
        double odd) {
    private static final double ODD_SPREAD = 0.5;

    /** Variance of the levels of usual series. */
    double levelVariance() {
        return levelSpread * levelSpread;
    }

    /** Variance of the levels of odd series. */
    double oddVariance() {
        return levelVariance() + ODD_SPREAD * ODD_SPREAD;
    }
}
