package stridetally.scoring;

import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import java.util.NavigableMap;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.TreeMap;
import java.util.stream.IntStream;
import stridetally.model.Attainment;
import stridetally.model.Direction;
import stridetally.model.Goal;
import stridetally.model.GoalId;
import stridetally.model.GoalSide;
import stridetally.units.Amount;

/**
 * The attainment levels of a goal, -2 to +2, each with the value at which it is reached. The level of a value is the best
 * one that it reaches; a value that reaches none is at -2, the lowest there is, since leaving it out would flatter the
 * score. Where none are written they are derived from baseline and target: -1 half of the way, 0 the target, +1 a quarter
 * of the way beyond it, +2 half of the way beyond it.
 *
 * @param values level to value, in the measure's unit
 */
public record AttainmentLevels(GoalId goal, Direction better, NavigableMap<Integer, Amount> values, Origin origin) {

    /** Where levels come from. */
    public enum Origin {
        WRITTEN,
        DERIVED
    }

    /** The rule of derived levels, as a sentence. */
    public static final String RULE =
            "levels derived from baseline and target: -1 at half of the way, 0 at the target, +1 and +2 a quarter and half of"
                    + " the way beyond it";

    /** The lowest level. */
    public static final int LOWEST = -2;

    /** The highest level. */
    public static final int HIGHEST = 2;

    private static final BigDecimal HALF = new BigDecimal("0.5");
    private static final BigDecimal QUARTER = new BigDecimal("0.25");

    public AttainmentLevels {
        values = java.util.Collections.unmodifiableNavigableMap(new TreeMap<>(values));
        for (int level : values.keySet()) {
            if (level < LOWEST || level > HIGHEST) {
                throw new IllegalArgumentException("level " + level);
            }
        }
    }

    /** Written levels. */
    public AttainmentLevels(GoalId goal, Direction better, NavigableMap<Integer, Amount> values) {
        this(goal, better, values, Origin.WRITTEN);
    }

    /** Levels by the rule; empty without a baseline and a target that is better than it. */
    public static Optional<AttainmentLevels> derived(Goal goal, Direction better) {
        if (goal.baseline().isEmpty() || goal.target().isEmpty()) {
            return Optional.empty();
        }
        Amount from = goal.baseline().get();
        Amount to = goal.target().get();
        if (better.sign() * to.compareTo(from) <= 0) {
            return Optional.empty();
        }
        BigDecimal way = BigDecimal.valueOf(to.billionths() - from.billionths(), 9);
        BigDecimal target = BigDecimal.valueOf(to.billionths(), 9);
        NavigableMap<Integer, Amount> values = new TreeMap<>();
        values.put(-1, Amount.of(target.subtract(way.multiply(HALF))));
        values.put(0, to);
        values.put(1, Amount.of(target.add(way.multiply(QUARTER))));
        values.put(HIGHEST, Amount.of(target.add(way.multiply(HALF))));
        return Optional.of(new AttainmentLevels(goal.id(), better, values, Origin.DERIVED));
    }

    /** The levels written for a goal; empty when none are. */
    public static Optional<AttainmentLevels> written(GoalId goal, Direction better, List<Attainment> all) {
        NavigableMap<Integer, Amount> values = new TreeMap<>();
        all.stream().filter(one -> one.goal().equals(goal)).forEach(one -> values.put(one.level(), one.value()));
        return values.isEmpty() ? Optional.empty() : Optional.of(new AttainmentLevels(goal, better, values));
    }

    /** A level, or the reason why there is none. */
    public sealed interface Attained {

        /** One of the five levels. */
        record AtLevel(int level) implements Attained {}

        /** Left out of the score, and said. */
        record NotRated(String reason) implements Attained {}

        /** The goal's level: of two sides the lower when each must hold, the higher when either will do. */
        static Attained ofGoal(GoalSide side, List<Attained> sides) {
            Optional<Attained> missing =
                    sides.stream().filter(one -> one instanceof NotRated).findFirst();
            if (sides.isEmpty() || (missing.isPresent() && side != GoalSide.EITHER)) {
                return missing.orElse(new NotRated("nothing was scored"));
            }
            IntStream levels =
                    sides.stream().filter(one -> one instanceof AtLevel).mapToInt(one -> ((AtLevel) one).level());
            OptionalInt level = side == GoalSide.EITHER ? levels.max() : levels.min();
            return level.isPresent() ? new AtLevel(level.getAsInt()) : missing.orElseThrow();
        }
    }

    /** The level of a session value. */
    public Attained of(SessionValue value) {
        if (!inOrder()) {
            return new Attained.NotRated("the values of the levels are not in the order of the levels");
        }
        if (value instanceof SessionValue.Known known) {
            return exact(known.sum(), known.count());
        }
        if (value instanceof SessionValue.Bounded bounded) {
            return capped(bounded);
        }
        return new Attained.NotRated("no value");
    }

    private Attained capped(SessionValue.Bounded bounded) {
        boolean trueIsBetter = (bounded.bound() == Bound.AT_LEAST) == (better == Direction.HIGHER);
        Attained atCap = exact(bounded.sum(), bounded.count());
        int far = trueIsBetter ? values.lastKey() : LOWEST;
        return atCap instanceof Attained.AtLevel level && level.level() == far
                ? atCap
                : new Attained.NotRated("the value is capped and may lie at another level");
    }

    private Attained exact(long sum, int count) {
        for (Map.Entry<Integer, Amount> written : values.descendingMap().entrySet()) {
            if (TargetCheck.reaches(better, written.getValue(), sum, count)) {
                return new Attained.AtLevel(written.getKey());
            }
        }
        // With only -2, or -2 and up, or -1 and up written, nothing but -2 is left below.
        return values.firstKey() <= LOWEST + 1
                ? new Attained.AtLevel(LOWEST)
                : new Attained.NotRated(
                        "it is below level " + values.firstKey() + ", and the levels below are not written");
    }

    private boolean inOrder() {
        Amount before = null;
        for (Amount value : values.values()) {
            if (before != null && better.sign() * value.compareTo(before) <= 0) {
                return false;
            }
            before = value;
        }
        return !values.isEmpty();
    }
}
