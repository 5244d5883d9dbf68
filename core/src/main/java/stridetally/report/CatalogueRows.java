package stridetally.report;

import java.math.BigDecimal;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import stridetally.measures.Measure;
import stridetally.measures.Range;
import stridetally.table.Cell;
import stridetally.units.Amount;

/**
 * The rows of {@code measures}: one measure of the catalogue, as the program holds it, with its sources spelt out. Limits
 * are in the unit of the {@code unit} column; a blank one is open.
 *
 * @param citations source id to what it stands for; an id without one is printed as it is
 */
public record CatalogueRows(Map<String, String> citations) {
    /** The columns, in order. */
    public static final List<String> HEADINGS = List.of(
            "id",
            "name",
            "plain",
            "unit",
            "better",
            "kind",
            "rhythm",
            "usual_trials",
            "summary",
            "possible_low",
            "possible_high",
            "plausible_low",
            "plausible_high",
            "sides",
            "protocol_keys",
            "resolution",
            "cautions",
            "source");

    public CatalogueRows {
        citations = Map.copyOf(citations);
    }

    /** The row of a measure. {@code better} is blank when neither way is better by itself. */
    public List<Cell> row(Measure measure) {
        return List.of(
                Cell.text(measure.id().text()),
                Cell.text(measure.name()),
                Cell.text(measure.plain()),
                Cell.code(measure.unit().symbol()),
                Cell.code(measure.better()
                        .map(way -> way.name().toLowerCase(Locale.ROOT))
                        .orElse("")),
                Cell.code(measure.kind().word()),
                Cell.code(measure.rhythm().word()),
                Cell.whole(measure.usualTrials()),
                Cell.code(measure.summary().word()),
                low(measure.possible()),
                high(measure.possible()),
                low(measure.plausible()),
                high(measure.plausible()),
                Cell.code(measure.sidedness().word()),
                Cell.text(String.join(" ", measure.protocolKeys())),
                Cell.code(BigDecimal.ONE.movePointLeft(measure.decimals()).toPlainString()),
                Cell.text(measure.cautions()),
                Cell.text(sources(measure.source())));
    }

    private String sources(String ids) {
        return Arrays.stream(ids.split(" ", -1))
                .map(id -> Optional.ofNullable(citations.get(id)).orElse(id))
                .collect(Collectors.joining(" "));
    }

    private static Cell low(Range range) {
        return end(range.low());
    }

    private static Cell high(Range range) {
        return end(range.high());
    }

    private static Cell end(Optional<Amount> amount) {
        return amount.map(Amount::text).map(Cell::code).orElseGet(Cell::blank);
    }
}
