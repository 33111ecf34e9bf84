package benchtrue.statistics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class KaplanMeierTest {
    /** Miller 1981 (R survival::aml); COMPUTED with survival 3.5-3 {@code summary(survfit(Surv(time, status) ~ x, aml))}. */
    @Test
    void amlOfMillerMaintained() {
        KaplanMeier curve = Aml.MAINTAINED.curve();
        double[][] expected = {
            {9, 11, 1, 0.909090909, 0.086678417},
            {13, 10, 1, 0.818181818, 0.116291300},
            {18, 8, 1, 0.715909091, 0.139664971},
            {23, 7, 1, 0.613636364, 0.152632331},
            {31, 5, 1, 0.490909091, 0.164193267},
            {34, 4, 1, 0.368181818, 0.162668886},
            {48, 2, 1, 0.184090909, 0.153492746}
        };
        steps(curve, expected);
        assertThat(curve.quantile(0.5)).isEqualTo(31);
        assertThat(curve.quantile(0.9)).isNaN();
        assertThat(curve.restrictedMean()).isCloseTo(52.6454545455, within(5e-11));
        assertThat(curve.restrictedMeanError()).isCloseTo(19.82860279556, within(5e-11));
        assertThat(curve.interval(4, 0.95).low()).isCloseTo(0.167330909777, within(5e-12));
        assertThat(curve.interval(4, 0.95).high()).isCloseTo(0.753399790371, within(5e-12));
    }

    @Test
    void amlOfMillerNonmaintained() {
        KaplanMeier curve = Aml.NONMAINTAINED.curve();
        double[][] expected = {
            {5, 12, 2, 0.833333333, 0.107582871},
            {8, 10, 2, 0.666666667, 0.136082763},
            {12, 8, 1, 0.583333333, 0.142318761},
            {23, 6, 1, 0.486111111, 0.148130063},
            {27, 5, 1, 0.388888889, 0.146986184},
            {30, 4, 1, 0.291666667, 0.138715169},
            {33, 3, 1, 0.194444444, 0.121874505},
            {43, 2, 1, 0.097222222, 0.091866365},
            {45, 1, 1, 0, 0}
        };
        steps(curve, expected);
        assertThat(curve.quantile(0.5)).isEqualTo(23);
        assertThat(curve.quantile(1)).isEqualTo(45);
        assertThat(curve.restrictedMean()).isCloseTo(22.7083333333, within(5e-11));
        assertThat(curve.restrictedMeanError()).isCloseTo(4.18094198103, within(5e-12));
        assertThat(curve.interval(8, 0.95)).isEqualTo(Interval.NONE);
    }

    private static void steps(KaplanMeier curve, double[][] expected) {
        assertThat(curve.steps()).isEqualTo(expected.length);
        for (int i = 0; i < expected.length; i++) {
            assertThat(curve.time(i)).isEqualTo(expected[i][0]);
            assertThat(curve.atRisk(i)).isEqualTo((int) expected[i][1]);
            assertThat(curve.events(i)).isEqualTo((int) expected[i][2]);
            assertThat(curve.survival(i)).isCloseTo(expected[i][3], within(5e-10));
            assertThat(curve.error(i)).isCloseTo(expected[i][4], within(5e-10));
        }
    }

    /** Therneau and Grambsch 2000, appendix (data VERIFIED: survival a2533a9 tests/book1.R). */
    @Test
    void sixObservationsOfTherneauAndGrambsch() {
        KaplanMeier curve =
                KaplanMeier.of(new double[] {9, 1, 1, 6, 6, 8}, new boolean[] {true, true, false, true, true, false});
        assertThat(curve.survivalAt(0.5)).isEqualTo(1);
        assertThat(curve.survivalAt(1)).isCloseTo(5 / 6.0, within(1e-15));
        assertThat(curve.survivalAt(6)).isCloseTo(5 / 12.0, within(1e-15));
        assertThat(curve.survivalAt(8.9)).isCloseTo(5 / 12.0, within(1e-15));
        assertThat(curve.survivalAt(9)).isZero();
    }

    /** The middle of a flat part (VERIFIED: survival a2533a9 tests/quantile.Rout.save). */
    @ParameterizedTest
    @CsvSource({"13, 14, 1", "6, 7, 3.5", "2, 3, 6", "1, 2, 9", "9, 35, 9.5", "1, 10, NaN"})
    void quantilesOnFlatParts(double numerator, double denominator, double expected) {
        KaplanMeier curve = KaplanMeier.of(
                new double[] {9, 1, 1, 6, 6, 8, 10}, new boolean[] {true, true, false, true, true, false, false});
        assertThat(curve.quantile(1 - numerator / denominator)).isEqualTo(Double.valueOf(expected));
    }

    /** Constructed; COMPUTED with survival 3.5-3: the open job counts at its own time. */
    @Test
    void aJobStillOnTheBenchCountsAtItsOwnTime() {
        KaplanMeier curve =
                KaplanMeier.of(new double[] {1, 2, 2, 3, 4}, new boolean[] {true, true, false, true, false});
        steps(
                curve,
                new double[][] {{1, 5, 1, 0.8, 0.178885438}, {2, 4, 1, 0.6, 0.219089023}, {3, 2, 1, 0.3, 0.238746728}});
        assertThat(curve.quantile(0.25)).isEqualTo(2);
        assertThat(curve.quantile(0.5)).isEqualTo(3);
        assertThat(curve.quantile(0.75)).isNaN();
    }

    @Test
    void theMedianOfFourFinishedJobsIsTheirMedian() {
        boolean[] finished = {true, true, true, true};
        assertThat(KaplanMeier.of(new double[] {4, 2, 1, 3}, finished).quantile(0.5))
                .isEqualTo(2.5);
    }

    @Test
    void noFinishedJobIsAFlatCurveAndNoJobIsNone() {
        KaplanMeier open = KaplanMeier.of(new double[] {3}, new boolean[] {false});
        assertThat(open.steps()).isZero();
        assertThat(open.survivalAt(2)).isEqualTo(1);
        assertThat(open.quantile(0.5)).isNaN();
        assertThat(open.restrictedMean()).isEqualTo(3);
        assertThat(open.restrictedMeanError()).isZero();
        KaplanMeier none = KaplanMeier.of(new double[0], new boolean[0]);
        assertThat(none.quantile(0.5)).isNaN();
        assertThat(none.restrictedMean()).isNaN();
    }

    @Test
    void refusesTimesAndSharesThatCannotBe() {
        boolean[] two = {true, true};
        assertThatIllegalArgumentException().isThrownBy(() -> KaplanMeier.of(new double[] {1, -1}, two));
        assertThatIllegalArgumentException().isThrownBy(() -> KaplanMeier.of(new double[] {Double.NaN, 1}, two));
        KaplanMeier curve = KaplanMeier.of(new double[] {1, 2}, two);
        assertThatIllegalArgumentException().isThrownBy(() -> curve.quantile(0));
        assertThatIllegalArgumentException().isThrownBy(() -> curve.quantile(1.1));
    }
}
