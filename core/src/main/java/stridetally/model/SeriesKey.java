package stridetally.model;

import org.jspecify.annotations.Nullable;

/**
 * What keeps trials apart before any goal is looked at: one child of one logbook, one measure, side, protocol, place and
 * use. Goals, permitted help and protocol matches are resolved once per key, never per trial.
 *
 * @param source the logbook's id for logs of many schools; blank in a log of one
 */
public record SeriesKey(
        String source,
        StudentCode student,
        MeasureId measure,
        Side side,
        Protocol protocol,
        TrialPlace place,
        Use use) {

    /** The same of another measure. */
    public SeriesKey of(MeasureId other) {
        return new SeriesKey(source, student, other, side, protocol, place, use);
    }

    // By hand: a record makes its own at run time, which costs a small run ten milliseconds.
    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof SeriesKey that
                && student.equals(that.student)
                && measure.equals(that.measure)
                && side == that.side
                && place == that.place
                && use == that.use
                && protocol.equals(that.protocol)
                && source.equals(that.source);
    }

    @Override
    public int hashCode() {
        int hash = 31 * source.hashCode() + student.hashCode();
        hash = 31 * hash + measure.hashCode();
        hash = 31 * hash + side.hashCode();
        hash = 31 * hash + protocol.hashCode();
        hash = 31 * hash + place.hashCode();
        return 31 * hash + use.hashCode();
    }
}
