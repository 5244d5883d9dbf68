package stridetally.report;

import java.util.List;
import java.util.stream.Collectors;
import stridetally.recordings.Figure;
import stridetally.recordings.ManifestRow;
import stridetally.recordings.Recorded;
import stridetally.table.Cell;

/**
 * The rows of {@code score} of recordings: one figure of one walk or stance. {@code n} is how many strides, steps or samples
 * it rests on; {@code definition} says how it was computed.
 */
public final class RecordingRows {
    /** The columns, in order. */
    public static final List<String> HEADINGS = List.of(
            "file",
            "walk",
            "student",
            "date",
            "session",
            "trial",
            "protocol",
            "quantity",
            "side",
            "value",
            "unit",
            "n",
            "definition",
            "reason");

    /** What people can use of any of them; the unrounded number is in CSV and JSON. */
    private static final int DECIMALS = 3;

    private RecordingRows() {}

    /** Rows of a file by itself. */
    public static List<List<Cell>> rows(String file, Recorded recorded) {
        Cell none = Cell.blank();
        return rows(Cell.text(file), List.of(none, none, none, none), "", recorded);
    }

    /** Rows of a recording of a manifest. */
    public static List<List<Cell>> rows(ManifestRow row, Recorded recorded) {
        return rows(
                Cell.text(row.file()),
                List.of(
                        Cell.text(row.cell("student")),
                        Cell.text(row.cell("date")),
                        Cell.text(row.cell("session")),
                        Cell.text(row.cell("trial"))),
                row.cell("protocol"),
                recorded);
    }

    private static List<List<Cell>> rows(Cell file, List<Cell> whose, String protocol, Recorded recorded) {
        return recorded.walks().stream()
                .flatMap(walk -> walk.figures().stream().map(figure -> row(file, whose, protocol, walk, figure)))
                .collect(Collectors.toList());
    }

    private static List<Cell> row(Cell file, List<Cell> whose, String protocol, Recorded.Walk walk, Figure figure) {
        return List.of(
                file,
                Cell.text(walk.walk()),
                whose.get(0),
                whose.get(1),
                whose.get(2),
                whose.get(3),
                Cell.text(walk.over(protocol)),
                Cell.code(figure.quantity()),
                Cell.code(figure.side().word()),
                FigureCells.of(figure.value(), figure.unit().equals("count") ? 0 : DECIMALS),
                Cell.code(figure.unit()),
                Cell.whole(figure.n()),
                Cell.code(figure.definition()),
                Cell.code(figure.value().reason()));
    }
}
