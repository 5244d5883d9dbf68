package stridetally.report;

import java.util.List;
import java.util.stream.Collectors;
import stridetally.cohort.GroupRow;
import stridetally.table.Cell;

/**
 * The roll-ups as one flat table, a row a group. Shares are unrounded; {@code judgements} counts words, joined by semicolons;
 * what cannot be said is blank, with the reason in {@code reason}.
 */
public final class GroupTableRows {
    /** The columns, in order. */
    public static final List<String> HEADINGS = List.of(
            "by",
            "group",
            "from",
            "to",
            "as_of",
            "students",
            "goals",
            "sessions",
            "tries",
            "permitted_tries",
            "tries_of_known_help",
            "share_of_way_low25",
            "share_of_way_median",
            "share_of_way_high75",
            "judgements",
            "reason");

    private GroupTableRows() {}

    /** The row of a group. */
    public static List<Cell> row(GroupReport report, GroupRow row) {
        return List.of(
                Cell.code(row.by().word()),
                Cell.text(row.group()),
                Cell.date(report.days().first()),
                Cell.date(report.days().last()),
                Cell.date(report.asOf()),
                Cell.whole(row.students()),
                Cell.whole(row.goals()),
                Cell.whole(row.sessions()),
                Cell.whole(row.tries()),
                Cell.whole(row.permitted()),
                Cell.whole(row.known()),
                FigureCells.of(row.low()),
                FigureCells.of(row.median()),
                FigureCells.of(row.high()),
                Cell.code(row.judgements().entrySet().stream()
                        .map(one -> one.getKey() + "=" + one.getValue())
                        .collect(Collectors.joining(";"))),
                FigureCells.reasons(List.of(FigureCells.why("share of the way", row.median()))));
    }
}
