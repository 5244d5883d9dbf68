package stridetally.measures;

import java.util.Locale;
import stridetally.model.Summary;
import stridetally.units.Dimension;
import stridetally.units.Expecting;

/** What sort of number a measure is, which decides how tries are read and summarised. */
public enum MeasureKind {
    /** Whole numbers: steps, hops, laps. */
    COUNT(Dimension.COUNT, Expecting.WHOLE_NUMBER, Summary.MEAN),
    /** Time; often stopped at a cap. */
    DURATION(Dimension.TIME, Expecting.AMOUNT, Summary.MEAN),
    DISTANCE(Dimension.LENGTH, Expecting.AMOUNT, Summary.MEAN),
    SPEED(Dimension.SPEED, Expecting.AMOUNT, Summary.MEAN),
    /** Steps in a minute. */
    FREQUENCY(Dimension.FREQUENCY, Expecting.AMOUNT, Summary.MEAN),
    /** A part of a whole, 0 to 1; by tries when written as k of n tries. */
    SHARE(Dimension.SHARE, Expecting.SHARE_OR_TRIES, Summary.MEAN),
    /** Tries met of tries given. */
    TRIES(Dimension.SHARE, Expecting.TRIES, Summary.MEAN),
    /** A total score of a test. */
    SCORE(Dimension.POINTS, Expecting.WHOLE_NUMBER, Summary.LAST),
    /** Things that happen, such as falls: summed unless the measure says that they are counted per try (step-offs). */
    EVENTS(Dimension.COUNT, Expecting.WHOLE_NUMBER, Summary.TOTAL),
    /** A number by itself: a difference over a mean, a speed over that of the legs. */
    RATIO(Dimension.RATIO, Expecting.AMOUNT, Summary.MEAN),
    /** Step length over cadence. */
    WALK_RATIO(Dimension.WALK_RATIO, Expecting.AMOUNT, Summary.MEAN),
    AREA(Dimension.AREA, Expecting.AMOUNT, Summary.MEAN),
    /** Swings in a second. */
    OSCILLATION(Dimension.OSCILLATION, Expecting.AMOUNT, Summary.MEAN),
    ACCELERATION(Dimension.ACCELERATION, Expecting.AMOUNT, Summary.MEAN),
    /** The squared change of acceleration, summed over time. */
    JERK(Dimension.JERK, Expecting.AMOUNT, Summary.MEAN);

    private final Dimension dimension;
    private final Expecting expecting;
    private final Summary summary;

    MeasureKind(Dimension dimension, Expecting expecting, Summary summary) {
        this.dimension = dimension;
        this.expecting = expecting;
        this.summary = summary;
    }

    /** The kind of unit its values have. */
    public Dimension dimension() {
        return dimension;
    }

    /** How its value cells are read. */
    public Expecting expecting() {
        return expecting;
    }

    /** How a session is valued when a measure of somebody's own does not say. */
    public Summary usualSummary() {
        return summary;
    }

    /** The word of the catalogue file. */
    public String word() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
