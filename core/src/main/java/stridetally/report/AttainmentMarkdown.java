package stridetally.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import stridetally.scoring.AttainmentLevels;
import stridetally.scoring.AttainmentLevels.Attained;
import stridetally.scoring.AttainmentScore;
import stridetally.scoring.AttainmentScore.LeftOut;
import stridetally.scoring.AttainmentScore.Scored;
import stridetally.table.Cell;
import stridetally.units.Amount;

/** Attainment of a student's goals on the team's page; nothing where nobody wrote levels. */
final class AttainmentMarkdown {
    private AttainmentMarkdown() {}

    static void write(MarkdownPage page, StudentAttainment attainment) {
        if (!attainment.isWritten()) {
            return;
        }
        page.heading(2, "Attainment of the goals together");
        List<List<Cell>> rows = new ArrayList<>();
        for (GoalAttainment goal : attainment.goals()) {
            rows.add(TeamMarkdown.Cells.of(
                    goal.rated().goal().text(),
                    level(goal.rated().attained()),
                    goal.rated().weight().map(Amount::text).orElse("not written"),
                    goal.isDerived() ? "from baseline and target" : goal.isWritten() ? "attainment.csv" : "none"));
        }
        page.table(List.of("Goal", "Level", "Weight", "Levels from"), rows);
        page.bullet("T, all goals weighing the same", score(attainment.equal()));
        Optional<AttainmentScore> weighted = attainment.weighted();
        if (weighted.isPresent()) {
            page.bullet("T, by the written weights", score(weighted.get()));
        }
        for (LeftOut one : attainment.equal().leftOut()) {
            page.bullet("Left out", one.goal().text() + ": " + one.reason());
        }
        page.paragraph(
                "Level 0 is what was expected, -2 is far below it and +2 far above it. T is 50 when all goals come out"
                        + " as expected; it compares this student with what the team expected and with no other child.");
        if (!attainment.derived().isEmpty()) {
            page.paragraph(AttainmentLevels.RULE + ".");
        }
    }

    private static String level(Attained attained) {
        return attained instanceof Attained.AtLevel at ? (at.level() > 0 ? "+" : "") + at.level() : "not rated";
    }

    private static String score(AttainmentScore score) {
        return score instanceof Scored scored
                ? TeamMarkdown.Cells.rounded(scored.t(), 1) + " over " + Counted.of(scored.goals(), "goal")
                : "not known: " + ((AttainmentScore.NotScored) score).reason();
    }
}
