package stridetally.cli.files;

import java.io.BufferedWriter;
import java.io.IOException;
import java.io.OutputStream;
import java.io.OutputStreamWriter;
import java.io.Writer;
import java.nio.charset.StandardCharsets;

/** What is to be written, as bytes. The writer of an output decides where they go. */
@FunctionalInterface
public interface Content {

    /** Writes everything; need not flush and must not close. */
    void writeTo(OutputStream out) throws IOException;

    /** Text, as UTF-8 without a byte-order mark. */
    static Content text(Text text) {
        return out -> {
            Writer writer = new BufferedWriter(new OutputStreamWriter(out, StandardCharsets.UTF_8));
            text.writeTo(writer);
            writer.flush();
        };
    }

    /** What is to be written, as characters. */
    @FunctionalInterface
    interface Text {
        /** Writes everything. */
        void writeTo(Appendable out) throws IOException;
    }
}
