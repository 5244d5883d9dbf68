package stridetally.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * A long log gives the same tables and says the same whichever reader reads it, in any order of its rows. The usual reader
 * is the authority, so its answer is the expected one.
 */
final class LongLogTest {
    private static final String HEADINGS =
            "student,date,session,measure,side,trial,value,unit,help,place,note,use,prompt";
    private static final int ROWS = 4_000;

    @TempDir
    Path folder;

    private final Random random = new Random(20261125);

    @Test
    void bothReadersWriteTheSameTables() throws IOException {
        Path log = folder.resolve("log.csv");
        Files.writeString(log, HEADINGS + "\n" + String.join("\n", rows()) + "\n");
        for (List<String> more : List.of(
                List.<String>of(),
                List.of("--help-up-to", "contact guard"),
                List.of("--session-value", "median"),
                List.of("--use", "practice"),
                List.of("--places", "home"),
                List.of("--as-of", "2025-02-01"))) {
            for (String command : List.of("score", "trend")) {
                Run usual = run(command, log, "usual", more);
                Run fast = run(command, log, "fast", more);
                assertEquals(usual.out(), fast.out(), command + more);
                assertEquals(usual.err(), fast.err(), command + more);
                assertEquals(usual.exitCode(), fast.exitCode(), command + more);
                // Common practice, no source: tables that hold next to nothing would agree about nothing.
                assertTrue(usual.out().lines().count() > (command.equals("score") ? 100 : 10), usual.out());
            }
        }
    }

    @Test
    void theOrderOfTheRowsChangesNoFigure() throws IOException {
        List<String> rows = new ArrayList<>();
        for (int student = 0; student < 8; student++) {
            for (int day = 0; day < 40; day++) {
                for (int number = 1; number <= 5; number++) {
                    // The last one comes once in a season, over years.
                    LocalDate on = LocalDate.of(2025, 1, 6).plusDays(student == 7 ? day * -90L : day * 7L);
                    rows.add("S" + student + "," + on + ",,line-steps,," + number + "," + random.nextInt(12)
                            + ",steps,independent,school,,,");
                }
            }
        }
        Path ordered = folder.resolve("ordered.csv");
        Files.writeString(ordered, HEADINGS + "\n" + String.join("\n", rows) + "\n");
        Collections.shuffle(rows, random);
        Path shuffled = folder.resolve("shuffled.csv");
        Files.writeString(shuffled, HEADINGS + "\n" + String.join("\n", rows) + "\n");
        for (String command : List.of("score", "trend")) {
            assertEquals(
                    run(command, ordered, "usual", List.of()).out(),
                    run(command, shuffled, "fast", List.of()).out());
        }
    }

    /** Tries in their order and out of it, and values of few digits and of many, as rows of sessions have them. */
    @Test
    void plainSessionsAreWrittenAlikeWhateverTheirValues() throws IOException {
        List<String> rows = new ArrayList<>();
        for (int day = 0; day < 60; day++) {
            for (String student : List.of("S1", "S2", "S3", "S4")) {
                String measure = one("single-leg-stance", "walk-distance", "line-steps", "walk-time");
                int tries = random.nextInt(12) == 0 ? 70 : 1 + random.nextInt(7);
                String numbered = one("in order", "in order", "in order", "none", "any", "some");
                for (int number = 1; number <= tries; number++) {
                    rows.add(String.join(
                            ",",
                            student,
                            LocalDate.of(2025, 1, 6).plusDays(day).toString(),
                            "",
                            measure,
                            "",
                            switch (numbered) {
                                case "in order" -> Integer.toString(number);
                                case "none" -> "";
                                case "any" -> Integer.toString(1 + random.nextInt(9));
                                default -> one("", Integer.toString(number));
                            },
                            measure.equals("line-steps")
                                    ? Integer.toString(random.nextInt(15))
                                    : one("8.16", "99.99", "100", "100.01", "0.125", "3.3333", "8.40", "0.001", "12"),
                            "",
                            one("independent", "independent", "supervision", "minimal", ""),
                            "school",
                            "",
                            "",
                            ""));
                }
            }
        }
        Path log = folder.resolve("plain.csv");
        Files.writeString(log, HEADINGS + "\n" + String.join("\n", rows) + "\n");
        for (String command : List.of("score", "trend")) {
            Run fast = run(command, log, "fast", List.of());
            assertEquals(run(command, log, "usual", List.of()).out(), fast.out(), command);
        }
    }

    private static Run run(String command, Path log, String reader, List<String> more) {
        List<String> words = new ArrayList<>(List.of(command, log.toString(), "--reader", reader));
        words.addAll(more);
        if (!more.contains("--as-of")) {
            words.addAll(List.of("--as-of", "2025-11-01"));
        }
        return Run.of(words.toArray(new String[0]));
    }

    private List<String> rows() {
        List<String> rows = new ArrayList<>();
        for (int row = 0; row < ROWS; row++) {
            rows.add(String.join(
                    ",",
                    one("S1", "S2", "S3", "S\u00e9", "=S5"),
                    LocalDate.of(2025, 1, 6).plusDays(random.nextInt(60) * 7L).toString(),
                    one("", "", "", "am"),
                    one(
                            "line-steps",
                            "single-leg-stance",
                            "walk-speed",
                            "hop-count",
                            "cadence",
                            "success",
                            "line-share",
                            "walk-time",
                            "walk-distance",
                            "step-offs"),
                    one("left", "right", "", "left"),
                    one("", "1", "2", "3", "4"),
                    one("3", "4", "7", "0.8", "1.25", "5.5", ">10", "unable", "refused", "3/4", "x", "12"),
                    one("", "", "", "s", "min"),
                    one("independent", "supervision", "contact guard", "minimal", "", "CGA"),
                    one("school", "school", "home", ""),
                    one("", "fine", "\"a, \"\"b\"\"\"", "\"two\nlines\"", "\"open", "caf\u00e9", "5 \u20ac"),
                    one("", "probe", "probe", "practice"),
                    one("", "", "verbal", "none")));
        }
        return rows;
    }

    private String one(String... choices) {
        return choices[random.nextInt(choices.length)];
    }
}
