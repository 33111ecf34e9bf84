package benchtrue.statistics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.data.Percentage.withPercentage;

import org.junit.jupiter.api.Test;

class HuberTest {
    /** Analytical Methods Committee 1989 (R MASS::chem); COMPUTED with {@code mad(chem)} and {@code huber(chem, tol = 1e-14)} of MASS 7.3-58.2. */
    @Test
    void copperOfTheAnalyticalMethodsCommittee() {
        assertThat(Mad.scaled(Copper.SORTED)).isCloseTo(0.526323, within(5e-7));
        assertThat(Huber.location(Copper.SORTED, 1.5)).isCloseTo(3.2067239444444, within(1e-13));
        assertThat(Moments.of(Copper.SORTED).mean()).isCloseTo(4.280416667, within(5e-10));
    }

    /** Constructed bench hours; COMPUTED with R {@code mad(h, constant = 1); mad(h)}. */
    @Test
    void benchHoursMedianDeviation() {
        assertThat(Mad.raw(BenchHours.JOBS)).isCloseTo(0.8, within(1e-15));
        assertThat(Mad.scaled(BenchHours.JOBS)).isCloseTo(1.18608, within(1e-14));
    }

    /** NIST e-Handbook 7.2.6.2; COMPUTED with R {@code mad(x, constant = 1)}. */
    @Test
    void nistHandbookSiliconResistivityDeviation() {
        assertThat(
                        Mad.raw(
                                ReferenceData.numbersIn(
                                        "95.1772 95.1567 95.1937 95.1959 95.1442 95.0610 95.1591 95.1195 95.1065 95.0925 95.1990 95.1682")))
                .isCloseTo(0.0369, within(1e-12));
    }

    /** Brownlee 1965 (R datasets::stackloss); COMPUTED with {@code lm} and {@code MASS::rlm} with {@code acc = 1e-12}, which divides by 0.6745. */
    @Test
    void stackLossOfBrownlee() {
        ReferenceData data = ReferenceData.read("stackloss.csv");
        double[][] columns = {data.numbers("air"), data.numbers("water"), data.numbers("acid")};
        LeastSquares plain = LeastSquares.fit(data.numbers("loss"), columns);
        double[] least = {-39.919674420, 0.715640200, 1.295286124, -0.152122519};
        Huber.Fit robust = Huber.regression(data.numbers("loss"), columns, Huber.K);
        double[] huber = {-41.02648537329490, 0.82938577025374, 0.92605941554903, -0.12784631796544};
        for (int j = 0; j < 4; j++) {
            assertThat(plain.coefficient(j)).isCloseTo(least[j], within(5e-10));
            assertThat(robust.coefficient(j)).isCloseTo(huber[j], withPercentage(3e-3));
        }
        assertThat(robust.scale()).isCloseTo(2.4404890459945, withPercentage(3e-3));
        assertThat(robust.weight(2)).isCloseTo(0.78579661253037, withPercentage(3e-3));
        assertThat(robust.weight(3)).isCloseTo(0.50485592489829, withPercentage(3e-3));
        assertThat(robust.weight(20)).isCloseTo(0.36808378177816, withPercentage(3e-3));
        assertThat(robust.weight(0)).isEqualTo(1);
        assertThat(robust.downWeighted()).isEqualTo(3);
        Huber.Fit cut = Huber.regression(data.numbers("loss"), columns, Huber.K, 1);
        assertThat(cut.coefficient(1)).isBetween(least[1], huber[1]);
    }

    @Test
    void weightsFallWithTheDistance() {
        assertThat(Huber.weight(1.345, Huber.K)).isEqualTo(1);
        assertThat(Huber.weight(-2.69, Huber.K)).isEqualTo(0.5);
    }

    /** The factor solves its own equation, which R finds with {@code uniroot(function(v) v - 2*pnorm(1.345*sqrt(v)) + 1, c(.1, 1))}. */
    @Test
    void aWeightedVarianceIsTooSmallByAKnownFactor() {
        assertThat(Huber.weightedVariance(Huber.K)).isCloseTo(0.75858175736536, within(1e-13));
    }

    @Test
    void fewJobsAndEqualJobs() {
        assertThat(Huber.location(new double[0], Huber.K)).isNaN();
        assertThat(Huber.location(new double[] {3}, Huber.K)).isEqualTo(3);
        assertThat(Huber.location(new double[] {2, 2, 2, 50}, Huber.K)).isEqualTo(2);
        assertThat(Mad.raw(new double[0])).isNaN();
        assertThat(Mad.raw(new double[] {3})).isZero();
    }

    /** More than half of the rows on a line: the scale is 0 and the fit so far stands, with nothing weighted down. */
    @Test
    void anExactFitHasNoScale() {
        Huber.Fit fit = Huber.regression(new double[] {1, 2, 3, 4}, new double[][] {{1, 2, 3, 4}}, Huber.K);
        assertThat(fit.coefficient(1)).isCloseTo(1, within(1e-12));
        assertThat(fit.scale()).isLessThan(1e-14);
    }
}
