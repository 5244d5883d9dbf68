package stridetally.table;

import java.io.IOException;
import java.io.Reader;
import java.nio.charset.CharacterCodingException;
import java.util.Arrays;
import stridetally.problem.InputRefused;
import stridetally.problem.OutputRefused;

/**
 * A character stream as seen from the record at hand, which is the only part of it that is held. In the hot loop of every
 * reading: an offset is looked up for each character.
 */
final class CharWindow {
    static final int END = -1;

    private final Reader reader;
    private final String file;
    private static final int USUAL = 1 << 15;

    private char[] buffer;
    private long dropped;
    private int limit;
    private boolean ended;
    private int start;
    private long line;

    /** Over a stream; {@code file} is the name for messages. */
    CharWindow(Reader reader, String file) {
        this(reader, file, USUAL);
    }

    /** Over a stream of which so many characters are expected. */
    CharWindow(Reader reader, String file, int size) {
        this.reader = reader;
        this.file = file;
        this.buffer = new char[Math.min(USUAL, size)];
    }

    /** Characters of the stream before a place. */
    long before(int place) {
        return dropped + place;
    }

    /** A record begins here; {@code line} is for messages. What stood before may be forgotten. */
    void begin(int place, long onLine) {
        start = place;
        line = onLine;
    }

    /** The place where the record begins; it moves when more is read. */
    int start() {
        return start;
    }

    /** The character at an offset within the record; {@link #END} at the end of the stream. */
    int charAt(int offset) {
        return start + offset < limit || fill(offset) ? buffer[start + offset] : END;
    }

    /** Whether all that was read ends right before an offset, so that what is not wanted can be dropped. */
    boolean endsBefore(int offset) {
        return start + offset == limit;
    }

    /** The first characters of the record. */
    String text(int length) {
        return new String(buffer, start, length);
    }

    char[] buffer() {
        return buffer;
    }

    /** Reads until the offset is in the buffer; moves the record to the front of it. False at the end of the stream. */
    private boolean fill(int offset) {
        while (!ended && start + offset >= limit) {
            System.arraycopy(buffer, start, buffer, 0, limit - start);
            limit -= start;
            dropped += start;
            start = 0;
            if (limit == buffer.length) {
                buffer = Arrays.copyOf(buffer, buffer.length * 2);
            }
            readMore();
        }
        return start + offset < limit;
    }

    private void readMore() {
        try {
            int count = reader.read(buffer, limit, buffer.length - limit);
            if (count < 0) {
                ended = true;
                return;
            }
            for (int place = limit; place < limit + count; place++) {
                if (buffer[place] == 0) {
                    throw new InputRefused(file + " is not text: it holds a NUL character at or after line "
                            + Math.max(1, line)
                            + "; save it as CSV in UTF-8 and read that");
                }
            }
            limit += count;
        } catch (IOException unreadable) {
            throw refusal(unreadable, file, line);
        }
    }

    /** What a failing stream means to the person: a wrong encoding is theirs to mend, the rest is the machine's. */
    static RuntimeException refusal(IOException cause, String file, long line) {
        if (cause instanceof CharacterCodingException) {
            return new InputRefused(
                    file + " holds bytes that are no letters in its encoding, at or after line " + Math.max(1, line)
                            + "; save it as CSV in UTF-8 and read that",
                    cause);
        }
        return new OutputRefused(file + " cannot be read to its end; check the disk and try again", cause);
    }
}
