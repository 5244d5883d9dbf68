package stridetally.model;

/**
 * Where one word of the judgement ends and the next begins; all are settings.
 *
 * @param onCourse chance from which a goal is on course
 * @param offCourse chance up to which it is off course
 * @param fewestPoints sessions with a value that a judgement needs
 * @param staleWeeks weeks outside breaks without a session with a value, after which nothing is said
 * @param longBreakWeeks a school break longer than this stops the forecast's clock
 * @param assistedShare share of sessions whose probes all needed more help, above which the reason says so
 */
public record Thresholds(
        double onCourse, double offCourse, int fewestPoints, int staleWeeks, int longBreakWeeks, double assistedShare) {

    /** The choices of this project. */
    public static final Thresholds USUAL = new Thresholds(0.70, 0.30, 4, 6, 4, 0.20);
}
