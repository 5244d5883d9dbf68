package stridetally.logbook;

import stridetally.ingest.LogRow;
import stridetally.ingest.TrialFeed;
import stridetally.problem.ProblemCode;
import stridetally.problem.RowProblem;

/**
 * What is said of a try that cannot stand beside another one.
 *
 * @param entry the number that the entry of this log will have
 * @param lines where its rows came to stand
 */
record Clashes(int entry, EntryLines lines) {

    static RowProblem numberWanted(LogRow row, SetAsideRecord mended) {
        return new RowProblem(
                ProblemCode.CONFLICT,
                row.place(),
                "",
                "the number of the try",
                "write it in the trial column, or dismiss " + mended.id());
    }

    RowProblem duplicate(LogRow row, long before) {
        return new RowProblem(
                ProblemCode.DUPLICATE,
                row.place(),
                where(before) + " has the same try with the same value",
                "one row for each try",
                "give this try its own number, or dismiss the row");
    }

    RowProblem conflict(LogRow row, long before, boolean numberWritten) {
        return new RowProblem(
                ProblemCode.CONFLICT,
                row.place(),
                where(before) + " has this " + (numberWritten ? "try" : "try (by its place in the session)")
                        + " with another value",
                "one value for each try",
                TrialFeed.entry(before) == entry
                        ? "keep the right one of the two"
                        : "import it with --replace if this one is right, or give the try its own number");
    }

    private String where(long origin) {
        return TrialFeed.entry(origin) == entry
                ? "line " + lines.fileLine(TrialFeed.line(origin)) + " of this file"
                : "entry " + LogbookFolder.four(TrialFeed.entry(origin)) + ", line " + TrialFeed.line(origin);
    }
}
