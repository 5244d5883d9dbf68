package stridetally.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A second observer's log that was imported apart is compared with the first one's and never counted. */
final class SecondObserverTest {
    private static final String HEADINGS = "student,date,measure,trial,value,unit,help,place\n";

    @TempDir
    private Path folder;

    @Test
    void agreementIsBetweenTheTwoLogs() throws IOException {
        String book = folder.resolve("book").toString();
        // By hand: of four tries both wrote, three are the same, so exact agreement is 3 / 4.
        Path first = log("first.csv", "4", "5", "6", "7");
        Path second = log("second.csv", "4", "5", "6", "8");
        assertEquals(
                0, run("import", first.toString(), "--new", "--logbook", book).exitCode());
        String before = run("score", book).out();
        assertEquals(
                0,
                run("import", second.toString(), "--second-observer", "--logbook", book)
                        .exitCode());
        assertEquals(before, run("score", book).out());
        String agreement = run("score", book, "--agreement").out();
        assertTrue(agreement.contains("line-steps,steps,,second observer,exact-agreement,4,0,0,0.75,"), agreement);
    }

    private static Run run(String... arguments) {
        String[] dated = java.util.Arrays.copyOf(arguments, arguments.length + 2);
        dated[arguments.length] = "--as-of";
        dated[arguments.length + 1] = "2026-02-01";
        return Run.of(dated);
    }

    private Path log(String name, String... values) throws IOException {
        StringBuilder text = new StringBuilder(HEADINGS);
        for (int trial = 0; trial < values.length; trial++) {
            text.append("s-01,2026-01-12,line-steps,")
                    .append(trial + 1)
                    .append(',')
                    .append(values[trial])
                    .append(",steps,stand-by,school\n");
        }
        return Files.writeString(folder.resolve(name), text);
    }
}
