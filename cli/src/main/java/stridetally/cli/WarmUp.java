package stridetally.cli;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.OutputStream;
import java.io.PrintWriter;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import stridetally.Exempt;
import stridetally.Exempt.Fence;

/**
 * Runs the command lines of standard input, one a line, split at blanks, and throws away what they print. The build uses it
 * once to learn which classes the start-up archive must hold; it is no command.
 */
@Exempt(from = Fence.MACHINE, reason = "An entry of its own for the build, which feeds it through standard input.")
final class WarmUp {
    private WarmUp() {}

    public static void main(String[] arguments) throws IOException, InterruptedException {
        Rehearsal.once();
        BufferedReader lines = new BufferedReader(new InputStreamReader(System.in, StandardCharsets.UTF_8));
        for (String line = lines.readLine(); line != null; line = lines.readLine()) {
            if (!line.isBlank() && !line.startsWith("#")) {
                Main.run(line.strip().split(" +", -1), silent());
            }
        }
    }

    private static Surroundings silent() {
        Surroundings process = Main.ofProcess();
        PrintWriter nobody = new PrintWriter(Writer.nullWriter());
        return Surroundings.plain(
                InputStream.nullInputStream(), OutputStream.nullOutputStream(), nobody, process.clock());
    }
}
