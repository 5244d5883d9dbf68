package stridetally.plan;

import stridetally.measures.Measure;
import stridetally.model.Goal;
import stridetally.model.Side;

/**
 * One line of a blank log: a goal on one side, with room for its tries.
 *
 * @param tries how many are usually given
 */
public record LogLine(Goal goal, Measure measure, Side side, int tries) {
    /** Whether the goal speaks of prompts, so that the prompt has to be written too. */
    public boolean asksPrompt() {
        return goal.prompt().isPresent();
    }
}
