package stridetally.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.StringJoiner;
import stridetally.model.Remark;
import stridetally.table.Cell;
import stridetally.trend.Point;

/** All goals of a student in one table, a line each, before the sheets of the goals. */
final class GlanceMarkdown {
    private static final List<String> HEADINGS =
            List.of("Goal", "Where it stands", "Baseline", "Latest", "Target", "Due");

    private GlanceMarkdown() {}

    static void write(MarkdownPage page, List<GoalPart> parts) {
        page.heading(2, "The goals at a glance");
        List<List<Cell>> rows = new ArrayList<>();
        for (GoalPart part : parts) {
            rows.add(TeamMarkdown.Cells.of(
                    part.goal().id().text(),
                    standing(part),
                    part.goal().baseline().isPresent()
                            ? part.unit().text(part.goal().baseline().get().value())
                            : "not written",
                    latest(part),
                    part.words().target(),
                    part.words().due()));
        }
        page.table(HEADINGS, rows);
    }

    /** The therapist's decision where one is written. */
    private static String standing(GoalPart part) {
        String computed = Attention.word(part.review().judgement().judgement());
        Optional<String> own = part.remark().flatMap(Remark::judgement).filter(word -> !word.isBlank());
        return own.isPresent() ? own.get() + " (decision of the therapist)" : computed;
    }

    private static String latest(GoalPart part) {
        StringJoiner latest = new StringJoiner("; ");
        for (SidePart side : part.sides()) {
            String word = side.review().side().word();
            Optional<Point> point = side.review().trend().latest();
            latest.add((word.isEmpty() ? "" : word + " ")
                    + (point.isPresent()
                            ? part.unit().text(Measured.of(point.get())) + " on "
                                    + point.get().date()
                            : "no session with a value"));
        }
        return latest.toString();
    }
}
