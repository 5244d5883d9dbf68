package stridetally.ingest;

import java.io.IOException;
import java.io.InputStream;

/**
 * Bytes of an input, wherever they lie. Opening twice gives the same bytes, so a first look may prove what a second
 * reading needs to know. Failures are told as sentences by the implementation.
 */
public interface ByteSource {

    /** What to call it in messages: the file's name as the person gave it, or {@code standard input}. */
    String name();

    /** The last part of its name, for what is kept: where a file lay on one machine says nothing on another. */
    default String shortName() {
        return name().substring(Math.max(name().lastIndexOf('/'), name().lastIndexOf('\\')) + 1);
    }

    /** Its size in bytes; -1 when it is not known before the end. */
    long size();

    /** About how many bytes of text it holds; for plans only. */
    default long textSize() {
        return size();
    }

    /** Whether bytes in the middle can be had without reading all before them; if so, {@link #size} is known. */
    default boolean cheapFrom() {
        return true;
    }

    /** The bytes from the start. The caller closes the stream. */
    InputStream open() throws IOException;
}
