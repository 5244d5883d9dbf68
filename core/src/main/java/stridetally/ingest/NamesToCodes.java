package stridetally.ingest;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.Reader;
import java.nio.charset.StandardCharsets;
import java.text.Normalizer;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.Map;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import stridetally.model.StudentCode;

/**
 * Puts codes in the place of names before anything is read of a log, in every cell, so that a name in a note does not come
 * in either. A name is taken only when it is written exactly as in {@code names.csv}, as a whole word; one that several
 * students have becomes {@link #SEVERAL}, which is no code, so that its row is set aside.
 */
public final class NamesToCodes {
    /** What stands in the place of a name that does not tell one student. */
    public static final String SEVERAL = "(name of several students)";

    private static final String WORD_SIGN = "[\\p{L}\\p{M}\\p{N}]";

    private final Map<String, String> codeOf = new HashMap<>();
    private final Set<String> codes = new HashSet<>();
    private final Pattern pattern;

    /** By the names of the students. A code that is written like a name stays. */
    public NamesToCodes(Map<StudentCode, String> names) {
        names.keySet().forEach(code -> codes.add(code.text()));
        names.forEach((code, name) -> {
            for (Normalizer.Form form : new Normalizer.Form[] {Normalizer.Form.NFC, Normalizer.Form.NFD}) {
                String written = Normalizer.normalize(name.strip(), form);
                if (!written.isEmpty() && !codes.contains(written)) {
                    codeOf.merge(written, code.text(), (one, other) -> one.equals(other) ? one : SEVERAL);
                }
            }
        });
        String any = codeOf.keySet().stream()
                .sorted(Comparator.comparing(String::length).reversed().thenComparing(Comparator.naturalOrder()))
                .map(Pattern::quote)
                .collect(Collectors.joining("|"));
        pattern = Pattern.compile(
                "(?<!" + WORD_SIGN + ")(?:" + (any.isEmpty() ? "(?!)" : any) + ")(?!" + WORD_SIGN + ")");
    }

    /** Every code that stands in {@code names.csv}. */
    public Set<StudentCode> students() {
        return codes.stream().map(StudentCode::new).collect(Collectors.toSet());
    }

    /** A text with codes in the place of names. */
    public String coded(String text) {
        Matcher matcher = pattern.matcher(text);
        return matcher.replaceAll(found -> Matcher.quoteReplacement(codeOf.getOrDefault(found.group(), SEVERAL)));
    }

    /** What to call a sheet of a workbook: the code when it is named after one student, else its number. */
    public String sheet(String name, int number) {
        String coded = coded(name.strip());
        return codes.contains(coded) ? coded : "sheet " + number;
    }

    /** A log with codes in the place of names, in its name too; it is streamed line by line. */
    public TextSource coded(TextSource text) {
        return new TextSource(new Coded(text, coded(text.bytes().name())), StandardCharsets.UTF_8, coded(text.note()));
    }

    private final class Coded implements ByteSource {
        private final TextSource text;
        private final String name;

        Coded(TextSource text, String name) {
            this.text = text;
            this.name = name;
        }

        @Override
        public String name() {
            return name;
        }

        @Override
        public String shortName() {
            return coded(text.bytes().shortName());
        }

        @Override
        public long size() {
            return -1;
        }

        @Override
        public InputStream open() throws IOException {
            return new CodedStream(text.open());
        }
    }

    /** The text line by line, as UTF-8. */
    private final class CodedStream extends InputStream {
        private static final int LONGEST_PIECE = 1 << 16;

        private final BufferedReader reader;
        private final StringBuilder line = new StringBuilder();
        private byte[] bytes = new byte[0];
        private int next;

        CodedStream(Reader reader) {
            this.reader = new BufferedReader(reader);
        }

        @Override
        public int read() throws IOException {
            return fill() ? bytes[next++] & 0xff : -1;
        }

        @Override
        public int read(byte[] into, int from, int length) throws IOException {
            if (length == 0) {
                return 0;
            }
            if (!fill()) {
                return -1;
            }
            int count = Math.min(length, bytes.length - next);
            System.arraycopy(bytes, next, into, from, count);
            next += count;
            return count;
        }

        @Override
        public void close() throws IOException {
            reader.close();
        }

        private boolean fill() throws IOException {
            if (next < bytes.length) {
                return true;
            }
            line.setLength(0);
            int sign = reader.read();
            while (sign >= 0) {
                line.append((char) sign);
                boolean between = sign == '\n' || (line.length() > LONGEST_PIECE && sign == ',');
                if (between) {
                    break;
                }
                sign = reader.read();
            }
            bytes = coded(line.toString()).getBytes(StandardCharsets.UTF_8);
            next = 0;
            return bytes.length > 0;
        }
    }
}
