package stridetally.logbook;

import java.io.BufferedWriter;
import java.io.IOException;
import java.io.OutputStreamWriter;
import java.nio.channels.Channels;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.security.DigestOutputStream;
import java.security.MessageDigest;
import java.util.List;
import stridetally.table.Cell;
import stridetally.table.CsvTable;

/** A CSV file in the making, row by row, with its hash; nothing of it stands in the logbook until it gets its name. */
final class HashedTable {
    private static final int BUFFER = 1 << 16;

    private final Path temporary;
    private final FileChannel channel;
    private final MessageDigest digest = Hash.digest();
    private final BufferedWriter text;
    private final CsvTable table;
    private String hash = "";

    HashedTable(Path temporary, List<String> columns) throws IOException {
        this.temporary = temporary;
        Files.deleteIfExists(temporary);
        channel = DurableFiles.open(temporary, StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE);
        text = new BufferedWriter(
                new OutputStreamWriter(
                        new DigestOutputStream(Channels.newOutputStream(channel), digest),
                        StandardCharsets.UTF_8.newEncoder()),
                BUFFER);
        table = new CsvTable(text, columns);
    }

    void row(List<Cell> cells) {
        table.row(cells);
    }

    /** Forces the content to the disk, gives it its name and forces that too. */
    void place(Path file, DurableFiles disk, WriteStep force, WriteStep name, WriteStep folder) throws IOException {
        table.finish();
        text.flush();
        hash = Hash.text(digest);
        disk.force(channel, force);
        channel.close();
        disk.name(temporary, file, name);
        Path parent = file.getParent();
        if (parent != null) {
            disk.forceFolder(parent, folder);
        }
    }

    /** SHA-256 of the content, once it has its place. */
    String hash() {
        return hash;
    }

    void discard() throws IOException {
        channel.close();
        Files.deleteIfExists(temporary);
    }
}
