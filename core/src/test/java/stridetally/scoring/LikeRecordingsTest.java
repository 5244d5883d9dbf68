package stridetally.scoring;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import stridetally.ingest.SeriesNumbers;
import stridetally.measures.Catalogue;
import stridetally.measures.Measure;
import stridetally.model.GoalSide;
import stridetally.model.MeasureId;
import stridetally.model.Protocol;
import stridetally.model.SeriesKey;
import stridetally.model.Side;
import stridetally.model.TrialPlace;
import stridetally.model.Use;

/** Recordings that were not taken alike are no series. */
class LikeRecordingsTest {
    private static final Measure SWAY =
            Catalogue.standard().find(new MeasureId("sway-path")).orElseThrow();

    private final SeriesNumbers numbers = new SeriesNumbers();
    private final int slow = series("rate=50;filter=none");
    private final int fast = series("rate=100;filter=none");
    private final int silent = series("");

    @Test
    void theLatestRecordingSaysWhichAreMeantWhereTheGoalDoesNot() {
        assertEquals(List.of(fast, silent), taken(Map.of(), 3, 7, 1));
        assertEquals(List.of(slow, silent), taken(Map.of(), 9, 7, 1));
    }

    @Test
    void whatTheGoalNamesIsWhatItTakes() {
        assertEquals(List.of(slow, silent), taken(Map.of("rate", "50"), 3, 7, 1));
    }

    @Test
    void whatIsLeftOutIsToldWithItsKeys() {
        GoalMatch.Found found = found(Map.of(), 3, 7, 1);
        assertEquals(List.of(new GoalMatch.NotTaken(slow, WhyNotUsed.PROTOCOL, "rate")), found.notTaken());
    }

    @Test
    void recordingsOfOneDayAreChosenTheSameWayWhateverTheOrderOfTheLog() {
        assertEquals(List.of(slow, silent), taken(Map.of(), 7, 7, 7), "rate=50 comes after rate=100 as text");
    }

    private List<Integer> taken(Map<String, String> protocol, int... days) {
        return found(protocol, days).taken().stream()
                .map(GoalMatch.Taken::series)
                .toList();
    }

    private GoalMatch.Found found(Map<String, String> protocol, int... days) {
        GoalDraft draft = new GoalDraft();
        draft.side = GoalSide.NONE;
        draft.protocol = protocol;
        return new GoalMatch("L", numbers, series -> days[series]).find(draft.goal(), SWAY);
    }

    private int series(String protocol) {
        TreeMap<String, String> keys = new TreeMap<>();
        for (String pair : protocol.isEmpty() ? new String[0] : protocol.split(";", -1)) {
            keys.put(pair.substring(0, pair.indexOf('=')), pair.substring(pair.indexOf('=') + 1));
        }
        return numbers.number(new SeriesKey(
                "", Tries.STUDENT, Tries.STEPS, Side.NONE, new Protocol(keys), TrialPlace.SCHOOL, Use.PROBE));
    }
}
