package stridetally.ingest;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.Reader;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.util.function.BooleanSupplier;
import stridetally.problem.InputRefused;
import stridetally.table.TableReader;

/**
 * One part of a log: its plain records by {@link PlainRows}, every other one through {@link TableReader} by {@link OddRows}.
 * Lines are counted from the part's own first record until {@link BulkLog} knows where it stands. A thread's own.
 */
final class BulkPart {
    /** Records between two looks at whether there is room for more. */
    private static final int LOOK_AGAIN = 1 << 12;

    /**
     * So many records are framed where they lie when the bytes before them would have to be read again for each: a packed
     * file with more broken quotes is for the usual reader.
     */
    private static final int MOST_FRAMED = 8;

    private final BulkForm form;
    private final long start;
    private final long stop;
    private final OddRows odd;
    private final PlainRows plain;
    private PlainRows.Taken taken = new PlainRows.Taken(0, 0, false);
    private long end;
    private long lines;
    private int framed;
    private boolean proven = true;

    /** From a record's first byte on, through every record that begins before {@code stop}. */
    BulkPart(BulkForm form, long start, long stop, OddRows odd, PlainRows plain) {
        this.form = form;
        this.start = start;
        this.stop = stop;
        this.odd = odd;
        this.plain = plain;
        this.end = start;
    }

    /** Reads it to its end, or to the first thing that only the other reader may judge for the whole file. */
    BulkPart read(BulkWatch watch, BooleanSupplier room) {
        try (ByteRecords records = form.records(start, form.columns())) {
            long told = start;
            int left = LOOK_AGAIN;
            while (proven && records.nextPosition() < stop) {
                if (!plain.takeExpected(records)) {
                    ByteRecords.Found found = records.next();
                    if (found == ByteRecords.Found.END) {
                        break;
                    }
                    take(found, records);
                }
                if (--left == 0) {
                    left = LOOK_AGAIN;
                    watch.read(records.nextPosition() - told);
                    told = records.nextPosition();
                    if (!room.getAsBoolean()) {
                        break;
                    }
                }
            }
            end = records.nextPosition();
            watch.read(end - told);
            lines = records.nextLine() - 1;
        } catch (IOException | UncheckedIOException | InputRefused toBeToldByTheOther) {
            proven = false;
        }
        taken = plain.taken();
        return this;
    }

    /** False: the whole file must be read by the other reader. */
    boolean proven() {
        return proven && odd.proven();
    }

    BulkForm form() {
        return form;
    }

    /** Where it begins in the file. */
    long start() {
        return start;
    }

    /** Where its last record ends in the file. */
    long end() {
        return end;
    }

    /** How many lines it has. */
    long lines() {
        return lines;
    }

    OddRows odd() {
        return odd;
    }

    /** What was plain of it. */
    PlainRows.Taken taken() {
        return taken;
    }

    /** Takes a record that was cut. */
    void take(ByteRecords.Found found, ByteRecords records) throws IOException {
        if (found == ByteRecords.Found.NO_TEXT) {
            proven = false;
        } else if (found == ByteRecords.Found.ODD || !plain.take(records)) {
            byTheOther(found, records);
        }
    }

    private void byTheOther(ByteRecords.Found found, ByteRecords records) throws IOException {
        odd.watch(found == ByteRecords.Found.PLAIN ? plain : null, records);
        if (found == ByteRecords.Found.ODD && !records.endIsSure()) {
            framed(records);
            return;
        }
        String text = records.text();
        TableReader table = TableReader.within(
                new StringReader(text), form.name(), form.dialect(), records.line(), text.length() + 2);
        // The two framings agree, or the whole file is read by the one that knows.
        proven = table.one(odd) == text.length() && table.nextLine() == records.nextLine() && odd.proven();
    }

    /** A record whose quotes do not work out, or a very long one: framed where it lies in the file. */
    private void framed(ByteRecords records) throws IOException {
        if (!form.bytes().cheapFrom() && ++framed > MOST_FRAMED) {
            proven = false;
            return;
        }
        long line = records.line();
        try (Reader reader = new InputStreamReader(
                form.openAt(records.position()),
                StandardCharsets.UTF_8
                        .newDecoder()
                        .onMalformedInput(CodingErrorAction.REPORT)
                        .onUnmappableCharacter(CodingErrorAction.REPORT))) {
            TableReader table = TableReader.within(reader, form.name(), form.dialect(), line, ByteWindow.SIZE);
            long characters = table.one(odd);
            records.goOn(bytes(records.position(), characters), table.nextLine() - line);
            proven = odd.proven();
        } catch (InputRefused noText) {
            proven = false;
        }
    }

    /** How many bytes so many characters take up; they are valid UTF-8, since they were decoded. */
    private long bytes(long position, long characters) throws IOException {
        long bytes = 0;
        long left = characters;
        byte[] chunk = new byte[1 << 13];
        try (InputStream in = form.openAt(position)) {
            while (true) {
                int count = in.read(chunk);
                for (int i = 0; i < count; i++) {
                    boolean begins = (chunk[i] & 0xc0) != 0x80;
                    if (begins && left <= 0) {
                        return bytes;
                    }
                    left -= begins ? (chunk[i] & 0xf8) == 0xf0 ? 2 : 1 : 0;
                    bytes++;
                }
                if (count < 0) {
                    return bytes;
                }
            }
        }
    }
}
