package stridetally.logbook;

import java.util.List;
import stridetally.model.StudentCode;

/**
 * Everything that a logbook holds of one student, row by row and as it was written: what stands and what was replaced or taken
 * back, and earlier versions of hand-kept files. Nothing of any other student.
 *
 * @param parts in a fixed order; one without rows says that the logbook holds none
 * @param nobodys rows that were set aside and whose student could not be read: one of them may be this student's
 */
public record StudentRecord(StudentCode code, List<Part> parts, int nobodys) {

    public StudentRecord {
        parts = List.copyOf(parts);
    }

    /**
     * One table.
     *
     * @param name of its file, such as {@code trials}
     * @param holds what its rows are, for people
     * @param rows a cell a heading
     */
    public record Part(String name, String holds, List<String> headings, List<List<String>> rows) {
        public Part {
            headings = List.copyOf(headings);
            rows = rows.stream().map(List::copyOf).toList();
        }
    }
}
