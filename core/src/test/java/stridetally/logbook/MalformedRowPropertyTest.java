package stridetally.logbook;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.LongStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import stridetally.ingest.KnownTrials;

/** Whatever stands in the cells: no exception, every row accounted for, and a row that is not taken says why. */
class MalformedRowPropertyTest {
    private static final String HEAD =
            "student,date,session,measure,trial,value,unit,of,help,prompt,side,protocol,use,place,observer,note\n";
    private static final List<List<String>> CELLS = List.of(
            List.of("S01", "S02", "S03", "", "S 01", "=S01"),
            List.of("2026-10-05", "2026-13-05", "5 Oct 26", "2026-10-5", "", "99999", "0000-00-00", "2026-11-21"),
            List.of("", "am", "'=1"),
            List.of("line-steps", "success", "line-share", "hop-count", "line-time", "jump-distance", "falls", "", "x"),
            List.of("", "1", "2", "0", "-1", "1.0", "999999", "9999999", "one"),
            List.of(
                    "4",
                    "0",
                    "-3",
                    "4.5",
                    "1e3",
                    "NaN",
                    ">60",
                    "<5",
                    "> 60 <",
                    "4/5",
                    "5/4",
                    "4/0",
                    "80%",
                    "180%",
                    "1:05",
                    "1:5",
                    "6 ft 2 in",
                    "6'2\"\"",
                    "unable",
                    "absent",
                    "yes",
                    "999999999999",
                    "0.0000000001",
                    "~4?*",
                    "",
                    "\u221e",
                    "12 sec",
                    "4 of many",
                    "4//5",
                    ">",
                    "+",
                    "4+"),
            List.of("", "s", "steps", "cm", "%", "tries", "proportion", "furlong", "ft", "count"),
            List.of("", "5", "0", "-5", "5.5", "99999999999", "5 m", "x"),
            List.of("", "independent", "Ind", "CGA", "nobody"),
            List.of("", "none", "verbal", "shout"),
            List.of("", "left", "R", "both"),
            List.of("", "shoes=on", "shoes", "shoes=on;shoes=off", "=", ";;", "line_length=3 m"),
            List.of("", "probe", "practice", "game"),
            List.of("", "school", "home", "moon"),
            List.of("", "pt-1", "\"pt \"\"1\"\"\"", "@x"),
            List.of(
                    "",
                    "ok",
                    "\"two\nlines\"",
                    "\"=HYPERLINK(\"\"x\"\")\"",
                    "\"open",
                    "\"a\" b",
                    "a,b",
                    "\u0001\u00e9"));

    static LongStream seeds() {
        return LongStream.range(1, 201);
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void everyRowEndsSomewhere(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        StringBuilder log = new StringBuilder(HEAD);
        int rows = 1 + random.nextInt(40);
        for (int row = 0; row < rows; row++) {
            log.append(row(random)).append('\n');
        }
        ReadLog read = ReadLog.of(log.toString());
        TrialImport.Outcome outcome = read.outcome();
        assertEquals(outcome.rows(), read.read());
        assertEquals(outcome.taken(), read.rows().size());
        assertEquals(outcome.setAside(), read.setAside().size());
        for (SetAsideRow row : read.setAside()) {
            assertFalse(row.codes().isBlank() || row.mend().isBlank(), row.codes() + ": " + row.reasons());
        }
        for (List<String> row : read.rows()) {
            assertTrue(row.get(2).startsWith("2026-"), "a day of the log");
            assertFalse(row.get(6).contains("NaN"));
        }
    }

    /** The same generated log comes in again: what was taken is known, and nothing more is taken. */
    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void nothingIsTakenTwice(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        StringBuilder log = new StringBuilder(HEAD);
        for (int row = 0; row < 20; row++) {
            log.append(row(random)).append('\n');
        }
        KnownTrials known = new KnownTrials();
        TrialImport.Outcome first = ReadLog.of(log.toString(), known, 1, TrialImport.Clash.SET_ASIDE)
                .outcome();
        TrialImport.Outcome second = ReadLog.of(log.toString(), known, 2, TrialImport.Clash.SET_ASIDE)
                .outcome();
        assertEquals(0, second.taken());
        assertTrue(second.known() >= first.taken());
    }

    /** Mostly good cells, so that rows are refused for one fault as often as for many. */
    private static String row(SplittableRandom random) {
        int faults = random.nextInt(4);
        StringBuilder row = new StringBuilder();
        int width = random.nextInt(12) == 0 ? random.nextInt(CELLS.size()) + 1 : CELLS.size();
        for (int column = 0; column < width; column++) {
            List<String> choices = CELLS.get(column);
            boolean any = random.nextInt(CELLS.size()) < faults * 2;
            row.append(column == 0 ? "" : ",").append(choices.get(any ? random.nextInt(choices.size()) : 0));
        }
        return row + (random.nextInt(15) == 0 ? ",beyond" : "");
    }
}
