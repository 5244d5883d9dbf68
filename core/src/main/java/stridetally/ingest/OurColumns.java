package stridetally.ingest;

import java.util.Set;

/** Columns of our own output that an import looks past. */
final class OurColumns {
    private static final Set<String> EXTRAS =
            Set.of("goal", "counted", "meets", "why", "entry", "line", "at", "as written");

    private OurColumns() {}

    static boolean isExtra(String heading) {
        return EXTRAS.contains(TrialColumn.fold(heading));
    }
}
