package stridetally.cli.options;

import java.time.LocalDate;
import java.util.Optional;
import java.util.OptionalInt;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.Option;
import picocli.CommandLine.TypeConversionException;
import stridetally.logbook.LineRange;

/** What is done to a logbook without a new file. */
public final class MendOptions {
    @Option(
            names = "--undo",
            paramLabel = "ENTRY",
            converter = EntryWord.class,
            description = "Take an import back, such as 0007; say why.")
    private @Nullable Integer undo;

    @Option(
            names = "--dismiss",
            paramLabel = "ROW",
            converter = RowWord.class,
            description = "Close a row that was set aside, such as 0003:14; say why.")
    private @Nullable LineRange dismiss;

    @Option(names = "--why", paramLabel = "TEXT", description = "The reason, kept in the journal.")
    private String why = "";

    @Option(names = "--status", description = "Tell how the logbook stands: entries, open rows, gaps.")
    private boolean status;

    @Option(
            names = "--check-goals",
            description = "Tell for every goal which of its parts are missing, doubtful or fine.")
    private boolean checkGoals;

    @Option(
            names = "--known",
            paramLabel = "DATE",
            converter = IsoDate.class,
            description = "With --status: as the logbook was known on DATE.")
    private @Nullable LocalDate known;

    /** Our choice of a default: four weeks. */
    @Option(
            names = "--quiet-days",
            paramLabel = "N",
            defaultValue = "28",
            converter = DaysWord.class,
            description = "With --status: name students without a try for N days (default: ${DEFAULT-VALUE}).")
    private int quietDays;

    /** How many of the things to do were asked for. */
    public int asked() {
        return (undo == null ? 0 : 1) + (dismiss == null ? 0 : 1) + (status ? 1 : 0) + (checkGoals ? 1 : 0);
    }

    /** The entry to take back. */
    public OptionalInt undo() {
        return undo == null ? OptionalInt.empty() : OptionalInt.of(undo);
    }

    /** The row to close. */
    public Optional<LineRange> dismiss() {
        return Optional.ofNullable(dismiss);
    }

    /** The reason. */
    public String why() {
        return why;
    }

    /** Tell how the goals are written. */
    public boolean checkGoals() {
        return checkGoals;
    }

    /** The day on which the logbook was known so. */
    public Optional<LocalDate> known() {
        return Optional.ofNullable(known);
    }

    /** Days without a try after which a student is named. */
    public int quietDays() {
        return quietDays;
    }

    /** Tell how the logbook stands. */
    public boolean status() {
        return status;
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

    /** Reads a number of days. */
    static final class DaysWord implements ITypeConverter<Integer> {
        @Override
        public Integer convert(String text) {
            if (!text.matches("[1-9][0-9]{0,4}")) {
                throw new TypeConversionException("'" + text + "' is no number of days from 1");
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
