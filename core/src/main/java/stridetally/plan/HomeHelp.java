package stridetally.plan;

import java.util.Optional;
import stridetally.model.Level;

/** How a family may help: never by lifting or carrying weight, which has to be taught. Least help last. */
public enum HomeHelp {
    BOTH_HANDS,
    ONE_HAND,
    LIGHT_TOUCH,
    /** No holding; an adult is always within reach, whatever less was approved. */
    WITHIN_REACH;

    /** The way of helping at home that an approved level stands for; empty when it is none for a family. */
    public static Optional<HomeHelp> of(Level level) {
        return switch (level.word()) {
            case "hand-held two" -> Optional.of(BOTH_HANDS);
            case "hand-held one" -> Optional.of(ONE_HAND);
            case "contact guard" -> Optional.of(LIGHT_TOUCH);
            case "independent", "modified independent", "supervision", "stand-by" -> Optional.of(WITHIN_REACH);
            default -> Optional.empty();
        };
    }
}
