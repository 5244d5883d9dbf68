package stridetally.scoring;

import java.util.List;
import java.util.Optional;
import stridetally.model.MeasureId;

/** What is logged of a walk and belongs together by the trial number. */
enum WalkPart {
    DISTANCE("walk-distance"),
    TIME("walk-time"),
    STEPS("walk-steps");

    private static final List<WalkPart> ALL = List.of(values());

    private final String id;

    WalkPart(String id) {
        this.id = id;
    }

    MeasureId id() {
        return new MeasureId(id);
    }

    static Optional<WalkPart> of(MeasureId id) {
        for (WalkPart one : ALL) {
            if (one.id.equals(id.text())) {
                return Optional.of(one);
            }
        }
        return Optional.empty();
    }
}
