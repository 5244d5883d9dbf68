package stridetally.ingest;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import stridetally.model.MeasureId;
import stridetally.model.Protocol;
import stridetally.model.SeriesKey;
import stridetally.model.Side;
import stridetally.model.StudentCode;
import stridetally.model.TrialPlace;
import stridetally.model.Use;

final class SeriesNumbersTest {

    @Test
    void eachKeyKeepsItsNumberHoweverManyThereAre() {
        SeriesNumbers numbers = new SeriesNumbers();
        List<SeriesKey> keys = new ArrayList<>();
        for (int student = 0; student < 3_000; student++) {
            for (Side side : Side.values()) {
                keys.add(key("S" + student, side));
            }
        }
        for (int round = 0; round < 2; round++) {
            for (int k = 0; k < keys.size(); k++) {
                assertEquals(k, numbers.number(keys.get(k)));
            }
        }
        assertEquals(keys.size(), numbers.size());
        assertEquals(keys.get(4_711), numbers.key(4_711));
    }

    /** "Aa" and "BB" have one hash (a fact of the Java language specification's String.hashCode). */
    @Test
    void keysOfOneHashAreToldApart() {
        SeriesNumbers numbers = new SeriesNumbers();
        assertEquals(0, numbers.number(key("Aa", Side.NONE)));
        assertEquals(1, numbers.number(key("BB", Side.NONE)));
        assertEquals(0, numbers.number(key("Aa", Side.NONE)));
        assertEquals(1, numbers.number(key("BB", Side.NONE)));
    }

    private static SeriesKey key(String student, Side side) {
        return new SeriesKey(
                "",
                new StudentCode(student),
                new MeasureId("line-steps"),
                side,
                new Protocol(new TreeMap<>()),
                TrialPlace.SCHOOL,
                Use.PROBE);
    }
}
