package stridetally.cli;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import picocli.CommandLine.IVersionProvider;

/** The version, as the build wrote it; read only when asked for. */
final class Version implements IVersionProvider {
    @Override
    public String[] getVersion() throws IOException {
        try (InputStream text = Version.class.getResourceAsStream("version.txt")) {
            if (text == null) {
                throw new IllegalStateException("the resource version.txt is missing from the build");
            }
            return new String[] {"stridetally " + new String(text.readAllBytes(), StandardCharsets.UTF_8).strip()};
        }
    }
}
