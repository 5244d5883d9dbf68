package stridetally.logbook;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import stridetally.ingest.KnownTrials;

/**
 * The rules of identity: "source, student, date, session, measure, side, protocol, place, observer, trial. Without a trial
 * number it is the ordinal within that key in file order, so equal rows of one file are different tries, and said; with
 * equal numbers the second is a duplicate. Across files the same identity and value is already known; another value is a
 * conflict, set aside." Rows made by hand.
 */
class TrialIdentityTest {
    private static final String HEAD =
            "source,student,date,session,measure,side,protocol,place,observer,trial,value,of,help,prompt,use,activity,note\n";
    private static final String FIRST =
            "north,S01,2026-10-05,am,hop-count,left,shoes=on,school,pt-1,1,6,,supervision,none,probe,gym,first\n";

    @ParameterizedTest
    @CsvSource({
        "north, south, NEW",
        "S01, S02, NEW",
        "2026-10-05, 2026-10-06, NEW",
        "am, pm, NEW",
        "hop-count, line-steps, NEW",
        "left, right, NEW",
        "shoes=on, shoes=off, NEW",
        "school, home, NEW",
        "pt-1, aide-2, NEW",
        "'pt-1,1,', 'pt-1,2,', NEW",
        "'1,6,', '1,7,', OTHER_VALUE",
        "'1,6,', '1,>6,', OTHER_VALUE",
        "'1,6,', '1,unable,', OTHER_VALUE",
        "first, second, SAME",
        "supervision, independent, SAME",
        "none, verbal, SAME",
        "probe, practice, SAME",
        "gym, hall, SAME",
        "shoes=on, Shoes = ON, SAME",
        "hop-count, Hop Count, SAME",
        "'1,6,', '1,6.0,', SAME"
    })
    void theNamedPartsAndNoOthersTellTriesApart(String part, String other, KnownTrials.Standing standing) {
        String second = FIRST.replace(part, other);
        TrialImport.Outcome oneFile = ReadLog.of(HEAD + FIRST + second).outcome();
        assertEquals(standing == KnownTrials.Standing.NEW ? 2 : 1, oneFile.taken());
        assertEquals(standing == KnownTrials.Standing.NEW ? 0 : 1, oneFile.setAside());

        KnownTrials known = new KnownTrials();
        ReadLog.of(HEAD + FIRST, known, 1, TrialImport.Clash.SET_ASIDE);
        TrialImport.Outcome next =
                ReadLog.of(HEAD + second, known, 2, TrialImport.Clash.SET_ASIDE).outcome();
        assertEquals(standing == KnownTrials.Standing.NEW ? 1 : 0, next.taken());
        assertEquals(standing == KnownTrials.Standing.SAME ? 1 : 0, next.known());
        assertEquals(standing == KnownTrials.Standing.OTHER_VALUE ? 1 : 0, next.setAside());
    }

    @ParameterizedTest
    @CsvSource({"4, 5, 4, 10", "4, 5, 3, 5"})
    void triesDifferInMetAndInGiven(int met, int given, int otherMet, int otherGiven) {
        String head = "student,date,measure,trial,value,of,help,place\n";
        String row = "S01,2026-10-05,success,1,%d,%d,independent,school\n";
        TrialImport.Outcome outcome = ReadLog.of(
                        head + String.format(row, met, given) + String.format(row, otherMet, otherGiven))
                .outcome();
        assertEquals(1, outcome.setAside());
        assertTrue(outcome.problems().sentences().get(0).contains("CONFLICT"));
    }

    @Test
    void equalRowsWithoutANumberAreDifferentTriesAndKnownWhenTheyComeAgain() {
        String log = HEAD + FIRST.replace("pt-1,1,", "pt-1,,").repeat(3);
        KnownTrials known = new KnownTrials();
        ReadLog first = ReadLog.of(log, known, 1, TrialImport.Clash.SET_ASIDE);
        assertEquals(
                List.of("1", "2", "3"),
                first.rows().stream().map(row -> row.get(5)).toList());
        assertEquals(3, first.outcome().numbered());
        assertEquals(
                3,
                ReadLog.of(log, known, 2, TrialImport.Clash.SET_ASIDE).outcome().known());
    }

    @ParameterizedTest
    @CsvSource({
        "north, south, 1",
        "S01, S02, 1",
        "2026-10-05, 2026-10-06, 1",
        "am, pm, 1",
        "hop-count, line-steps, 1",
        "left, right, 1",
        "shoes=on, shoes=off, 1",
        "school, home, 1",
        "pt-1, aide-2, 1",
        "supervision, independent, 2",
        "probe, practice, 2",
        "first, second, 2"
    })
    void withoutANumberTheOrderWithinTheSameKeyCounts(String part, String other, String number) {
        String first = FIRST.replace("pt-1,1,", "pt-1,,");
        assertEquals(
                number,
                ReadLog.of(HEAD + first + first.replace(part, other))
                        .rows()
                        .get(1)
                        .get(5));
    }

    @Test
    void aSecondRowOfTheFileIsNamedWithTheLineOfTheFirst() {
        String note = FIRST.replace("first", "\"three\nlines\nlong\"");
        List<String> sentences = ReadLog.of(HEAD
                        + note
                        + FIRST.replace("1,6,", "2,6,")
                        + FIRST.replace("1,6,", "2,6,")
                        + FIRST.replace("1,6,", "2,9,"))
                .outcome()
                .problems()
                .sentences();
        assertEquals(
                "log.csv:6: DUPLICATE: found \"line 5 of this file has the same try with the same value\"; expected one row"
                        + " for each try; give this try its own number, or dismiss the row",
                sentences.get(0));
        assertTrue(
                sentences
                        .get(1)
                        .startsWith("log.csv:7: CONFLICT: found \"line 5 of this file has this try with another"),
                sentences.get(1));
    }

    @Test
    void aConflictNamesTheEntryAndReplaceTakesItsPlace() {
        KnownTrials known = new KnownTrials();
        ReadLog.of(HEAD + FIRST, known, 1, TrialImport.Clash.SET_ASIDE);
        String other = HEAD + FIRST.replace("1,6,", "1,7,");
        String sentence = ReadLog.of(other, known, 2, TrialImport.Clash.SET_ASIDE)
                .outcome()
                .problems()
                .sentences()
                .get(0);
        assertEquals(
                "log.csv:2: CONFLICT: found \"entry 0001, line 2 has this try with another value\"; expected one value for"
                        + " each try; import it with --replace if this one is right, or give the try its own number",
                sentence);
        TrialImport.Outcome replaced =
                ReadLog.of(other, known, 2, TrialImport.Clash.REPLACE).outcome();
        assertEquals(List.of(LineRange.line(1, 2)), replaced.superseded());
        assertEquals(1, replaced.taken());
        assertEquals(
                1,
                ReadLog.of(other, known, 3, TrialImport.Clash.REPLACE).outcome().known());
    }

    @Test
    void withinOneFileNothingIsReplaced() {
        ReadLog log = ReadLog.of(
                HEAD + FIRST + FIRST.replace("1,6,", "1,7,"), new KnownTrials(), 1, TrialImport.Clash.REPLACE);
        assertEquals(1, log.outcome().setAside());
        assertTrue(
                log.setAside().get(0).mend().contains("keep the right one"),
                log.setAside().get(0).mend());
    }

    @Test
    void manyTrialsAreToldApart() {
        StringBuilder log = new StringBuilder(HEAD);
        for (int trial = 1; trial <= 3000; trial++) {
            log.append(FIRST.replace("pt-1,1,", "pt-1," + trial + ","));
        }
        KnownTrials known = new KnownTrials();
        assertEquals(
                3000,
                ReadLog.of(log.toString(), known, 1, TrialImport.Clash.SET_ASIDE)
                        .outcome()
                        .taken());
        assertEquals(
                3000,
                ReadLog.of(log.toString(), known, 2, TrialImport.Clash.SET_ASIDE)
                        .outcome()
                        .known());
    }
}
