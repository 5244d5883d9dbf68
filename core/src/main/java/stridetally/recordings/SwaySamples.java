package stridetally.recordings;

/**
 * The samples of one stance: sideways and forward, in millimetres or metres per second squared.
 *
 * @param interval middle of the times between samples, s
 * @param firstGap line before which more than two samples are missing for the first time; 0 = nowhere
 */
@SuppressWarnings("ArrayRecordComponent") // owned by the reader that made them; a copy of 600 000 samples would cost
record SwaySamples(
        SwayUnit unit,
        int count,
        double[] time,
        double[] sideways,
        double[] forward,
        double interval,
        int gaps,
        long firstGap) {

    /** {@code 1 gap}, {@code 3 gaps}. */
    String gapWords() {
        return gaps + (gaps == 1 ? " gap" : " gaps");
    }

    double seconds() {
        return time[count - 1] - time[0];
    }

    /** Whether more than two samples are missing before this one. */
    boolean gapBefore(int sample) {
        return time[sample] - time[sample - 1] > GAP * interval;
    }

    /** More than two samples missing between two. */
    static final double GAP = 3.5;
}
