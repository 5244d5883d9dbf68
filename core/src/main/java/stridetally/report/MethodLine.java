package stridetally.report;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import stridetally.forecast.SideReview;
import stridetally.model.Thresholds;

/** Which statistic, of how many sessions, at which level, with which settings: so that every figure can be traced. */
final class MethodLine {
    private static final String PERIODS =
            "Period figures: median, lowest and highest of the session values; sessions up to the baseline date are"
                    + " the baseline's and are left out.";

    private static final String OWN_LINE =
            "Lines: on real days, by ordinary least squares (ols), 95 % interval by Student's t.";

    private static final String SPREAD =
            "Error of measurement: limit = t(0.975, degrees of freedom) * s * root(1/m + 1), s the spread between"
                    + " sessions (baseline sessions about their mean, later ones but the latest about their own line), m the"
                    + " sessions behind the baseline; a change that is wavering alone passes it 1 time in 20.";

    private MethodLine() {}

    static List<String> sentences(GoalPart part, TeamReport.Method method) {
        List<String> sentences = new ArrayList<>();
        sentences.add(PERIODS);
        for (SidePart side : part.sides()) {
            sentences.addAll(lines(side.review()));
        }
        if (isSpreadUsed(part)) {
            sentences.add(SPREAD);
        }
        sentences.add(forecast(method));
        sentences.add(judgement(method));
        return sentences;
    }

    /** What holds of several goals alike. */
    static List<String> general(List<GoalPart> parts, TeamReport.Method method) {
        List<String> sentences = new ArrayList<>(List.of(PERIODS, OWN_LINE));
        boolean spread = false;
        for (GoalPart part : parts) {
            spread |= isSpreadUsed(part);
        }
        if (spread) {
            sentences.add(SPREAD);
        }
        sentences.add(forecast(method));
        sentences.add(judgement(method));
        return sentences;
    }

    /** What is to be heeded in the lines of one goal. */
    static List<String> care(GoalPart part) {
        List<String> sentences = new ArrayList<>();
        for (SidePart side : part.sides()) {
            addReasons(side.review(), sentences);
        }
        return sentences;
    }

    private static boolean isSpreadUsed(GoalPart part) {
        for (SidePart side : part.sides()) {
            Optional<MeasurementError.Compared> compared = side.beyondError().compared();
            if (compared.isPresent() && compared.get().degreesOfFreedom().isPresent()) {
                return true;
            }
        }
        return false;
    }

    private static String forecast(TeamReport.Method method) {
        return "Forecast: method " + method.forecast() + ", 80 % range of the line on the due date.";
    }

    private static List<String> lines(SideReview side) {
        String of = of(side);
        int n = side.trend().sessions();
        List<String> sentences = new ArrayList<>();
        if (n > 1) {
            sentences.add("Lines" + of + ": n = " + Counted.of(n, "session")
                    + " with a value, on real days. Own line: ordinary"
                    + " least squares (ols), 95 % interval by Student's t. Robust line: median of the slopes between all"
                    + " pairs (theil-sen), Sen's 95 % interval.");
        }
        addReasons(side, sentences);
        return sentences;
    }

    private static void addReasons(SideReview side, List<String> sentences) {
        for (String reason : side.trend().reasons()) {
            sentences.add("To be read with care" + of(side) + ": " + reason + ".");
        }
    }

    private static String of(SideReview side) {
        return side.side().word().isEmpty() ? "" : " (" + side.side().word() + ")";
    }

    /** The rule of the judgement, with its settings. */
    static String judgement(TeamReport.Method method) {
        Thresholds settings = method.thresholds();
        return "Judgement: on course from a chance of " + percent(settings.onCourse()) + ", off course up to "
                + percent(settings.offCourse()) + ", from at least "
                + Counted.of(settings.fewestPoints(), "session") + " with a value, the last not older than "
                + Counted.of(settings.staleWeeks(), "week") + " outside school breaks. School breaks longer than "
                + Counted.of(settings.longBreakWeeks(), "week") + " stop the forecast's clock.";
    }

    private static String percent(double share) {
        return new BigDecimal(Double.toString(share))
                        .movePointRight(2)
                        .stripTrailingZeros()
                        .toPlainString()
                + " %";
    }
}
