package stridetally.recordings;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import stridetally.measures.Measure;
import stridetally.table.Cell;
import stridetally.table.TableWriter;

/**
 * The figures of recordings that are measures of the catalogue, as rows of a log of trials. So they pass the same checks and
 * are corrected, replaced and taken back as whatever is logged by hand; the samples are not kept.
 */
public final class RecordingTrials {
    /** The headings of the log. */
    public static final List<String> HEADINGS = List.of(
            "source",
            "student",
            "date",
            "session",
            "trial",
            "measure",
            "value",
            "unit",
            "side",
            "protocol",
            "help",
            "prompt",
            "use",
            "place",
            "observer",
            "note");

    /** Values are kept to the billionth. */
    private static final int DECIMALS = 9;

    private final TableWriter log;
    private final Function<String, Optional<Measure>> catalogue;

    /** Writes into a table with {@link #HEADINGS}. */
    public RecordingTrials(TableWriter log, Function<String, Optional<Measure>> catalogue) {
        this.log = log;
        this.catalogue = catalogue;
    }

    /** The rows of one recording; several walks of a file with a trial number are numbered on from it. */
    public void add(ManifestRow row, Recorded recorded) {
        int place = 0;
        for (Recorded.Walk walk : recorded.walks()) {
            for (Figure figure : walk.figures()) {
                Optional<Measure> measure = catalogue.apply(figure.quantity());
                if (measure.isPresent() && figure.value().isEstimated()) {
                    log.row(cells(row, walk, figure, measure.get(), place));
                }
            }
            place++;
        }
    }

    private static List<Cell> cells(ManifestRow row, Recorded.Walk walk, Figure figure, Measure measure, int place) {
        List<Cell> cells = new ArrayList<>();
        for (String heading : HEADINGS) {
            cells.add(Cell.code(
                    switch (heading) {
                        case "trial" -> trial(row.cell("trial"), place);
                        case "measure" -> measure.id().text();
                        case "value" -> value(figure.value().orElseThrow());
                        case "unit" -> figure.unit();
                        case "side" -> figure.side().word();
                        case "protocol" -> walk.over(row.cell("protocol"), measure.protocolKeys()::contains);
                        // Without a comma, so that the rows need no quotes, and are read back without a parser for
                        // each.
                        case "note" ->
                            "recording of line " + row.at().line() + " of the manifest"
                                    + (walk.walk().isEmpty() ? "" : " walk " + walk.walk()) + " n = " + figure.n();
                        default -> row.cell(heading);
                    }));
        }
        return cells;
    }

    private static String trial(String written, int place) {
        boolean whole = !written.isEmpty()
                && written.length() < 7
                && written.chars().allMatch(letter -> letter >= '0' && letter <= '9');
        return whole ? Integer.toString(Integer.parseInt(written) + place) : written;
    }

    private static String value(double figure) {
        BigDecimal value = BigDecimal.valueOf(figure).setScale(DECIMALS, RoundingMode.HALF_UP);
        return value.signum() == 0 ? "0" : value.stripTrailingZeros().toPlainString();
    }
}
