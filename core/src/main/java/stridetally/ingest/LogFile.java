package stridetally.ingest;

import java.util.List;
import java.util.Optional;
import stridetally.problem.InputRefused;

/**
 * What was read of one log.
 *
 * @param by which reader has read it
 * @param rows of a long log; tries, and rows without any, of a form with tries side by side
 * @param blank how many of them held nothing, or no try
 * @param setAside rows that were not taken
 * @param ahead tries of a later day, which are left out
 * @param notes what the person should know of it
 * @param refused why nothing of it could be read
 */
public record LogFile(
        String name,
        WhichReader by,
        long rows,
        long blank,
        long setAside,
        long ahead,
        List<String> notes,
        Optional<InputRefused> refused) {

    public LogFile {
        notes = List.copyOf(notes);
    }

    /** A file of which nothing is read. */
    public static LogFile refused(String name, InputRefused why) {
        return new LogFile(name, WhichReader.USUAL, 0, 0, 0, 0, List.of(), Optional.of(why));
    }
}
