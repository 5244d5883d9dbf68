package stridetally.ingest;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.Reader;
import java.io.StringWriter;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import stridetally.problem.InputRefused;

/** Bytes to text. Byte-order marks after the Unicode standard 23.8 (from memory); windows-1252 is told by a byte over 0x7f. */
class TextSourceTest {
    private static final String TEXT = "student,note\nS01,Zo\u00eb hopped\u2026\n";

    @ParameterizedTest
    @CsvSource({
        "UTF-8, '', ''",
        "UTF-8, efbbbf, ''",
        "UTF-16LE, fffe, ''",
        "UTF-16BE, feff, ''",
        "windows-1252, '', read as windows-1252"
    })
    void readsTheSameTextFromEachEncoding(String charset, String mark, String note) throws IOException {
        TextSource source = source(bytes(mark, TEXT.getBytes(Charset.forName(charset))));
        assertEquals(TEXT, text(source));
        assertEquals(TEXT, text(source), "a second time too");
        assertTrue(source.note().contains(note), source.note());
        assertEquals(note.isEmpty(), source.note().isEmpty());
    }

    @Test
    void aLetterThatIsCutByTheBufferIsWhole() throws IOException {
        String text = "x".repeat((1 << 16) - 1) + "\u00eb" + "y".repeat(1 << 17) + "\ud83d\ude00";
        TextSource source = source(text.getBytes(StandardCharsets.UTF_8));
        assertEquals(StandardCharsets.UTF_8, source.charset());
        assertEquals(text, text(source));
    }

    @Test
    void aLetterCutOffAtTheEndIsNotUtf8() {
        assertEquals(
                "windows-1252", source(new byte[] {'a', (byte) 0xc3}).charset().name());
    }

    @Test
    void aByteThatIsNoLetterIsNeverReplaced() {
        TextSource source = source(new byte[] {'a', (byte) 0x81, 'b'});
        assertThrows(CharacterCodingException.class, () -> text(source));
    }

    @ParameterizedTest
    @CsvSource({
        "'', the file is empty",
        "504b0304ff, a workbook or an archive where a table of text was expected",
        "d0cf11e0a1, 'a workbook of the old .xls kind, or one behind a password'",
        "61620063, 'log.csv:1: not text (a NUL byte at position 3'",
        "610a00, 'log.csv:2: not text (a NUL byte at position 3'"
    })
    void refusesWhatIsNoText(String hex, String sentence) {
        String message = String.valueOf(assertThrows(InputRefused.class, () -> source(bytes(hex, new byte[0])))
                .getMessage());
        assertTrue(message.startsWith("log.csv:") && message.contains(sentence), message);
    }

    private static TextSource source(byte[] content) {
        return TextSource.of(new ByteSource() {
            @Override
            public String name() {
                return "log.csv";
            }

            @Override
            public long size() {
                return content.length;
            }

            @Override
            public InputStream open() {
                return new ByteArrayInputStream(content);
            }
        });
    }

    private static String text(TextSource source) throws IOException {
        StringWriter text = new StringWriter();
        try (Reader reader = source.open()) {
            reader.transferTo(text);
        }
        return text.toString();
    }

    private static byte[] bytes(String hex, byte[] rest) {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        for (int place = 0; place < hex.length(); place += 2) {
            bytes.write(Integer.parseInt(hex.substring(place, place + 2), 16));
        }
        bytes.writeBytes(rest);
        return bytes.toByteArray();
    }
}
