package benchtrue.statistics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.data.Percentage.withPercentage;

import org.junit.jupiter.api.Test;

class LeastSquaresTest {
    /** NIST StRD linear regression (VERIFIED: Hipparchus 1b58ec9 SimpleRegressionTest). */
    @Test
    void nistRegressionNorris() {
        ReferenceData norris = ReferenceData.read("nist-norris.csv");
        LeastSquares fit = LeastSquares.fit(norris.numbers("y"), new double[][] {norris.numbers("x")});
        assertThat(fit.coefficient(0)).isCloseTo(-0.262323073774029, withPercentage(1e-9));
        assertThat(fit.coefficient(1)).isCloseTo(1.00211681802045, withPercentage(1e-12));
        assertThat(fit.error(0)).isCloseTo(0.232818234301152, withPercentage(1e-9));
        assertThat(fit.error(1)).isCloseTo(0.000429796848199937, withPercentage(1e-9));
        assertThat(fit.variance()).isCloseTo(0.782864662630069, withPercentage(1e-9));
        assertThat(fit.squares()).isCloseTo(26.6173985294224, withPercentage(1e-9));
        assertThat(fit.degreesOfFreedom()).isEqualTo(34);
    }

    /** NIST StRD, ill-conditioned (VERIFIED: Hipparchus 1b58ec9 OLSMultipleLinearRegressionTest). */
    @Test
    void nistRegressionLongley() {
        ReferenceData longley = ReferenceData.read("nist-longley.csv");
        String[] names = {"deflator", "gnp", "unemployed", "armed", "population", "year"};
        double[][] columns = new double[names.length][];
        for (int j = 0; j < names.length; j++) {
            columns[j] = longley.numbers(names[j]);
        }
        LeastSquares fit = LeastSquares.fit(longley.numbers("y"), columns);
        double[] coefficients = ReferenceData.numbersIn("-3482258.63459582 15.0618722713733 -0.0358191792925910"
                + " -2.02022980381683 -1.03322686717359 -0.0511041056535807 1829.15146461355");
        double[] errors = ReferenceData.numbersIn("890420.383607373 84.9149257747669 0.0334910077722432"
                + " 0.488399681651699 0.214274163161675 0.226073200069370 455.478499142212");
        for (int j = 0; j < 7; j++) {
            assertThat(fit.coefficient(j)).as("coefficient %d", j).isCloseTo(coefficients[j], withPercentage(1e-7));
            assertThat(fit.error(j)).as("error %d", j).isCloseTo(errors[j], withPercentage(1e-7));
        }
        assertThat(StrictMath.sqrt(fit.variance())).isCloseTo(304.854073561962, withPercentage(1e-9));
    }

    /** R datasets::trees, log volume on log girth; COMPUTED with {@code lm(log(Volume) ~ log(Girth), trees)}. */
    @Test
    void treesAndTheirSmearingFactor() {
        ReferenceData trees = ReferenceData.read("trees.csv");
        LeastSquares fit =
                LeastSquares.fit(logs(trees.numbers("volume")), new double[][] {logs(trees.numbers("girth"))});
        assertThat(fit.coefficient(0)).isCloseTo(-2.35332494044, within(5e-12));
        assertThat(fit.error(0)).isCloseTo(0.23066284156, within(5e-12));
        assertThat(fit.coefficient(1)).isCloseTo(2.19996993209, within(5e-12));
        assertThat(fit.error(1)).isCloseTo(0.0898345534228, within(5e-14));
        assertThat(StrictMath.sqrt(fit.variance())).isCloseTo(0.114957819774, within(5e-13));
        double factor = Smearing.factor(fit.residuals());
        assertThat(factor).isCloseTo(1.00621432217, within(5e-12));
        double usual = StrictMath.exp(fit.coefficient(0) + fit.coefficient(1) * StrictMath.log(12));
        assertThat(usual).isCloseTo(22.4972926015, within(5e-11));
        assertThat(usual * factor).isCloseTo(22.6370980256, within(5e-11));
    }

    private static double[] logs(double[] values) {
        return java.util.Arrays.stream(values).map(StrictMath::log).toArray();
    }

    @Test
    void aSmearingFactorNeedsAResidual() {
        assertThat(Smearing.factor(new double[0])).isNaN();
        assertThat(Smearing.factor(new double[] {0.5})).isEqualTo(StrictMath.exp(0.5));
    }

    /** A row of weight 2 counts as two rows, a row of weight 0 as none. */
    @Test
    void aWeightIsACountOfRows() {
        double[] y = {1, 2, 4, 7, 100};
        double[] x = {1, 2, 3, 5, 9};
        LeastSquares weighted = LeastSquares.fit(y, new double[][] {x}, new double[] {1, 2, 1, 1, 0});
        LeastSquares repeated = LeastSquares.fit(new double[] {1, 2, 2, 4, 7}, new double[][] {{1, 2, 2, 3, 5}});
        assertThat(weighted.coefficient(0)).isCloseTo(repeated.coefficient(0), within(1e-13));
        assertThat(weighted.coefficient(1)).isCloseTo(repeated.coefficient(1), within(1e-13));
        assertThat(weighted.squares()).isCloseTo(repeated.squares(), within(1e-13));
        assertThat(weighted.degreesOfFreedom()).isEqualTo(2);
        assertThat(weighted.residuals()[4])
                .isCloseTo(100 - weighted.coefficient(0) - 9 * weighted.coefficient(1), within(1e-12));
    }

    /** Two traits that always come together: the first gets the effect, the second none. */
    @Test
    void aColumnThatRepeatsAnotherGetsNoCoefficient() {
        double[] y = {1, 2, 4, 7};
        double[] x = {1, 2, 3, 5};
        double[] other = {0, 1, 0, 0};
        LeastSquares alone = LeastSquares.fit(y, new double[][] {x, other});
        LeastSquares doubled = LeastSquares.fit(y, new double[][] {x, {2, 4, 6, 10}, other});
        assertThat(doubled.coefficient(2)).isNaN();
        assertThat(doubled.error(2)).isNaN();
        for (int[] pair : new int[][] {{0, 0}, {1, 1}, {2, 3}}) {
            assertThat(doubled.coefficient(pair[1])).isCloseTo(alone.coefficient(pair[0]), within(1e-12));
            assertThat(doubled.error(pair[1])).isCloseTo(alone.error(pair[0]), within(1e-12));
        }
        assertThat(doubled.residuals()).containsExactly(alone.residuals(), within(1e-12));
    }

    @Test
    void tooFewRowsGiveNoErrorAndNoRowsNothing() {
        LeastSquares two = LeastSquares.fit(new double[] {1, 3}, new double[][] {{0, 1}});
        assertThat(two.coefficient(1)).isCloseTo(2, within(1e-15));
        assertThat(two.error(1)).isNaN();
        assertThat(LeastSquares.fit(new double[0], new double[][] {{}}).coefficient(0))
                .isNaN();
        assertThatIllegalArgumentException()
                .isThrownBy(() -> LeastSquares.fit(new double[] {1, 3}, new double[][] {{0, 1, 2}}))
                .withMessageContaining("3 rows, expected 2");
    }
}
