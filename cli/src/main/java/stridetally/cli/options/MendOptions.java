package stridetally.cli.options;

import java.util.Optional;
import java.util.OptionalInt;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;
import picocli.CommandLine.TypeConversionException;
import stridetally.logbook.LineRange;

/** What is done to a logbook without a new file. */
public final class MendOptions {
    @Option(names = "--undo", paramLabel = "ENTRY", description = "Take an import back, such as 0007; say why.")
    private @Nullable String undo;

    @Option(
            names = "--dismiss",
            paramLabel = "ROW",
            description = "Close a row that was set aside, such as 0003:14; say why.")
    private @Nullable String dismiss;

    @Option(names = "--why", paramLabel = "TEXT", description = "The reason, kept in the journal.")
    private String why = "";

    @Option(names = "--status", description = "Tell how the logbook stands: entries, open rows, gaps.")
    private boolean status;

    /** The entry to take back. */
    public OptionalInt undo() {
        if (undo == null) {
            return OptionalInt.empty();
        }
        if (!undo.matches("[0-9]{1,9}")) {
            throw new TypeConversionException("'" + undo + "' is no entry; write its number, such as 0007");
        }
        return OptionalInt.of(Integer.parseInt(undo));
    }

    /** The row to close. */
    public Optional<LineRange> dismiss() {
        if (dismiss == null) {
            return Optional.empty();
        }
        Optional<LineRange> row = LineRange.parse(dismiss);
        if (row.isEmpty() || row.get().first() != row.get().last()) {
            throw new TypeConversionException("'" + dismiss + "' is no row; write entry and number, such as 0003:14");
        }
        return row;
    }

    /** The reason. */
    public String why() {
        return why;
    }

    /** Tell how the logbook stands. */
    public boolean status() {
        return status;
    }
}
