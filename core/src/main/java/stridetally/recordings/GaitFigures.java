package stridetally.recordings;

import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleUnaryOperator;
import stridetally.measures.GaitFormulas;
import stridetally.model.Side;
import stridetally.problem.At;
import stridetally.problem.ProblemCode;
import stridetally.problem.ProblemTally;
import stridetally.problem.RowProblem;
import stridetally.stats.Estimate;
import stridetally.stats.Symmetry;

/**
 * The figures of one walk. Sided ones stand for the left, the right, and all strides of both feet.
 *
 * @source ours
 */
final class GaitFigures {
    /** A variability of fewer strides says nothing; of fewer than 30 it is doubtful. */
    static final int LEAST_STRIDES = 10;

    private static final int ENOUGH_STRIDES = 30;

    /** A child's stride is not longer: then x and y are in another unit. */
    private static final double LONGEST_STRIDE = 2.6;

    private static final double SHORTEST_STRIDE = 0.05;
    private static final double SLOWEST_STRIDE = 50;
    private static final double FASTEST_STRIDE = 0.05;

    private final Footfalls walk;
    private final Strides strides;
    private final GaitValues values;
    private final List<Figure> figures = new ArrayList<>();
    private final String noTime;
    private final String noPlace;

    private GaitFigures(Footfalls walk, Strides strides, GaitValues values) {
        this.walk = walk;
        this.strides = strides;
        this.values = values;
        String none = strides.count == 0
                ? (walk.contacts(true) + walk.contacts(false)) + " contacts"
                        + (strides.droppedCount() > 0 ? ", every stride dropped" : ": a stride needs 3")
                : "";
        this.noTime = walk.timed() ? none : "positions without times";
        this.noPlace = walk.placed() ? none.isEmpty() ? unlikelyLength(values) : none : "no positions";
    }

    /** The figures of a walk; an empty list when it cannot be used at all, which is told. */
    static List<Figure> of(String file, Footfalls walk, ProblemTally problems) {
        Strides strides = new Strides(
                walk,
                (line, why) -> problems.add(new RowProblem(
                        ProblemCode.STRIDE_DROPPED,
                        At.row(file, line),
                        "",
                        "",
                        "the stride that begins here was left out: " + why.words())));
        double median = walk.timed() ? strides.medianSeconds() : Double.NaN;
        if (median > SLOWEST_STRIDE || median < FASTEST_STRIDE) {
            problems.add(new RowProblem(
                    ProblemCode.RECORDING_REFUSED,
                    At.row(file, walk.line()[0]),
                    Double.toString(median),
                    "strides of about 1 s",
                    "is time_s in milliseconds? the walk was left out"));
            return List.of();
        }
        GaitFigures made = new GaitFigures(walk, strides, new GaitValues(walk, strides));
        if (made.noPlace.contains("unit")) {
            problems.add(
                    new RowProblem(ProblemCode.RECORDING_DOUBTFUL, At.row(file, walk.line()[0]), "", "", made.noPlace));
        }
        if (strides.oneFoot()) {
            problems.add(new RowProblem(
                    ProblemCode.RECORDING_DOUBTFUL,
                    At.row(file, walk.line()[0]),
                    "",
                    "contacts of both feet",
                    "the walk has one foot only; what needs both is left out"));
        }
        if (strides.count == 0) {
            // An import keeps figures and not the reasons for those that are missing, so it is told here.
            problems.add(new RowProblem(
                    ProblemCode.RECORDING_DOUBTFUL,
                    At.row(file, walk.line()[0]),
                    "",
                    "a stride: two contacts of one foot, one of the other between",
                    "there is no stride in this walk, so only its contacts are counted"));
        }
        return made.run();
    }

    private List<Figure> run() {
        counts();
        pace();
        sided("stride-time", values.strideTime, "s", noTime, "contact to the next contact of the foot; mean");
        sided(
                "step-time",
                values.stepTime,
                "s",
                needsBoth(noTime),
                "contact of the other foot to that of this one; mean");
        String offs = noTime.isEmpty() && !walk.offs() ? "no off events" : noTime;
        sided("stance-share", values.stance, "proportion", offs, "contact to off, as part of the stride; mean");
        sided("swing-share", values.swing, "proportion", offs, "off to contact, as part of the stride; mean");
        sided(
                "single-support",
                values.singleSupport,
                "proportion",
                needsBoth(offs),
                "off to contact of the other foot, as part of this foot's stride; mean");
        sided(
                "double-support",
                values.doubleSupport,
                "proportion",
                needsBoth(offs),
                "initial and terminal double support, as part of the stride; mean");
        sided("stride-length", values.strideLength, "m", noPlace, "between two footfalls of the foot; mean");
        sided(
                "step-length",
                values.stepLength,
                "m",
                needsBoth(noPlace),
                "along the line through the two footfalls of the stride; the side is the leading foot; mean");
        add(
                "step-width",
                Side.NONE,
                needsBoth(noPlace),
                values.width.mean(),
                "m",
                values.width.all(),
                "distance of the mid footfall from the line through the two of the other foot; mean");
        variability("stride-time", values.strideTime, noTime);
        variability("stride-length", values.strideLength, noPlace);
        symmetry("step-time", values.stepTime, needsBoth(noTime));
        symmetry("step-length", values.stepLength, needsBoth(noPlace));
        symmetry("stance-time", values.stanceTime, needsBoth(offs));
        return figures;
    }

    private void counts() {
        count("contacts", walk.contacts(true) + walk.contacts(false), "contacts that were read");
        count("strides", strides.count, "strides that the figures rest on");
        count("strides-dropped", strides.droppedCount(), dropWords());
        count(
                "strides-spared",
                strides.spared,
                "the first and last two of a foot with " + Strides.LONG_WALK + " strides or more");
    }

    private String dropWords() {
        List<String> words = new ArrayList<>();
        strides.dropped.forEach((why, number) -> words.add(number + ": " + why.words()));
        return words.isEmpty() ? "none" : String.join("; ", words);
    }

    private void pace() {
        String both = needsBoth(noTime);
        double seconds = values.stepTime.sum(true) + values.stepTime.sum(false);
        int steps = values.stepTime.all();
        double cadence = GaitFormulas.cadence(steps, seconds);
        add("cadence", Side.NONE, both, cadence, "steps/min", steps, "60 times steps over the time of these steps");
        String why = noTime.isEmpty() ? noPlace : noTime;
        double speed = GaitFormulas.speed(values.metres, values.seconds);
        add(
                "walk-speed",
                Side.NONE,
                why,
                speed,
                "m/s",
                strides.count,
                "sum of stride lengths over sum of stride times");
        add(
                "walk-ratio",
                Side.NONE,
                needsBoth(why),
                GaitFormulas.walkRatio(values.stepLength.mean(), cadence),
                "cm/(steps/min)",
                values.stepLength.all(),
                "mean step length in cm over cadence");
    }

    private String needsBoth(String why) {
        return why.isEmpty() && strides.oneFoot() ? "one foot only" : why;
    }

    private void count(String quantity, int number, String definition) {
        figures.add(new Figure(quantity, Side.NONE, Estimate.finite(number), "count", number, definition));
    }

    private void sided(String quantity, Values of, String unit, String why, String definition) {
        for (Side side : List.of(Side.LEFT, Side.RIGHT)) {
            boolean right = side == Side.RIGHT;
            add(quantity, side, why, of.mean(right), unit, of.count(right), definition);
        }
        add(quantity, Side.NONE, why, of.mean(), unit, of.all(), definition + " of both feet together");
    }

    private void variability(String quantity, Values of, String why) {
        double sum = 0;
        boolean enough = true;
        String definition = "standard deviation (n - 1) over mean";
        for (Side side : List.of(Side.LEFT, Side.RIGHT)) {
            boolean right = side == Side.RIGHT;
            int n = of.count(right);
            String few =
                    why.isEmpty() && n < LEAST_STRIDES ? n + " of the " + LEAST_STRIDES + " strides it needs" : why;
            double spread = of.deviation(right) / of.mean(right);
            enough &= few.isEmpty();
            sum += spread;
            String doubt = n < ENOUGH_STRIDES ? "; doubtful, fewer than " + ENOUGH_STRIDES + " strides" : "";
            add(quantity + "-variability", side, few, spread, "ratio", n, definition + doubt);
        }
        String few = enough ? "" : why.isEmpty() ? "one foot has fewer than " + LEAST_STRIDES + " strides" : why;
        add(quantity + "-variability", Side.NONE, few, sum / 2, "ratio", of.all(), "mean of that of the two feet");
    }

    private void symmetry(String quantity, Values of, String why) {
        int n = of.all();
        double left = of.mean(false);
        double right = of.mean(true);
        String none = why.isEmpty() && (of.count(true) == 0 || of.count(false) == 0) ? "one side is missing" : why;
        symmetry(
                quantity + "-robinson",
                none,
                () -> Symmetry.of(left, right).flatMap(Symmetry::index),
                n,
                x -> x,
                "%",
                "100 (right - left) / mean of both");
        symmetry(
                quantity + "-log-ratio",
                none,
                () -> Symmetry.of(left, right).flatMap(Symmetry::logRatio),
                n,
                x -> x,
                "%",
                "100 ln(right / left)");
        symmetry(
                quantity + "-asymmetry",
                none,
                () -> Symmetry.of(left, right).flatMap(Symmetry::index),
                n,
                x -> Math.abs(x) / 100,
                "ratio",
                "difference of the sides over their mean, without sign");
    }

    private void symmetry(
            String quantity,
            String why,
            java.util.function.Supplier<Estimate<Double>> index,
            int n,
            DoubleUnaryOperator as,
            String unit,
            String definition) {
        Estimate<Double> value = why.isEmpty() ? index.get().map(as::applyAsDouble) : Estimate.notEstimable(why);
        figures.add(new Figure(quantity, Side.NONE, value, unit, n, definition));
    }

    private void add(String quantity, Side side, String why, double value, String unit, int n, String definition) {
        Estimate<Double> figure = !why.isEmpty()
                ? Estimate.notEstimable(why)
                : n == 0 || !Double.isFinite(value)
                        ? Estimate.notEstimable("no stride to take it from")
                        : Estimate.finite(value);
        figures.add(new Figure(quantity, side, figure, unit, n, definition));
    }

    private static String unlikelyLength(GaitValues values) {
        double mean = values.strideLength.mean();
        boolean unlikely = mean > LONGEST_STRIDE || mean < SHORTEST_STRIDE;
        return unlikely ? "strides of " + mean + " m on average are not a child's; check the unit of x and y" : "";
    }
}
