package stridetally.logbook;

import java.time.LocalDate;
import stridetally.model.GoalId;

/**
 * What was told of a goal.
 *
 * @param value as it was shown, blank when there was none
 * @param lastEntry number of the last entry that was known
 */
public record ReportLine(GoalId goal, String period, LocalDate asOf, String value, String judgement, int lastEntry) {}
