package stridetally.model;

/**
 * A student's code. Its text is for results only; {@link #toString()} is masked so that a message or a stack trace cannot
 * give it away. Compared exactly: {@code 007} and {@code 7} are two students.
 */
public record StudentCode(String text) implements Comparable<StudentCode> {

    public StudentCode {
        if (text.isBlank()) {
            throw new IllegalArgumentException("a student code cannot be blank");
        }
    }

    @Override
    public int compareTo(StudentCode other) {
        return text.compareTo(other.text);
    }

    @Override
    public String toString() {
        return "student ***";
    }
}
