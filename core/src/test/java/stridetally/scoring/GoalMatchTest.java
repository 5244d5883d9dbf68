package stridetally.scoring;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import stridetally.ingest.SeriesNumbers;
import stridetally.measures.Measure;
import stridetally.measures.MeasureKind;
import stridetally.measures.Sidedness;
import stridetally.model.Direction;
import stridetally.model.GoalSide;
import stridetally.model.Protocol;
import stridetally.model.SeriesKey;
import stridetally.model.Side;
import stridetally.model.Summary;
import stridetally.model.TrialPlace;
import stridetally.model.Use;

/** Which series a goal takes, and why not the others. */
class GoalMatchTest {

    @ParameterizedTest(name = "{0}: {1} {2} goal, trial {3} {4} -> {5}")
    @CsvSource(delimiter = '|', textBlock = """
            a goal takes a trial when every key that it names is equal | NONE | NONE     | NONE  | eyes=open;surface=floor | taken
            one key differs                                            | NONE | NONE     | NONE  | eyes=closed;surface=floor | PROTOCOL eyes
            two keys differ                                            | NONE | NONE     | NONE  | eyes=closed;surface=foam | PROTOCOL eyes surface
            a trial types only departures from the goal's usual        | NONE | NONE     | NONE  | eyes=open | taken
            keys that the goal does not name do not matter             | NONE | NONE     | NONE  | eyes=open;surface=floor;shoes=on | taken
            a measure without sides does not look at a side            | NONE | NONE     | LEFT  | '' | taken
            left                                                       | LEFT | REQUIRED | LEFT  | '' | taken LEFT
            the other side                                             | LEFT | REQUIRED | RIGHT | '' | OTHER_SIDE right
            a sided trial without a side                               | LEFT | REQUIRED | NONE  | '' | SIDE_MISSING
            each takes both                                            | EACH | REQUIRED | RIGHT | '' | taken RIGHT
            either takes both                                          | EITHER | REQUIRED | LEFT | '' | taken LEFT
            a goal without a side on a sided measure takes none        | NONE | REQUIRED | LEFT  | '' | OTHER_SIDE left
            a goal without a side where sides may be written           | NONE | OPTIONAL | NONE  | '' | taken
            a written side is not mixed with none                      | NONE | OPTIONAL | RIGHT | '' | OTHER_SIDE right
            a goal with a side where sides may be written              | LEFT | OPTIONAL | NONE  | '' | SIDE_MISSING
            a goal's side on a measure without sides is not looked at  | LEFT | NONE     | NONE  | '' | taken
            """)
    void bySideAndProtocol(
            String rule, GoalSide goalSide, Sidedness sidedness, Side side, String protocol, String expected) {
        GoalDraft draft = new GoalDraft();
        draft.side = goalSide;
        draft.protocol = Map.of("eyes", "open", "surface", "floor");
        Measure measure = Tries.measure(MeasureKind.DURATION, Optional.of(Direction.HIGHER), Summary.BEST, sidedness);
        SeriesKey key =
                new SeriesKey("", Tries.STUDENT, Tries.STEPS, side, protocol(protocol), TrialPlace.SCHOOL, Use.PROBE);
        assertEquals(expected, found(draft, measure, key));
    }

    @ParameterizedTest(name = "{0} {1} -> {2}")
    @CsvSource(delimiter = '|', textBlock = """
            SCHOOL | PROBE    | taken
            CLINIC | PROBE    | taken
            HOME   | PROBE    | ANOTHER_PLACE home
            SCHOOL | PRACTICE | PRACTICE
            HOME   | PRACTICE | PRACTICE
            """)
    void byPlaceAndUse(TrialPlace place, Use use, String expected) {
        SeriesKey key = new SeriesKey("", Tries.STUDENT, Tries.STEPS, Side.NONE, Protocol.NONE, place, use);
        assertEquals(expected, found(new GoalDraft(), Tries.steps(), key));
    }

    private static String found(GoalDraft draft, Measure measure, SeriesKey key) {
        SeriesNumbers numbers = new SeriesNumbers();
        numbers.number(key);
        GoalMatch.Found found = new GoalMatch("L", numbers, series -> 0).find(draft.goal(), measure);
        if (found.taken().isEmpty()) {
            GoalMatch.NotTaken other = found.notTaken().get(0);
            return (other.why() + " " + other.detail()).strip();
        }
        Side side = found.taken().get(0).side();
        return side == Side.NONE ? "taken" : "taken " + side;
    }

    private static Protocol protocol(String text) {
        TreeMap<String, String> keys = new TreeMap<>();
        for (String pair : text.isEmpty() ? new String[0] : text.split(";", -1)) {
            String[] parts = pair.split("=", -1);
            keys.put(parts[0], parts[1]);
        }
        return new Protocol(keys);
    }
}
