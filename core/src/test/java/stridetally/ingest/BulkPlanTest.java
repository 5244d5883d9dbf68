package stridetally.ingest;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

final class BulkPlanTest {
    private static final String HEADING = "student,date,measure,trial,value,note\n";
    private static final String ROW = "S1,2025-01-06,line-steps,1,3,as usual\n";

    @Test
    void aThreadAloneReadsAllInOneStretch() {
        assertEquals(
                1, BulkPlan.stretches(List.of(file(ROW.repeat(1_000))), 1, 64).size());
    }

    @Test
    void stretchesFollowOneAnotherAndGetShorter() {
        String log = HEADING + ROW.repeat(10_000);
        List<Long> starts = starts(file(ROW.repeat(10_000)), 2);
        // By hand: twelve for each of two threads, each a quarter of what is left.
        assertEquals(24, starts.size());
        assertEquals(HEADING.length(), starts.get(0));
        long before = log.length();
        for (int one = 1; one < starts.size(); one++) {
            long size = starts.get(one) - starts.get(one - 1);
            assertTrue(size > 0 && size <= before + ROW.length(), "stretch " + one);
            assertEquals(ROW, log.substring((int) (long) starts.get(one)).substring(0, ROW.length()));
            before = size;
        }
        double quarter = log.length() / 4.0;
        assertEquals(quarter, starts.get(1), 2 * ROW.length());
        assertEquals(quarter + 0.75 * quarter, starts.get(2), 3 * ROW.length());
    }

    @Test
    void noStretchIsSmallerThanIsWorthAThread() {
        List<Long> starts = starts(file(ROW.repeat(1_000)), 2, 8_000);
        // By hand: 38,000 bytes are 9,500 and three of 8,000, and the rest would be too small for one more.
        assertEquals(4, starts.size());
        assertEquals(9_500, starts.get(1), 2 * ROW.length());
    }

    /** The lines within the notes have fewer cells than a row. */
    @Test
    void aCutFallsBeforeARowAndNotIntoItsNote() {
        String noted = "S1,2025-01-06,line-steps,1,3,\"tired,\nagain\n\nand, again\"\n";
        String log = HEADING + noted.repeat(1_000);
        List<Long> starts = starts(file(noted.repeat(1_000)), 2);
        assertTrue(starts.size() > 20, "stretches: " + starts.size());
        for (long start : starts) {
            assertTrue(log.startsWith("S1,2025", (int) start), "at " + start);
        }
    }

    @Test
    void aLogWithoutSuchALineIsCutBehindAnyLineEnd() {
        String lines = "a\nb\n".repeat(1_000);
        for (long start : starts(file(lines), 2)) {
            assertEquals('\n', (HEADING + lines).charAt((int) start - 1));
        }
    }

    private static List<Long> starts(BulkFile file, int threads) {
        return starts(file, threads, 64);
    }

    private static List<Long> starts(BulkFile file, int threads, long smallest) {
        List<Long> starts = new ArrayList<>();
        long stop = file.data();
        for (List<BulkPlan.Piece> stretch : BulkPlan.stretches(List.of(file), threads, smallest)) {
            assertEquals(1, stretch.size());
            assertEquals(stop, stretch.get(0).start());
            starts.add(stretch.get(0).start());
            stop = stretch.get(0).stop();
        }
        assertEquals(Long.MAX_VALUE, stop);
        return starts;
    }

    private static BulkFile file(String rows) {
        BulkFile file = BulkFile.of(LogBytes.of(HEADING + rows), LogBytes.rules(), LocalDate.of(2025, 3, 1));
        assertTrue(file.cuts());
        return file;
    }
}
