package stridetally.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.LongStream;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Rows = taken + known + set aside + blank over made-up logs, whose maker knows what becomes of each row. A repeat takes
 * nothing and finds what was taken.
 */
final class CountingPropertyTest {
    private static final List<String> SPOILT = List.of(
            "S03,2026-01-05,line-steps,#,6,steps,independent,none,,school,not of the roster",
            ",2026-01-05,line-steps,#,6,steps,independent,none,,school,nobody",
            "S01,2026-02-30,line-steps,#,6,steps,independent,none,,school,no such day",
            "S01,2026-12-05,line-steps,#,6,steps,independent,none,,school,ahead",
            "S01,2026-01-05,juggling,#,6,steps,independent,none,,school,no measure",
            "S01,2026-01-05,line-steps,#,six or so,steps,independent,none,,school,words",
            "S01,2026-01-05,line-steps,#,6,steps,by magic,none,,school,no help word",
            "S01,2026-01-05,line-steps,#,6,steps,independent,none,,moon,no place");

    @TempDir
    @SuppressWarnings("NullAway.Init")
    private Path folder;

    static LongStream seeds() {
        return LongStream.range(1, 41);
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void everyRowIsOneOfFour(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        Desk desk = Desk.withLogbook(folder);
        int good = 0;
        int bad = 0;
        int blank = 0;
        List<String> taken = new ArrayList<>();
        StringBuilder log = new StringBuilder(Desk.HEAD);
        int rows = 1 + random.nextInt(60);
        for (int row = 1; row <= rows; row++) {
            int kind = random.nextInt(10);
            if (kind < 6) {
                String one = Desk.row(",1,6,", "," + row + "," + random.nextInt(1, 60) + ",");
                taken.add(one);
                log.append(one);
                good++;
            } else if (kind == 6) {
                log.append(",,,,,,,,,,\n");
                blank++;
            } else if (kind == 7 && !taken.isEmpty()) {
                log.append(taken.get(random.nextInt(taken.size())));
                bad++;
            } else {
                String spoilt = SPOILT.get(random.nextInt(SPOILT.size()));
                log.append(spoilt.replace("#", Integer.toString(row))).append('\n');
                bad++;
            }
        }
        desk.file("log.csv", log.toString());
        assertEquals(List.of(rows, good, 0, bad, blank), counts(desk), log.toString());
        List<Integer> again = counts(desk);
        assertEquals(rows, again.get(0));
        assertEquals(0, again.get(1));
        assertEquals(rows, again.get(2) + again.get(3) + again.get(4));
        assertTrue(again.get(2) >= good, again + " of " + good);
        assertEquals(good, desk.run("score @book --by trial").out().lines().count() - 1);
    }

    private static List<Integer> counts(Desk desk) {
        Run run = desk.imported("@log.csv");
        assertTrue(run.exitCode() <= 1, run.err());
        return desk.counts(run, "log.csv").subList(0, 5).stream()
                .map(Integer::valueOf)
                .toList();
    }
}
