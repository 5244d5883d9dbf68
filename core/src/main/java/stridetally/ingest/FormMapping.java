package stridetally.ingest;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import stridetally.units.DecimalMark;

/**
 * What a person says about a form: which heading is which column, in which words it is written, and what holds for the
 * whole of it.
 *
 * @param name what to call it in messages
 * @param headings the headings it belongs to, so that the next file with the same ones finds it; may be empty
 * @param columns heading as written to its meaning; a heading not named is read as if there were no mapping
 * @param blankHelp the help word that a blank cell means
 * @param sheet the sheet of a workbook to read; empty = every visible one with known headings
 * @param headingRow the row, from 1, of the (first) heading line; 0 = found
 * @param headingLines 1 or 2; 0 = found
 */
public record FormMapping(
        String name,
        List<String> headings,
        Map<String, ColumnMeaning> columns,
        FormRules rules,
        Optional<DateOrder> order,
        Optional<DecimalMark> decimals,
        Optional<String> blankHelp,
        Optional<String> sheet,
        int headingRow,
        int headingLines) {

    /** No mapping: everything is found in the file. */
    public static final FormMapping NONE = new FormMapping(
            "",
            List.of(),
            Map.of(),
            FormRules.NONE,
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            0,
            0);

    public FormMapping {
        headings = List.copyOf(headings);
        columns = Collections.unmodifiableMap(new LinkedHashMap<>(columns));
    }

    /** What the mapping says of a heading. */
    Optional<ColumnMeaning> of(String heading) {
        if (columns.isEmpty()) {
            return Optional.empty();
        }
        String folded = FormRules.fold(heading);
        return columns.entrySet().stream()
                .filter(entry -> FormRules.fold(entry.getKey()).equals(folded))
                .map(Map.Entry::getValue)
                .findFirst();
    }

    /**
     * Whether a file with these headings is of this form: the same ones in the same order, blanks at the end aside. Other
     * columns may stand before and behind them, as in a file of rows that were set aside.
     */
    public boolean isOf(List<String> others) {
        return !headings.isEmpty() && Collections.indexOfSubList(folded(others), folded(headings)) >= 0;
    }

    /** The same mapping for the headings of a file. */
    public FormMapping of(List<String> fileHeadings) {
        return new FormMapping(
                name, fileHeadings, columns, rules, order, decimals, blankHelp, sheet, headingRow, headingLines);
    }

    /** The same mapping for the headings of a file, with a meaning for each. */
    FormMapping saying(List<String> fileHeadings, Map<String, ColumnMeaning> meanings) {
        return new FormMapping(
                name, fileHeadings, meanings, rules, order, decimals, blankHelp, sheet, headingRow, headingLines);
    }

    /** The same mapping for a file whose one row of headings is found by itself. */
    public FormMapping headedByOneRow() {
        return new FormMapping(name, headings, columns, rules, order, decimals, blankHelp, sheet, 0, 1);
    }

    /** Headings of the mapping that a file has not: probably a slip of the keys, or another form. */
    List<String> missingFrom(List<String> fileHeadings) {
        if (columns.isEmpty()) {
            return List.of();
        }
        List<String> there = fileHeadings.stream().map(FormRules::fold).toList();
        return columns.keySet().stream()
                .filter(heading -> !there.contains(FormRules.fold(heading)))
                .toList();
    }

    private static List<String> folded(List<String> headings) {
        List<String> folded = new ArrayList<>();
        headings.forEach(heading -> folded.add(FormRules.fold(heading)));
        while (!folded.isEmpty() && folded.get(folded.size() - 1).isEmpty()) {
            folded.remove(folded.size() - 1);
        }
        return folded;
    }
}
