package stridetally.ingest;

import java.io.BufferedInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.PushbackInputStream;
import java.io.Reader;
import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.Charset;
import java.nio.charset.CharsetDecoder;
import java.nio.charset.CoderResult;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.util.Optional;
import stridetally.problem.InputRefused;

/**
 * An input as text. UTF-16 by its mark; else UTF-8, strictly; else windows-1252, and told. Never a replacement character
 * in place of what was written.
 *
 * @param charset how the bytes are read
 * @param note what the person should know of the choice; blank when there is nothing to say
 */
public record TextSource(ByteSource bytes, Charset charset, String note) {
    private static final int CHUNK = 1 << 16;
    private static final Charset WESTERN = Charset.forName("windows-1252");

    /** The name of the sheet, when it is one of a workbook. */
    public Optional<String> sheet() {
        return SheetSource.sheetOf(bytes.name());
    }

    /** Looks at every byte once. Refuses what is empty or no text, with a sentence that says what it seems to be. */
    public static TextSource of(ByteSource bytes) {
        try (InputStream in = bytes.open()) {
            byte[] start = in.readNBytes(CHUNK);
            if (start.length == 0) {
                throw new InputRefused(bytes.name() + ": the file is empty; expected a heading row and rows below it");
            }
            refuseBinary(bytes.name(), start);
            Optional<Charset> marked = markedCharset(start);
            if (marked.isPresent()) {
                return new TextSource(bytes, marked.get(), "");
            }
            if (validUtf8(bytes, start, in)) {
                return new TextSource(bytes, StandardCharsets.UTF_8, "");
            }
            return new TextSource(
                    bytes,
                    WESTERN,
                    bytes.name()
                            + ": not UTF-8; read as windows-1252. Look at one name or note with an accent to be sure");
        } catch (IOException failed) {
            throw new InputRefused(bytes.name() + ": could not be read (" + failed.getMessage() + ")", failed);
        }
    }

    /** The text from its first character on, past any byte-order mark. The caller closes it. */
    public Reader open() throws IOException {
        PushbackInputStream in = new PushbackInputStream(bytes.open(), 3);
        byte[] start = in.readNBytes(3);
        int mark = markLength(start);
        in.unread(start, mark, start.length - mark);
        CharsetDecoder strict = charset.newDecoder()
                .onMalformedInput(CodingErrorAction.REPORT)
                .onUnmappableCharacter(CodingErrorAction.REPORT);
        return new InputStreamReader(in, strict);
    }

    private static void refuseBinary(String name, byte[] start) {
        if (start.length >= 4 && start[0] == 'P' && start[1] == 'K' && start[2] == 3 && start[3] == 4) {
            throw new InputRefused(name
                    + ": this is a workbook or an archive where a table of text was expected; save the sheet as CSV");
        }
        if (start.length >= 4 && (start[0] & 0xff) == 0xd0 && (start[1] & 0xff) == 0xcf) {
            throw new InputRefused(
                    name + ": this is a workbook of the old .xls kind, or one behind a password; open it,"
                            + " save it without a password as .xlsx or CSV, and import that");
        }
    }

    private static Optional<Charset> markedCharset(byte[] start) {
        if (start.length >= 2 && (start[0] & 0xff) == 0xff && (start[1] & 0xff) == 0xfe) {
            return Optional.of(StandardCharsets.UTF_16LE);
        }
        if (start.length >= 2 && (start[0] & 0xff) == 0xfe && (start[1] & 0xff) == 0xff) {
            return Optional.of(StandardCharsets.UTF_16BE);
        }
        return Optional.empty();
    }

    private static int markLength(byte[] start) {
        if (start.length >= 3 && (start[0] & 0xff) == 0xef && (start[1] & 0xff) == 0xbb && (start[2] & 0xff) == 0xbf) {
            return 3;
        }
        return markedCharset(start).isPresent() ? 2 : 0;
    }

    private static boolean validUtf8(ByteSource source, byte[] start, InputStream rest) throws IOException {
        CharsetDecoder decoder = StandardCharsets.UTF_8
                .newDecoder()
                .onMalformedInput(CodingErrorAction.REPORT)
                .onUnmappableCharacter(CodingErrorAction.REPORT);
        ByteBuffer bytes = ByteBuffer.allocate(CHUNK + 8);
        CharBuffer thrownAway = CharBuffer.allocate(CHUNK + 8);
        byte[] chunk = start;
        long seen = 0;
        while (chunk.length > 0) {
            refuseNul(source, chunk, seen);
            seen += chunk.length;
            bytes.put(chunk).flip();
            thrownAway.clear();
            CoderResult result = decoder.decode(bytes, thrownAway, false);
            if (result.isError()) {
                return false;
            }
            bytes.compact();
            chunk = rest.readNBytes(CHUNK);
        }
        bytes.flip();
        thrownAway.clear();
        return !decoder.decode(bytes, thrownAway, true).isError();
    }

    private static void refuseNul(ByteSource source, byte[] chunk, long before) throws IOException {
        for (int i = 0; i < chunk.length; i++) {
            if (chunk[i] == 0) {
                throw new InputRefused(
                        source.name() + ":" + line(source, before + i) + ": not text (a NUL byte at position "
                                + (before + i + 1) + " of the file); save it as CSV in UTF-8 and import that");
            }
        }
    }

    /** The line on which a byte lies; asked for at most once, so the bytes before it are read again. */
    private static long line(ByteSource source, long position) throws IOException {
        long line = 1;
        boolean afterReturn = false;
        try (InputStream in = new BufferedInputStream(source.open(), CHUNK)) {
            for (long place = 0; place < position; place++) {
                int next = in.read();
                line += next == '\r' || (next == '\n' && !afterReturn) ? 1 : 0;
                afterReturn = next == '\r';
            }
        }
        return line;
    }
}
