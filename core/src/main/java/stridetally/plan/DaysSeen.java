package stridetally.plan;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import stridetally.model.StudentCode;

/** On which weekdays each student was seen of late, from held visits and logged tries. */
public final class DaysSeen {
    /** How far back is looked: our choice. */
    public static final int WEEKS = 8;

    private static final int TWICE = 2;

    private final LocalDate asOf;
    private final Map<StudentCode, Set<LocalDate>> days = new HashMap<>();

    public DaysSeen(LocalDate asOf) {
        this.asOf = asOf;
    }

    /** A student was seen on a day. */
    public void add(StudentCode student, LocalDate day) {
        if (!day.isAfter(asOf) && day.isAfter(asOf.minusWeeks(WEEKS))) {
            days.computeIfAbsent(student, code -> new TreeSet<>()).add(day);
        }
    }

    /** The weekdays on which a student was seen twice or more; every school day when there are none. */
    public Set<DayOfWeek> usual(StudentCode student) {
        Set<DayOfWeek> usual = EnumSet.noneOf(DayOfWeek.class);
        Set<LocalDate> seen = days.getOrDefault(student, Set.of());
        for (DayOfWeek day : EnumSet.range(DayOfWeek.MONDAY, DayOfWeek.FRIDAY)) {
            if (seen.stream().filter(one -> one.getDayOfWeek() == day).count() >= TWICE) {
                usual.add(day);
            }
        }
        return usual.isEmpty() ? EnumSet.range(DayOfWeek.MONDAY, DayOfWeek.FRIDAY) : usual;
    }
}
