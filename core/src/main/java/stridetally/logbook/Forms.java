package stridetally.logbook;

import java.util.List;
import java.util.Optional;
import stridetally.ingest.FormMapping;
import stridetally.ingest.FormMatch;
import stridetally.measures.Catalogue;
import stridetally.table.Row;

/**
 * The mappings at hand: the one given for this run, else the saved one with the headings of the file.
 *
 * @param saved those of the logbook's folder {@code forms/}
 */
public record Forms(Optional<FormMapping> given, List<FormMapping> saved) {
    public Forms {
        saved = List.copyOf(saved);
    }

    /** The mapping for a file with these first rows; {@link FormMapping#NONE} when there is none. */
    public FormMapping of(List<Row> firstRows, Catalogue catalogue) {
        return given.or(() -> FormMatch.find(saved, firstRows, catalogue)).orElse(FormMapping.NONE);
    }
}
