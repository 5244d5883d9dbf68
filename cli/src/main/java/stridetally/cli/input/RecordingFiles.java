package stridetally.cli.input;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import stridetally.cli.files.FileSource;
import stridetally.ingest.ByteSource;
import stridetally.problem.InputRefused;
import stridetally.recordings.ManifestRun;
import stridetally.recordings.RecordingKind;

/** Files of recordings, as a person or a manifest names them. */
public final class RecordingFiles {
    /** The heading row of a recording is shorter. */
    private static final int START = 512;

    private RecordingFiles() {}

    /** What a file is by its first line; empty when that is none of ours. */
    public static Optional<RecordingKind> guess(ByteSource source) {
        try (InputStream in = source.open()) {
            String start = new String(in.readNBytes(START), StandardCharsets.UTF_8);
            int end = start.indexOf('\n');
            String line = end < 0 ? start : start.substring(0, end);
            return RecordingKind.guess(headings(line));
        } catch (IOException failed) {
            throw new InputRefused(source.name() + ": could not be read; check the disk and try again", failed);
        }
    }

    /** The recordings of a manifest, whose paths count from its folder. */
    public static ManifestRun ofManifest(Path manifest) {
        return new ManifestRun(file -> new FileSource(manifest.resolveSibling(file)));
    }

    private static List<String> headings(String line) {
        String plain =
                line.replace("\ufeff", "").replace("\"", "").replace('\t', ',').replace(';', ',');
        return Arrays.asList(plain.split(",", -1));
    }
}
