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
            {9, 0.909090909},
            {13, 0.818181818},
            {18, 0.715909091},
            {23, 0.613636364},
            {31, 0.490909091},
            {34, 0.368181818},
            {48, 0.184090909}
        };
        steps(curve, expected);
        assertThat(curve.quantile(0.5)).isEqualTo(31);
        assertThat(curve.quantile(0.9)).isNaN();
    }

    @Test
    void amlOfMillerNonmaintained() {
        KaplanMeier curve = Aml.NONMAINTAINED.curve();
        double[][] expected = {
            {5, 0.833333333},
            {8, 0.666666667},
            {12, 0.583333333},
            {23, 0.486111111},
            {27, 0.388888889},
            {30, 0.291666667},
            {33, 0.194444444},
            {43, 0.097222222},
            {45, 0}
        };
        steps(curve, expected);
        assertThat(curve.quantile(0.5)).isEqualTo(23);
        assertThat(curve.quantile(1)).isEqualTo(45);
    }

    private static void steps(KaplanMeier curve, double[][] expected) {
        assertThat(curve.steps()).isEqualTo(expected.length);
        for (int i = 0; i < expected.length; i++) {
            assertThat(curve.time(i)).isEqualTo(expected[i][0]);
            assertThat(curve.survival(i)).isCloseTo(expected[i][1], within(5e-10));
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
        steps(curve, new double[][] {{1, 0.8}, {2, 0.6}, {3, 0.3}});
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
        KaplanMeier none = KaplanMeier.of(new double[0], new boolean[0]);
        assertThat(none.quantile(0.5)).isNaN();
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
