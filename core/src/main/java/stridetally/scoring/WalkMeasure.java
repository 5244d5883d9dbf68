package stridetally.scoring;

import java.util.List;
import java.util.Optional;
import stridetally.measures.GaitFormulas;
import stridetally.model.MeasureId;

/** A measure that follows from the parts of one walk, and the parts that it needs. */
enum WalkMeasure {
    SPEED("walk-speed", WalkPart.DISTANCE, WalkPart.TIME) {
        @Override
        double of(double metres, double seconds, double steps) {
            return GaitFormulas.speed(metres, seconds);
        }
    },
    CADENCE("cadence", WalkPart.TIME, WalkPart.STEPS) {
        @Override
        double of(double metres, double seconds, double steps) {
            return GaitFormulas.cadence(steps, seconds);
        }
    },
    STEP_LENGTH("step-length", WalkPart.DISTANCE, WalkPart.STEPS) {
        @Override
        double of(double metres, double seconds, double steps) {
            return GaitFormulas.stepLength(metres, steps);
        }
    },
    WALK_RATIO("walk-ratio", WalkPart.DISTANCE, WalkPart.TIME, WalkPart.STEPS) {
        @Override
        double of(double metres, double seconds, double steps) {
            return GaitFormulas.walkRatio(GaitFormulas.stepLength(metres, steps), GaitFormulas.cadence(steps, seconds));
        }
    },
    /** Its speed; the leg length comes from elsewhere. */
    SCALED_SPEED("scaled-speed", WalkPart.DISTANCE, WalkPart.TIME) {
        @Override
        double of(double metres, double seconds, double steps) {
            return GaitFormulas.speed(metres, seconds);
        }
    };

    private final String id;

    @SuppressWarnings("ImmutableEnumChecker") // List.of is immutable
    private final List<WalkPart> needs;

    WalkMeasure(String id, WalkPart... needs) {
        this.id = id;
        this.needs = List.of(needs);
    }

    MeasureId id() {
        return new MeasureId(id);
    }

    List<WalkPart> needs() {
        return needs;
    }

    /** The figure; parts that it does not need are not looked at. */
    abstract double of(double metres, double seconds, double steps);

    static Optional<WalkMeasure> of(MeasureId id) {
        for (WalkMeasure one : values()) {
            if (one.id().equals(id)) {
                return Optional.of(one);
            }
        }
        return Optional.empty();
    }
}
