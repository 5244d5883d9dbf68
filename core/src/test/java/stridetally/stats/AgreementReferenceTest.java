package stridetally.stats;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import stridetally.stats.IntraclassCorrelation.Form;

/**
 * Agreement against R 4.2.2: base arithmetic, and {@code psych} 2.2.9 ({@code ICC(x, lmer = FALSE)},
 * {@code cohen.kappa}) where named. Percent agreement: the written definitions, counted by hand.
 */
final class AgreementReferenceTest {
    private static final double DIGITS = 1e-12;

    @Test
    void percentAgreementByItsSeveralDefinitions() {
        double[] first = {0, 1, 2, 0, 3, 1, 0, 2, 1, 0, 4, 1};
        double[] second = {0, 1, 1, 0, 3, 2, 0, 2, 1, 1, 4, 0};
        PairAgreement agreement = PairAgreement.of(first, second);
        // Totals 15 and 15 flatter: errors cancel.
        assertEquals(1, agreement.total().orElseThrow());
        assertEquals(0.75, agreement.meanPerTry().orElseThrow(), DIGITS);
        assertEquals(8 / 12.0, agreement.exact().orElseThrow(), DIGITS);
        assertEquals(10 / 12.0, agreement.occurrence().orElseThrow(), DIGITS);
        assertEquals(7 / 9.0, agreement.scored().orElseThrow(), DIGITS);
        assertEquals(3 / 5.0, agreement.unscored().orElseThrow(), DIGITS);
        assertEquals(0.625, agreement.occurrenceKappa().orElseThrow().value(), DIGITS);
    }

    @Test
    void durationsAgreeInTotalAndPerTry() {
        PairAgreement agreement =
                PairAgreement.of(new double[] {4.2, 5, 3.1, 6.4, 7, 5.5}, new double[] {4, 5.2, 3.1, 6, 7.7, 5.5});
        assertEquals(0.99047619047619, agreement.total().orElseThrow(), DIGITS);
        assertEquals(0.960085053835054, agreement.meanPerTry().orElseThrow(), DIGITS);
    }

    @Test
    void nothingMarkedGivesNoShareOfTheMarked() {
        PairAgreement none = PairAgreement.of(new double[] {0, 0}, new double[] {0, 0});
        assertFalse(none.total().isEstimated());
        assertFalse(none.scored().isEstimated());
        assertFalse(none.occurrenceKappa().isEstimated());
        assertEquals(1, none.meanPerTry().orElseThrow());
        assertFalse(PairAgreement.of(new double[0], new double[0]).exact().isEstimated());
        assertThrows(IllegalArgumentException.class, () -> PairAgreement.of(new double[] {-1}, new double[] {0}));
        assertThrows(IllegalArgumentException.class, () -> PairAgreement.of(new double[] {1}, new double[0]));
    }

    /** The table of Fleiss, Cohen and Everitt 1969: kappa .429, standard error .0537. */
    @Test
    void kappaOfThePublishedTable() {
        Kappa kappa =
                Kappa.of(new int[][] {{106, 10, 4}, {22, 28, 10}, {2, 12, 6}}).orElseThrow();
        assertEquals(0.7, kappa.observed(), DIGITS);
        assertEquals(0.475, kappa.expected(), DIGITS);
        assertEquals(0.428571428571429, kappa.value(), DIGITS);
        assertEquals(0.0537110048691673, kappa.standardError(), DIGITS);
        Interval interval = kappa.interval(0.95).orElseThrow();
        assertEquals(0.323299793454405, interval.low(), DIGITS);
        assertEquals(0.533843063688452, interval.high(), DIGITS);
        assertEquals(0.492307692307692, kappa.weighted(Kappa.Weights.LINEAR).orElseThrow(), DIGITS);
        assertEquals(0.566666666666667, kappa.weighted(Kappa.Weights.QUADRATIC).orElseThrow(), DIGITS);
    }

    /** The table of Cohen 1968, as on the help page of {@code psych}: kappa .492. */
    @Test
    void kappaOfCohensTable() {
        Kappa kappa =
                Kappa.of(new int[][] {{88, 14, 18}, {10, 40, 10}, {2, 6, 12}}).orElseThrow();
        assertEquals(0.491525423728813, kappa.value(), DIGITS);
        assertEquals(0.0510018155760778, kappa.standardError(), DIGITS);
        assertEquals(0.473684210526316, kappa.weighted(Kappa.Weights.LINEAR).orElseThrow(), DIGITS);
        assertEquals(0.454545454545455, kappa.weighted(Kappa.Weights.QUADRATIC).orElseThrow(), DIGITS);
    }

    /**
     * Standard errors of weighted kappa by the delta method with numeric gradients in R 4.2.2 (Richardson, steps 1e-4 and
     * 5e-5), which knows nothing of the closed formula; ten digits printed. No published interval of these was at hand.
     */
    @ParameterizedTest
    @CsvSource({
        "20 5 0 3 15 4 1 2 10, 0.679572763684913, 0.07660240906, 0.75, 0.07249399838",
        "106 10 4 22 28 10 2 12 6, 0.492307692307692, 0.05071860761, 0.566666666666667, 0.05566634016",
        "88 14 18 10 40 10 2 6 12, 0.473684210526316, 0.05443230918, 0.454545454545455, 0.06645368159"
    })
    void weightedKappaHasItsOwnInterval(
            String cells, double linear, double linearError, double quadratic, double error) {
        int[][] table = new int[3][3];
        String[] counts = cells.split(" ", -1);
        for (int i = 0; i < 9; i++) {
            table[i / 3][i % 3] = Integer.parseInt(counts[i]);
        }
        Kappa kappa = Kappa.of(table).orElseThrow();
        assertEquals(linearError, kappa.weightedStandardError(Kappa.Weights.LINEAR), 1e-9);
        assertEquals(error, kappa.weightedStandardError(Kappa.Weights.QUADRATIC), 1e-9);
        Interval ofLinear = kappa.weightedInterval(Kappa.Weights.LINEAR, 0.95).orElseThrow();
        assertEquals(linear - 1.959963984540054 * linearError, ofLinear.low(), 1e-8);
        assertEquals(linear + 1.959963984540054 * linearError, ofLinear.high(), 1e-8);
        Interval ofSquares =
                kappa.weightedInterval(Kappa.Weights.QUADRATIC, 0.95).orElseThrow();
        assertEquals(quadratic + 1.959963984540054 * error, ofSquares.high(), 1e-8);
    }

    /** With two categories there are no near misses: kappa .4, standard error .1270 (R, Fleiss, Cohen and Everitt). */
    @Test
    void ofTwoCategoriesTheWeightedIsThePlain() {
        Kappa kappa = Kappa.of(new int[][] {{20, 5}, {10, 15}}).orElseThrow();
        for (Kappa.Weights weights : Kappa.Weights.values()) {
            assertEquals(0.1269960629311, kappa.weightedStandardError(weights), DIGITS);
            assertEquals(
                    0.151092290476661,
                    kappa.weightedInterval(weights, 0.95).orElseThrow().low(),
                    DIGITS);
            assertEquals(
                    0.648907709523339,
                    kappa.weightedInterval(weights, 0.95).orElseThrow().high(),
                    DIGITS);
        }
    }

    @Test
    void oneCategoryOnlyGivesNoKappa() {
        assertFalse(Kappa.of(new int[][] {{30, 0}, {0, 0}}).isEstimated());
        assertFalse(Kappa.of(new int[2][2]).isEstimated());
    }

    /** The table of Shrout and Fleiss 1979: .17 .29 .71 .44 .62 .91; interval ends from {@code psych}. */
    @Test
    void intraclassCorrelationsOfThePublishedTable() {
        IntraclassCorrelation icc = IntraclassCorrelation.of(new double[][] {
                    {9, 2, 5, 8}, {6, 1, 3, 2}, {8, 4, 6, 8}, {7, 1, 2, 6}, {10, 5, 6, 9}, {6, 2, 4, 7}
                })
                .orElseThrow();
        assertEquals(11.2416666666667, icc.betweenTargets(), 1e-12);
        assertEquals(6.26388888888889, icc.withinTargets(), 1e-12);
        assertEquals(32.4861111111111, icc.betweenJudges(), 1e-12);
        assertEquals(1.01944444444444, icc.residual(), 1e-12);
        check(icc, Form.ONE_WAY, 0.165741768405475, -0.132932324874751, 0.722560062328121);
        check(icc, Form.AGREEMENT, 0.289763779527559, 0.018786513374712, 0.761084369648953);
        check(icc, Form.CONSISTENCY, 0.714840714840715, 0.342464765033925, 0.945858259955359);
        check(icc, Form.ONE_WAY_MEAN, 0.442797133679269, -0.884442155238122, 0.912415420340775);
        check(icc, Form.AGREEMENT_MEAN, 0.620050547598989, 0.0711368153025031, 0.927232040167722);
        check(icc, Form.CONSISTENCY_MEAN, 0.909315542377069, 0.675674713816304, 0.985891678169062);
    }

    @Test
    void intraclassCorrelationsOfARetest() {
        IntraclassCorrelation icc = IntraclassCorrelation.of(new double[][] {
                    {5.2, 5.6}, {7.9, 8.4}, {3.4, 3.1}, {9.1, 9.8}, {6, 6.6}, {4.8, 4.5}, {8.3, 8.8}, {2.9, 3.5}
                })
                .orElseThrow();
        check(icc, Form.AGREEMENT, 0.978232179967538, 0.83270529962724, 0.995974142268626);
        check(icc, Form.CONSISTENCY, 0.986070123396382, 0.932305094048767, 0.997195563027403);
        // SEM as the root of the mean square within, and MDC95 with z = 1.95996.
        assertEquals(0.357945526581909, Math.sqrt(icc.withinTargets()), 1e-12);
        assertEquals(
                0.992156148397453, CriticalValue.normal(0.95) * Math.sqrt(2) * Math.sqrt(icc.withinTargets()), 1e-12);
    }

    private static void check(IntraclassCorrelation icc, Form form, double value, double low, double high) {
        assertEquals(value, icc.value(form).orElseThrow(), 1e-12, form::id);
        // psych's interval ends are right to 8 digits.
        Interval interval = icc.interval(form, 0.95).orElseThrow();
        assertEquals(low, interval.low(), 1e-8, form::id);
        assertEquals(high, interval.high(), 1e-8, form::id);
    }

    @Test
    void fullAgreementHasNoIntervalAndEqualScoresNoCorrelation() {
        IntraclassCorrelation icc = IntraclassCorrelation.of(new double[][] {{1, 1}, {2, 2}, {4, 4}})
                .orElseThrow();
        assertEquals(1, icc.value(Form.AGREEMENT).orElseThrow(), 1e-12);
        assertFalse(IntraclassCorrelation.of(new double[][] {{3, 3}, {3, 3}}).isEstimated());
        assertFalse(IntraclassCorrelation.of(new double[][] {{3, 4}}).isEstimated());
        assertThrows(IllegalArgumentException.class, () -> IntraclassCorrelation.of(new double[][] {{3, 4}, {3}}));
    }

    /** Peak flow of 17 subjects, Bland and Altman 1986, Lancet i:307-310: mean -2.1, SD 38.8, r .94. */
    @Test
    void limitsOfAgreementOfThePublishedPeakFlows() {
        double[] large = {494, 395, 516, 434, 476, 557, 413, 442, 650, 433, 417, 656, 267, 478, 178, 423, 427};
        double[] mini = {512, 430, 520, 428, 500, 600, 364, 380, 658, 445, 432, 626, 260, 477, 259, 350, 451};
        LimitsOfAgreement limits = LimitsOfAgreement.of(large, mini).orElseThrow();
        assertEquals(-2.11764705882353, limits.mean(), DIGITS * 100);
        assertEquals(38.7651298736074, limits.sd(), DIGITS * 100);
        // R's figure is of 1.96; ours of 1.95996.
        Interval ends = limits.limits(0.95).orElseThrow();
        assertEquals(-78.0959054671117, ends.low(), 0.002);
        assertEquals(73.8606113494646, ends.high(), 0.002);
        Interval mean = limits.meanInterval(0.95).orElseThrow();
        assertEquals(-22.0488376966452, mean.low(), 1e-9);
        assertEquals(17.8135435789981, mean.high(), 1e-9);
        Interval lower = limits.limitInterval(-79.6479068060383, 0.95).orElseThrow();
        assertEquals(-114.169741646087, lower.low(), 1e-9);
        assertEquals(-45.1260719659901, lower.high(), 1e-9);
        assertFalse(LimitsOfAgreement.of(new double[] {1}, new double[] {2}).isEstimated());
    }
}
