package stridetally.measures;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import stridetally.model.MeasureId;
import stridetally.model.Summary;

/** The rows of {@code references.csv}. A fault in them is a defect and throws. */
final class ReferenceRow {
    private ReferenceRow() {}

    static List<Reference> all() {
        return CatalogueResource.records("references.csv").stream()
                .map(ReferenceRow::of)
                .toList();
    }

    private static Reference of(Map<String, String> row) {
        return new Reference(
                new MeasureId(cell(row, "measure")),
                cell(row, "group"),
                cell(row, "sex"),
                Integer.parseInt(cell(row, "months_from")),
                Integer.parseInt(cell(row, "months_to")),
                protocol(cell(row, "protocol")),
                summary(cell(row, "summary")),
                Double.parseDouble(cell(row, "mean")),
                number(row, "sd"),
                number(row, "per_year").orElse(0.0),
                number(row, "per_cm").orElse(0.0),
                number(row, "per_kg").orElse(0.0),
                cell(row, "source"),
                cell(row, "note"));
    }

    private static Map<String, String> protocol(String text) {
        Map<String, String> keys = new HashMap<>();
        for (String pair : text.split(";", -1)) {
            int equals = pair.indexOf('=');
            if (equals > 0) {
                keys.put(pair.substring(0, equals), pair.substring(equals + 1));
            }
        }
        return keys;
    }

    private static Optional<Summary> summary(String word) {
        for (Summary one : Summary.values()) {
            if (one.word().equals(word)) {
                return Optional.of(one);
            }
        }
        return Optional.empty();
    }

    private static Optional<Double> number(Map<String, String> row, String name) {
        String text = cell(row, name);
        return text.isEmpty() ? Optional.empty() : Optional.of(Double.parseDouble(text));
    }

    private static String cell(Map<String, String> row, String name) {
        return row.getOrDefault(name, "");
    }
}
