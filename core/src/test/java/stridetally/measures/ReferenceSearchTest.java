package stridetally.measures;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import stridetally.model.MeasureId;
import stridetally.model.Protocol;
import stridetally.model.Student;
import stridetally.model.StudentCode;

class ReferenceSearchTest {
    private static final LocalDate DAY = LocalDate.parse("2026-11-20");

    private static Optional<Student> child(String born, String sex) {
        return Optional.of(new Student(
                new StudentCode("s-1"),
                "",
                "",
                Optional.empty(),
                Optional.empty(),
                "",
                born,
                sex,
                "",
                "",
                "",
                List.of()));
    }

    private static ReferenceSearch search(String measure, Map<String, String> protocol, Optional<Student> child) {
        return ReferenceSearch.of(new MeasureId(measure), new Protocol(new TreeMap<>(protocol)), child, DAY);
    }

    private static double expected(
            String measure, Map<String, String> protocol, String sex, int years, int cm, int kg) {
        ReferenceSearch found = search(measure, protocol, child((2026 - years) + "-11", sex));
        Reference equation = found.serves().stream()
                .filter(Reference::needsBody)
                .findFirst()
                .orElseThrow(() -> new AssertionError(found.why()));
        return equation.expected(found.months(), cm, kg);
    }

    /** del Corral et al. 2021, equations for a flight of 10 steps; by hand for 8 years, 28 kg, 1.30 m. */
    @Test
    void theStairsEquationsGiveTheWorkedValues() {
        assertEquals(5.9012, expected("stairs-time", Map.of("step_count", "10"), "m", 8, 130, 28), 1e-9);
        assertEquals(6.4052, expected("stairs-time", Map.of("step_count", "10"), "f", 8, 130, 28), 1e-9);
    }

    /** Puci et al., equation with height in centimetres; by hand for boys, near the sample medians 511, 603, 649 m. */
    @ParameterizedTest
    @CsvSource({"8,130,28,593.19", "6,118,22,525.21", "10,141,36,654.05"})
    void theSixMinuteEquationGivesTheWorkedValues(int years, int cm, int kg, double metres) {
        assertEquals(metres, expected("walk-6min", Map.of(), "m", years, cm, kg), 0.005);
    }

    /** As printed: Lammers 2008 at 5 years, Williams 2005, Norris 2008 at 4 years, Knutson 2009 at 8 years in feet. */
    @Test
    void meansAndSpreadsAreThoseOfTheSources() {
        Reference walk =
                search("walk-6min", Map.of(), child("2021-03", "")).serves().get(0);
        assertEquals("420.0 39.0", walk.mean() + " " + walk.sd().orElseThrow());
        Reference upAndGo = search("timed-up-and-go", Map.of("target", "wall"), child("2019-03", ""))
                .serves()
                .get(0);
        assertEquals("5.1 0.8", upAndGo.mean() + " " + upAndGo.sd().orElseThrow());
        Reference reach = search("functional-reach", Map.of(), child("2022-03", ""))
                .serves()
                .get(0);
        assertEquals("13.6 3.0", reach.mean() + " " + reach.sd().orElseThrow());
        Reference thirty =
                search("walk-30s", Map.of(), child("2018-03", "")).serves().get(0);
        assertEquals(158.2, thirty.mean() / 0.3048, 1e-9);
        assertEquals(17.2, thirty.sd().orElseThrow() / 0.3048, 1e-9);
    }

    @Test
    void ageIsInWholeMonthsAndBothEndsOfAYearCount() {
        assertEquals("UK 4 years", group("2022-11"));
        assertEquals("UK 4 years", group("2021-12"));
        assertEquals("UK 5 years", group("2021-11"));
    }

    private static String group(String born) {
        return search("walk-6min", Map.of(), child(born, "")).serves().get(0).group();
    }

    @Test
    void whatDiffersOrIsMissingRefusesAndIsNamed() {
        assertEquals(
                "protocol key step_count is not written, the published value is for 10",
                search("stairs-time", Map.of(), child("2018-03", "f")).why());
        assertEquals(
                "protocol step_count=14, the published value is for 10",
                search("stairs-time", Map.of("step_count", "14"), child("2018-03", "f"))
                        .why());
        assertEquals(
                "sex in students.csv is missing, or is neither f nor m",
                search("stairs-time", Map.of("step_count", "10"), child("2018-03", ""))
                        .why());
        assertEquals(
                "birth_month is missing in students.csv, or is not written as 2019-03",
                search("walk-30s", Map.of(), child("March 2018", "f")).why());
        assertEquals(
                "the student is not in students.csv, so age and sex are not known",
                search("walk-30s", Map.of(), Optional.empty()).why());
        assertEquals(
                "no published value for an age of 13 years",
                search("walk-30s", Map.of(), child("2013-03", "f")).why());
        assertEquals(
                "protocol aid=walker: the children of the sources had none",
                search("walk-30s", Map.of("aid", "walker"), child("2018-03", "f"))
                        .why());
        assertEquals(
                "",
                search("walk-30s", Map.of("aid", "none"), child("2018-03", "f")).why());
        assertEquals(
                "no published value for this measure",
                search("single-leg-stance", Map.of(), child("2018-03", "f")).why());
    }

    @Test
    void everyValueHasItsSourceAndAnAgeOfAtMostFiveYears() {
        Set<String> citations = Catalogue.citations().keySet();
        for (Reference one : Reference.all()) {
            Measure measure = Catalogue.standard().find(one.measure()).orElseThrow();
            assertTrue(citations.contains(one.source()), one.source());
            assertTrue(measure.protocolKeys().containsAll(one.protocol().keySet()), one::toString);
            // A mean over more years than this says little of a child of one age; an equation knows the age.
            boolean narrow = one.monthsTo() - one.monthsFrom() < 60;
            assertTrue(one.needsBody() || narrow, one::toString);
            assertTrue(one.needsBody() || one.sd().isPresent(), one::toString);
        }
    }
}
