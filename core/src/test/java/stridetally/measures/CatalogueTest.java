package stridetally.measures;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import stridetally.model.Direction;
import stridetally.model.MeasureId;
import stridetally.model.Summary;
import stridetally.problem.At;
import stridetally.units.Amount;
import stridetally.units.Unit;

/** Names and conventions of measures are common practice of the trade, no source; limits are our judgement. */
class CatalogueTest {
    private final Catalogue catalogue = Catalogue.standard();

    @ParameterizedTest
    @ValueSource(
            strings = {
                "line-steps",
                "line-share",
                "step-offs",
                "line-time",
                "beam-steps",
                "tandem-steps",
                "side-steps",
                "back-steps",
                "turn-steps",
                "single-leg-stance",
                "single-leg-stance-closed",
                "tandem-stance",
                "functional-reach",
                "lateral-reach",
                "balance-total",
                "timed-up-and-go",
                "stairs-time",
                "floor-to-stand",
                "walk-time",
                "walk-distance",
                "walk-steps",
                "walk-speed",
                "cadence",
                "step-length",
                "walk-30s",
                "walk-1min",
                "walk-2min",
                "walk-6min",
                "shuttle-laps",
                "sprint-10x5",
                "jump-distance",
                "jump-count",
                "leap-distance",
                "hop-count",
                "hop-distance",
                "success",
                "independent-share",
                "rests",
                "side-time",
                "falls"
            })
    void knowsEveryMeasureThatALogMayName(String id) {
        assertEquals(
                Optional.of(id), catalogue.find(id).map(measure -> measure.id().text()));
        assertTrue(catalogue.find(new MeasureId(id)).isPresent());
    }

    @Test
    void everySourceIsListedAndEveryListedSourceIsUsed() {
        Map<String, String> citations = Catalogue.citations();
        Set<String> used = new TreeSet<>();
        for (Measure measure : catalogue.all()) {
            assertFalse(measure.source().isBlank(), measure.id()::text);
            used.addAll(List.of(measure.source().split(" ", -1)));
        }
        PublishedError.all().forEach(error -> used.add(error.source()));
        Reference.all().forEach(value -> used.add(value.source()));
        assertEquals(new TreeSet<>(citations.keySet()), used);
        citations.forEach((id, citation) -> assertFalse(citation.isBlank(), id));
    }

    @Test
    void everyPlausibleRangeLiesWithinThePossibleOne() {
        for (Measure measure : catalogue.all()) {
            assertTrue(measure.possible().low().isPresent(), measure.id()::text);
            assertTrue(measure.possible().high().isPresent(), measure.id()::text);
            measure.plausible()
                    .low()
                    .ifPresent(end -> assertTrue(measure.possible().holds(end), measure.id()::text));
            measure.plausible()
                    .high()
                    .ifPresent(end -> assertTrue(measure.possible().holds(end), measure.id()::text));
        }
    }

    @Test
    void everyMeasureHasPlainWordsAndAnAliasForOneMeasureOnly() {
        Set<String> aliases = new HashSet<>();
        for (Map<String, String> row : CatalogueResource.records("measures.tsv")) {
            Set<String> own = new HashSet<>(
                    Arrays.asList((row.get("id") + "|" + row.get("name") + "|" + row.get("aliases")).split("\\|", -1)));
            Set<String> folded = new HashSet<>();
            own.forEach(name -> folded.add(Catalogue.fold(name)));
            assertTrue(folded.stream().noneMatch(aliases::contains), () -> "a name of " + row.get("id") + " is taken");
            aliases.addAll(folded);
            assertFalse(String.valueOf(row.get("plain")).isBlank());
            assertFalse(String.valueOf(row.get("cautions")).isBlank());
        }
    }

    @Test
    void aMeasureWithoutABetterWayIsOneThatNobodyCanImproveByItself() {
        Set<String> without = new TreeSet<>();
        catalogue.all().stream()
                .filter(measure -> measure.better().isEmpty())
                .forEach(measure -> without.add(measure.id().text()));
        assertEquals(
                Set.of(
                        "cadence",
                        "walk-steps",
                        "walk-ratio",
                        "stride-time",
                        "step-time",
                        "stance-share",
                        "swing-share",
                        "single-support",
                        "sway-frequency"),
                without);
    }

    @Test
    void testsOfMaximalEffortAndTotalScoresAreTakenAFewTimesAYear() {
        Set<String> review = new TreeSet<>();
        catalogue.all().stream()
                .filter(measure -> measure.rhythm() == Rhythm.REVIEW)
                .forEach(measure -> review.add(measure.id().text()));
        assertEquals(Set.of("balance-total", "walk-6min", "shuttle-laps"), review);
    }

    @ParameterizedTest
    @CsvSource({
        "line-steps, STEPS, HIGHER, BEST",
        "step-offs, COUNT, LOWER, MEAN",
        "falls, COUNT, LOWER, TOTAL",
        "single-leg-stance, SECONDS, HIGHER, BEST",
        "timed-up-and-go, SECONDS, LOWER, MEAN",
        "stairs-time, SECONDS, LOWER, BEST",
        "functional-reach, CENTIMETRES, HIGHER, MEAN",
        "success, PROPORTION, HIGHER, MEAN",
        "walk-30s, METRES, HIGHER, MEAN"
    })
    void summarisesAsTheTradeDoes(String id, Unit unit, Direction better, Summary summary) {
        Measure measure = catalogue.find(id).orElseThrow();
        assertEquals(unit, measure.unit());
        assertEquals(Optional.of(better), measure.better());
        assertEquals(summary, measure.summary());
    }

    @ParameterizedTest
    @CsvSource({
        "Line Steps, line-steps",
        "LINE_STEPS, line-steps",
        "line–steps, line-steps",
        "' single  leg   stance ', single-leg-stance",
        "SLS, single-leg-stance",
        "TUG, timed-up-and-go",
        "timed up and down stairs, stairs-time",
        "6MWT, walk-6min",
        "standing long jump, jump-distance",
        "percent independent, independent-share"
    })
    void findsByIdTradeNameAndAlias(String written, String id) {
        assertEquals(
                Optional.of(id),
                catalogue.find(written).map(measure -> measure.id().text()));
    }

    @ParameterizedTest
    @CsvSource({
        "line-setps, line-steps",
        "cadense, cadence",
        "Functional Reech, functional-reach",
        "my hops count, hop-count",
        "Stairs up, stairs-time",
        "tandem stance on foam, tandem-stance"
    })
    void suggestsTheMeasureThatWasMeant(String written, String id) {
        assertTrue(catalogue.find(written).isEmpty());
        assertEquals(Optional.of(id), catalogue.nearest(written));
    }

    @Test
    void suggestsNothingForAForeignWord() {
        assertEquals(Optional.empty(), catalogue.nearest("spelling quiz"));
        // "walk" stands in the names of a dozen measures, and a unit in those of none.
        assertEquals(Optional.empty(), catalogue.nearest("Walk 30 ft"));
        assertEquals(Optional.empty(), catalogue.nearest("seconds of fun"));
        assertEquals(Optional.empty(), catalogue.nearest(""));
    }

    @Test
    void aMeasureOfSomebodysOwnIsAddedOrStandsInPlaceOfOurs() {
        Measure shorter = measure(Map.of("id", "line steps", "plausible_high", "40"));
        Measure swing = measure(Map.of("id", "swing-time", "unit", "s", "better", "higher", "kind", "duration"));
        Catalogue both = catalogue.with(List.of(shorter, swing));
        assertEquals(catalogue.all().size() + 1, both.all().size());
        Measure found = both.find("line walk").orElseThrow();
        assertEquals(Optional.of(Amount.of("40")), found.plausible().high());
        assertEquals(catalogue.find("line-steps").orElseThrow().plain(), found.plain());
        assertEquals(Optional.of(swing), both.find("Swing time"));
        assertTrue(catalogue.find("swing-time").isEmpty());
    }

    private Measure measure(Map<String, String> row) {
        return MeasureRow.parse(row, At.row("measures.csv", 2), catalogue)
                .value()
                .orElseThrow();
    }
}
