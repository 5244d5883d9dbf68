package stridetally.scoring;

import java.util.Optional;
import stridetally.model.MeasureId;

/** What is logged of a walk and belongs together by the trial number. */
enum WalkPart {
    DISTANCE("walk-distance"),
    TIME("walk-time"),
    STEPS("walk-steps");

    private final MeasureId id;

    WalkPart(String id) {
        this.id = new MeasureId(id);
    }

    MeasureId id() {
        return id;
    }

    static Optional<WalkPart> of(MeasureId id) {
        for (WalkPart one : values()) {
            if (one.id.equals(id)) {
                return Optional.of(one);
            }
        }
        return Optional.empty();
    }
}
