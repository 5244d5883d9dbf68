package stridetally.cli.input;

import java.io.ByteArrayInputStream;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import stridetally.ingest.ByteSource;
import stridetally.ingest.TextSource;
import stridetally.measures.Catalogue;
import stridetally.problem.ProblemTally;
import stridetally.recordings.ManifestRun;
import stridetally.recordings.RecordingTrials;
import stridetally.table.CsvTable;

/**
 * The recordings of a manifest as a log of trials, to be imported as any other: the measures are kept, the samples are not.
 *
 * @param leftOut whether a recording or a part of one could not be used
 */
public record ManifestMeasures(TextSource log, ProblemTally problems, boolean leftOut) {

    /** Reads every recording of a manifest. */
    public static ManifestMeasures of(Path manifest, TextSource text, Catalogue catalogue) {
        StringBuilder log = new StringBuilder();
        CsvTable table = new CsvTable(log, RecordingTrials.HEADINGS, CsvTable.Guard.OFF);
        RecordingTrials trials = new RecordingTrials(table, catalogue::find);
        ManifestRun run = RecordingFiles.ofManifest(manifest);
        run.read(text, trials::add);
        table.finish();
        byte[] bytes = log.toString().getBytes(StandardCharsets.UTF_8);
        return new ManifestMeasures(
                TextSource.of(new Measures(text.bytes().name(), bytes)), run.problems(), run.leftOut());
    }

    /** The log in memory, under a name that says where it comes from. */
    private static final class Measures implements ByteSource {
        private final String manifest;
        private final byte[] bytes;

        Measures(String manifest, byte[] bytes) {
            this.manifest = manifest;
            this.bytes = bytes;
        }

        @Override
        public String name() {
            return manifest + " (measures)";
        }

        @Override
        public long size() {
            return bytes.length;
        }

        @Override
        public InputStream open() {
            return new ByteArrayInputStream(bytes);
        }
    }
}
