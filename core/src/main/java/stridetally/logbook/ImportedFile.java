package stridetally.logbook;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import stridetally.problem.ProblemTally;

/**
 * What became of one imported file. Always: rows = taken + known + set aside + blank.
 *
 * @param kind what the rows are
 * @param rows rows; tries, where they stand side by side
 * @param superseded rows of earlier entries in whose place new ones stand
 * @param entry the entry that was made; empty when nothing new was in the file, in a dry run, and for hand-kept tables
 * @param notes sentences for the person
 * @param form how a log of trials was laid out
 */
public record ImportedFile(
        String name,
        String kind,
        long rows,
        long taken,
        long known,
        long setAside,
        long blank,
        long superseded,
        Optional<Integer> entry,
        ProblemTally problems,
        List<String> notes,
        Optional<UsedForm> form) {

    public ImportedFile {
        notes = List.copyOf(notes);
        if (rows != taken + known + setAside + blank) {
            throw new IllegalArgumentException(
                    rows + " rows, but " + taken + " + " + known + " + " + setAside + " + " + blank);
        }
    }

    /** The same with how the log was laid out, and one more note perhaps. */
    ImportedFile with(UsedForm used, Optional<String> note) {
        List<String> all = new ArrayList<>(notes);
        note.ifPresent(all::add);
        return new ImportedFile(
                name, kind, rows, taken, known, setAside, blank, superseded, entry, problems, all, Optional.of(used));
    }
}
