package stridetally.plan;

import java.util.Map;
import java.util.Optional;
import stridetally.measures.Measure;
import stridetally.model.Goal;
import stridetally.units.Amount;
import stridetally.units.Expecting;
import stridetally.units.Parsed;
import stridetally.units.Reading;
import stridetally.units.Unit;
import stridetally.units.ValueGrammar;

/**
 * How many steps at most a line or a beam of a goal holds: its length over a small step, which is a fifth of the height, or
 * heel to toe three twentieths of it, about a foot (our choices). Without a height of the last year that of a child of 100 cm
 * serves, so that the number is rather too large.
 *
 * @param steps whole steps that reach its end
 * @param length as the goal writes it
 * @param height in centimetres; empty when none is known
 * @source ours the lengths of steps
 */
public record StepsOnWay(int steps, String length, Optional<Amount> height) {
    private static final String LINE = "line_length";
    private static final String BEAM = "beam_length";
    private static final String HEEL_TO_TOE = "tandem-steps";
    private static final double FOOT = 0.15;
    private static final double UNKNOWN_HEIGHT_CM = 100;
    private static final double CENTIMETRES = 100;

    /** So that 4 m over 20 cm are 20 steps. */
    private static final double ROUNDING = 1e-9;

    /** None where the goal names no length, or the measure does not count steps along it. */
    public static Optional<StepsOnWay> of(Goal goal, Measure measure, Optional<Amount> heightCm) {
        Map<String, String> keys = goal.protocol().keys();
        String written = keys.containsKey(BEAM) ? keys.get(BEAM) : keys.get(LINE);
        if (written == null || measure.unit() != Unit.STEPS) {
            return Optional.empty();
        }
        Parsed parsed = ValueGrammar.STANDARD.parse(written, "", "", Expecting.AMOUNT, Unit.METRES);
        if (!(parsed instanceof Parsed.Taken taken && taken.reading() instanceof Reading.Exact exact)
                || exact.amount().billionths() <= 0) {
            return Optional.empty();
        }
        double share = measure.id().text().equals(HEEL_TO_TOE) ? FOOT : LineLayout.SMALL_STEP;
        double step = share * heightCm.map(Amount::value).orElse(UNKNOWN_HEIGHT_CM);
        int steps = (int) Math.floor(exact.amount().value() * CENTIMETRES / step + ROUNDING);
        return Optional.of(new StepsOnWay(Math.max(1, steps), written, heightCm));
    }
}
