package stridetally.scoring;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import stridetally.measures.Measure;
import stridetally.measures.Sidedness;
import stridetally.model.Goal;
import stridetally.model.GoalSide;
import stridetally.model.Level;
import stridetally.model.Settings;

/** The sentences that every page about a goal must carry, because its own words leave something open. */
final class GoalCautions {
    private GoalCautions() {}

    static List<String> of(
            Goal goal, Measure measure, Optional<LocalDate> reached, List<SideScore> sides, Settings settings) {
        List<String> cautions = new ArrayList<>();
        if (!goal.criterion().written()) {
            cautions.add(reached.map(day -> "Target reached on " + day + ", criterion not written.")
                    .orElse("The criterion is not written, so the goal is never met."));
        }
        if (goal.help().isEmpty()) {
            cautions.add(unsaidHelp(sides, settings));
        }
        if (goal.prompt().isEmpty()) {
            cautions.add("The goal names no prompt: tries with any prompt count.");
        }
        if (measure.sidedness() == Sidedness.REQUIRED && goal.side() == GoalSide.NONE) {
            cautions.add("The measure has sides and the goal names none: no try counts.");
        }
        if (measure.better().isEmpty()) {
            cautions.add("Neither way is better for this measure, so the goal is not judged.");
        }
        return cautions;
    }

    private static String unsaidHelp(List<SideScore> sides, Settings settings) {
        String upTo = settings.help()
                .find(Counting.UNSAID_HELP)
                .map(Level::word)
                .orElse(settings.help().words().get(0));
        int blank = 0;
        for (SideScore side : sides) {
            for (Session session : side.sessions()) {
                blank += session.recorded() - session.helpRecorded();
            }
        }
        return "The goal names no help: tries up to " + upTo + " count, and it cannot be met."
                + (blank > 0 ? " Help was not written for " + blank + " of them." : "");
    }
}
