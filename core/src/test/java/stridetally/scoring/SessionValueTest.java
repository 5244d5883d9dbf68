package stridetally.scoring;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import stridetally.measures.MeasureKind;
import stridetally.measures.Sidedness;
import stridetally.model.Direction;
import stridetally.model.Summary;

/**
 * What a session is worth. The sentences in the first column are the rules of counting; sums and ranks are worked by hand.
 * A value is written sum:count, so {@code 16.9:3} is 5.6333...
 */
class SessionValueTest {

    @ParameterizedTest(name = "{0}: {2} -> {3} {4} {5} {6}")
    @CsvSource(delimiter = '|', textBlock = """
            # 4.2 + 6.8 + 5.9 = 16.9
            best, mean, median, last = highest trial number   | HIGHER | 4.2 6.8 5.9            | 6.8:1   | 16.9:3   | 5.9:1   | 5.9:1
            best is the lowest when lower is better           | LOWER  | 4.2 6.8 5.9            | 4.2:1   | 16.9:3   | 5.9:1   | 5.9:1
            median of an even number: mean of the two middle  | HIGHER | 4 8 6 9                | 8:1     | 27:4     | 14:2    | 9:1
            last = highest trial number, not the last row     | HIGHER | #3=7 #1=5 #2=6         | 7:1     | 18:3     | 6:1     | 7:1
            for best only the first usual number in order     | HIGHER | 5 6 7 9                | 7:1     | 27:4     | 13:2    | 9:1
            the first in order of number, not of row          | HIGHER | #4=9 #1=5 #2=6 #3=7    | 7:1     | 27:4     | 13:2    | 9:1
            # at least 30, 22.4, at least 30: 82.4 in all, so the mean is at least that over 3
            a median or best may still be known; a mean with one is censored | HIGHER | >30 22.4 >30 | >=30:1 | >=82.4:3 | >=30:1 | >=30:1
            a median beside one cap is known                  | HIGHER | 22.4 25 >30            | >=30:1  | >=77.4:3 | 25:1    | >=30:1
            lower is better: the best beside a cap is known   | LOWER  | >60 45 50              | 45:1    | >=155:3  | 50:1    | 50:1
            lower is better, all but one capped               | LOWER  | >60 45 >60             | 45:1    | >=165:3  | >=60:1  | >=60:1
            caps of 10 and 30 join as censored values         | HIGHER | >10 12 >30             | >=30:1  | >=52:3   | >=12:1  | >=30:1
            a cap below a longer time leaves best known       | HIGHER | >10 15                 | >=15:1  | >=25:2   | >=25:2  | 15:1
            below what can be measured                        | HIGHER | <2 5 <2                | 5:1     | <=9:3    | <=2:1   | <=2:1
            below what can be measured, lower is better       | LOWER  | <2 5 7                 | <=2:1   | <=14:3   | 5:1     | 7:1
            # the middle one of three lies in 5 to 8 (lower ends 3 5 8, upper ends 5 8 open): the caps are below the truth
            known on both sides, capped above                 | HIGHER | >3 5 8                 | >=8:1   | >=16:3   | >=5:1   | 8:1
            # lower ends open 3 5, upper ends 3 5 10: the middle one lies in 3 to 5
            known on both sides, capped below                 | HIGHER | <10 5 3                | <=10:1  | <=18:3   | <=5:1   | 3:1
            capped on both sides                              | HIGHER | <2 >9                  | >=9:1   | -        | -       | >=9:1
            # unable is the lowest rank: ranks are unable 5 7, so the median is 5; the mean is of 5 and 7 alone
            unable: lowest rank in a median or best, never a zero in a mean | HIGHER | unable 5 7 | 7:1 | 12:2   | 5:1     | 7:1
            unable when lower is better ranks above all times | LOWER  | unable 5 7             | 5:1     | 12:2     | 7:1     | 7:1
            a median that falls on unable is no value         | HIGHER | unable unable 7        | 7:1     | 7:1      | -       | 7:1
            an even median that touches unable is no value    | HIGHER | unable 7               | 7:1     | 7:1      | -       | 7:1
            every try unable                                  | HIGHER | unable unable          | -       | -        | -       | -
            a last try that is unable is no value             | HIGHER | 5 7 unable             | 7:1     | 12:2     | 5:1     | -
            the other three are not recorded                  | HIGHER | 5 refused absent untested 7 | 7:1 | 12:2    | 12:2    | 7:1
            """)
    void valuesOfASession(
            String rule, Direction better, String tries, String best, String mean, String median, String last) {
        Session session = bare(MeasureKind.DURATION, Optional.of(better), Summary.BEST, tries);
        assertEquals(best, Tries.text(session.best()), "best");
        assertEquals(mean, Tries.text(session.mean()), "mean");
        assertEquals(median, Tries.text(session.median()), "median");
        assertEquals(last, Tries.text(session.last()), "last");
        assertEquals(session.best(), session.value(), "the summary is best");
    }

    @ParameterizedTest(name = "{0}: {1} -> {2}")
    @CsvSource(delimiter = '|', textBlock = """
            # 3 of 4 and 4 of 6: 7 of 10
            n opportunities on one row = n recorded tries, value of them met | 3/4 4/6      | 7:10 | 10
            the share does not depend on how rows are cut                    | 7/10         | 7:10 | 10
            unable at a try that is met or not is a try not met              | 3/4 unable   | 3:5  | 5
            a single try written as 1 or 0                                   | 1 0 1        | 2:3  | 3
            """)
    void triesMetOverTriesGiven(String rule, String tries, String value, int counted) {
        Session session = bare(MeasureKind.TRIES, Optional.of(Direction.HIGHER), Summary.BEST, tries);
        assertEquals(value, Tries.text(session.value()));
        assertEquals(counted, session.counted());
        assertEquals(counted, session.recorded());
    }

    @Test
    void eventsCountedPerTryAreAveragedWhenTheMeasureSaysSo() {
        // 6, 7 and 6 step-offs, one way along the line each: 19 over 3 ways
        assertEquals(
                "19:3",
                Tries.text(bare(MeasureKind.EVENTS, Optional.of(Direction.LOWER), Summary.MEAN, "6 7 6")
                        .value()));
    }

    @Test
    void eventsAreAddedUp() {
        // 2 + 0 + 1 falls
        assertEquals(
                "3:1",
                Tries.text(bare(MeasureKind.EVENTS, Optional.of(Direction.LOWER), Summary.TOTAL, "2 0 1")
                        .value()));
    }

    @Test
    void sampleSdIsOfTheExactValues() {
        // 4, 6, 8: mean 6, squares 4 + 0 + 4 = 8, over n - 1 = 2 is 4, root 2. The capped try is left out.
        Session session = bare(MeasureKind.DURATION, Optional.of(Direction.HIGHER), Summary.MEAN, "4 6 8 >30");
        assertEquals(2.0, session.sd().orElseThrow(), 1e-12);
        assertEquals(1, session.capped());
        // 4 and 8: mean 6, squares 4 + 4 = 8, over 1: root 8
        assertEquals(
                Math.sqrt(8),
                bare(MeasureKind.DURATION, Optional.of(Direction.HIGHER), Summary.MEAN, "4 8")
                        .sd()
                        .orElseThrow(),
                1e-12);
        assertTrue(bare(MeasureKind.DURATION, Optional.of(Direction.HIGHER), Summary.MEAN, "4 >30")
                .sd()
                .isEmpty());
    }

    @ParameterizedTest(name = "{0} -> {1}, {2}")
    @CsvSource(delimiter = '|', textBlock = """
            refused untested | refused    | REFUSED
            absent untested  | absent     | ABSENT
            untested         | not tested | NOT_TESTED
            """)
    void aSessionWithoutATryHasNoValueAndSaysWhy(String tries, String reason, SessionStatus status) {
        Session session = bare(MeasureKind.COUNT, Optional.of(Direction.HIGHER), Summary.BEST, tries);
        assertEquals(new SessionValue.Missing(reason), session.value());
        assertEquals(status, session.status());
        assertEquals(Answer.Meets.NOT_ASKED, session.met().meets());
        assertEquals(reason, session.reason());
    }

    /** A try that was unable has no place in a sum, which must be said; in a best or a share it has its place. */
    @ParameterizedTest(name = "{0} {1}: {2} -> {3}")
    @CsvSource(delimiter = '|', textBlock = """
            DURATION | MEAN   | unable 5     | 5:1 | a try was unable: the value is of the others
            DURATION | TOTAL  | unable 5 6   | 11:1 | a try was unable: the value is of the others
            EVENTS   | TOTAL  | unable 2 1   | 3:1 | a try was unable: the value is of the others
            DURATION | BEST   | unable 5     | 5:1 | ''
            DURATION | MEDIAN | unable 5 6   | 5:1 | ''
            TRIES    | MEAN   | unable 1/2   | 1:3 | ''
            """)
    void whatIsSaidOfATryThatWasUnable(MeasureKind kind, Summary summary, String tries, String value, String reason) {
        Session session = bare(kind, Optional.of(Direction.HIGHER), summary, tries);
        assertEquals(value, Tries.text(session.value()));
        assertEquals(reason, session.reason());
    }

    @Test
    void aBestOfTheFirstTriesSaysSo() {
        Optional<Direction> higher = Optional.of(Direction.HIGHER);
        assertEquals(
                "best of the first 3 of 4 tries",
                bare(MeasureKind.COUNT, higher, Summary.BEST, "5 6 7 9").reason());
        assertEquals("", bare(MeasureKind.COUNT, higher, Summary.BEST, "5 6 7").reason());
        assertEquals(
                "", bare(MeasureKind.COUNT, higher, Summary.MEAN, "5 6 7 9").reason());
    }

    @Test
    void aMeasureWithoutABetterWayHasNoBest() {
        Session session = bare(MeasureKind.FREQUENCY, Optional.empty(), Summary.MEAN, "100 110 unable");
        assertEquals("-", Tries.text(session.best()));
        assertEquals("-", Tries.text(session.median()));
        assertEquals("210:2", Tries.text(session.value()));
    }

    @Test
    void inABareSeriesEveryRecordedTryCountsWhateverTheHelp() {
        Session session = bare(MeasureKind.COUNT, Optional.of(Direction.HIGHER), Summary.MEAN, "5@maximal 6@blank 7");
        assertEquals("18:3", Tries.text(session.value()));
        assertEquals(3, session.counted());
        assertEquals(0, session.doubtfulTries());
        // The most help of the three is maximal, rank 9 of the scale counted from independent = 0.
        assertEquals(9, session.mostHelp().orElseThrow());
        // 1 of the 2 tries with a written help.
        assertEquals(0.5, session.independentShare().orElseThrow());
    }

    private static Session bare(MeasureKind kind, Optional<Direction> better, Summary summary, String tries) {
        Counting counting =
                Counting.bare(Tries.measure(kind, better, summary, Sidedness.NONE), Optional.empty(), Optional.empty());
        return SessionScorer.by(counting).score(Tries.group(tries));
    }
}
