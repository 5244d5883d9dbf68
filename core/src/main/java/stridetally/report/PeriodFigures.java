package stridetally.report;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import java.util.function.ToIntFunction;
import stridetally.model.DateRange;
import stridetally.scoring.Session;
import stridetally.scoring.SessionStatus;
import stridetally.stats.Estimate;

/**
 * What the sessions of some days amount to. Values are those of sessions, not of tries.
 *
 * @param sessions sessions in which a try was made
 * @param withValue of these, those with a value
 * @param assistedOnly of these, those whose tries all needed more help than permitted
 * @param notTried sessions without a try, by why
 * @param trials tries on the log, made or not
 * @param recorded tries that were made
 * @param counted tries behind the values
 * @param median the middle session value; a capped one may make it a bound
 * @param independent tries with the least help, over the tries whose help was written
 * @param permitted tries at permitted help, over the tries of which it is known
 * @param mostHelp rank of the most help; empty when none was written
 */
public record PeriodFigures(
        DateRange days,
        int sessions,
        int withValue,
        int assistedOnly,
        Map<SessionStatus, Integer> notTried,
        int trials,
        int recorded,
        int counted,
        Estimate<Measured> median,
        Estimate<Measured> low,
        Estimate<Measured> high,
        Part independent,
        Part permitted,
        OptionalInt mostHelp) {

    public PeriodFigures {
        notTried = java.util.Collections.unmodifiableMap(new java.util.TreeMap<>(notTried));
    }

    /** So many of so many. */
    public record Part(int of, int all) {
        /** The share, or why there is none. */
        public Estimate<Double> share(String whenNone) {
            return all == 0 ? Estimate.notEstimable(whenNone) : Estimate.of(of / (double) all);
        }
    }

    /** The figures of those of the sessions that fall within some days. */
    public static PeriodFigures of(List<Session> sessions, DateRange days) {
        List<Session> within =
                sessions.stream().filter(session -> days.holds(session.date())).toList();
        List<Measured> values = within.stream()
                .flatMap(session -> Measured.of(session.value()).value().stream())
                .toList();
        OrderedMeasured order = new OrderedMeasured(values);
        Map<SessionStatus, Integer> notTried = new EnumMap<>(SessionStatus.class);
        within.stream()
                .filter(session -> session.status() != SessionStatus.TRIED)
                .forEach(session -> notTried.merge(session.status(), 1, Integer::sum));
        int recorded = sum(within, Session::recorded);
        return new PeriodFigures(
                days,
                (int) within.stream().filter(session -> session.recorded() > 0).count(),
                values.size(),
                (int) within.stream().filter(Session::assistedOnly).count(),
                notTried,
                sum(within, Session::trials),
                recorded,
                sum(within, Session::counted),
                order.median(),
                order.lowest(),
                order.highest(),
                new Part(sum(within, Session::independentTries), sum(within, Session::helpRecorded)),
                new Part(sum(within, Session::permittedTries), recorded - sum(within, Session::doubtfulTries)),
                within.stream()
                        .flatMapToInt(session -> session.mostHelp().stream())
                        .max());
    }

    private static int sum(List<Session> sessions, ToIntFunction<Session> count) {
        return sessions.stream().mapToInt(count).sum();
    }
}
