package stridetally.forecast;

/**
 * The shape of change between baseline and due date: f(0) = 0, f(1) = 1, f(t) = (1 - exp(-k t))/(1 - exp(-k)); straight
 * for k = 0. A higher k levels off earlier.
 *
 * @param bend k, 0 or more
 * @param logPrior natural logarithm of the weight before any data
 */
record LearningCurve(double bend, double logPrior) {

    /** The height at a time; times after the due date are allowed. */
    double at(double time) {
        return bend == 0 ? time : Math.expm1(-bend * time) / Math.expm1(-bend);
    }
}
