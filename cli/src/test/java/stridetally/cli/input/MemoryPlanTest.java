package stridetally.cli.input;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import stridetally.ingest.BulkLog;
import stridetally.ingest.BulkWatch;
import stridetally.ingest.ByteSource;
import stridetally.ingest.DateOrder;
import stridetally.ingest.LogRules;
import stridetally.ingest.StudentRange;
import stridetally.measures.Catalogue;
import stridetally.model.Settings;
import stridetally.scoring.TrialRuns;
import stridetally.units.DecimalMark;

/** Into how many ranges a log is split by a limit of memory. */
class MemoryPlanTest {
    private static final int STUDENTS = 300;

    /**
     * So many different ones are expected of n after d draws: n (1 - (1 - 1/n)^d), the classical problem of occupied cells (W.
     * Feller, An Introduction to Probability Theory, vol. 1, chapter on occupancy; from memory). Drawn here without it.
     */
    @Test
    void howManyThereAreIsReckonedFromHowManyWereSeen() {
        SplittableRandom random = new SplittableRandom(7);
        for (int all : new int[] {200, 5_000, 40_000}) {
            for (int draws : new int[] {1_000, 8_000, 60_000}) {
                boolean[] seen = new boolean[all];
                int different = 0;
                for (int draw = 0; draw < draws; draw++) {
                    int one = random.nextInt(all);
                    different += seen[one] ? 0 : 1;
                    seen[one] = true;
                }
                double reckoned = MemoryPlan.series(different, draws, 1e9);
                // The fewer are seen twice, the less is known: 60 of 40,000 pairs are expected at 1,000 draws of
                // 40,000... so few
                // that a third is allowed there.
                double allowed = draws >= all ? 0.05 : 0.35;
                assertEquals(all, reckoned, all * allowed, all + " seen by " + draws);
            }
        }
        assertEquals(5_000, MemoryPlan.series(5_000, 5_000, 5_000), 1, "no more than there can be");
    }

    @Test
    void whatFitsIsReadAtOnceAndNothingIsSaid() {
        List<String> said = new ArrayList<>();
        Bytes log = log();
        List<StudentRange> ranges =
                new MemoryPlan(log.size() * 4, 2).ranges(List.of(log), how(), log.size(), said::add);
        assertEquals(List.of(StudentRange.ALL), ranges);
        assertTrue(said.isEmpty());
    }

    @Test
    void whatDoesNotFitIsSplitIntoRangesThatHoldEachStudentOnceAndIsSaid() {
        List<String> said = new ArrayList<>();
        Bytes log = log();
        long limit = log.size() / 40;
        List<StudentRange> ranges = new MemoryPlan(limit, 1).ranges(List.of(log), how(), log.size(), said::add);
        assertTrue(ranges.size() > 1, "ranges: " + ranges.size());
        assertTrue(said.get(0).contains("the logs are read " + ranges.size() + " times"), said.get(0));
        assertEquals(Optional.empty(), ranges.get(0).from());
        assertEquals(Optional.empty(), ranges.get(ranges.size() - 1).before());
        long largest = 0;
        long tries = 0;
        for (int one = 0; one < ranges.size(); one++) {
            assertTrue(
                    one == 0
                            || ranges.get(one).from().equals(ranges.get(one - 1).before()),
                    "one behind the other");
            BulkLog<TrialRuns> part = BulkLog.read(List.of(log), how().only(ranges.get(one)));
            largest = Math.max(largest, part.parts().get(0).sink().bytes());
            tries += part.parts().get(0).sink().runs();
        }
        assertEquals((long) STUDENTS * 40, tries, "a run for each student and day");
        assertTrue(largest < limit * 1.5, largest + " of " + limit);
    }

    @Test
    void aThreadStopsWhereItsPartOfTheMemoryIsFull() {
        BulkLog<TrialRuns> all = BulkLog.read(List.of(log()), how());
        BulkLog.Part<TrialRuns> part = all.parts().get(0);
        long taken =
                part.sink().bytes() + MemoryPlan.SERIES_BYTES * part.numbers().size();
        BulkLog.Held<TrialRuns> held = new BulkLog.Held<>(part.numbers(), List.of(part.sink()));
        assertTrue(new MemoryPlan(2 * taken + 2, 2).hasRoom(held));
        assertFalse(new MemoryPlan(2 * taken, 2).hasRoom(held));
        // By hand: a second sink on the same pages has 1,024 series of 4 bytes of its own.
        long both = taken + 4 * 1_024;
        BulkLog.Held<TrialRuns> two = new BulkLog.Held<>(
                part.numbers(), List.of(part.sink(), part.sink().next()));
        assertTrue(new MemoryPlan(2 * both + 2, 2).hasRoom(two));
        assertFalse(new MemoryPlan(2 * both, 2).hasRoom(two));
    }

    private static Bytes log() {
        StringBuilder log = new StringBuilder("student,date,measure,trial,value,note\n");
        for (int day = 0; day < 40; day++) {
            for (int student = 0; student < STUDENTS; student++) {
                for (int trial = 1; trial <= 3; trial++) {
                    log.append("S%04d,%s,line-steps,%d,%d,as usual%n"
                            .formatted(student, LocalDate.of(2024, 9, 2).plusDays(day), trial, trial + day % 7));
                }
            }
        }
        return new Bytes(log.toString().getBytes(StandardCharsets.UTF_8));
    }

    private static BulkLog.How<TrialRuns> how() {
        LogRules rules = new LogRules(
                Settings.usual(""),
                Catalogue.standard(),
                Optional.empty(),
                LocalDate.MAX,
                DateOrder.UNPROVEN,
                DecimalMark.POINT,
                Optional.empty(),
                "");
        return new BulkLog.How<>(
                any -> rules, LocalDate.of(2025, 3, 1), 1, any -> new TrialRuns(), any -> true, BulkWatch.NONE);
    }

    /** A log in memory. */
    private record Bytes(List<byte[]> held) implements ByteSource {
        Bytes(byte[] bytes) {
            this(List.of(bytes));
        }

        @Override
        public String name() {
            return "made.csv";
        }

        @Override
        public long size() {
            return held.get(0).length;
        }

        @Override
        public InputStream open() {
            return new ByteArrayInputStream(held.get(0));
        }
    }
}
