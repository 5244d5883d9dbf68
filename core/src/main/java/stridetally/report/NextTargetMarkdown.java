package stridetally.report;

import java.util.Comparator;
import stridetally.forecast.CaseloadRates;
import stridetally.forecast.ReachableTarget;
import stridetally.forecast.SchoolRate;
import stridetally.measures.Measure;
import stridetally.model.Direction;
import stridetally.model.Goal;
import stridetally.scoring.HelpCounts;
import stridetally.stats.Estimate;

/** A range for the next target of one side, with what it was reckoned from; or why there is none. */
final class NextTargetMarkdown {
    /** Below each range: what it is not. How it is reckoned is said once. */
    static final String SUGGESTION =
            "The range is a suggestion, no promise and no forecast of this child. The team decides.";

    /** What the range is. */
    static final String RULE = "If change goes on as it"
            + " has, 4 of 5 children with such a record reach its near end and 1 of 5 its far end. The child's own rate and"
            + " that of the other students are weighed together; one year's rate is not taken to hold for the next. Rates are per week of school; long breaks"
            + " stand still. Growth, illness, surgery, a new device or a change of services are not in it. The team decides.";

    private final MarkdownPage page;
    private final YearOfGoal year;
    private final YearOfGoal.YearOfSide side;
    private final ShownUnit unit;

    NextTargetMarkdown(MarkdownPage page, YearOfGoal year, YearOfGoal.YearOfSide side) {
        this.page = page;
        this.year = year;
        this.side = side;
        this.unit = year.part().unit();
    }

    void write() {
        String label = "A reachable range" + PresentMarkdown.of(side, ", ");
        if (!side.next().isEstimated()) {
            page.bullet(label, "none is suggested: " + side.next().reason());
            return;
        }
        ReachableTarget next = side.next().orElseThrow();
        page.bullet(label, range(next) + " by " + next.by() + "; present target: " + present(next));
        page.bullet(
                "From",
                unit.text(next.present()) + ", the mean of the last " + Counted.of(next.presentSessions(), "session")
                        + " with a value" + bounds(next.bounds()) + ", carried on for "
                        + TeamMarkdown.Cells.rounded(next.weeks(), 0)
                        + " weeks of school at " + rate(next.rate()) + " a week" + shrinking());
        page.bullet("The child's own rate", own(next.own()));
        page.bullet("The other students", others(next.others()));
        next.ceiling()
                .ifPresent(ceiling -> page.bullet(
                        "The ceiling is near" + PresentMarkdown.of(side, ", "), CeilingWords.of(ceiling, unit)));
    }

    /** What holds of all sides: what the measure asks for, and less help. */
    static void together(MarkdownPage page, YearOfGoal year, TeamReport.Method method) {
        if (year.sides().stream().anyMatch(side -> side.next().isEstimated())) {
            year.part()
                    .review()
                    .score()
                    .measure()
                    .map(Measure::cautions)
                    .filter(words -> !words.isBlank())
                    .ifPresent(words -> page.bullet("Of this measure", words));
        }
        help(page, year, method);
    }

    /** Less help for the same is a target as well, where most tries need some. */
    private static void help(MarkdownPage page, YearOfGoal year, TeamReport.Method method) {
        HelpCounts now = year.part().help().probeNow();
        now.help().stream()
                .max(Comparator.comparingInt(HelpCounts.AtLevel::tries))
                .map(HelpCounts.AtLevel::level)
                .filter(level -> level.rank() > 0)
                .ifPresent(level -> page.bullet(
                        "Or the same with less help",
                        "most tries in these days had " + level.word() + "; the next word with less is "
                                + method.help().level(level.rank() - 1).word()));
    }

    private String range(ReachableTarget next) {
        String near = unit.rough(next.near());
        String far = unit.rough(next.far());
        return near.equals(far) ? unit.withUnit(near) : near + " to " + unit.withUnit(far);
    }

    private static String bounds(int bounds) {
        return bounds == 0 ? "" : " (" + bounds + " only a bound, taken at its known end)";
    }

    private String shrinking() {
        return better() == Direction.LOWER ? ", as a share of the value, which cannot fall below nothing" : "";
    }

    private Direction better() {
        return year.part()
                .review()
                .score()
                .measure()
                .flatMap(one -> one.better())
                .orElse(Direction.HIGHER);
    }

    private String own(Estimate<SchoolRate> own) {
        return own.value()
                .map(rate -> rate(rate.perWeek()) + " a week, give or take " + unit.rate(rate.error()) + ", from "
                        + Counted.of(rate.sessions(), "session"))
                .orElseGet(() -> "not known: " + own.reason());
    }

    private String others(Estimate<CaseloadRates.Others> others) {
        return others.value()
                .map(rate ->
                        rate(rate.mean()) + " a week, give or take " + unit.rate(rate.spread()) + " from student to"
                                + " student; " + Counted.of(rate.students(), "student") + ": "
                                + rate.kin().words())
                .orElseGet(() -> "not known: " + others.reason());
    }

    private String rate(double perWeek) {
        String number = unit.rate(perWeek);
        return unit.withUnit(new java.math.BigDecimal(number).signum() > 0 ? "+" + number : number);
    }

    private String present(ReachableTarget next) {
        Goal goal = year.goal();
        if (goal.target().isEmpty()) {
            return "not written";
        }
        double target = goal.target().get().value();
        int way = better().sign();
        String where = way * (target - next.near()) < 0
                ? "short of the range"
                : way * (target - next.far()) > 0 ? "beyond the range" : "within the range";
        return unit.text(target) + ", " + where;
    }
}
