package stridetally.ingest;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import stridetally.measures.Catalogue;
import stridetally.table.Row;

/** Which saved mapping belongs to a file: the one with its headings, wherever they stand among the first rows. */
public final class FormMatch {
    private FormMatch() {}

    /** The mapping, when one has these headings. */
    public static Optional<FormMapping> find(List<FormMapping> saved, List<Row> firstRows, Catalogue catalogue) {
        HeadingReader reader = new HeadingReader(catalogue);
        List<List<String>> candidates = new ArrayList<>();
        for (int place = 0; place < firstRows.size(); place++) {
            candidates.add(HeadingRows.one(firstRows.get(place)).headings());
            if (place + 1 < firstRows.size()) {
                candidates.add(HeadingRows.two(firstRows.get(place), firstRows.get(place + 1), reader)
                        .headings());
            }
        }
        return saved.stream()
                .filter(mapping -> candidates.stream().anyMatch(mapping::isOf))
                .findFirst();
    }
}
