package stridetally.scoring;

import java.util.List;
import java.util.OptionalInt;
import stridetally.model.Level;

/**
 * Recorded tries at each level of help and of prompt: counts of words, never averaged.
 *
 * @param help levels that occur, least first
 * @param helpNotWritten tries whose help was not written
 * @param prompt levels that occur, least first
 * @param promptNotWritten tries whose prompt was not written
 * @param tries all recorded tries
 */
public record HelpCounts(
        List<AtLevel> help, int helpNotWritten, List<AtLevel> prompt, int promptNotWritten, int tries) {

    public HelpCounts {
        help = List.copyOf(help);
        prompt = List.copyOf(prompt);
    }

    /** So many tries at one level. */
    public record AtLevel(Level level, int tries) {}

    /** Tries at a level of help or at less; empty when no try has its help written. */
    public OptionalInt helpUpTo(Level level) {
        return help.isEmpty()
                ? OptionalInt.empty()
                : OptionalInt.of(help.stream()
                        .filter(at -> at.level().rank() <= level.rank())
                        .mapToInt(AtLevel::tries)
                        .sum());
    }
}
