package stridetally.logbook;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.util.List;
import org.junit.jupiter.api.Test;
import stridetally.ingest.DateOrder;
import stridetally.ingest.KnownTrials;
import stridetally.problem.InputRefused;

/** The order of day and month is proven by the whole file or declared, never guessed: our rule. Days by hand. */
class DateOrderTest {

    @Test
    void oneDayOverTwelveProvesTheOrderOfTheWholeFile() {
        assertEquals(List.of("2026-04-03", "2026-04-13"), days(DateOrder.UNPROVEN, "3/4/2026", "13/4/2026"));
        assertEquals(List.of("2026-03-04", "2026-04-13"), days(DateOrder.UNPROVEN, "3/4/2026", "4/13/2026"));
    }

    @Test
    void aFileThatProvesNothingIsRefusedWithTheFirstSuchCell() {
        String sentence = refusal(log("5/5/2026", "3/4/2026", "4/3/2026"));
        assertEquals(
                "log.csv:3:2 \"3/4/2026\" could be day or month first, and no date of the file proves which; say"
                        + " --date-order day-first or --date-order month-first",
                sentence);
    }

    @Test
    void aFileThatContradictsItselfIsRefusedWithBothCells() {
        String sentence = refusal(log("13/4/2026", "4/13/2026"));
        assertTrue(sentence.contains("log.csv:2:2 \"13/4/2026\" has the day first"), sentence);
        assertTrue(sentence.contains("log.csv:3:2 \"4/13/2026\" the month"), sentence);
        assertTrue(sentence.contains("--date-order"), sentence);
    }

    @Test
    void aDeclaredOrderHoldsAndWhatDoesNotFitIsSetAside() {
        ReadLog log = read(DateOrder.DAY_FIRST, log("3/4/2026", "4/13/2026"));
        assertEquals(List.of("2026-04-03"), daysOf(log));
        assertEquals("DATE_IMPOSSIBLE", log.setAside().get(0).codes());
        assertEquals(List.of("2026-03-04"), days(DateOrder.MONTH_FIRST, "3/4/2026"));
    }

    @Test
    void datesWhoseOrderIsPlainNeedNoProof() {
        assertEquals(
                List.of("2026-05-05", "2026-04-03", "2026-04-04"),
                days(DateOrder.UNPROVEN, "5/5/2026", "2026-04-03", "4 Apr 2026"));
        assertEquals(
                "DATE_IMPOSSIBLE",
                read(DateOrder.UNPROVEN, log("25/13/2026")).setAside().get(0).codes());
    }

    private static List<String> days(DateOrder order, String... written) {
        return daysOf(read(order, log(written)));
    }

    private static List<String> daysOf(ReadLog log) {
        return log.rows().stream().map(row -> row.get(2)).toList();
    }

    private static String refusal(String log) {
        return String.valueOf(assertThrows(InputRefused.class, () -> read(DateOrder.UNPROVEN, log))
                .getMessage());
    }

    private static ReadLog read(DateOrder order, String log) {
        return ReadLog.of(
                log.getBytes(StandardCharsets.UTF_8),
                ReadLog.rules().with(order),
                new KnownTrials(),
                1,
                TrialImport.Clash.SET_ASIDE);
    }

    private static String log(String... dates) {
        StringBuilder log = new StringBuilder("student,date,measure,value,help,place\n");
        for (String date : dates) {
            log.append("S01,").append(date).append(",line-steps,4,independent,school\n");
        }
        return log.toString();
    }
}
