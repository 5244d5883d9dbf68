package stridetally.ingest;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.FilterInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.zip.Deflater;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import java.util.zip.ZipOutputStream;
import stridetally.problem.InputRefused;

/**
 * Unpacks a workbook under limits before anything reads it: a small file can hold gigabytes of blanks. What is read later
 * is packed anew from what was counted here, so that no second directory inside the file can name other parts.
 *
 * @param parts most parts
 * @param bytes most bytes of all parts together, unpacked
 * @param ratio most unpacked bytes for each packed one
 * @param ratioFrom unpacked bytes from which the ratio is looked at
 */
record WorkbookGuard(int parts, long bytes, int ratio, long ratioFrom) {

    /** Our choice: far beyond any log that people keep in sheets, and small enough for any machine. */
    static final WorkbookGuard USUAL = new WorkbookGuard(2_000, 64L << 20, 200, 1L << 20);

    private static final int CHUNK = 1 << 14;

    /** The parts of a workbook by name, without pictures. Refuses what passes a limit or is no workbook. */
    Map<String, byte[]> unpack(ByteSource book) {
        Map<String, byte[]> unpacked = new LinkedHashMap<>();
        try (Counted packed = new Counted(book.open());
                ZipInputStream zip = new ZipInputStream(packed)) {
            long total = 0;
            int count = 0;
            for (ZipEntry part = zip.getNextEntry(); part != null; part = zip.getNextEntry()) {
                if (++count > parts) {
                    throw refused(book, "it has more than " + parts + " parts");
                }
                ByteArrayOutputStream content = new ByteArrayOutputStream();
                byte[] chunk = new byte[CHUNK];
                for (int read = zip.read(chunk); read >= 0; read = zip.read(chunk)) {
                    total += read;
                    if (total > bytes) {
                        throw refused(book, "unpacked it is larger than " + (bytes >> 20) + " MB");
                    }
                    if (total > ratioFrom && total > ratio * packed.count) {
                        throw refused(book, "it unpacks to more than " + ratio + " times its size");
                    }
                    content.write(chunk, 0, read);
                }
                keep(part.getName(), content.toByteArray(), unpacked, book);
            }
        } catch (IOException | IllegalArgumentException broken) {
            throw new InputRefused(
                    book.name() + ": this workbook is damaged or protected and cannot be unpacked; open it, save it as"
                            + " .xlsx or CSV, and import that",
                    broken);
        }
        refuseOtherKinds(book, unpacked);
        return unpacked;
    }

    /** The parts as one stream, for a reader of workbooks. */
    static InputStream packed(Map<String, byte[]> parts) throws IOException {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (ZipOutputStream zip = new ZipOutputStream(bytes)) {
            zip.setLevel(Deflater.BEST_SPEED);
            for (Map.Entry<String, byte[]> part : parts.entrySet()) {
                ZipEntry entry = new ZipEntry(part.getKey());
                entry.setTime(0);
                zip.putNextEntry(entry);
                zip.write(part.getValue());
                zip.closeEntry();
            }
        }
        return new ByteArrayInputStream(bytes.toByteArray());
    }

    private static void keep(String name, byte[] content, Map<String, byte[]> unpacked, ByteSource book) {
        if (name.startsWith("xl/media/")) {
            return;
        }
        if (unpacked.put(name, content) != null) {
            throw refused(book, "it has two parts of one name");
        }
    }

    private static void refuseOtherKinds(ByteSource book, Map<String, byte[]> parts) {
        if (parts.containsKey("xl/workbook.bin")) {
            throw new InputRefused(
                    book.name() + ": this is a binary workbook; save it as .xlsx or CSV and import that");
        }
        if (!parts.containsKey("xl/workbook.xml")) {
            throw new InputRefused(book.name()
                    + ": this is an archive and no .xlsx workbook; unpack it, or save the sheet as .xlsx or CSV");
        }
    }

    private static InputRefused refused(ByteSource book, String why) {
        return new InputRefused(book.name() + ": this workbook is not opened, because " + why
                + "; save the sheet as CSV and import that");
    }

    /** Counts the packed bytes that were asked for. */
    private static final class Counted extends FilterInputStream {
        private long count;

        Counted(InputStream in) {
            super(in);
        }

        @Override
        public int read() throws IOException {
            int one = super.read();
            count += one < 0 ? 0 : 1;
            return one;
        }

        @Override
        public int read(byte[] into, int from, int length) throws IOException {
            int read = super.read(into, from, length);
            count += Math.max(read, 0);
            return read;
        }
    }
}
