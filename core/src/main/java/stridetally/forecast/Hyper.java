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
 */
public record Hyper(
        double levelMean,
        double levelSpread,
        double wayMean,
        double waySpread,
        double noiseMean,
        double noiseSpread,
        double carry) {}
