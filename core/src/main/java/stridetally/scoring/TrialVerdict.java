package stridetally.scoring;

/**
 * What one trial is to a goal.
 *
 * @param why why it does not count, or why it is not known whether it meets; blank when there is nothing to add
 */
public record TrialVerdict(boolean counted, Answer.Meets meets, String why) {}
