package stridetally.simulate;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;

/** Makes goals with known truth; the same seed makes the same goals. */
public final class ChildMaker {
    /** From baseline to due date. */
    public static final int WEEKS = 36;

    /** Where the floor line ends in the scenario of that name. */
    static final double CEILING = 1.1;

    static final double MEAN_WAY = 0.75;
    static final double SPREAD_WAY = 0.5;
    static final double SPREAD_LEVEL = 0.15;

    /** The last day before a change of strategy, in the scenario of a jump. */
    static final int LAST_DAY_BEFORE_JUMP = 7 * WEEKS / 3;

    private static final List<Integer> BREAK_WEEKS = List.of(11, 15, 16, 23, 30);
    private static final int RUN = 5;
    private static final int TRIES = 5;
    private static final double SPREAD_TRIES = 0.15;
    private static final double JUMP = 0.3;
    private static final double SPREAD_JUMP = 0.2;
    private static final double DUE = 7.0 * WEEKS;

    private final Scenario scenario;
    private final SplittableRandom random;

    public ChildMaker(Scenario scenario, long seed) {
        this.scenario = scenario;
        this.random = new SplittableRandom(seed);
    }

    /** The next goal. */
    public MadeChild next() {
        Scenario.Shape shape = scenario.shape();
        double level = SPREAD_LEVEL * normal();
        double way = MEAN_WAY + SPREAD_WAY * normal();
        double jump = scenario == Scenario.JUMP ? JUMP + SPREAD_JUMP * normal() : 0;
        double steady = scenario == Scenario.JUMP ? way - JUMP : way;
        List<MadeSession> sessions = new ArrayList<>();
        double carried = 0;
        int before = 0;
        for (int day : days(shape)) {
            double correlation = sessions.isEmpty() ? 0 : Math.pow(shape.carry(), (day - before) / 7.0);
            carried = correlation * carried
                    + Math.sqrt(1 - correlation * correlation) * shape.noise() * scatter(shape.freedom());
            before = day;
            double line = level + steady * height(day / DUE) + (day > LAST_DAY_BEFORE_JUMP ? jump : 0);
            sessions.add(session(day, line + carried));
        }
        return new MadeChild(level + steady + jump, sessions);
    }

    private double height(double time) {
        double bend = scenario.bend();
        return bend == 0 ? time : Math.expm1(-bend * time) / Math.expm1(-bend);
    }

    /** Tries about a session's value, whose mean is that value unless the line ends before some of them do. */
    private MadeSession session(int day, double value) {
        double most = scenario == Scenario.CEILING ? CEILING : Double.POSITIVE_INFINITY;
        List<Double> off = new ArrayList<>();
        double mean = 0;
        for (int i = 0; i < TRIES; i++) {
            double one = SPREAD_TRIES * normal();
            off.add(one);
            mean += one / TRIES;
        }
        double middle = value - mean;
        return new MadeSession(
                day, off.stream().map(one -> Math.min(most, middle + one)).toList(), (int)
                        off.stream().filter(one -> middle + one >= most).count());
    }

    private List<Integer> days(Scenario.Shape shape) {
        List<Integer> days = new ArrayList<>();
        int skip = 0;
        for (int day = shape.everyDays(); day <= DUE; day += shape.everyDays()) {
            if (skip == 0 && random.nextDouble() < shape.missing()) {
                skip = RUN;
            }
            if (skip > 0) {
                skip--;
            } else if (!BREAK_WEEKS.contains(day / 7)) {
                days.add(day);
            }
        }
        return days;
    }

    /** Of variance 1. */
    private double scatter(int freedom) {
        double one = normal();
        if (freedom == 0) {
            return one;
        }
        double squares = 0;
        for (int i = 0; i < freedom; i++) {
            double next = normal();
            squares += next * next;
        }
        return one / Math.sqrt(squares / freedom) * Math.sqrt((freedom - 2.0) / freedom);
    }

    /** By Box and Muller. */
    private double normal() {
        double first = 1 - random.nextDouble();
        return Math.sqrt(-2 * Math.log(first)) * Math.cos(2 * Math.PI * random.nextDouble());
    }
}
