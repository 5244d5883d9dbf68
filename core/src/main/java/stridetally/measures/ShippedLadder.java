package stridetally.measures;

import java.util.List;
import stridetally.table.Cells;

/** The rows of the ladder of practice tasks that comes with the program; what they mean is the business of {@code plan}. */
public final class ShippedLadder {
    private ShippedLadder() {}

    /** Its rows, in their order. */
    public static List<Cells> rows() {
        return CatalogueResource.rows("ladder.csv");
    }
}
