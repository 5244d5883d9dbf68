package stridetally.recordings;

import java.util.List;
import java.util.function.Function;
import stridetally.ingest.ByteSource;
import stridetally.ingest.TextSource;
import stridetally.problem.InputRefused;
import stridetally.problem.ProblemCode;
import stridetally.problem.ProblemTally;
import stridetally.problem.RowProblem;
import stridetally.problem.Severity;

/** The recordings of a manifest, one after another; one that cannot be used is told and the others go on. */
public final class ManifestRun {
    /** Takes one recording. */
    public interface Taker {
        /** What a row of the manifest gave. */
        void recorded(ManifestRow row, Recorded recorded);
    }

    private final Function<String, ByteSource> files;
    private final ProblemTally problems = new ProblemTally();
    private int refused;

    /** {@code files} opens a path as the manifest writes it. */
    public ManifestRun(Function<String, ByteSource> files) {
        this.files = files;
    }

    /** Reads every recording; they are never in memory together. */
    public void read(TextSource manifest, Taker taker) {
        List<ManifestRow> rows = Manifest.read(manifest, problems);
        for (ManifestRow row : rows) {
            try {
                Recorded recorded = Recordings.read(files.apply(row.file()), row.kind(), row.how(), problems);
                refused += recorded.refused();
                taker.recorded(row, recorded);
            } catch (InputRefused unusable) {
                problems.add(new RowProblem(
                        ProblemCode.RECORDING_REFUSED, row.at(), "", "", String.valueOf(unusable.getMessage())));
                refused++;
            }
        }
    }

    /** What was told of all of them. */
    public ProblemTally problems() {
        return problems;
    }

    /** Whether anything was left out. */
    public boolean leftOut() {
        return refused > 0 || !problems.sentences(Severity.SET_ASIDE).isEmpty();
    }
}
