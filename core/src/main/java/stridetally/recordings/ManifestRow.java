package stridetally.recordings;

import java.util.List;
import java.util.Map;
import stridetally.problem.At;

/**
 * One recording of a manifest.
 *
 * @param file its path as written, from the folder of the manifest
 * @param cells what goes with every measure of it, by the heading of a trial log
 */
public record ManifestRow(At at, String file, RecordingKind kind, Recordings.How how, Map<String, String> cells) {
    /** The columns that go with every measure. */
    static final List<String> CARRIED = List.of(
            "source", "student", "date", "session", "trial", "help", "prompt", "protocol", "use", "place", "observer");

    public ManifestRow {
        cells = Map.copyOf(cells);
    }

    /** A cell; blank when the manifest has no such column. */
    public String cell(String heading) {
        return cells.getOrDefault(heading, "");
    }
}
