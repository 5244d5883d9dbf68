package stridetally.ingest;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** A mapping with what is understood of some headings, and the others not read until somebody says what they are. */
final class FormDraft {
    private FormDraft() {}

    static FormMapping of(
            List<String> headings, List<ColumnMeaning> columns, Set<TrialColumn> missing, FormMapping mapping) {
        Map<String, ColumnMeaning> meanings = new LinkedHashMap<>();
        for (int column = 0; column < columns.size(); column++) {
            String heading = headings.get(column);
            if (!heading.isEmpty()) {
                meanings.put(heading, isTimeOfDay(heading, missing) ? unknown() : columns.get(column));
            }
        }
        return mapping.saying(headings, meanings);
    }

    /** Where no column is the day, {@code Time} is more likely when it was than how long it took. */
    private static boolean isTimeOfDay(String heading, Set<TrialColumn> missing) {
        return missing.contains(TrialColumn.DATE) && TrialColumn.fold(heading).equals("time");
    }

    private static ColumnMeaning unknown() {
        return new ColumnMeaning(Optional.empty(), Map.of(), "", "not known");
    }
}
