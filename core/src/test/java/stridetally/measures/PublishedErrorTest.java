package stridetally.measures;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import stridetally.model.MeasureId;
import stridetally.model.Protocol;
import stridetally.model.Student;
import stridetally.model.StudentCode;

final class PublishedErrorTest {
    private static final MeasureId WALK = new MeasureId("walk-6min");
    private static final LocalDate DAY = LocalDate.parse("2026-11-20");

    private static Optional<Student> student(String born, String population, String level) {
        return Optional.of(new Student(
                new StudentCode("s-1"),
                "",
                "",
                Optional.empty(),
                Optional.empty(),
                "",
                born,
                "",
                population,
                level,
                "",
                List.of()));
    }

    private static String why(MeasureId measure, Protocol protocol, Optional<Student> student) {
        PublishedError.Found found = PublishedError.find(measure, protocol, student, DAY);
        return found instanceof PublishedError.Found.None none ? none.why() : "served";
    }

    private static double served(MeasureId measure, Optional<Student> student) {
        PublishedError.Found found = PublishedError.find(measure, Protocol.NONE, student, DAY);
        assertTrue(found instanceof PublishedError.Found.Serves, found::toString);
        return ((PublishedError.Found.Serves) found).error().detectable95();
    }

    /** Thompson et al. 2008, Dev Med Child Neurol 50:370: 61.9, 64.0 and 47.4 m for levels I to III, ages 4 to 18. */
    @Test
    void theSixMinuteWalkHasAValueForEachLevel() {
        assertEquals(61.9, served(WALK, student("2018-03", "cerebral palsy", "I")));
        assertEquals(64.0, served(WALK, student("2018-03", "Cerebral Palsy", "II")));
        assertEquals(47.4, served(WALK, student("2018-03", "cerebral palsy", "III")));
    }

    /** Chen et al. 2013: 1.59 points at 90 %; by hand 1.59 * 1.959963984540 / 1.644853626951 = 1.89460. */
    @Test
    void aValuePrintedAtNinetyPercentIsBroughtToNinetyFive() {
        assertEquals(
                1.89460, served(new MeasureId("balance-total"), student("2022-01", "cerebral palsy", "II")), 0.000005);
    }

    @Test
    void nothingIsLentToAnotherTestPopulationLevelAgeOrProtocol() {
        Optional<Student> fits = student("2018-03", "cerebral palsy", "II");
        assertEquals("no published value for this measure", why(new MeasureId("walk-2min"), Protocol.NONE, fits));
        assertEquals(
                "no published value for this population",
                why(WALK, Protocol.NONE, student("2018-03", "down syndrome", "")));
        assertEquals(
                "no published value for this function_level",
                why(WALK, Protocol.NONE, student("2018-03", "cerebral palsy", "IV")));
        assertEquals(
                "no published value for this age",
                why(WALK, Protocol.NONE, student("2023-03", "cerebral palsy", "II")));
        assertEquals(
                "the published value is not for protocol aid=walker",
                why(WALK, new Protocol(new TreeMap<>(Map.of("aid", "walker"))), fits));
    }

    @Test
    void whatIsMissingIsNamedByItsColumn() {
        assertTrue(why(WALK, Protocol.NONE, student("2018-03", "", "II")).startsWith("population is blank"));
        assertTrue(why(WALK, Protocol.NONE, student("2018-03", "cerebral palsy", ""))
                .startsWith("function_level is blank"));
        assertTrue(why(WALK, Protocol.NONE, student("", "cerebral palsy", "II")).startsWith("birth_month is not"));
        assertTrue(why(WALK, Protocol.NONE, Optional.empty()).startsWith("the student is not in students.csv"));
    }
}
