package stridetally.ingest;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Ranges of students: each student is of exactly one of those that a range was cut into. */
class StudentRangeTest {
    private static final List<StudentRange.Edge> STUDENTS = List.of(
            edge("", "S1"),
            edge("", "S2"),
            edge("north", "S1"),
            edge("north", "S10"),
            edge("north", "S2"),
            edge("south", "A"));

    @Test
    void studentsStandInTheOrderOfSourceAndCode() {
        List<StudentRange.Edge> sorted = new ArrayList<>(STUDENTS);
        sorted.sort(null);
        assertEquals(STUDENTS, sorted);
    }

    @Test
    void everyStudentIsOfTheWholeRange() {
        assertTrue(StudentRange.ALL.isAll());
        STUDENTS.forEach(one -> assertTrue(holds(StudentRange.ALL, one)));
        assertEquals(Optional.empty(), StudentRange.ALL.rest());
    }

    @Test
    void whereverARangeIsCutAStudentIsOfOnePartOnly() {
        for (StudentRange.Edge from : STUDENTS) {
            StudentRange range = new StudentRange(Optional.of(from), Optional.empty());
            for (StudentRange.Edge cut : STUDENTS) {
                StudentRange first = range.upTo(cut);
                StudentRange rest = first.rest().orElseThrow();
                for (StudentRange.Edge one : STUDENTS) {
                    boolean inRange = one.compareTo(from) >= 0;
                    assertEquals(inRange, holds(range, one));
                    assertEquals(inRange && one.compareTo(cut) < 0, holds(first, one), one + " up to " + cut);
                    assertEquals(one.compareTo(cut) >= 0, holds(rest, one), one + " from " + cut);
                }
                assertFalse(first.isAll());
            }
        }
    }

    private static boolean holds(StudentRange range, StudentRange.Edge one) {
        return range.holds(one.source(), one.student());
    }

    private static StudentRange.Edge edge(String source, String student) {
        return new StudentRange.Edge(source, student);
    }
}
