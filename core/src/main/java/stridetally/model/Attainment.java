package stridetally.model;

import stridetally.units.Amount;

/**
 * One written level of a goal: what value, in the measure's unit, reaches it.
 *
 * @param level -2 to 2; 0 is the expected outcome
 */
public record Attainment(GoalId goal, int level, Amount value) {}
