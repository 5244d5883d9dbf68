package stridetally.ingest;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import stridetally.measures.Catalogue;
import stridetally.problem.InputRefused;

/** What headings, titles and a mapping say of a form. Expected tries are written by hand from the texts. */
final class FormTest {

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "Try 1 | value; trial 1",
                "T3 | value; trial 3",
                "SLS L | value; measure single-leg-stance, side left",
                "left leg SLS 2 (sec) | value; measure single-leg-stance, trial 2, side left in sec",
                "Single leg stance R | value; measure single-leg-stance, side right",
                "10 metre walk time | value; measure walk-time",
                "30 second walk 2 | value; measure walk-30s, trial 2",
                "Help 2 | help; trial 2",
                "Stairs time practice | value; measure stairs-time, use practice",
                "Right | value; side right",
                "Result (ft) | value in ft",
                "Leg | side",
            })
    void aHeadingSaysWhatItsColumnHolds(String heading, String meaning) {
        assertEquals(
                meaning,
                new HeadingReader(Catalogue.standard())
                        .read(heading)
                        .map(ColumnMeaning::words)
                        .orElse("nothing"));
    }

    @ParameterizedTest
    @CsvSource({"Colour", "Room 12 weather", "2nd", "Steps to take home"})
    void otherWordsSayNothing(String heading) {
        assertEquals(Optional.empty(), new HeadingReader(Catalogue.standard()).read(heading));
    }

    @Test
    void aMappingNamesColumnsWordsAndConstants() {
        FormMapping mapping = mapping(
                Map.of(
                        "Kind", ColumnMeaning.plain(TrialColumn.STUDENT, "", "said"),
                        "Tag", ColumnMeaning.plain(TrialColumn.DATE, "", "said"),
                        "Einbein",
                                new ColumnMeaning(
                                        Optional.of(TrialColumn.VALUE),
                                        Map.of(TrialColumn.MEASURE, "single-leg-stance", TrialColumn.SIDE, "left"),
                                        "",
                                        "said")),
                new FormRules(
                        Map.of(TrialColumn.HELP, "stand-by", TrialColumn.PROTOCOL, "shoes=on;eyes=open"),
                        Map.of(TrialColumn.VALUE, Map.of("krank", "absent")),
                        Optional.of(new DayCount(LocalDate.of(2027, 1, 4), 7, 1)),
                        Optional.empty()));
        ReadLog log = ReadLog.csv("Kind;Tag;Einbein;protocol\nK1;1;3;shoes=off\nK1;Woche 3;krank;\n", mapping);
        // Week 1 begins on the origin; week 3 is 14 days later.
        assertEquals(
                List.of(
                        "K1 | 2027-01-04 | single-leg-stance | left | 1 | 3 | stand-by",
                        "K1 | 2027-01-18 | single-leg-stance | left | 1 | absent | "),
                log.lines());
        assertEquals("eyes=open;shoes=off", log.trials.get(0).key().protocol().text());
        assertEquals("3 | help declared by form", log.trials.get(0).asWritten());
        // Nobody was there to be helped, so the help of the form says nothing of it.
        assertEquals("krank", log.trials.get(1).asWritten());
    }

    @Test
    void theYearOfTheFormCompletesItsDates() {
        FormMapping mapping = mapping(Map.of(), new FormRules(Map.of(), Map.of(), Optional.empty(), Optional.of(2027)));
        ReadLog log = ReadLog.csv(
                "student,date,measure,value,help\nS1,1/14,line-steps,6,SBA\nS1,15 Jan,line-steps,7,SBA\n", mapping);
        assertEquals(
                List.of(
                        "S1 | 2027-01-14 | line-steps |  | 1 | 6 | stand-by",
                        "S1 | 2027-01-15 | line-steps |  | 1 | 7 | stand-by"),
                log.lines());
    }

    @Test
    void practiceColumnsArePracticeOnly() {
        ReadLog log = ReadLog.csv(
                "student,date,measure,Try 1,Practice 1,help\nS1,2027-01-14,line-steps,6,9,SBA\n", FormMapping.NONE);
        assertEquals("probe", log.trials.get(0).key().use().word());
        assertEquals("practice", log.trials.get(1).key().use().word());
    }

    @Test
    void oneBadTryLeavesTheOthersOfItsRow() {
        ReadLog log = ReadLog.csv(
                "Place: gym\nstudent,date,measure,Try 1,Try 2,Try 3,help\nS1,2027-01-14,line-steps,6,x,8,SBA\n",
                FormMapping.NONE);
        assertEquals(
                List.of(
                        "S1 | 2027-01-14 | line-steps |  | 1 | 6 | stand-by",
                        "S1 | 2027-01-14 | line-steps |  | 3 | 8 | stand-by"),
                log.lines());
        LogRow aside = log.setAside.get(0);
        assertEquals("log.csv:3:5", aside.kept().text());
        // What the title says for the whole form goes with the row, and the other tries stay out of it.
        assertEquals(List.of("S1", "2027-01-14", "line-steps", "", "x", "", "SBA", "gym"), aside.cells());
        assertEquals(
                List.of("student", "date", "measure", "Try 1", "Try 2", "Try 3", "help", "place"),
                log.form.keptHeadings());
        assertTrue(log.adds());
    }

    @Test
    void totalsAndUnheadedCellsAreTold() {
        ReadLog log = ReadLog.csv(
                "student,date,measure,value,help,\nS1,2027-01-14,line-steps,6,SBA,ok\nMean,,,6,,\n", FormMapping.NONE);
        assertEquals(
                List.of(
                        "rows of totals or means are no tries and are counted as blank: line 3",
                        "column 6 has no heading; its 1 cell was not read, the first at log.csv:2:6"),
                log.count.notes());
    }

    @Test
    void twoColumnsForOneAreRefused() {
        InputRefused refused = assertThrows(
                InputRefused.class,
                () -> ReadLog.csv(
                        "student,code,date,measure,value\nS1,S1,2027-01-14,line-steps,6\n", FormMapping.NONE));
        assertTrue(String.valueOf(refused.getMessage()).contains("columns 1 and 2"), refused.getMessage());
    }

    @Test
    void aNameInATitleIsNeverTold() {
        ReadLog log = ReadLog.csv(
                "Student: S-secret\ndate,measure,value,help\n2027-01-14,line-steps,6,SBA\n", FormMapping.NONE);
        assertFalse(
                log.form.notes().toString().contains("secret"), log.form.notes().toString());
    }

    @Test
    void aFormIsFoundAgainByItsHeadings() {
        FormMapping saved = mapping(Map.of(), FormRules.NONE).of(List.of("Kind", "Tag", "SLS L"));
        FormMapping other = mapping(Map.of(), FormRules.NONE).of(List.of("Kind", "Tag"));
        TextSource text = TextSource.of(MadeWorkbook.source(
                "log.csv", ",,SLS\nkind,TAG,L\nK1,1,3\n".getBytes(java.nio.charset.StandardCharsets.UTF_8)));
        assertEquals(Optional.of(saved), FormMatch.find(List.of(saved), FirstRows.of(text), Catalogue.standard()));
        assertTrue(saved.isOf(List.of("number", "Kind", "Tag", "SLS L", "further_cells")));
        assertFalse(other.isOf(List.of("Tag", "Kind")));
    }

    private static FormMapping mapping(Map<String, ColumnMeaning> columns, FormRules rules) {
        return new FormMapping(
                "form.toml",
                List.of(),
                columns,
                rules,
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                0,
                0);
    }
}
