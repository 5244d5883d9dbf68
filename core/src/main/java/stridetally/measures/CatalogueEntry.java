package stridetally.measures;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import stridetally.model.MeasureId;
import stridetally.problem.At;
import stridetally.problem.Checked;

/**
 * One measure of a catalogue. A row of the file is made a measure when it is asked for: most runs ask for few.
 *
 */
sealed interface CatalogueEntry {

    MeasureId id();

    /** Its trade name; blank when the row has none. */
    String name();

    /** Makes the measure, an equal one each time. */
    Measure made();

    /** A measure that is there already. */
    record Made(Measure made) implements CatalogueEntry {
        @Override
        public MeasureId id() {
            return made.id();
        }

        @Override
        public String name() {
            return made.name();
        }
    }

    /** Other ways of naming it, separated by {@code |}; blank when there are none. */
    default String aliases() {
        return "";
    }

    /** A row of our own file; a fault in it is a defect and throws when the measure is asked for. */
    record Written(MeasureId id, List<String> headings, List<String> cells, At at) implements CatalogueEntry {

        @Override
        public String name() {
            return cells.get(headings.indexOf("name"));
        }

        @Override
        public String aliases() {
            return cells.get(headings.indexOf("aliases"));
        }

        @Override
        public Measure made() {
            Map<String, String> row = new HashMap<>();
            for (int column = 0; column < headings.size(); column++) {
                row.put(headings.get(column), cells.get(column));
            }
            Checked<Measure> checked = MeasureRow.parse(row, at, Catalogue.empty());
            if (checked.value().isEmpty()) {
                throw new IllegalStateException(checked.problems().toString());
            }
            return checked.value().get();
        }
    }
}
