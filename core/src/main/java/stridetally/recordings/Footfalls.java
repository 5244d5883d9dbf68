package stridetally.recordings;

/**
 * The events of one walk in the order of time; where there are no times, the contacts in the order of the file.
 *
 * @param name of the walk in its file
 */
@SuppressWarnings("ArrayRecordComponent") // owned by the reader that made them; a copy of 200 000 events would cost
record Footfalls(
        String name,
        int count,
        double[] time,
        boolean[] right,
        boolean[] contact,
        double[] x,
        double[] y,
        long[] line,
        boolean timed,
        boolean placed,
        boolean offs) {

    /** How many contacts of a foot. */
    int contacts(boolean ofRight) {
        int found = 0;
        for (int i = 0; i < count; i++) {
            found += contact[i] && right[i] == ofRight ? 1 : 0;
        }
        return found;
    }
}
