package stridetally.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;

/** The chart in plain characters. Columns are worked out by hand: 46 of them from the lowest to the highest value drawn. */
class TextChartTest {
    private static final int FIELD = 11;

    @Test
    void valuesStandBetweenTheLowestAndTheHighest() {
        MadeCaseload made = plain();
        made.steps("2026-10-06", "supervision", "4");
        made.steps("2026-11-10", "supervision", "8");
        made.steps("2027-03-02", "supervision", "12");
        List<String> lines = chart(made).lines();
        // 4 is the lowest, 12 the highest, 8 half way: columns 0, 45, and 22.5 rounded up to 23.
        assertEquals(0, lines.get(1).indexOf('o') - FIELD);
        assertEquals(23, lines.get(2).indexOf('o') - FIELD);
        assertEquals(45, lines.get(4).indexOf('o') - FIELD);
        assertTrue(lines.get(3).startsWith("2026-12-21 ~ no school until 2027-01-01 (winter break)"));
    }

    @Test
    void onlyTheLastSessionsAreDrawnAndTheOthersCounted() {
        MadeCaseload made = plain();
        for (int i = 0; i < 30; i++) {
            made.steps(java.time.LocalDate.parse("2026-10-01").plusDays(i).toString(), "supervision", "5");
        }
        List<String> lines = chart(made).lines();
        assertEquals("6 earlier sessions not shown", lines.get(1).strip());
        assertEquals(TextChart.MOST_SESSIONS, (int)
                lines.stream().filter(line -> line.endsWith("5 steps")).count());
    }

    @Test
    void aSessionWithoutAValueSaysWhy() {
        MadeCaseload made = plain();
        made.steps("2026-10-06", "minimal", "9");
        made.steps("2026-10-13", "supervision", "absent");
        made.steps("2026-10-20", "supervision", "unable");
        made.steps("2026-10-27", "supervision", ">5");
        List<String> lines = chart(made).lines();
        assertTrue(lines.get(1).endsWith("all with more help"));
        assertTrue(lines.get(2).endsWith("absent"));
        assertTrue(lines.get(3).endsWith("no value"));
        assertTrue(lines.get(4).contains(">") && lines.get(4).endsWith(">= 5 steps"));
        assertFalse(lines.get(lines.size() - 1).contains("o session"));
    }

    @Test
    void equalValuesStandInTheMiddleAndLongWordsAreCut() {
        MadeCaseload made = new MadeCaseload();
        MadeCaseload.Draft draft = new MadeCaseload.Draft();
        draft.baseline = "";
        draft.target = "";
        made.goals.add(draft.goal());
        made.steps("2026-10-06", "supervision", "4");
        assertEquals(23, chart(made).lines().get(1).indexOf('o') - FIELD);
        assertEquals(TextChart.WIDTH, TextChart.clip("x".repeat(200)).length());
        assertEquals("a ' b", TextChart.clip("a `\nb"));
    }

    @Test
    void aValueOnTheAimLineIsOneMark() {
        MadeCaseload made = plain();
        // On 2027-01-26, 130 of the 259 days from 2026-09-18 to 2027-06-04 are over: 4 + 8 * 130 / 259 = 8.02, column
        // 22.6.
        made.steps("2027-01-26", "supervision", "8");
        assertTrue(chart(made).lines().get(1).contains("*"));
    }

    private static MadeCaseload plain() {
        MadeCaseload made = new MadeCaseload();
        made.goals.add(new MadeCaseload.Draft().goal());
        return made;
    }

    private static TextChart chart(MadeCaseload made) {
        return made.team().goals().get(0).sides().get(0).chart();
    }
}
