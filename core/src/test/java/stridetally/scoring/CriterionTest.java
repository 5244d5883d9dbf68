package stridetally.scoring;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import stridetally.measures.Measure;
import stridetally.measures.MeasureKind;
import stridetally.measures.Sidedness;
import stridetally.model.Direction;
import stridetally.model.GoalAim;
import stridetally.model.Summary;

/** Three answers, by whole numbers. The target is 10 (or 10 s when lower is better); answers are worked by hand. */
class CriterionTest {

    @ParameterizedTest(name = "{0}: {1} of {2} -> {3}")
    @CsvSource(delimiter = '|', textBlock = """
            4 good of 4 recorded satisfies 4 of 5: the missing try cannot undo it | 4/5 | 10 11 10 12         | yes
            exactly at the target meets                                           | 4/5 | 10 10 10 10 9       | yes
            3 good of 5                                                           | 4/5 | 10 10 10 9 9        | no
            # 2 misses leave at most 3 good tries of 5
            fails even if all unknowns pass                                       | 4/5 | 9 9                 | no
            # 3 good, 2 tries not made: 3 to 5 good
            too few tries are not known                                           | 4/5 | 10 10 10            | not known
            tries that were refused are tries not made                            | 4/5 | 10 10 10 refused refused | not known
            unable is a failed try                                                | 4/5 | 10 10 10 unable unable | no
            unable is a failed try, and 4 of 5 are good                           | 4/5 | 10 10 10 10 unable  | yes
            only the first tries in order, as many as are given                   | 4/5 | 9 9 10 10 10 10 10  | no
            later tries do not undo it                                            | 4/5 | 10 10 10 10 9 9 9 9 | yes
            the order is by number                                                | 4/5 | #6=9 #7=9 #1=10 #2=10 #3=10 #4=10 #5=10 | yes
            # a try with too much help took its turn: 3 of 5 met
            a try that needed more help did not meet                              | 4/5 | 10 10 10 10@contact_guard 10@contact_guard | no
            assisted first tries are not passed over                              | 4/5 | 10@minimal 10@minimal 10 10 10 10 | no
            every try with more help                                              | 4/5 | 12@minimal          | no
            unable alone ends it, however few                                     | 4/5 | unable              | no
            # 3 surely good, 2 good with unknown help: 3 to 5
            a try whose help is blank is not known to be permitted                | 4/5 | 10 10 10 10@blank 10@blank | not known
            a blank help cannot undo 4 good tries                                 | 4/5 | 10 10 10 10 10@blank | yes
            a miss is a miss, whatever the help                                   | 4/5 | 10 10 10 9@blank 9@blank | no
            # capped below the target of 10: may be beyond it
            a cap below the target is not known                                   | 4/5 | 10 10 10 >8 >8      | not known
            a cap at the target meets                                             | 4/5 | >10 >10 >10 >12     | yes
            at most 8 misses                                                      | 4/5 | 10 10 10 <8 <8      | no
            at most 12 is not known                                               | 4/5 | 10 10 10 <12 <12    | not known
            k of n on one row                                                     | 4/5 | 4/5                 | yes
            k of n on several rows                                                | 4/5 | 2/2 1/3             | no
            k of n, short of tries                                                | 4/5 | 3/4                 | not known
            # which of the 10 came first was not written: of the first 5 at least 8 - 5 = 3 are good
            more tries on a row than the criterion gives                          | 4/5 | 8/10                | not known
            more tries on a row, and at most one missed                           | 4/5 | 9/10                | yes
            more tries on a row, and too few met                                  | 4/5 | 3/10                | no
            k of n at more help                                                   | 4/5 | 5/5@minimal         | no
            k of n with blank help                                                | 4/5 | 5/5@blank           | not known
            k of n with blank help and too few met                                | 4/5 | 3/5@blank           | no
            """)
    void byTries(String rule, String criterion, String tries, String answer) {
        GoalDraft draft = new GoalDraft();
        draft.criterion = criterion;
        assertEquals(answer, met(draft, Tries.steps(), tries));
        draft.aim = GoalAim.KEEP;
        assertEquals(answer, met(draft, Tries.steps(), tries), "to keep counts the same");
    }

    @ParameterizedTest(name = "{0}: {2} {1} {3} -> {4}")
    @CsvSource(delimiter = '|', textBlock = """
            without trial fields the session value is compared | BEST   | HIGHER | 8 10 9                     | yes
            the best misses                                    | BEST   | HIGHER | 8 9 9                      | no
            # 9 + 10 + 11 = 30 = 3 x 10
            a mean exactly at the target meets                 | MEAN   | HIGHER | 9 10 11                    | yes
            a mean a hair below misses                         | MEAN   | HIGHER | 9 10 10.999999999          | no
            lower is better: at the target                     | MEAN   | LOWER  | 9 10 11                    | yes
            lower is better: above                             | MEAN   | LOWER  | 9 10 11.000000001          | no
            capped at or beyond the target meets               | BEST   | HIGHER | >10 3                      | yes
            capped below the target: may lie beyond            | BEST   | HIGHER | >8 3                       | not known
            lower is better: capped above the target fails     | LAST   | LOWER  | >11                        | no
            lower is better: capped below the target           | LAST   | LOWER  | >9                         | not known
            # stopped exactly at the target: at least 10, and 10 would meet
            lower is better: capped at the target              | LAST   | LOWER  | >10                        | not known
            lower is better: at most the target                | LAST   | LOWER  | <10                        | yes
            higher is better: at most the target               | LAST   | HIGHER | <10                        | not known
            # in order: unable, at most 2, at least 9: the middle one is at most 2
            the middle one is capped below                     | MEDIAN | HIGHER | <2 >9 unable               | no
            # in order: unable, at most 2, at least 9, at least 9: the two in the middle are open on both sides
            the two in the middle are open on both sides       | MEDIAN | HIGHER | <2 >9 >9 unable            | not known
            # sum 11 + <2 + >1: neither side is known
            a mean capped on both sides beside an unable       | MEAN   | HIGHER | 11 <2 >1 unable            | not known
            lower is better: below what can be measured        | LAST   | LOWER  | <9                         | yes
            a mean with a cap is censored                      | MEAN   | HIGHER | >9 12                      | yes
            a mean with a cap, short of the target             | MEAN   | HIGHER | >5 12                      | not known
            a median beside a cap is known                     | MEDIAN | HIGHER | 8 9 >30                    | no
            a median that falls on unable is a miss            | MEDIAN | HIGHER | unable unable 12           | no
            a last try that is unable is a miss                | LAST   | HIGHER | 12 unable                  | no
            all unable                                         | MEAN   | HIGHER | unable unable              | no
            # 12 is the mean of the measured one; the other was tried and not done
            a mean that leaves out an unable cannot vouch      | MEAN   | HIGHER | unable 12                  | not known
            a mean that misses without its unable              | MEAN   | HIGHER | unable 9                   | no
            every try with more help                           | BEST   | HIGHER | 12@minimal 12@minimal      | no
            tries with more help are not in the value          | BEST   | HIGHER | 12@minimal 9               | no
            the rest meets                                     | MEAN   | HIGHER | 3@minimal 11               | yes
            # without the blank one 11, with it (11 + 5) / 2 = 8
            it turns on a try whose help is blank              | MEAN   | HIGHER | 11 5@blank                 | not known
            it does not turn on it                             | MEAN   | HIGHER | 11 12@blank                | yes
            best does not turn on a worse blank one            | BEST   | HIGHER | 11 5@blank                 | yes
            best turns on a better blank one                   | BEST   | HIGHER | 9 12@blank                 | not known
            only blank ones, good                              | BEST   | HIGHER | 12@blank                   | not known
            only blank ones, and all miss                      | BEST   | HIGHER | 8@blank 9@blank            | no
            nobody tried                                       | BEST   | HIGHER | refused absent             | ''
            """)
    void byValue(String rule, Summary summary, Direction better, String tries, String answer) {
        GoalDraft draft = new GoalDraft();
        draft.criterion = "x3";
        draft.summary = Optional.of(summary);
        Measure measure = Tries.measure(MeasureKind.DURATION, Optional.of(better), Summary.BEST, Sidedness.NONE);
        assertEquals(answer, met(draft, measure, tries));
    }

    @ParameterizedTest(name = "goal help {0}, prompt {1}: {2} -> {3} counted, {4} not known")
    @CsvSource(delimiter = '|', textBlock = """
            stand-by    | ''     | 5@independent 5@stand-by 5@contact_guard              | 2 | 0
            independent | ''     | 5@independent 5@modified_independent                  | 1 | 0
            # goal without help: tries up to stand-by count; it promises nothing, so a blank one counts and is told
            ''          | ''     | 5@independent 5@stand-by 5@contact_guard 5@blank      | 3 | 1
            independent | ''     | 5@independent 5@blank                                 | 1 | 1
            # prompt blank in the goal: any
            independent | ''     | 5@independent+full_physical 5@independent+blank       | 2 | 0
            independent | verbal | 5@independent+verbal 5@independent+model 5@independent+blank | 1 | 1
            ''          | verbal | 5@blank+verbal 5@blank+blank                          | 1 | 2
            # what could not be done is not done at permitted help either
            independent | ''     | unable@blank 5                                        | 2 | 1
            """)
    void helpAndPromptWithinTheGoals(String help, String prompt, String tries, int counted, int doubtful) {
        GoalDraft draft = new GoalDraft();
        draft.help = help;
        draft.prompt = prompt;
        Session session = score(draft, Tries.steps(), tries);
        assertEquals(counted, session.counted());
        assertEquals(doubtful, session.doubtfulTries());
    }

    @Test
    void aSessionWhoseProbesAllNeededMoreHelpHasNoValueAndIsNotForgotten() {
        Session session = score(new GoalDraft(), Tries.steps(), "12@minimal 11@minimal");
        assertEquals(new SessionValue.Missing("every try needed more help than permitted"), session.value());
        assertTrue(session.assistedOnly());
        assertEquals(0.0, session.permittedShare().orElseThrow());
        assertEquals(2, session.recorded());
        assertEquals(0, session.counted());
    }

    @Test
    void aBlankHelpIsNeitherPermittedNorAssisted() {
        Session session = score(new GoalDraft(), Tries.steps(), "12@blank 11@blank");
        assertEquals(new SessionValue.Missing("no try is known to be at permitted help"), session.value());
        assertFalse(session.assistedOnly());
        assertTrue(session.permittedShare().isEmpty());
    }

    @Test
    void theShareAtPermittedHelpIsOverTheTriesOfWhichItIsKnown() {
        // 1 permitted, 3 assisted, 1 blank: 1 of 4
        Session session = score(new GoalDraft(), Tries.steps(), "12 12@minimal 12@minimal 12@minimal 12@blank");
        assertEquals(0.25, session.permittedShare().orElseThrow());
    }

    @Test
    void bestIsOfTheFirstTriesGiven() {
        // 5 tries are given, the sixth is not looked at
        assertEquals(
                "9:1",
                Tries.text(score(new GoalDraft(), Tries.steps(), "5 6 7 8 9 12").best()));
    }

    @Test
    void triesMetAreToldInWholeNumbers() {
        Session session = score(new GoalDraft(), Tries.steps(), "10 10 10 9");
        assertEquals("3 of 4 tries met, 4 of 5 needed", session.met().reason());
        assertEquals(3, session.triesMet());
        assertEquals(4, session.triesGiven());
    }

    @ParameterizedTest(name = "{0} {1}: {2} -> {3}")
    @CsvSource(delimiter = '|', textBlock = """
            4/5x2 | BEST | 10 10 10 9 10@minimal 8  | 3 of 5 tries met, 4 of 5 needed; only the first 5 of 6 tries are judged; 1 of 6 tries needed more help than permitted
            4/5x2 | BEST | 10 10 10 10 10           | 5 of 5 tries met, 4 of 5 needed
            4/5x2 | BEST | 10 10 10 10@blank >8     | 3 of 5 tries met, 2 not known, 4 of 5 needed; help or prompt not written for 1 of 5 tries
            4/5x2 | BEST | 12@minimal               | every try needed more help than permitted; no try was done at permitted help
            4/5x2 | BEST | unable                   | every try was unable; no try was done at permitted help
            4/x2  | BEST | 10 10 10                 | the criterion says how many tries must meet, not of how many
            x2    | MEAN | 11 5@blank               | it turns on tries whose help or prompt was not written; help or prompt not written for 1 of 2 tries
            # without the blank one 11 meets; with it the mean is open: two of the three answers differ
            x2    | MEAN | 11 >2@blank              | it turns on tries whose help or prompt was not written; help or prompt not written for 1 of 2 tries
            x2    | BEST | >8 5                     | a capped try leaves open on which side of the target the value lies
            x2    | MEAN | unable 12                | the measured tries alone would meet, and a try was unable; a try was unable: the value is of the others
            x2    | BEST | 12 3                     | ''
            x2    | BEST | 12@blank                 | no try is known to be at permitted help; it turns on tries whose help or prompt was not written; help or prompt not written for 1 of 1 tries
            """)
    void theReasonTellsHowTheAnswerCameAbout(String criterion, Summary summary, String tries, String reason) {
        GoalDraft draft = new GoalDraft();
        draft.criterion = criterion;
        draft.summary = Optional.of(summary);
        assertEquals(reason, score(draft, Tries.steps(), tries).reason());
    }

    @Test
    void triesOnARowAreCountedOneByOne() {
        // 3 of 4 and 1 of 2, and one try of 10: 5 of 7 met
        Session session = score(new GoalDraft(), Tries.steps(), "3/4 1/2 10");
        assertEquals(5, session.triesMet());
        assertEquals(7, session.triesGiven());
        assertEquals(7, session.trials());
    }

    @Test
    void aMeasureWithoutABetterWayIsNotJudged() {
        Measure cadence = Tries.measure(MeasureKind.FREQUENCY, Optional.empty(), Summary.MEAN, Sidedness.NONE);
        assertEquals("", met(new GoalDraft(), cadence, "10 11 12 13 14"));
    }

    @Test
    void withoutATargetNothingIsAsked() {
        GoalDraft draft = new GoalDraft();
        draft.target = "";
        assertEquals("", met(draft, Tries.steps(), "10 11 12 13"));
        assertEquals("yes", met(draft, Tries.steps(), "4/5"), "tries written as met need no target");
    }

    private static Session score(GoalDraft draft, Measure measure, String tries) {
        return SessionScorer.by(draft.counting(measure)).score(Tries.group(tries));
    }

    private static String met(GoalDraft draft, Measure measure, String tries) {
        return score(draft, measure, tries).met().meets().word();
    }
}
