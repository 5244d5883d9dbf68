package stridetally.cli.commands;

import java.nio.file.Path;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.Optional;
import stridetally.cli.Console;
import stridetally.cli.ExitCodes;
import stridetally.cli.input.OpenLogbook;
import stridetally.cli.options.Format;
import stridetally.cli.options.OutputOptions;
import stridetally.cli.output.GoalCheckTable;
import stridetally.cli.output.StatusTable;
import stridetally.logbook.LineRange;
import stridetally.logbook.LogbookWriter;
import stridetally.report.GoalCheck;

/** What is done to the entries of a logbook: taken back, closed, told. */
final class Mending {
    private final Console console;
    private final Path folder;
    private final OffsetDateTime when;

    Mending(Console console, Path folder, OffsetDateTime when) {
        this.console = console;
        this.folder = folder;
        this.when = when;
    }

    int undo(int entry, String why) {
        try (LogbookWriter writer = LogbookWriter.open(folder, when)) {
            writer.undo(entry, why);
        }
        console.note("the import was taken back; its rows are no longer read, and the entry stays in the logbook");
        return ExitCodes.DONE;
    }

    int dismiss(LineRange row, String why) {
        try (LogbookWriter writer = LogbookWriter.open(folder, when)) {
            writer.dismiss(row.entry(), row.first(), why);
        }
        console.note("the row " + row.text() + " is closed; it stays in the set-aside file");
        return ExitCodes.DONE;
    }

    /** Told beside the log and the whole caseload, as on a day. */
    int checkGoals(LocalDate asOf, OutputOptions output) {
        List<GoalCheck> checks = GoalCheckTable.of(folder, asOf);
        console.note(GoalCheckTable.sentence(checks));
        output.write(console, GoalCheckTable.content(checks, output.format(Format.MARKDOWN)));
        return ExitCodes.DONE;
    }

    int status(LocalDate asOf, Optional<LocalDate> known, int quietDays, OutputOptions output) {
        OpenLogbook open = OpenLogbook.at(folder, known);
        open.problems().forEach(problem -> console.warn(problem.sentence()));
        output.write(console, StatusTable.content(open, asOf, quietDays, output.format(Format.MARKDOWN)));
        return ExitCodes.DONE;
    }
}
