package stridetally.simulate;

import java.util.List;

/**
 * A made-up session, on the scale of 0 = baseline, 1 = target.
 *
 * @param day days after the baseline date
 * @param tries what each try came to
 * @param capped tries that are cut off where the floor line ends
 */
public record MadeSession(int day, List<Double> tries, int capped) {

    public MadeSession {
        tries = List.copyOf(tries);
    }

    /** The mean of the tries. */
    public double value() {
        return tries.stream().mapToDouble(Double::doubleValue).sum() / tries.size();
    }

    /** Tries at the target or beyond. */
    public int met() {
        return (int) tries.stream().filter(one -> one >= 1).count();
    }

    /** The same session as a log can hold it. */
    MadeSession written(MadeMeasure measure) {
        return new MadeSession(day, tries.stream().map(measure::nearest).toList(), capped);
    }
}
