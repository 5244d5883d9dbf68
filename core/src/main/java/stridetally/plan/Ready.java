package stridetally.plan;

import java.util.List;
import java.util.stream.Collectors;
import stridetally.measures.Measure;
import stridetally.model.Direction;
import stridetally.model.Level;
import stridetally.units.Amount;

/**
 * When a child is ready for a rung: one of the bars is met, with no more help than this, in the last so many sessions in which
 * that measure was probed at school or in the clinic.
 *
 * @param bars one is enough
 * @param sessions at least 2
 */
public record Ready(List<Bar> bars, Level help, int sessions) {
    /** Fewer sessions are chance. */
    public static final int LEAST_SESSIONS = 2;

    /** A value of a measure to be reached; which way is better is the measure's. */
    public record Bar(Measure measure, Direction better, Amount value) {
        /** As the ladder file writes it. */
        public String text() {
            return measure.id().text() + (better == Direction.HIGHER ? ">=" : "<=") + value.text();
        }
    }

    public Ready {
        bars = List.copyOf(bars);
        if (bars.isEmpty() || sessions < LEAST_SESSIONS) {
            throw new IllegalArgumentException("ready after " + sessions + " sessions of " + bars.size() + " bars");
        }
    }

    /** For a person. */
    public String text() {
        return bars.stream().map(Bar::text).collect(Collectors.joining(" or ")) + ", " + help.word() + " or less, in "
                + sessions + " sessions running";
    }
}
