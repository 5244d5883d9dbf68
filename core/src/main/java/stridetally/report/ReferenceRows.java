package stridetally.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import stridetally.measures.Reference;
import stridetally.stats.StandardScore;
import stridetally.table.Cell;

/**
 * The rows of {@code score --by reference}: the latest session of a series beside one published value, or the reason why
 * none serves.
 *
 * @param citations source id to what it stands for
 */
public record ReferenceRows(Map<String, String> citations) {
    /** The columns, in order. */
    public static final List<String> HEADINGS = List.of(
            "student",
            "goal",
            "measure",
            "side",
            "protocol",
            "place",
            "date",
            "value",
            "unit",
            "group",
            "expected",
            "sd",
            "z",
            "centile",
            "citation",
            "reason");

    public ReferenceRows {
        citations = Map.copyOf(citations);
    }

    /** A row for each published value that serves; one with the reason when none does. */
    public List<List<Cell>> rows(ReferenceTable.Line line) {
        if (line.beside().isEmpty()) {
            List<Cell> cells = start(line);
            cells.add(FigureCells.of(line.session().value()));
            cells.add(Cell.code(line.measure().unit().symbol()));
            cells.addAll(FigureCells.blanks(6));
            cells.add(FigureCells.reasons(List.of("not compared: " + line.why())));
            return List.of(ColumnDecimals.of(cells, HEADINGS, line.measure()));
        }
        return line.beside().stream().map(one -> row(line, one)).toList();
    }

    private List<Cell> row(ReferenceTable.Line line, BesideReference one) {
        Reference reference = one.reference();
        List<Cell> cells = start(line);
        cells.add(
                one.value().isEstimated()
                        ? FigureCells.of(one.value())
                        : FigureCells.of(line.session().value()));
        cells.add(Cell.code(line.measure().unit().symbol()));
        cells.add(Cell.text(reference.group()));
        cells.add(FigureCells.of(one.expected()));
        cells.add(FigureCells.optional(reference.sd()));
        cells.add(FigureCells.of(one.score().map(StandardScore::z)));
        cells.add(FigureCells.of(one.centile()));
        cells.add(Cell.text(citations.getOrDefault(reference.source(), reference.source())));
        cells.add(FigureCells.reasons(reasons(line, one)));
        return ColumnDecimals.of(cells, HEADINGS, line.measure());
    }

    private static List<String> reasons(ReferenceTable.Line line, BesideReference one) {
        List<String> reasons = new ArrayList<>();
        reasons.add(FigureCells.why("value", one.value()));
        reasons.add(FigureCells.why("expected", one.expected()));
        if (one.value().isEstimated() && one.expected().isEstimated()) {
            reasons.add(FigureCells.why("z", one.score()));
        }
        if (one.score().isEstimated()) {
            reasons.add(FigureCells.why("centile", one.centile()));
        }
        reasons.add(one.reference().note());
        reasons.add(unstated(line, one.reference()));
        reasons.add("one sample of children with typical development, not a norm");
        return reasons;
    }

    /** Keys of the test of which the source, as we read it, says nothing. */
    static String unstated(ReferenceTable.Line line, Reference reference) {
        String keys = line.protocol().keys().keySet().stream()
                .filter(key -> !reference.protocol().containsKey(key))
                .collect(Collectors.joining(", "));
        return keys.isEmpty() ? "" : "the source states nothing of: " + keys;
    }

    private static List<Cell> start(ReferenceTable.Line line) {
        return new ArrayList<>(List.of(
                Cell.text(line.key().student().text()),
                Cell.text(line.goals().stream().map(goal -> goal.id().text()).collect(Collectors.joining(" "))),
                Cell.text(line.key().measure().text()),
                Cell.code(line.key().side().word()),
                Cell.text(line.protocol().text()),
                Cell.code(line.key().place().word()),
                Cell.date(line.session().date())));
    }
}
