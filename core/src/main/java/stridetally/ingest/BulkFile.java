package stridetally.ingest;

import java.io.IOException;
import java.io.InputStream;
import java.time.LocalDate;
import java.util.Optional;
import stridetally.problem.InputRefused;

/**
 * One log among those that are read together.
 *
 * @param form how its plain rows lie; empty when the usual reader must read it
 * @param data where the rows begin behind the headings
 */
record BulkFile(ByteSource bytes, LogRules rules, Optional<BulkForm> form, long data) {
    private static final int BYTE_ORDER_MARK = 3;
    private static final int LOOKED_AT = 1 << 16;
    private static final int NONE = -1;

    /** Looks at its start. Whatever is wrong with it is told by the usual reader. */
    static BulkFile of(ByteSource bytes, LogRules rules, LocalDate asOf) {
        BulkFile usual = new BulkFile(bytes, rules, Optional.empty(), 0);
        try {
            Optional<BulkForm> form = BulkForm.of(bytes, rules, asOf);
            long data = form.isPresent() ? dataStart(form.get()) : -1;
            return data < 0 ? usual : new BulkFile(bytes, rules, form, data);
        } catch (InputRefused toBeToldByTheOther) {
            return usual;
        } catch (IOException failed) {
            throw TrialLog.unreadable(bytes.name(), failed);
        }
    }

    /** The same file for the usual reader. */
    BulkFile byTheUsual() {
        return new BulkFile(bytes, rules, Optional.empty(), 0);
    }

    /** Whether it can be read from the middle, so that several threads may share it. */
    boolean cuts() {
        return form.isPresent() && bytes.cheapFrom();
    }

    /** Behind the heading row, which must be plain; below 0 when it is not. */
    private static long dataStart(BulkForm form) throws IOException {
        long mark;
        try (InputStream in = form.openAt(0)) {
            byte[] start = in.readNBytes(BYTE_ORDER_MARK);
            boolean marked = start.length == BYTE_ORDER_MARK
                    && (start[0] & 0xff) == 0xef
                    && (start[1] & 0xff) == 0xbb
                    && (start[2] & 0xff) == 0xbf;
            mark = marked ? BYTE_ORDER_MARK : 0;
        }
        try (ByteRecords records = form.records(mark, 0)) {
            boolean plain = records.next() == ByteRecords.Found.PLAIN
                    && records.nextLine() == 2
                    && records.cells() == form.columns();
            return plain ? records.nextPosition() : -1;
        }
    }

    /**
     * Behind a line end from a place on: the first one that a line with as many cells as the headings follows, since of those
     * within quotes few are; behind the first one of all when none is such within the bytes that are looked at.
     */
    long behindLineEnd(long from) {
        byte[] some;
        try (InputStream in = form.orElseThrow().openAt(from)) {
            some = in.readNBytes(LOOKED_AT);
        } catch (IOException failed) {
            throw TrialLog.unreadable(bytes.name(), failed);
        }
        char delimiter = form.orElseThrow().dialect().delimiter();
        int start = NONE;
        int cells = 0;
        boolean quoted = false;
        for (int place = 0; place < some.length; place++) {
            if (some[place] == '\n') {
                if (start != NONE && cells == form.orElseThrow().columns()) {
                    return from + start;
                }
                start = place + 1;
                cells = 1;
                quoted = false;
            }
            quoted ^= some[place] == '"';
            cells += some[place] == delimiter && !quoted ? 1 : 0;
        }
        return behindFirstLineEnd(from);
    }

    private long behindFirstLineEnd(long from) {
        long place = from;
        byte[] chunk = new byte[1 << 13];
        try (InputStream in = form.orElseThrow().openAt(from)) {
            for (int count = in.read(chunk); count >= 0; count = in.read(chunk)) {
                for (int i = 0; i < count; i++) {
                    place++;
                    if (chunk[i] == '\n') {
                        return place;
                    }
                }
            }
        } catch (IOException failed) {
            throw TrialLog.unreadable(bytes.name(), failed);
        }
        return place;
    }
}
