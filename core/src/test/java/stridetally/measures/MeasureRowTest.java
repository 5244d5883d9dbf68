package stridetally.measures;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import stridetally.model.Direction;
import stridetally.model.Summary;
import stridetally.problem.At;
import stridetally.problem.Checked;
import stridetally.problem.ProblemCode;
import stridetally.units.Amount;
import stridetally.units.Expecting;
import stridetally.units.Unit;

class MeasureRowTest {
    private static final Map<String, String> SWING =
            Map.of("id", "Swing Time", "unit", "sec", "better", "higher", "kind", "duration");

    @Test
    void aNewMeasureNeedsOnlyIdUnitBetterAndKind() {
        Measure measure = parse(SWING).value().orElseThrow();
        assertEquals("swing-time", measure.id().text());
        assertEquals("swing time", measure.name());
        assertEquals(Unit.SECONDS, measure.unit());
        assertEquals(Optional.of(Direction.HIGHER), measure.better());
        assertEquals(Summary.MEAN, measure.summary());
        assertEquals(Rhythm.PROBE, measure.rhythm());
        assertEquals(Sidedness.NONE, measure.sidedness());
        assertEquals("any", measure.possible().text());
        assertEquals(Expecting.AMOUNT, measure.kind().expecting());
    }

    @Test
    void readsEveryColumn() {
        Map<String, String> row = new HashMap<>(SWING);
        row.putAll(Map.of("plain", "seconds on the swing", "better", "None", "rhythm", "review", "usual_trials", "2"));
        row.putAll(Map.of("summary", "best", "possible_low", "0.5", "possible_high", "600", "sides", "required"));
        row.putAll(Map.of("protocol_keys", "helpers surface", "decimals", "1", "cautions", "Hold the ropes."));
        Measure measure = parse(row).value().orElseThrow();
        assertEquals("seconds on the swing", measure.plain());
        assertEquals(Optional.empty(), measure.better());
        assertEquals(Rhythm.REVIEW, measure.rhythm());
        assertEquals(2, measure.usualTrials());
        assertEquals(Summary.BEST, measure.summary());
        assertEquals(new Range(Optional.of(Amount.of("0.5")), Optional.of(Amount.of("600"))), measure.possible());
        assertEquals(Sidedness.REQUIRED, measure.sidedness());
        assertEquals(List.of("helpers", "surface"), measure.protocolKeys());
        assertEquals(1, measure.decimals());
        assertEquals("Hold the ropes.", measure.cautions());
    }

    @ParameterizedTest
    @CsvSource({
        "id, '', FIELD_MISSING",
        "unit, '', FIELD_MISSING",
        "unit, furlong, UNIT_UNKNOWN",
        "unit, m, UNIT_OF_ANOTHER_KIND",
        "better, '', FIELD_MISSING",
        "better, more, FIELD_UNREADABLE",
        "kind, '', FIELD_MISSING",
        "kind, length, FIELD_UNREADABLE",
        "summary, average, FIELD_UNREADABLE",
        "rhythm, weekly, FIELD_UNREADABLE",
        "usual_trials, 0, FIELD_UNREADABLE",
        "usual_trials, three, FIELD_UNREADABLE",
        "decimals, 10, FIELD_UNREADABLE",
        "possible_low, '1,5', FIELD_UNREADABLE",
        "possible_high, 1e3, FIELD_UNREADABLE",
        "sides, both, FIELD_UNREADABLE"
    })
    void namesTheColumnThatCannotBeRead(String heading, String cell, ProblemCode code) {
        Map<String, String> row = new HashMap<>(SWING);
        row.put(heading, cell);
        Checked<Measure> checked = parse(row);
        assertTrue(checked.value().isEmpty());
        assertEquals(1, checked.problems().size());
        assertEquals(code, checked.problems().get(0).code());
        assertEquals(heading, checked.problems().get(0).at().heading());
    }

    @Test
    void refusesLimitsInTheWrongOrder() {
        Map<String, String> row = new HashMap<>(SWING);
        row.putAll(Map.of("plausible_low", "9", "plausible_high", "3"));
        assertEquals("plausible_high", parse(row).problems().get(0).at().heading());
    }

    private static Checked<Measure> parse(Map<String, String> row) {
        return MeasureRow.parse(row, At.row("measures.csv", 2), Catalogue.standard());
    }
}
