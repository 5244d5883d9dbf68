package stridetally.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import stridetally.measures.Catalogue;
import stridetally.measures.Measure;
import stridetally.model.MeasureId;
import stridetally.table.Cell;

/** The listed catalogue says of a measure what its row in {@code measures.tsv} says. */
final class CatalogueRowsTest {
    private static String cell(Measure measure, String column) {
        List<Cell> row = new CatalogueRows(Catalogue.citations()).row(measure);
        assertEquals(CatalogueRows.HEADINGS.size(), row.size());
        return row.get(CatalogueRows.HEADINGS.indexOf(column)).plain();
    }

    private static Measure measure(String id) {
        return Catalogue.standard().find(new MeasureId(id)).orElseThrow();
    }

    @Test
    void aMeasureIsListedWithEverythingThatDefinesIt() {
        Measure steps = measure("line-steps");
        assertEquals("consecutive steps on a floor line", cell(steps, "name"));
        assertEquals("steps", cell(steps, "unit"));
        assertEquals("higher", cell(steps, "better"));
        assertEquals("best", cell(steps, "summary"));
        assertEquals("0", cell(steps, "possible_low"));
        assertEquals("200", cell(steps, "possible_high"));
        assertEquals("none", cell(steps, "sides"));
        assertEquals("1", cell(steps, "resolution"));
        assertTrue(cell(steps, "protocol_keys").startsWith("surface line_length"));
        assertTrue(cell(steps, "source").startsWith("Common practice of the trade, no source."));
        assertEquals("0.1", cell(measure("timed-up-and-go"), "resolution"));
        assertEquals("lower", cell(measure("timed-up-and-go"), "better"));
        assertEquals("", cell(measure("cadence"), "better"));
    }

    @Test
    void everySourceIsSpeltOut() {
        for (Measure measure : Catalogue.standard().all()) {
            String source = cell(measure, "source");
            for (String id : Catalogue.citations().keySet()) {
                assertFalse((" " + source + " ").contains(" " + id + " "), source);
            }
        }
    }

    @Test
    void aSourceOfSomebodysOwnMeasureIsPrintedAsWritten() {
        assertEquals(
                "common-practice ours",
                new CatalogueRows(java.util.Map.of())
                        .row(measure("line-steps"))
                        .get(CatalogueRows.HEADINGS.indexOf("source"))
                        .plain());
    }
}
