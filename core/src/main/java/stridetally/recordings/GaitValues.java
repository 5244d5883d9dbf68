package stridetally.recordings;

/** What the strides of one walk give, stride by stride and step by step. */
final class GaitValues {
    final Values strideTime = new Values();
    final Values strideLength = new Values();
    final Values stance = new Values();
    final Values stanceTime = new Values();
    final Values swing = new Values();
    final Values doubleSupport = new Values();
    final Values singleSupport = new Values();
    final Values stepTime = new Values();
    final Values stepLength = new Values();
    final Values width = new Values();

    /** Of the strides that have both a time and a length. */
    double metres;

    double seconds;

    private final Footfalls walk;
    private final Strides strides;
    private final double[] stepLengthAt;

    GaitValues(Footfalls walk, Strides strides) {
        this.walk = walk;
        this.strides = strides;
        this.stepLengthAt = new double[walk.count()];
        java.util.Arrays.fill(stepLengthAt, Double.NaN);
        boolean[] timedStep = new boolean[walk.count()];
        for (int i = 0; i < strides.count; i++) {
            times(i);
            lengths(i);
            step(strides.first[i], strides.middle[i], timedStep);
            step(strides.middle[i], strides.last[i], timedStep);
        }
        for (int i = 0; i < walk.count(); i++) {
            stepLength.add(walk.right()[i], stepLengthAt[i]);
        }
    }

    private void times(int stride) {
        if (!walk.timed()) {
            return;
        }
        boolean right = strides.right(stride);
        double all = strides.seconds(stride);
        double begin = walk.time()[strides.first[stride]];
        strideTime.add(right, all);
        int own = strides.ownOff[stride];
        if (own < 0) {
            return;
        }
        double onFloor = walk.time()[own] - begin;
        stanceTime.add(right, onFloor);
        stance.add(right, onFloor / all);
        swing.add(right, (all - onFloor) / all);
        int other = strides.otherOff[stride];
        int middle = strides.middle[stride];
        if (other >= 0 && middle >= 0) {
            double initial = walk.time()[other] - begin;
            double terminal = walk.time()[own] - walk.time()[middle];
            doubleSupport.add(right, (initial + terminal) / all);
            singleSupport.add(right, (walk.time()[middle] - walk.time()[other]) / all);
        }
    }

    /** Each step once, whichever of the two strides it lies in is used. */
    private void step(int from, int to, boolean[] done) {
        if (walk.timed() && from >= 0 && to >= 0 && !done[to]) {
            done[to] = true;
            stepTime.add(walk.right()[to], walk.time()[to] - walk.time()[from]);
        }
    }

    /** The line of progress is that through the two footfalls of a stride. */
    private void lengths(int stride) {
        int from = strides.first[stride];
        int to = strides.last[stride];
        double dx = walk.x()[to] - walk.x()[from];
        double dy = walk.y()[to] - walk.y()[from];
        double length = Math.hypot(dx, dy);
        if (Double.isNaN(length) || length == 0) {
            return;
        }
        strideLength.add(strides.right(stride), length);
        if (walk.timed()) {
            metres += length;
            seconds += strides.seconds(stride);
        }
        int middle = strides.middle[stride];
        if (middle < 0 || Double.isNaN(walk.x()[middle]) || Double.isNaN(walk.y()[middle])) {
            return;
        }
        double mx = walk.x()[middle] - walk.x()[from];
        double my = walk.y()[middle] - walk.y()[from];
        double along = (mx * dx + my * dy) / length;
        width.add(strides.right(stride), Math.abs(mx * dy - my * dx) / length);
        // A step lies in two strides; its length is taken along the one that ends with it, and of the first step along
        // the one that begins with it.
        stepLengthAt[to] = length - along;
        if (Double.isNaN(stepLengthAt[middle])) {
            stepLengthAt[middle] = along;
        }
    }
}
