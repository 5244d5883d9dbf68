package stridetally.report;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
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
        Sums sums = new Sums();
        for (Session session : sessions) {
            if (days.holds(session.date())) {
                sums.add(session);
            }
        }
        OrderedMeasured order = new OrderedMeasured(sums.values);
        return new PeriodFigures(
                days,
                sums.sessions,
                sums.values.size(),
                sums.assistedOnly,
                sums.notTried,
                sums.trials,
                sums.recorded,
                sums.counted,
                order.median(),
                order.lowest(),
                order.highest(),
                new Part(sums.independent, sums.helpRecorded),
                new Part(sums.permitted, sums.recorded - sums.doubtful),
                sums.mostHelp);
    }

    /** What the sessions add up to, while they are gone through. */
    private static final class Sums {
        private final List<Measured> values = new ArrayList<>();
        private final Map<SessionStatus, Integer> notTried = new EnumMap<>(SessionStatus.class);
        private int sessions;
        private int assistedOnly;
        private int trials;
        private int recorded;
        private int counted;
        private int independent;
        private int helpRecorded;
        private int permitted;
        private int doubtful;
        private OptionalInt mostHelp = OptionalInt.empty();

        void add(Session session) {
            Estimate<Measured> value = Measured.of(session.value());
            if (value.isEstimated()) {
                values.add(value.orElseThrow());
            }
            if (session.status() != SessionStatus.TRIED) {
                notTried.put(session.status(), notTried.getOrDefault(session.status(), 0) + 1);
            }
            sessions += session.recorded() > 0 ? 1 : 0;
            assistedOnly += session.assistedOnly() ? 1 : 0;
            trials += session.trials();
            recorded += session.recorded();
            counted += session.counted();
            independent += session.independentTries();
            helpRecorded += session.helpRecorded();
            permitted += session.permittedTries();
            doubtful += session.doubtfulTries();
            if (session.mostHelp().isPresent()) {
                mostHelp = OptionalInt.of(Math.max(
                        session.mostHelp().getAsInt(),
                        mostHelp.orElse(session.mostHelp().getAsInt())));
            }
        }
    }
}
