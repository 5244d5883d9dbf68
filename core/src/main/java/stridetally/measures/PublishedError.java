package stridetally.measures;

import java.time.LocalDate;
import java.time.YearMonth;
import java.time.format.DateTimeParseException;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import stridetally.model.MeasureId;
import stridetally.model.Protocol;
import stridetally.model.Student;
import stridetally.stats.CriticalValue;
import stridetally.units.IsoDay;

/**
 * A published smallest change that is beyond the error of one test, for one population. It is never lent to another test,
 * protocol or population.
 *
 * @param population as {@code students.csv} words it
 * @param functionLevel blank = the study gives one value for all its levels
 * @param monthsFrom youngest age of the study, in months
 * @param monthsTo oldest age of the study, in months
 * @param detectable smallest detectable change between two single tests, in the measure's unit
 * @param level at which it was printed: 0.9 or 0.95
 * @param source id of the citation
 */
public record PublishedError(
        MeasureId measure,
        String population,
        String functionLevel,
        int monthsFrom,
        int monthsTo,
        double detectable,
        double level,
        String source) {

    private static final List<PublishedError> ALL = read();

    /** Every value that comes with the program. */
    public static List<PublishedError> all() {
        return ALL;
    }

    /** A value that serves, or why none does. */
    public sealed interface Found {
        /** The study is of this test and population. */
        record Serves(PublishedError error) implements Found {}

        /** None serves, with what differs or is missing. */
        record None(String why) implements Found {}
    }

    /**
     * The value for a student's test.
     *
     * @param protocol of the test: the studies print none that could be matched, so a stated departure is refused
     * @param on the day of the test, for the age
     */
    public static Found find(MeasureId measure, Protocol protocol, Optional<Student> student, LocalDate on) {
        List<PublishedError> candidates = new ArrayList<>();
        for (PublishedError one : ALL) {
            if (one.measure.equals(measure)) {
                candidates.add(one);
            }
        }
        if (candidates.isEmpty()) {
            return new Found.None("no published value for this measure");
        }
        if (!protocol.keys().isEmpty()) {
            return new Found.None("the published value is not for protocol " + protocol.text());
        }
        if (student.isEmpty()) {
            return new Found.None("the student is not in students.csv, so no published value can be matched");
        }
        return matched(candidates, student.get(), on);
    }

    /** The printed change at the level of 0.95: both are the same error times a quantile of the normal distribution. */
    public double detectable95() {
        return level == 0.95 ? detectable : detectable * CriticalValue.normal(0.95) / CriticalValue.normal(level);
    }

    private static Found matched(List<PublishedError> candidates, Student student, LocalDate on) {
        Optional<YearMonth> born = born(student.birthMonth());
        if (student.population().isBlank()) {
            return new Found.None("population is blank in students.csv, so no published value can be matched");
        }
        List<PublishedError> ofPopulation = candidates.stream()
                .filter(one ->
                        one.population.equalsIgnoreCase(student.population().strip()))
                .toList();
        if (ofPopulation.isEmpty()) {
            return new Found.None("no published value for this population");
        }
        List<PublishedError> ofLevel = ofPopulation.stream()
                .filter(one -> one.functionLevel.isBlank()
                        || one.functionLevel.equalsIgnoreCase(
                                student.functionLevel().strip()))
                .toList();
        if (ofLevel.isEmpty()) {
            return new Found.None(
                    student.functionLevel().isBlank()
                            ? "function_level is blank in students.csv, so no published value can be matched"
                            : "no published value for this function_level");
        }
        if (born.isEmpty()) {
            return new Found.None("birth_month is not in students.csv, so no published value can be matched");
        }
        long months = ChronoUnit.MONTHS.between(born.get(), YearMonth.from(on));
        return ofLevel.stream()
                .filter(one -> months >= one.monthsFrom && months <= one.monthsTo)
                .findFirst()
                .<Found>map(Found.Serves::new)
                .orElse(new Found.None("no published value for this age"));
    }

    static Optional<YearMonth> born(String month) {
        try {
            return month.isBlank() ? Optional.empty() : Optional.of(YearMonth.from(IsoDay.of(month.strip() + "-01")));
        } catch (DateTimeParseException unreadable) {
            return Optional.empty();
        }
    }

    private static List<PublishedError> read() {
        List<PublishedError> all = new ArrayList<>();
        for (Map<String, String> row : CatalogueResource.records("published-errors.csv")) {
            all.add(of(row));
        }
        return List.copyOf(all);
    }

    private static PublishedError of(Map<String, String> row) {
        return new PublishedError(
                new MeasureId(cell(row, "measure")),
                cell(row, "population"),
                cell(row, "function_level"),
                Integer.parseInt(cell(row, "months_from")),
                Integer.parseInt(cell(row, "months_to")),
                Double.parseDouble(cell(row, "detectable")),
                Double.parseDouble(cell(row, "level")),
                cell(row, "source"));
    }

    private static String cell(Map<String, String> row, String name) {
        return row.getOrDefault(name, "");
    }
}
