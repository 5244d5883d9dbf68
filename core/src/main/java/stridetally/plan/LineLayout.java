package stridetally.plan;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import stridetally.model.Body;
import stridetally.model.StudentCode;
import stridetally.units.Amount;

/**
 * The floor line for one child: 6 feet long for a shorter child, 8 to 9 feet for a taller one, 3 inches wide and never more
 * than 4, with 2 feet of clear floor all round (common practice, no source). From which height on a child is taller, and that
 * a large step is two fifths and a small one a fifth of the height, is our choice.
 *
 * @param lengthFeet 6, 8 or 9
 * @param largeSteps about how many large steps reach its end
 * @param smallSteps about how many small steps reach its end
 * @source common-practice lengths, width, clear floor
 * @source ours the heights 120 and 140 cm, the lengths of steps, how long a height serves
 */
public record LineLayout(int lengthFeet, int largeSteps, int smallSteps) {
    /** Width of the line. */
    public static final int WIDTH_INCHES = 3;

    /** The widest it may be. */
    public static final int MOST_WIDTH_INCHES = 4;

    /** Clear floor on every side. */
    public static final int CLEAR_FEET = 2;

    /** Move on from so many steps in a row without help. */
    public static final int STEPS_TO_MOVE_ON = 6;

    /** A height older than this is not used: children grow. */
    static final int HEIGHT_SERVES_DAYS = 366;

    private static final Amount TALLER = Amount.of("120");
    private static final Amount TALLEST = Amount.of("140");
    private static final double CENTIMETRES_A_FOOT = 30.48;
    private static final double LARGE_STEP = 0.4;
    static final double SMALL_STEP = 0.2;

    /** For a child of a height in centimetres, which must be positive. */
    public static LineLayout of(Amount heightCm) {
        if (heightCm.billionths() <= 0) {
            throw new IllegalArgumentException("a height of " + heightCm.text() + " cm");
        }
        int feet = heightCm.compareTo(TALLER) < 0 ? 6 : heightCm.compareTo(TALLEST) < 0 ? 8 : 9;
        double heights = feet * CENTIMETRES_A_FOOT / heightCm.value();
        return new LineLayout(feet, steps(heights / LARGE_STEP), steps(heights / SMALL_STEP));
    }

    /** From the latest height that was measured within a year before the day. */
    public static Optional<LineLayout> of(StudentCode student, List<Body> bodies, LocalDate asOf) {
        return height(student, bodies, asOf).map(LineLayout::of);
    }

    /** The latest height in centimetres that was measured within a year before the day. */
    public static Optional<Amount> height(StudentCode student, List<Body> bodies, LocalDate asOf) {
        return bodies.stream()
                .filter(one -> one.student().equals(student)
                        && !one.date().isAfter(asOf)
                        && one.date().isAfter(asOf.minusDays(HEIGHT_SERVES_DAYS))
                        && one.heightCm().map(Amount::billionths).orElse(0L) > 0)
                .max(Comparator.comparing(Body::date))
                .flatMap(Body::heightCm);
    }

    /** The length in metres to a tenth, as decimal text with a point. */
    public String lengthMetres() {
        long tenths = Math.round(lengthFeet * CENTIMETRES_A_FOOT / 10);
        return tenths / 10 + "." + tenths % 10;
    }

    private static int steps(double steps) {
        return (int) Math.max(1, Math.round(steps));
    }
}
