package stridetally.logbook;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.code_intelligence.jazzer.junit.FuzzTest;
import java.nio.charset.StandardCharsets;
import stridetally.ingest.FormMapping;
import stridetally.problem.InputRefused;

/** Whatever stands in a mapping, it is one, or it is refused with its name; and one that is written is read the same. */
final class MappingFuzzTest {
    private static final String FILE = "form.toml";

    @FuzzTest(maxDuration = "60s")
    void everyTextIsAMappingOrRefused(byte[] input) {
        FormMapping read;
        try {
            read = FormFile.of(new String(input, StandardCharsets.UTF_8), FILE);
        } catch (InputRefused refused) {
            assertTrue(String.valueOf(refused.getMessage()).startsWith(FILE), refused.getMessage());
            return;
        }
        assertEquals(read, FormFile.of(FormText.of(read), FILE));
    }
}
