package stridetally.forecast;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.SplittableRandom;
import org.apache.commons.statistics.distribution.NormalDistribution;
import org.junit.jupiter.api.Test;

/** The small parts of the pooled forecast, each by itself. */
class ForecastPartsTest {

    private static final Hyper ANY = new Hyper(0, 0.15, 0.7, 0.5, -1, 0.3, 0.2, 0);

    private static LineDraw draw(double level, double way, double bend) {
        return new LineDraw(
                level, way, 0.3, HyperPosterior.Place.of(ANY, new LearningCurve(bend, 0)), DrawnNumbers.of(1));
    }

    @Test
    void theNormalCurveIsThatOfCommonsStatistics() {
        NormalDistribution normal = NormalDistribution.of(0, 1);
        for (double z = -8; z <= 8; z += 0.25) {
            assertEquals(normal.cumulativeProbability(z), Normal.below(z), 8e-8);
            assertEquals(normal.density(z), Normal.density(z), 1e-15);
        }
    }

    @Test
    void aStreakOfTwoIsCountedByHand() {
        MeetingTally tally = new MeetingTally(2);
        tally.start(0);
        tally.session(0.5, 0.5);
        tally.session(0.5, 0.5);
        // two in a row of two: 1/4
        assertEquals(0.25, tally.done(), 1e-15);
        tally.session(0.5, 0.5);
        // of 8 rows of three, HHx, and THH: 3
        assertEquals(3 / 8.0, tally.done(), 1e-15);
        tally.start(1);
        tally.session(0.3, 0.2);
        // it meets with 0.3; with 0.5 nothing is known and the streak of one stays
        tally.session(0.3, 0.2);
        assertEquals(0.3 + 0.5 * 0.3, tally.done(), 1e-15);
    }

    @Test
    void theTimeOfTheTargetSolvesTheLine() {
        assertEquals(1.25, draw(0, 0.8, 0).timeOfTarget(), 1e-15);
        assertEquals(0, draw(1.1, -0.5, 0).timeOfTarget());
        assertEquals(Double.POSITIVE_INFINITY, draw(0, -0.1, 0).timeOfTarget());
        LineDraw bent = draw(0.2, 1, 2);
        assertEquals(1, bent.at(bent.place().curve().at(bent.timeOfTarget())), 1e-12);
        // a curve that levels off never gets further than way / (1 - exp(-k)): 0.5/0.865 = 0.58
        assertEquals(Double.POSITIVE_INFINITY, draw(0, 0.5, 2).timeOfTarget());
    }

    @Test
    void aMirroredStreamIsTheOtherSideOfZero() {
        DrawnNumbers one = DrawnNumbers.of(9);
        DrawnNumbers other = DrawnNumbers.mirrored(9);
        for (int i = 0; i < 5; i++) {
            assertEquals(one.normal(), -other.normal());
            assertEquals(one.share(), other.share());
        }
    }

    @Test
    void theStreamIsThatOfTheJdk() {
        DrawnNumbers ours = DrawnNumbers.of(-42);
        SplittableRandom theirs = new SplittableRandom(-42);
        for (int i = 0; i < 50; i++) {
            assertEquals(theirs.nextLong(), ours.seed());
            assertEquals(theirs.nextDouble(), ours.share());
            theirs.nextInt();
            assertTrue(ours.below(8) < 8);
        }
    }

    @Test
    void everyNumberBelowABoundIsAsLikely() {
        DrawnNumbers numbers = DrawnNumbers.of(5);
        int[] drawn = new int[3];
        for (int i = 0; i < 30_000; i++) {
            drawn[numbers.below(3)]++;
        }
        for (int one : drawn) {
            // 10,000 each; four standard deviations of a binomial share of 1/3 are 327
            assertEquals(10_000, one, 327);
        }
    }

    @Test
    void aMixtureOfOneIsItsCurve() {
        LineMixture one = new LineMixture(1);
        one.add(1, 2, 9);
        assertEquals(0.5, one.atLeast(2), 1e-7);
        // qnorm(0.9) = 1.2815515655446004
        assertEquals(2 + 3 * 1.2815515655446004, one.quantile(0.9), 1e-3);
    }

    @Test
    void withoutCapsNothingIsFilledAndACapPullsUp() {
        double[] times = {0.1, 0.2, 0.3, 0.4};
        double[] values = {0.1, 0.2, 0.3, 0.3};
        double[] spreads = {1, 1, 1, 1};
        CensoredFill none = CensoredFill.of(times, values, spreads, new int[4]);
        assertArrayEquals(values, none.values());
        CensoredFill last = CensoredFill.of(times, values, spreads, new int[] {0, 0, 0, 1});
        assertTrue(last.values()[3] > 0.3 && last.spreads()[3] > 1);
    }

    @Test
    void aPlaceIsChosenAsOftenAsItWeighs() {
        HyperPosterior.Place a = HyperPosterior.Place.of(ANY, new LearningCurve(0, 0));
        HyperPosterior.Place b = HyperPosterior.Place.of(ANY, new LearningCurve(1, 0));
        HyperPosterior four = new HyperPosterior(List.of(a, a, a, b));
        assertEquals(List.of(a, b), four.thinned(2).places());
    }
}
