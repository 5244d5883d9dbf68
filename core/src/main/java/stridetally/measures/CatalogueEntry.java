package stridetally.measures;

import java.util.Map;
import java.util.function.Supplier;
import stridetally.model.MeasureId;
import stridetally.problem.At;
import stridetally.problem.Checked;

/**
 * One measure of a catalogue. A row of the file is made a measure when it is asked for: most runs ask for few.
 *
 * @param name its trade name; blank when the row has none
 * @param made makes the measure, an equal one each time
 */
record CatalogueEntry(MeasureId id, String name, Supplier<Measure> made) {

    static CatalogueEntry of(Measure measure) {
        return new CatalogueEntry(measure.id(), measure.name(), () -> measure);
    }

    /** A row of our own file; a fault in it is a defect and throws when the measure is asked for. */
    static CatalogueEntry ofRow(Map<String, String> cells, At at) {
        MeasureId id = new MeasureId(cells.getOrDefault("id", ""));
        return new CatalogueEntry(id, cells.getOrDefault("name", ""), () -> {
            Checked<Measure> checked = MeasureRow.parse(cells, at, Catalogue.empty());
            return checked.value()
                    .orElseThrow(
                            () -> new IllegalStateException(checked.problems().toString()));
        });
    }
}
