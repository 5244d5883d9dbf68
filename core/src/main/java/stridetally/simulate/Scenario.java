package stridetally.simulate;

/**
 * How a made-up caseload behaves. On the scale of 0 = baseline, 1 = target each child changes by a normal amount (mean
 * 0.75, standard deviation 0.5) until the due date, 36 weeks after the baseline, and starts near the baseline (standard
 * deviation 0.15); sessions scatter about the child's line.
 */
public enum Scenario {
    /** Straight lines, weekly sessions, independent days. */
    BASE("base", 0.35, 0, 0, 7, 0),
    /** Good and bad days carry over: correlation 0.3 from week to week. */
    CARRY_OVER("carry-over", 0.35, 0.3, 0, 7, 0),
    /** More scatter. */
    NOISY("noisy", 0.60, 0, 0, 7, 0),
    /** Scatter as Student's t with 4 degrees of freedom, of the same standard deviation. */
    HEAVY_TAILS("heavy-tails", 0.35, 0, 4, 7, 0),
    /** Every second week. */
    FORTNIGHTLY("fortnightly", 0.35, 0, 0, 14, 0),
    /** Change is quick at first: (1 - exp(-3 t))/(1 - exp(-3)). */
    LEVELS_OFF("levels-off", 0.35, 0, 0, 7, 0),
    /** A change of strategy after a third of the time lifts the line by 0.3 on average, of 0.75 in all. */
    JUMP("jump", 0.35, 0, 0, 7, 0),
    /** The floor line ends at 1.1: tries that would go further end there and are known to. */
    CEILING("ceiling", 0.35, 0, 0, 7, 0),
    /** Runs of five sessions are missing. */
    MISSING_RUNS("missing-runs", 0.35, 0, 0, 7, 0.06);

    private final String word;
    private final double noise;
    private final double carry;
    private final int freedom;
    private final int everyDays;
    private final double missing;

    Scenario(String word, double noise, double carry, int freedom, int everyDays, double missing) {
        this.word = word;
        this.noise = noise;
        this.carry = carry;
        this.freedom = freedom;
        this.everyDays = everyDays;
        this.missing = missing;
    }

    /**
     * The numbers of a scenario.
     *
     * @param noise day-to-day standard deviation
     * @param carry correlation of two sessions a week apart
     * @param freedom degrees of freedom of the scatter; 0 = normal
     * @param everyDays days between sessions
     * @param missing chance in a session that a run of five is missing
     */
    public record Shape(double noise, double carry, int freedom, int everyDays, double missing) {}

    /** How far the line bends, as the forecast's learning curve writes it. */
    public double bend() {
        return this == LEVELS_OFF ? 3 : 0;
    }

    /** Whether it is one of the five over which the bounds are averaged. */
    public boolean inAverage() {
        return switch (this) {
            case BASE, CARRY_OVER, NOISY, HEAVY_TAILS, FORTNIGHTLY -> true;
            case LEVELS_OFF, JUMP, CEILING, MISSING_RUNS -> false;
        };
    }

    /** Its numbers. */
    public Shape shape() {
        return new Shape(noise, carry, freedom, everyDays, missing);
    }

    /** The word by which it is asked for. */
    @Override
    public String toString() {
        return word;
    }
}
