package stridetally.forecast;

/**
 * One possible truth of a series, drawn from what is believed of it.
 *
 * @param level of the line at the baseline date
 * @param way change of the line until the due date
 * @param spread day-to-day standard deviation
 * @param place the values of the caseload and the curve it was drawn under
 * @param path what the days to come are drawn from, once
 */
record LineDraw(double level, double way, double spread, HyperPosterior.Place place, DrawnNumbers path) {

    /** The line where the curve has a height. */
    double at(double height) {
        return level + way * height;
    }

    /** The time at which the line comes to the target; infinite when it never does, 0 when it starts there. */
    double timeOfTarget() {
        if (level >= 1) {
            return 0;
        }
        double height = (1 - level) / way;
        double bend = place.curve().bend();
        if (!(way > 0)) {
            return Double.POSITIVE_INFINITY;
        }
        if (bend == 0) {
            return height;
        }
        double left = 1 + height * Math.expm1(-bend);
        return left > 0 ? -Math.log(left) / bend : Double.POSITIVE_INFINITY;
    }
}
