package stridetally.report;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;
import stridetally.model.Level;
import stridetally.model.WordScale;
import stridetally.scoring.HelpCounts;
import stridetally.table.Cell;

/** Shares by hand. */
class HelpRowsTest {

    private static HelpCounts.AtLevel at(String word, int tries) {
        Level level = WordScale.HELP.find(word).orElseThrow();
        return new HelpCounts.AtLevel(level, tries);
    }

    private static HelpCounts counts(int notWritten, HelpCounts.AtLevel... levels) {
        int tries = notWritten;
        for (HelpCounts.AtLevel level : levels) {
            tries += level.tries();
        }
        return new HelpCounts(List.of(levels), notWritten, List.of(), 0, tries);
    }

    @Test
    void sharesAreOfTheTriesWhoseHelpWasWrittenAndTheMostHelpIsNamed() {
        HelpRows.Tries now = new HelpRows.Tries(
                counts(2, at("independent", 3), at("stand-by", 5)), counts(0, at("stand-by", 1), at("minimal", 3)));
        HelpRows.Tries before = new HelpRows.Tries(counts(0, at("stand-by", 1), at("minimal", 1)), counts(0));
        List<String> rows = new HelpRows(WordScale.HELP, WordScale.PROMPT)
                        .rows(
                                MadeCaseload.rich().goals.get(0),
                                "winter",
                                MadeCaseload.range("2026-11-23", "2027-03-05"),
                                now,
                                before)
                        .stream()
                        .map(row -> String.join(
                                ",",
                                row.subList(6, row.size()).stream()
                                        .map(Cell::plain)
                                        .toList()))
                        .toList();
        // Probes 3/8 and 5/8 of the written ones, practice 1/4 and 3/4; before, 1/2 of two.
        assertEquals(
                List.of(
                        "help,independent,3,0.375,0.375,0,0.0,0.0,0.0,,",
                        "help,stand-by,5,0.625,1.0,1,0.25,0.25,0.5,,most help of a probe",
                        "help,minimal,0,0.0,1.0,3,0.75,1.0,0.5,,most help of a practice try",
                        "help,,2,,,0,,,,,help was not written; in no share"),
                rows);
    }
}
