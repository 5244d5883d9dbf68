package stridetally.measures;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import stridetally.model.Protocol;
import stridetally.problem.At;
import stridetally.problem.Checked;
import stridetally.problem.ProblemCode;
import stridetally.problem.RowProblem;

class ProtocolTextTest {
    private static final Measure LINE_STEPS =
            Catalogue.standard().find("line-steps").orElseThrow();

    @ParameterizedTest
    @CsvSource({
        "'', ''",
        "' ; ', ''",
        "shoes=on, shoes=on",
        "surface=floor;line_length=3m, line_length=3m;surface=floor",
        "Line Length = 3 M ; Shoes=ON;, line_length=3m;shoes=on",
        "line-width=5 cm, line_width=5cm",
        "surface=gym  floor, surface=gym floor",
        "shoes=on;shoes=ON, shoes=on"
    })
    void writesOneProtocolOneWay(String written, String text) {
        Checked<Protocol> checked = parse(written);
        assertTrue(checked.problems().isEmpty(), () -> checked.problems().toString());
        assertEquals(text, checked.value().orElseThrow().text());
    }

    @ParameterizedTest
    @CsvSource({
        "shoes, PROTOCOL_UNREADABLE",
        "shoes=, PROTOCOL_UNREADABLE",
        "=on, PROTOCOL_UNREADABLE",
        "shoes=on=off, PROTOCOL_UNREADABLE",
        "shoes=on;shoes=off, PROTOCOL_UNREADABLE",
        "weather=dry, PROTOCOL_KEY_UNKNOWN",
        "rail=left, PROTOCOL_KEY_UNKNOWN"
    })
    void refusesWhatIsNotAPairOfThisMeasure(String written, ProblemCode code) {
        Checked<Protocol> checked = parse(written);
        assertTrue(checked.value().isEmpty());
        assertEquals(code, checked.problems().get(0).code());
    }

    @Test
    void suggestsTheKeyThatWasMeant() {
        RowProblem problem = parse("sheos=on").problems().get(0);
        assertEquals("did you mean shoes?", problem.mend());
        assertEquals("sheos", problem.found());
    }

    @Test
    void namesEveryPairThatCannotBeRead() {
        assertEquals(2, parse("shoes;weather=dry;surface=floor").problems().size());
    }

    private static Checked<Protocol> parse(String text) {
        return ProtocolText.parse(text, LINE_STEPS, At.row("log.csv", 7));
    }
}
