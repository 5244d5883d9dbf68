package stridetally.scoring;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import stridetally.model.MeasureId;
import stridetally.model.Protocol;
import stridetally.model.SeriesKey;
import stridetally.model.Side;
import stridetally.model.StudentCode;
import stridetally.model.Trial;
import stridetally.model.TrialPlace;
import stridetally.model.Use;
import stridetally.units.Amount;
import stridetally.units.Reading;

/** Which tries of two observers are one try: hand-made logs. */
final class ObserverPairsTest {
    private static final MeasureId STEPS = new MeasureId("line-steps");

    private static Trial trial(String observer, int number, String value) {
        return trial(observer, number, value, Map.of());
    }

    private static Trial trial(String observer, int number, String value, Map<String, String> protocol) {
        return new Trial(
                new SeriesKey(
                        "",
                        new StudentCode("s-1"),
                        STEPS,
                        Side.NONE,
                        new Protocol(new TreeMap<>(protocol)),
                        TrialPlace.SCHOOL,
                        Use.PROBE),
                LocalDate.parse("2026-12-03"),
                "",
                number,
                new Reading.Exact(Amount.of(value)),
                Optional.empty(),
                Optional.empty(),
                observer,
                "",
                "",
                "",
                value);
    }

    private static String text(ObserverPairs pairs) {
        return pairs.byMeasure().getOrDefault(STEPS, List.of()).stream()
                .map(ObserverPairsTest::text)
                .collect(Collectors.joining(" | "));
    }

    private static String text(ObserverPairs.OfObservers found) {
        StringBuilder text = new StringBuilder();
        found.pairs()
                .forEach(pair -> text.append(pair.first().asWritten())
                        .append('/')
                        .append(pair.second().asWritten())
                        .append(' '));
        return text + "alone " + found.firstAlone().size() + " "
                + found.secondAlone().size();
    }

    @Test
    void twoObserversInOneLogArePairedByTrialNumber() {
        ObserverPairs pairs = new ObserverPairs();
        pairs.add(trial("pt-1", 1, "4"));
        pairs.add(trial("pt-1", 2, "5"));
        pairs.add(trial("pta-1", 2, "6"));
        pairs.add(trial("pta-1", 1, "3"));
        assertEquals("4/3 5/6 alone 0 0", text(pairs));
    }

    @Test
    void withoutNumbersTheOrderOfEachObserversRowsCounts() {
        ObserverPairs pairs = new ObserverPairs();
        pairs.add(trial("pt-1", 0, "4"));
        pairs.add(trial("pta-1", 0, "3"));
        pairs.add(trial("pt-1", 0, "5"));
        pairs.add(trial("pta-1", 0, "6"));
        assertEquals("4/3 5/6 alone 0 0", text(pairs));
    }

    @Test
    void aLogGivenApartIsTheSecondObserversWhateverItsObserverCell() {
        ObserverPairs pairs = new ObserverPairs();
        pairs.addSecond(trial("", 1, "3"));
        pairs.add(trial("", 1, "4"));
        assertEquals("4/3 alone 0 0", text(pairs));
    }

    @Test
    void differentNumbersOfTriesAreSaid() {
        ObserverPairs pairs = new ObserverPairs();
        pairs.add(trial("pt-1", 1, "4"));
        pairs.add(trial("pt-1", 2, "5"));
        pairs.add(trial("pt-1", 3, "6"));
        pairs.addSecond(trial("pta-1", 1, "4"));
        pairs.addSecond(trial("pta-1", 4, "9"));
        assertEquals("4/4 alone 2 1", text(pairs));
    }

    @Test
    void protocolsThatContradictAreNotOneTry() {
        ObserverPairs pairs = new ObserverPairs();
        pairs.add(trial("pt-1", 1, "4", Map.of("shoes", "on", "line_length", "3m")));
        pairs.addSecond(trial("pta-1", 1, "4", Map.of("shoes", "off")));
        assertEquals("alone 1 1", text(pairs));
        ObserverPairs silent = new ObserverPairs();
        silent.add(trial("pt-1", 1, "4", Map.of("shoes", "on", "line_length", "3m")));
        silent.addSecond(trial("pta-1", 1, "5", Map.of("shoes", "on")));
        assertEquals("4/5 alone 0 0", text(silent));
    }

    @Test
    void aLogOfOneObserverHasNothingToCompare() {
        ObserverPairs pairs = new ObserverPairs();
        pairs.add(trial("pt-1", 1, "4"));
        pairs.add(trial("pt-1", 1, "5"));
        assertTrue(pairs.byMeasure().isEmpty());
    }

    @Test
    void aThirdObserverIsComparedWithEachOfTheOthersAndLumpedWithNone() {
        ObserverPairs pairs = new ObserverPairs();
        pairs.add(trial("pt-1", 1, "4"));
        pairs.add(trial("pt-1", 2, "5"));
        pairs.add(trial("pta-1", 1, "3"));
        pairs.add(trial("pta-1", 2, "6"));
        pairs.add(trial("pta-2", 1, "9"));
        // By hand: pt-1 with pta-1, pt-1 with pta-2 (which lacks try 2), pta-1 with pta-2.
        assertEquals("4/3 5/6 alone 0 0 | 4/9 alone 1 0 | 3/9 alone 1 0", text(pairs));
    }

    @Test
    void tryTwiceWrittenIsNotGuessed() {
        ObserverPairs pairs = new ObserverPairs();
        pairs.add(trial("pt-1", 1, "4"));
        pairs.add(trial("pta-1", 1, "3"));
        pairs.add(trial("pta-1", 1, "5"));
        assertEquals("alone 1 2", text(pairs));
    }
}
