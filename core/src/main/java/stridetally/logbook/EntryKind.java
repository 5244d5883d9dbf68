package stridetally.logbook;

import java.util.List;
import java.util.Optional;

/** What an entry holds. */
public enum EntryKind {
    TRIALS("trials", " date trial value of "),
    VISITS("visits", " date minutes make_up_for "),
    /** Trials as another observer saw them, for agreement only; no value, criterion or line is made of them. */
    SECOND_OBSERVER("second-observer", " date trial value of ");

    /** The columns of an entry of visits. */
    public static final List<String> VISIT_COLUMNS =
            List.of("student", "date", "minutes", "status", "kind", "make_up_for", "reason");

    private final String word;
    private final String ours;

    EntryKind(String word, String ours) {
        this.word = word;
        this.ours = ours;
    }

    /** The word in file names and in the journal. */
    public String word() {
        return word;
    }

    /** Whether a column holds only what we formatted ourselves, so that the formula guard leaves it alone. */
    boolean isOurs(String column) {
        return ours.contains(" " + column + " ");
    }

    static Optional<EntryKind> of(String word) {
        for (EntryKind kind : values()) {
            if (kind.word.equals(word)) {
                return Optional.of(kind);
            }
        }
        return Optional.empty();
    }
}
