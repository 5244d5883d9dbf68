package stridetally.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * The sign sum of Kendall's test over session means, against every pair compared in whole numbers: sums of doubles would see a
 * rise or a fall between equal means, and other ones after a shuffle.
 */
final class ExactSignsTest {
    private static final int STUDENTS = 40;
    private static final int DAYS = 30;

    @TempDir
    Path folder;

    private final Random random = new Random(20261127);

    /** By student and day: hundredths of a second in all, and tries. */
    private final Map<String, TreeMap<LocalDate, long[]>> sessions = new TreeMap<>();

    @Test
    void everyPairOfSessionsIsJudgedExactly() throws IOException {
        List<String> rows = new ArrayList<>();
        for (int student = 0; student < STUDENTS; student++) {
            for (int day = 0; day < DAYS; day++) {
                LocalDate date = LocalDate.of(2025, 1, 6).plusDays(day * 7L);
                int tries = 1 + random.nextInt(6);
                for (int number = 1; number <= tries; number++) {
                    // Few different values, so that many means are equal though their tries are not.
                    int hundredths = 501 + random.nextInt(4) * 7;
                    rows.add("S" + student + "," + date + ",timed-up-and-go," + number + "," + hundredths / 100 + "."
                            + (hundredths % 100 < 10 ? "0" : "") + hundredths % 100);
                    long[] session = sessions.computeIfAbsent("S" + student, any -> new TreeMap<>())
                            .computeIfAbsent(date, any -> new long[2]);
                    session[0] += hundredths;
                    session[1]++;
                }
            }
        }
        Map<String, Long> expected = new TreeMap<>();
        sessions.forEach((student, days) -> expected.put(student, signs(new ArrayList<>(days.values()))));
        assertNotEquals(expected, inDoubles(rows), "the case must be one in which sums of doubles err");
        assertEquals(expected, read(rows, "usual"));
        assertEquals(expected, read(rows, "fast"));
        Collections.shuffle(rows, random);
        assertEquals(expected, read(rows, "usual"));
        assertEquals(expected, read(rows, "fast"));
    }

    private static long signs(List<long[]> days) {
        long signs = 0;
        for (int one = 0; one < days.size(); one++) {
            for (int other = one + 1; other < days.size(); other++) {
                long[] before = days.get(one);
                long[] after = days.get(other);
                signs += Long.signum(after[0] * before[1] - before[0] * after[1]);
            }
        }
        return signs;
    }

    /** What a mean of doubles makes of it. */
    private static Map<String, Long> inDoubles(List<String> rows) {
        Map<String, TreeMap<String, double[]>> sums = new TreeMap<>();
        for (String row : rows) {
            String[] cells = row.split(",", -1);
            double[] sum = sums.computeIfAbsent(cells[0], any -> new TreeMap<>())
                    .computeIfAbsent(cells[1], any -> new double[2]);
            sum[0] += Double.parseDouble(cells[4]);
            sum[1]++;
        }
        Map<String, Long> signs = new TreeMap<>();
        sums.forEach((student, days) -> {
            List<double[]> all = new ArrayList<>(days.values());
            long sum = 0;
            for (int one = 0; one < all.size(); one++) {
                for (int other = one + 1; other < all.size(); other++) {
                    sum += (long)
                            Math.signum(all.get(other)[0] / all.get(other)[1] - all.get(one)[0] / all.get(one)[1]);
                }
            }
            signs.put(student, sum);
        });
        return signs;
    }

    private Map<String, Long> read(List<String> rows, String reader) throws IOException {
        Path log = folder.resolve("log.csv");
        Files.writeString(log, "student,date,measure,trial,value\n" + String.join("\n", rows) + "\n");
        List<String> lines = Run.of(
                        "trend", log.toString(), "--reader", reader, "--session-value", "mean", "--as-of", "2026-01-01")
                .out()
                .lines()
                .toList();
        List<String> headings = List.of(lines.get(0).split(",", -1));
        Map<String, Long> signs = new TreeMap<>();
        for (String line : lines.subList(1, lines.size())) {
            String[] cells = line.split(",", -1);
            signs.put(cells[headings.indexOf("student")], (long)
                    Double.parseDouble(cells[headings.indexOf("kendall_s")]));
        }
        return signs;
    }
}
