package stridetally.model;

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
        Use use) {}
