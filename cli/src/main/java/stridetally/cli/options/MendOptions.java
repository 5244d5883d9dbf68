package stridetally.cli.options;

import java.time.LocalDate;
import java.util.Optional;
import java.util.OptionalInt;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.TypeConversionException;
import stridetally.logbook.LineRange;

/** What is done to a logbook without a new file. */
public final class MendOptions {
    /** Our choice: four weeks. */
    private static final int USUAL_DAYS = 28;

    private static final int MOST_DAYS = 99_999;

    private final ValueOption<Integer> undo = ValueOption.of(
            "--undo", "ENTRY", Integer.class, new EntryWord(), "Take an import back, such as 0007; say why.");

    private final ValueOption<LineRange> dismiss = ValueOption.of(
            "--dismiss",
            "ROW",
            LineRange.class,
            new RowWord(),
            "Close a row that was set aside, such as 0003:14; say why.");

    private final ValueOption<String> why = ValueOption.text("--why", "TEXT", "The reason, kept in the journal.");

    private final FlagOption status =
            new FlagOption("--status", "Tell how the logbook stands: entries, open rows, gaps.");

    private final FlagOption checkGoals =
            new FlagOption("--check-goals", "Tell for every goal which of its parts are missing, doubtful or fine.");

    private final ValueOption<LocalDate> known =
            ValueOption.day("--known", "With --status: as the logbook was known on DATE.");

    private final ValueOption<Integer> quietDays = ValueOption.whole(
            "--quiet-days",
            1,
            MOST_DAYS,
            "With --status: name students without a try for N days (default: " + USUAL_DAYS + ").");

    /** Declares the options. */
    public void addTo(CommandSpec command) {
        undo.addTo(command);
        dismiss.addTo(command);
        why.addTo(command);
        status.addTo(command);
        checkGoals.addTo(command);
        known.addTo(command);
        quietDays.addTo(command);
    }

    /** How many of the things to do were asked for. */
    public int asked() {
        return (undo.typed().isPresent() ? 1 : 0)
                + (dismiss.typed().isPresent() ? 1 : 0)
                + (status.typed() ? 1 : 0)
                + (checkGoals.typed() ? 1 : 0);
    }

    /** The entry to take back. */
    public OptionalInt undo() {
        return undo.typed().map(OptionalInt::of).orElseGet(OptionalInt::empty);
    }

    /** The row to close. */
    public Optional<LineRange> dismiss() {
        return dismiss.typed();
    }

    /** The reason. */
    public String why() {
        return why.typed().orElse("");
    }

    /** Tell how the goals are written. */
    public boolean checkGoals() {
        return checkGoals.typed();
    }

    /** The day on which the logbook was known so. */
    public Optional<LocalDate> known() {
        return known.typed();
    }

    /** Days without a try after which a student is named. */
    public int quietDays() {
        return quietDays.typed().orElse(USUAL_DAYS);
    }

    /** Tell how the logbook stands. */
    public boolean status() {
        return status.typed();
    }

    /** Reads the number of an entry. */
    static final class EntryWord implements ITypeConverter<Integer> {
        @Override
        public Integer convert(String text) {
            if (!text.matches("[0-9]{1,9}")) {
                throw new TypeConversionException("'" + text + "' is no entry; write its number, such as 0007");
            }
            return Integer.valueOf(text);
        }
    }

    /** Reads entry and number of a row that was set aside. */
    static final class RowWord implements ITypeConverter<LineRange> {
        @Override
        public LineRange convert(String text) {
            return LineRange.parse(text)
                    .filter(row -> row.first() == row.last())
                    .orElseThrow(() -> new TypeConversionException(
                            "'" + text + "' is no row; write entry and number, such as 0003:14"));
        }
    }
}
