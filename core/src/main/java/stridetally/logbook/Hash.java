package stridetally.logbook;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;

/** SHA-256, lower-case hexadecimal. */
final class Hash {
    private Hash() {}

    static MessageDigest digest() {
        try {
            return MessageDigest.getInstance("SHA-256");
        } catch (NoSuchAlgorithmException impossible) {
            throw new IllegalStateException("every Java has SHA-256", impossible);
        }
    }

    static String text(MessageDigest digest) {
        return HexFormat.of().formatHex(digest.digest());
    }

    static String of(Path file) throws IOException {
        try (InputStream in = Files.newInputStream(file)) {
            return of(in);
        }
    }

    static String of(String words) {
        MessageDigest digest = digest();
        digest.update(words.getBytes(StandardCharsets.UTF_8));
        return text(digest);
    }

    static String of(InputStream in) throws IOException {
        MessageDigest digest = digest();
        byte[] chunk = new byte[1 << 16];
        for (int count = in.read(chunk); count >= 0; count = in.read(chunk)) {
            digest.update(chunk, 0, count);
        }
        return text(digest);
    }
}
