package stridetally.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import stridetally.measures.Measure;
import stridetally.table.Cell;

/**
 * How many decimals people see in a column of the flat tables (Markdown; CSV and JSON carry all digits): what one try can
 * give has the measure's own, what is worked out of several one more, a rate per week two more; shares and chances have two,
 * p values three. Ours.
 */
final class ColumnDecimals {
    private static final int SHARE = 2;
    private static final int P_VALUE = 3;

    /** Columns of amounts, with the decimals beyond those of the measure. */
    private static final Map<String, Integer> AMOUNTS = Map.ofEntries(
            Map.entry("best", 0),
            Map.entry("last", 0),
            Map.entry("baseline", 0),
            Map.entry("target", 0),
            Map.entry("value", 1),
            Map.entry("mean", 1),
            Map.entry("median", 1),
            Map.entry("low", 1),
            Map.entry("high", 1),
            Map.entry("sd", 1),
            Map.entry("latest", 1),
            Map.entry("intercept", 1),
            Map.entry("aim_today", 1),
            Map.entry("latest_minus_aim", 1),
            Map.entry("forecast", 1),
            Map.entry("forecast_low80", 1),
            Map.entry("forecast_high80", 1),
            Map.entry("error_limit95", 1),
            Map.entry("expected", 1),
            Map.entry("left", 1),
            Map.entry("right", 1),
            Map.entry("difference", 1),
            Map.entry("metres", 1),
            Map.entry("exposure", 1));

    /** Columns of amounts per week. */
    private static final Set<String> RATES = Set.of(
            "slope_per_week",
            "slope_se",
            "slope_low95",
            "slope_high95",
            "robust_slope",
            "robust_low95",
            "robust_high95",
            "needed_per_week");

    private ColumnDecimals() {}

    /** The same row with the decimals people see. */
    static List<Cell> of(List<Cell> row, List<String> headings, Measure measure) {
        List<Cell> cells = new ArrayList<>(row.size());
        for (int column = 0; column < row.size(); column++) {
            Cell cell = row.get(column);
            cells.add(
                    cell instanceof Cell.Decimal number && number.decimals().isEmpty()
                            ? Cell.number(number.value(), decimals(headings.get(column), measure))
                            : cell);
        }
        return cells;
    }

    private static int decimals(String heading, Measure measure) {
        Integer more = AMOUNTS.get(heading);
        if (more != null) {
            return measure.decimals() + more;
        }
        if (RATES.contains(heading)) {
            return measure.decimals() + 2;
        }
        return heading.endsWith("_p") ? P_VALUE : SHARE;
    }
}
