package stridetally.cli.files;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.channels.Channels;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class WriteBehindTest {
    @TempDir
    Path folder;

    @Test
    void whatIsForcedMeanwhileIsWhatWasWritten() throws IOException {
        Path file = folder.resolve("table");
        byte[] bytes = new byte[100_000];
        new Random(7).nextBytes(bytes);
        try (FileChannel channel = made(file);
                WriteBehind out = new WriteBehind(Channels.newOutputStream(channel), channel, 1_000)) {
            out.write(bytes[0]);
            for (int from = 1; from < bytes.length; from += 333) {
                out.write(bytes, from, Math.min(333, bytes.length - from));
            }
            out.finish();
        }
        assertArrayEquals(bytes, Files.readAllBytes(file));
    }

    @Test
    void aDiskThatFailedMeanwhileIsTold() throws IOException {
        FileChannel channel = made(folder.resolve("closed"));
        channel.close();
        WriteBehind out = new WriteBehind(OutputStream.nullOutputStream(), channel, 10);
        out.write(new byte[10]);
        assertThrows(IOException.class, out::finish);
    }

    private static FileChannel made(Path file) throws IOException {
        return FileChannel.open(file, StandardOpenOption.CREATE, StandardOpenOption.WRITE);
    }
}
