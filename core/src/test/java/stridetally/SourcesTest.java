package stridetally;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** Every source id in a {@code @source} tag is listed in DEVELOPERS.md, and every listed one is used. */
final class SourcesTest {
    private static final Pattern TAG = Pattern.compile("@source ([^*]*(?:\\n \\*\\s+[^@/*]*)*)");
    private static final Pattern ID =
            Pattern.compile("(?:^|;)\\s*([a-z][a-z0-9-]*[0-9]{4}|nist-strd|commons-statistics)\\b");
    private static final Pattern ROW = Pattern.compile("^\\| ([a-z][a-z0-9-]+) \\|", Pattern.MULTILINE);

    @Test
    void everySourceIdIsListedAndEveryListedOneIsUsed() throws IOException {
        Set<String> used = used();
        assertFalse(used.isEmpty(), "no source tag was found");
        assertEquals(listed(), used);
    }

    private static Set<String> used() throws IOException {
        Set<String> ids = new TreeSet<>();
        try (Stream<Path> files = Files.walk(Path.of("src/main/java"))) {
            for (Path file :
                    files.filter(path -> path.toString().endsWith(".java")).toList()) {
                Matcher tag = TAG.matcher(Files.readString(file));
                while (tag.find()) {
                    Matcher id = ID.matcher(tag.group(1).replaceAll("\\n\\s*\\*", " "));
                    while (id.find()) {
                        ids.add(id.group(1));
                    }
                }
            }
        }
        return ids;
    }

    private static Set<String> listed() throws IOException {
        String text = Files.readString(Path.of("../DEVELOPERS.md"));
        Matcher row = ROW.matcher(text.substring(text.indexOf("## Sources")));
        Set<String> ids = new TreeSet<>();
        while (row.find()) {
            if (!row.group(1).equals("id")) {
                ids.add(row.group(1));
            }
        }
        return ids;
    }
}
