package stridetally.plan;

import java.util.List;
import java.util.Optional;

/** The rungs in their order, from the easiest on. */
public record Ladder(List<Rung> rungs) {
    public Ladder {
        rungs = List.copyOf(rungs);
    }

    /** The rung of an id. */
    public Optional<Rung> find(String id) {
        return rungs.stream().filter(one -> one.id().equals(id)).findFirst();
    }
}
