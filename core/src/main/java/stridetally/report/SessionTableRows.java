package stridetally.report;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import stridetally.measures.Measure;
import stridetally.model.Goal;
import stridetally.model.SeriesKey;
import stridetally.model.Side;
import stridetally.model.WordScale;
import stridetally.scoring.Session;
import stridetally.scoring.SessionValue;
import stridetally.scoring.WalkGap;
import stridetally.table.Cell;

/**
 * The rows of {@code score --by session}: one session of one goal and side, or of one series of a log without goals.
 * Values are in the unit of the {@code unit} column. Shares are over the tries whose help was written.
 *
 * @param source id of the logbook, for the rows of goals
 * @param help the scale that the most help is named on
 */
public record SessionTableRows(String source, WordScale help) {
    /** The columns, in order. */
    public static final List<String> HEADINGS = List.of(
            "source",
            "student",
            "goal",
            "measure",
            "side",
            "protocol",
            "place",
            "date",
            "session",
            "trials",
            "counted",
            "value",
            "unit",
            "best",
            "mean",
            "median",
            "last",
            "sd",
            "independent_share",
            "permitted_share",
            "most_help",
            "met",
            "streak",
            "reason");

    /** Why met and streak are blank. */
    private static final String NO_GOAL = "no goal";

    /** A session of a goal's side. */
    public List<Cell> row(Goal goal, Measure measure, Side side, Session session) {
        List<Cell> cells = new ArrayList<>(List.of(
                Cell.text(source),
                Cell.text(goal.student().text()),
                Cell.text(goal.id().text()),
                Cell.text(goal.measure().text()),
                Cell.code(side.word()),
                Cell.text(goal.protocol().text()),
                FigureCells.places(goal)));
        return complete(cells, measure, session, reasons(session));
    }

    /** A session of a series without a goal: no target, so neither met nor streak. */
    public List<Cell> row(SeriesKey key, Measure measure, Session session) {
        List<Cell> cells = new ArrayList<>(ofSeries(key));
        List<String> reasons = reasons(session);
        reasons.add(NO_GOAL);
        List<Cell> row = complete(cells, measure, session, reasons);
        row.set(HEADINGS.indexOf("streak"), Cell.blank());
        return row;
    }

    /** The first cells of every session of a series without a goal. */
    List<Cell> ofSeries(SeriesKey key) {
        return List.of(
                Cell.text(key.source().isBlank() ? source : key.source()),
                Cell.text(key.student().text()),
                Cell.blank(),
                Cell.text(key.measure().text()),
                Cell.code(key.side().word()),
                Cell.text(key.protocol().text()),
                Cell.code(key.place().word()));
    }

    /** A session of whose parts a measure does not follow. */
    public List<Cell> gap(WalkGap gap, Measure measure) {
        SeriesKey key = gap.key();
        List<Cell> cells = new ArrayList<>(FigureCells.blanks(HEADINGS.size()));
        set(cells, "source", Cell.text(key.source().isBlank() ? source : key.source()));
        set(cells, "student", Cell.text(key.student().text()));
        set(cells, "measure", Cell.text(key.measure().text()));
        set(cells, "protocol", Cell.text(key.protocol().text()));
        set(cells, "place", Cell.code(key.place().word()));
        set(cells, "date", Cell.date(gap.date()));
        set(cells, "session", Cell.text(gap.label()));
        set(cells, "trials", Cell.whole(0));
        set(cells, "counted", Cell.whole(0));
        set(cells, "unit", Cell.code(measure.unit().symbol()));
        set(cells, "reason", FigureCells.reasons(List.of(gap.reason(), NO_GOAL)));
        return cells;
    }

    private static void set(List<Cell> cells, String heading, Cell cell) {
        cells.set(HEADINGS.indexOf(heading), cell);
    }

    private List<Cell> complete(List<Cell> cells, Measure measure, Session session, List<String> reasons) {
        cells.addAll(List.of(
                Cell.date(session.date()),
                Cell.text(session.label()),
                Cell.whole(session.trials()),
                Cell.whole(session.counted()),
                FigureCells.of(session.value()),
                Cell.code(measure.unit().symbol()),
                FigureCells.of(session.best()),
                FigureCells.of(session.mean()),
                FigureCells.of(session.median()),
                FigureCells.of(session.last()),
                FigureCells.optional(session.sd()),
                FigureCells.optional(session.independentShare()),
                FigureCells.optional(session.permittedShare()),
                FigureCells.level(session.mostHelp(), help),
                Cell.code(session.met().meets().word()),
                Cell.whole(session.streak()),
                FigureCells.reasons(reasons)));
        return ColumnDecimals.of(cells, HEADINGS, measure);
    }

    private static List<String> reasons(Session session) {
        List<String> reasons = new ArrayList<>(List.of(session.reason()));
        boolean hasValue = !(session.value() instanceof SessionValue.Missing);
        if (hasValue) {
            reasons.addAll(missing(session));
            if (session.sd().isEmpty()) {
                reasons.add("sd: fewer than 2 exact values");
            }
        }
        if (session.recorded() > 0 && session.helpRecorded() == 0) {
            reasons.add("help was not written");
        }
        return reasons;
    }

    /** Summaries that are missing beside a value; those missing for the same reason are named together. */
    private static List<String> missing(Session session) {
        Map<String, List<String>> byReason = new LinkedHashMap<>();
        note("best", session.best(), byReason);
        note("mean", session.mean(), byReason);
        note("median", session.median(), byReason);
        note("last", session.last(), byReason);
        List<String> reasons = new ArrayList<>();
        for (Map.Entry<String, List<String>> one : byReason.entrySet()) {
            reasons.add(String.join(", ", one.getValue()) + ": " + one.getKey());
        }
        return reasons;
    }

    private static void note(String name, SessionValue value, Map<String, List<String>> byReason) {
        if (value instanceof SessionValue.Missing none) {
            List<String> names = byReason.getOrDefault(none.reason(), new ArrayList<>());
            names.add(name);
            byReason.put(none.reason(), names);
        }
    }
}
