package stridetally.measures;

import java.time.LocalDate;
import java.time.YearMonth;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import stridetally.model.MeasureId;
import stridetally.model.Protocol;
import stridetally.model.Student;

/**
 * Looks for the published values of a child's age, sex and protocol. What differs or is missing refuses the value and is
 * named by its column or key; nothing is taken as near enough. Keys that the source does not state are told, not judged, but
 * for aids, orthoses and helpers: the children of the sources walked without.
 *
 * @param serves the values that may stand beside the test
 * @param months age on the day of the test; 0 when it is not known
 * @param why there is none; blank when there is one
 */
public record ReferenceSearch(List<Reference> serves, long months, String why) {
    /** Keys under which help by a thing or a second person is written. */
    private static final List<String> HELPED_BY = List.of("aid", "orthosis", "helpers");

    private static final Set<String> NOTHING = Set.of("none", "no", "off", "0");

    private static final int YEAR = 12;

    public ReferenceSearch {
        serves = List.copyOf(serves);
    }

    /** Whether any published value of this measure comes with the program. */
    public static boolean knows(MeasureId measure) {
        return Reference.all().stream().anyMatch(one -> one.measure().equals(measure));
    }

    /**
     * The values that serve.
     *
     * @param protocol of the test, with the usual keys of the goal filled in
     * @param on the day of the test, for the age
     */
    public static ReferenceSearch of(MeasureId measure, Protocol protocol, Optional<Student> student, LocalDate on) {
        List<Reference> candidates = Reference.all().stream()
                .filter(one -> one.measure().equals(measure))
                .toList();
        if (candidates.isEmpty()) {
            return none(0, "no published value for this measure");
        }
        if (student.isEmpty()) {
            return none(0, "the student is not in students.csv, so age and sex are not known");
        }
        Optional<YearMonth> born = PublishedError.born(student.get().birthMonth());
        if (born.isEmpty()) {
            return none(0, "birth_month is missing in students.csv, or is not written as 2019-03");
        }
        long months = ChronoUnit.MONTHS.between(born.get(), YearMonth.from(on));
        return ofAge(candidates, protocol, student.get(), months);
    }

    private static ReferenceSearch ofAge(List<Reference> candidates, Protocol protocol, Student student, long months) {
        List<Reference> ofAge = candidates.stream()
                .filter(one -> months >= one.monthsFrom() && months <= one.monthsTo())
                .toList();
        if (ofAge.isEmpty()) {
            return none(months, "no published value for an age of " + months / YEAR + " years");
        }
        Optional<String> helped = helped(protocol);
        if (helped.isPresent()) {
            return none(months, helped.get());
        }
        List<Reference> serves = new ArrayList<>();
        Set<String> reasons = new LinkedHashSet<>();
        for (Reference one : ofAge) {
            Optional<String> differs = otherSex(one, student).or(() -> otherProtocol(one, protocol));
            if (differs.isPresent()) {
                reasons.add(differs.get());
            } else {
                serves.add(one);
            }
        }
        reasons.remove("");
        return serves.isEmpty() ? none(months, String.join("; ", reasons)) : new ReferenceSearch(serves, months, "");
    }

    private static ReferenceSearch none(long months, String why) {
        return new ReferenceSearch(List.of(), months, why);
    }

    private static Optional<String> helped(Protocol protocol) {
        for (String key : HELPED_BY) {
            String value = protocol.keys().get(key);
            if (value != null && !NOTHING.contains(value)) {
                return Optional.of("protocol " + key + "=" + value + ": the children of the sources had none");
            }
        }
        return Optional.empty();
    }

    /** Blank text: of the other sex, where another row is for this one. */
    private static Optional<String> otherSex(Reference one, Student student) {
        if (one.sex().isEmpty()) {
            return Optional.empty();
        }
        String sex = student.sex().strip().toLowerCase(Locale.ROOT);
        String known = sex.startsWith("f") || sex.startsWith("g")
                ? "f"
                : sex.startsWith("m") || sex.startsWith("b") ? "m" : "";
        if (known.isEmpty()) {
            return Optional.of("sex in students.csv is missing, or is neither f nor m");
        }
        return known.equals(one.sex()) ? Optional.empty() : Optional.of("");
    }

    private static Optional<String> otherProtocol(Reference one, Protocol protocol) {
        for (Map.Entry<String, String> stated : one.protocol().entrySet()) {
            String value = protocol.keys().get(stated.getKey());
            String published = ", the published value is for " + stated.getValue();
            if (value == null) {
                return Optional.of("protocol key " + stated.getKey() + " is not written" + published);
            }
            if (!value.equals(stated.getValue())) {
                return Optional.of("protocol " + stated.getKey() + "=" + value + published);
            }
        }
        return Optional.empty();
    }
}
