package stridetally.ingest;

import java.util.Optional;
import stridetally.model.SeriesKey;

/**
 * Students in the order of source and code, from one up to another. A log that does not fit the memory is read once for each
 * of a few such ranges, and the tables of one stand behind those of the other: no table need be merged.
 *
 * @param from the first student; all before when it is empty
 * @param before the first student beyond; all after when it is empty
 */
public record StudentRange(Optional<Edge> from, Optional<Edge> before) {

    /** Every student. */
    public static final StudentRange ALL = new StudentRange(Optional.empty(), Optional.empty());

    /** A student in the order of the tables. */
    public record Edge(String source, String student) implements Comparable<Edge> {

        /** The student of a key. */
        public static Edge of(SeriesKey key) {
            return new Edge(key.source(), key.student().text());
        }

        @Override
        public int compareTo(Edge other) {
            int order = source.compareTo(other.source);
            return order != 0 ? order : student.compareTo(other.student);
        }
    }

    /** Whether a student is of the range. */
    boolean holds(String source, String student) {
        return isAll() || holds(new Edge(source, student));
    }

    private boolean holds(Edge edge) {
        return (from.isEmpty() || from.get().compareTo(edge) <= 0)
                && (before.isEmpty() || before.get().compareTo(edge) > 0);
    }

    /** Whether it is every student. */
    public boolean isAll() {
        return from.isEmpty() && before.isEmpty();
    }

    /** The same from its first student up to another. */
    public StudentRange upTo(Edge edge) {
        return new StudentRange(from, Optional.of(edge));
    }

    /** What follows on it up to the last student; empty when nothing does. */
    public Optional<StudentRange> rest() {
        return before.map(edge -> new StudentRange(Optional.of(edge), Optional.empty()));
    }
}
