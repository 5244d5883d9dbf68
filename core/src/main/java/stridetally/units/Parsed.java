package stridetally.units;

import java.util.List;

/** What became of one value cell. */
public sealed interface Parsed {

    /** A reading in the measure's unit, with the marks that stood beside it. */
    record Taken(Reading reading, List<Remarked> marks) implements Parsed {
        public Taken {
            marks = List.copyOf(marks);
        }
    }

    /**
     * No reading.
     *
     * @param found the cell as written; blank when it may be free text, which could hold a name
     * @param expected what would have been taken
     * @param mend what the person can do about it; blank when {@code expected} says it all
     */
    record NotTaken(Reason reason, String found, String expected, String mend) implements Parsed {}
}
