package stridetally.forecast;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.Optional;
import stridetally.trend.Point;
import stridetally.units.Amount;

/** How far along the way, and how much of the time is gone: all that a measure taken a few times a year allows. */
final class Progress {

    private Progress() {}

    /** Such as {@code gained 2 of 6 with 40 % of the time gone}. */
    static String sentence(ForecastCase goal) {
        String why = "measured a few times a year, so no chance is computed";
        Optional<Point> latest = goal.series().latest();
        Optional<Long> way = way(goal);
        String time = timeGone(goal);
        if (latest.isEmpty()) {
            return "not measured since the baseline" + time + "; " + why;
        }
        if (way.isEmpty()) {
            return why;
        }
        double gain = gain(goal, latest.get());
        String whole = text(Amount.toDouble(way.get()), goal.decimals());
        String gained = gain < 0
                ? "lost " + text(-gain, goal.decimals()) + " where " + whole + " is to be gained"
                : "gained " + text(gain, goal.decimals()) + " of " + whole;
        return gained + time + "; " + why;
    }

    private static Optional<Long> way(ForecastCase goal) {
        if (goal.better().isEmpty()
                || goal.baseline().isEmpty()
                || goal.target().isEmpty()) {
            return Optional.empty();
        }
        long difference = Math.subtractExact(
                goal.target().get().billionths(), goal.baseline().get().billionths());
        return Optional.of(difference * goal.better().get().sign()).filter(way -> way > 0);
    }

    private static double gain(ForecastCase goal, Point latest) {
        return (latest.value() - goal.baseline().orElseThrow().value())
                * goal.better().orElseThrow().sign();
    }

    private static String timeGone(ForecastCase goal) {
        if (goal.baselineDate().isEmpty() || goal.due().isEmpty()) {
            return "";
        }
        LocalDate start = goal.baselineDate().get();
        long all = ChronoUnit.DAYS.between(start, goal.due().get());
        long gone = ChronoUnit.DAYS.between(start, goal.asOf());
        if (all <= 0 || gone >= all) {
            return " with all of the time gone";
        }
        return " with " + Math.round(Math.max(0, gone) * 100.0 / all) + " % of the time gone";
    }

    private static String text(double amount, int decimals) {
        BigDecimal rounded = new BigDecimal(Double.toString(amount)).setScale(decimals, RoundingMode.HALF_UP);
        BigDecimal plain = rounded.stripTrailingZeros();
        return (plain.scale() < 0 ? plain.setScale(0) : plain).toPlainString();
    }
}
