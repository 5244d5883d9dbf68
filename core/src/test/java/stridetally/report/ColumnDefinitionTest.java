package stridetally.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;
import stridetally.measures.ColumnDefinition;

/** What a researcher must be able to cite. */
class ColumnDefinitionTest {
    private static final Map<String, List<String>> TABLES = Map.ofEntries(
            Map.entry("score --by trial", TrialRows.HEADINGS),
            Map.entry("score --by session", SessionTableRows.HEADINGS),
            Map.entry("score --by period", PeriodRows.HEADINGS),
            Map.entry("score --by goal", GoalRows.HEADINGS),
            Map.entry("score --by student", StudentRows.HEADINGS),
            Map.entry("score --by help", HelpRows.HEADINGS),
            Map.entry("score --by sides", SidesRows.HEADINGS),
            Map.entry("score --by exposure", ExposureRows.HEADINGS),
            Map.entry("score --by reference", ReferenceRows.HEADINGS),
            Map.entry("score --agreement", AgreementRows.HEADINGS),
            Map.entry("trend", TrendRows.HEADINGS));

    private final List<ColumnDefinition> all = ColumnDefinition.all();

    @Test
    void everyColumnOfEveryTableIsDefined() {
        List<String> missing = new ArrayList<>();
        TABLES.forEach((table, headings) -> headings.stream()
                .filter(column -> ColumnDefinition.find(all, table, column).isEmpty())
                .forEach(column -> missing.add(table + ": " + column)));
        assertEquals(List.of(), missing);
    }

    @Test
    void noColumnIsDefinedThatNoTableHas() {
        for (ColumnDefinition one : all) {
            boolean figure =
                    one.table().equals("score --agreement") && one.column().startsWith("figure ");
            boolean everywhere = one.table().equals(ColumnDefinition.EVERY_TABLE)
                    && TABLES.values().stream().anyMatch(headings -> headings.contains(one.column()));
            boolean own = TABLES.getOrDefault(one.table(), List.of()).contains(one.column());
            assertTrue(figure || everywhere || own, one::toString);
        }
    }

    @Test
    void eachIsDefinedOnceWithASource() {
        Set<String> seen = new HashSet<>();
        for (ColumnDefinition one : all) {
            assertTrue(seen.add(one.table() + one.column()), one::toString);
            assertTrue(!one.definition().isBlank() && !one.source().isBlank(), one::toString);
        }
    }
}
