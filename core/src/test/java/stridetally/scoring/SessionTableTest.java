package stridetally.scoring;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import stridetally.ingest.ReadingKind;
import stridetally.ingest.SeriesNumbers;
import stridetally.model.Side;
import stridetally.units.Amount;

/** What goes into the table comes out of it, in its order. */
class SessionTableTest {

    @ParameterizedTest
    @ValueSource(
            longs = {
                0,
                1,
                -1,
                7,
                8_410_000_000L,
                -8_410_000_000L,
                123_400_000L,
                5_000_000_000L,
                Long.MAX_VALUE,
                Long.MIN_VALUE + 1
            })
    void keepsEveryAmountExactly(long billionths) {
        SessionTable table = new SessionTable(new SeriesNumbers());
        int series = table.numbers().number(Tries.key(Side.NONE));
        table.trial(series, -40_000, 0, 3, ReadingKind.AT_MOST, billionths, 1, 10, -1, 77);
        TrialGroup group = table.index().of(series).get(0);
        assertEquals(billionths, group.value(0));
        assertEquals(ReadingKind.AT_MOST, group.kind(0));
        assertEquals(List.of(3, 1, 10, -1), List.of(group.number(0), group.given(0), group.help(0), group.prompt(0)));
        assertEquals(77, group.origin(0));
        assertEquals(LocalDate.ofEpochDay(-40_000), group.date());
    }

    @Test
    void keepsTriesMetAndGiven() {
        TrialGroup group = Tries.group("3/250 unable");
        assertEquals(3, group.value(0));
        assertEquals(250, group.given(0));
        assertEquals(ReadingKind.UNABLE, group.kind(1));
    }

    /**
     * Without a trial number it is the ordinal in file order. Tries are given as number:line:value in order of arrival; 0 is
     * no number.
     */
    @ParameterizedTest(name = "{0}: {1} -> {2}")
    @CsvSource(delimiter = '|', textBlock = """
            by number                    | 3:1:7 1:2:5 2:3:6 | 5 6 7
            by line without numbers      | 0:3:7 0:1:5 0:2:6 | 5 6 7
            # lines 1 2 3 are 5 6 7; the one without a number stands third
            one without a number         | 0:3:7 2:2:6 1:1:5 | 5 6 7
            equal numbers in file order  | 1:9:6 1:8:5 2:1:7 | 5 6 7
            one row holds several tries  | 0:1:5 0:1:6 0:1:7 | 5 6 7
            """)
    void ordersTheTriesOfASession(String rule, String arrived, String ordered) {
        SessionTable table = new SessionTable(new SeriesNumbers());
        int series = table.numbers().number(Tries.key(Side.NONE));
        for (String one : arrived.split(" ", -1)) {
            String[] parts = one.split(":", -1);
            table.trial(
                    series,
                    5,
                    0,
                    Integer.parseInt(parts[0]),
                    ReadingKind.EXACT,
                    Amount.of(parts[2]).billionths(),
                    1,
                    0,
                    0,
                    Long.parseLong(parts[1]));
        }
        TrialGroup group = table.index().of(series).get(0);
        StringBuilder seen = new StringBuilder();
        for (int row = 0; row < group.size(); row++) {
            seen.append(row == 0 ? "" : " ").append(new Amount(group.value(row)).text());
        }
        assertEquals(ordered, seen.toString());
    }

    @Test
    void aLabelSplitsADayAndSessionsComeByDayAndLabel() {
        SessionTable table = new SessionTable(new SeriesNumbers());
        int series = table.numbers().number(Tries.key(Side.NONE));
        LocalDate day = LocalDate.of(2026, 3, 2);
        Tries.feed(table, series, day, "pm", "3");
        Tries.feed(table, series, day, "am", "2");
        Tries.feed(table, series, day, "", "1");
        Tries.feed(table, series, day.minusDays(1), "", "0");
        assertEquals(
                List.of("2026-03-01", "2026-03-02", "2026-03-02am", "2026-03-02pm"),
                table.index().of(series).stream()
                        .map(group -> group.date() + group.label())
                        .toList());
    }

    @Test
    void theSameDayInTwoSeriesIsOneSessionWhenBothAreTaken() {
        SessionTable table = new SessionTable(new SeriesNumbers());
        int left = table.numbers().number(Tries.key(Side.LEFT));
        int right = table.numbers().number(Tries.key(Side.RIGHT));
        Tries.feed(table, left, Tries.DAY, "", "#1=5 #3=7");
        Tries.feed(table, right, Tries.DAY, "", "#2=6");
        Tries.feed(table, right, Tries.DAY.plusDays(1), "", "9");
        List<TrialGroup> joined = table.index().joined(List.of(left, right));
        assertEquals(2, joined.size());
        assertEquals(3, joined.get(0).size());
        assertEquals(Amount.of("6").billionths(), joined.get(0).value(1));
    }

    @Test
    void manySessionsInLittleMemory() {
        // 20 000 sessions of 5 tries: several pages, and growth of every column and of the slots.
        SessionTable table = new SessionTable(new SeriesNumbers());
        int series = table.numbers().number(Tries.key(Side.NONE));
        long line = 0;
        for (int day = 0; day < 20_000; day++) {
            for (int number = 1; number <= 5; number++) {
                long value = Amount.of("8.41").billionths() + number * Amount.ONE + day % 7;
                table.trial(series, day, 0, number, ReadingKind.EXACT, value, 1, 0, 0, ++line);
            }
        }
        assertEquals(20_000, table.size());
        List<TrialGroup> groups = table.index().of(series);
        for (int day = 0; day < 20_000; day++) {
            TrialGroup group = groups.get(day);
            assertEquals(5, group.size());
            assertEquals(Amount.of("13.41").billionths() + day % 7, group.value(4));
            assertEquals(5L * day + 5, group.origin(4));
        }
        // Kept exactly: about 12 bytes a try here, where the odd billionth makes a value long.
        assertTrue(table.trialBytes() > 100_000 * 6, "bytes " + table.trialBytes());
        assertTrue(table.trialBytes() < 100_000 * 16, "bytes " + table.trialBytes());
    }
}
