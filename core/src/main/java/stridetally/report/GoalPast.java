package stridetally.report;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import stridetally.logbook.ReportLine;

/**
 * What a page says of a goal beyond its figures, when asked or when something was told before.
 *
 * @param told the last that was told before this page; empty when nothing was
 * @param tries every try of the goal's student and measure, in the order of the entries; empty when nobody asked for them
 */
public record GoalPast(Optional<Told> told, Optional<List<TrialLine>> tries) {
    /** Nothing was told and nothing asked. */
    public static final GoalPast NONE = new GoalPast(Optional.empty(), Optional.empty());

    public GoalPast {
        tries = tries.isPresent() ? Optional.of(List.copyOf(tries.get())) : tries;
    }

    /**
     * What was told, and what came since.
     *
     * @param triesSince tries of the days up to then that came in, or replaced another one, with a later entry
     */
    public record Told(ReportLine line, int triesSince) {}

    /**
     * One try, for whoever asks where a number comes from.
     *
     * @param value as it was written
     * @param help its word; blank when it was not written
     * @param why why it does not count, or what there is to add
     * @param at where it stood in what was imported
     */
    public record TrialLine(
            LocalDate date,
            String session,
            int number,
            String value,
            String help,
            String prompt,
            String side,
            String place,
            String use,
            boolean counted,
            String why,
            int entry,
            long line,
            String at) {}

    /**
     * What was told last before a page: never the page itself, nor what was told after it, so that an old page comes back
     * as it was.
     *
     * @param lines in the order in which they were told
     * @param own what this page tells
     */
    public static Optional<ReportLine> before(List<ReportLine> lines, ReportLine own) {
        int end = lines.indexOf(own);
        Optional<ReportLine> last = Optional.empty();
        for (ReportLine line : lines.subList(0, end < 0 ? lines.size() : end)) {
            boolean before = !line.asOf().isAfter(own.asOf()) && line.lastEntry() <= own.lastEntry();
            last = before && line.goal().equals(own.goal()) ? Optional.of(line) : last;
        }
        return last;
    }
}
