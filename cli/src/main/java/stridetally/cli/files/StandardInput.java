package stridetally.cli.files;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import stridetally.ingest.ByteSource;
import stridetally.problem.OutputRefused;

/** Standard input, held in memory, because a log is looked at before it is read: pipes cannot be read twice. */
public final class StandardInput implements ByteSource {
    private final byte[] bytes;

    /** Reads to the end. */
    public StandardInput(InputStream in) {
        try {
            this.bytes = in.readAllBytes();
        } catch (IOException failure) {
            throw new OutputRefused("standard input could not be read (" + Reason.of(failure) + ")", failure);
        }
    }

    @Override
    public String name() {
        return "standard input";
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
