package benchtrue.statistics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.data.Percentage.withPercentage;

import java.util.Arrays;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class BootstrapTest {
    private static final double AIR_CONDITIONING_A = 0.0937980738839;

    private static Bootstrap ofMean(double[] values, int resamples) {
        double[][] replicates = new Resampling(GroupWeights.MULTINOMIAL, 1972, resamples, values.length)
                .replicates(weights -> new double[] {weightedMean(values, weights)});
        Jackknife jackknife = JackknifeTest.ofMean(values);
        return Bootstrap.of(jackknife.estimate(), replicates[0], jackknife.acceleration());
    }

    private static double weightedMean(double[] values, double[] weights) {
        double sum = 0;
        double total = 0;
        for (int i = 0; i < values.length; i++) {
            sum += weights[i] * values[i];
            total += weights[i];
        }
        return sum / total;
    }

    /** Limits VERIFIED: SciPy 3dbf660 test_resampling.py, there from R boot with 10^6 resamples. */
    @Test
    void sixteenValuesOfTheScipySuite() {
        Bootstrap bootstrap = ofMean(JackknifeTest.SIXTEEN, 200_000);
        assertThat(bootstrap.percentile(0.95).low()).isCloseTo(28.86, withPercentage(0.5));
        assertThat(bootstrap.percentile(0.95).high()).isCloseTo(84.21, withPercentage(0.5));
        assertThat(bootstrap.bca(0.95).low()).isCloseTo(32.31, withPercentage(0.5));
        assertThat(bootstrap.bca(0.95).high()).isCloseTo(91.43, withPercentage(0.5));
    }

    /** Davison and Hinkley 1997 example 1.1 (R boot::aircondit); COMPUTED with R boot 1.3-28.1, 99 999 resamples and more. */
    @Test
    void airConditioningOfDavisonAndHinkley() {
        Bootstrap bootstrap = ofMean(JackknifeTest.AIR_CONDITIONING, 200_000);
        assertThat(bootstrap.usable()).isEqualTo(200_000);
        assertThat(bootstrap.biasCorrection()).isCloseTo(0.097, within(0.01));
        assertThat(bootstrap.standardError()).isCloseTo(37.652552, withPercentage(1));
        assertThat(bootstrap.percentile(0.95).low()).isCloseTo(46.75, withPercentage(1));
        assertThat(bootstrap.percentile(0.95).high()).isCloseTo(191.2, withPercentage(1));
        assertThat(bootstrap.bca(0.95).low()).isCloseTo(56.83, withPercentage(1));
        assertThat(bootstrap.bca(0.95).high()).isCloseTo(225.8, withPercentage(1));
        assertThat(bootstrap.bca(0.90).low()).isCloseTo(62.6, withPercentage(1));
        assertThat(bootstrap.bca(0.90).high()).isCloseTo(202.2, withPercentage(1));
    }

    /** The adjustment formula itself, COMPUTED with R 4.2.2 for z0 = 0.0955 and the acceleration of the same data. */
    @Test
    void bcaLevelsOfTheAirConditioningData() {
        assertThat(Bootstrap.bcaLevel(0.0955, AIR_CONDITIONING_A, 0.025)).isCloseTo(0.067923570403, within(1e-11));
        assertThat(Bootstrap.bcaLevel(0.0955, AIR_CONDITIONING_A, 0.975)).isCloseTo(0.995877974486, within(1e-11));
    }

    @Test
    void withoutBiasAndSkewTheLevelsAreTheNominalOnes() {
        assertThat(Bootstrap.bcaLevel(0, 0, 0.025)).isCloseTo(0.025, within(1e-16));
        assertThat(Bootstrap.bcaLevel(0, 0, 0.975)).isCloseTo(0.975, within(1e-15));
    }

    /** Beyond the pole of the acceleration the interval ends at the extreme replicate. */
    @Test
    void anExtremeSkewEndsAtTheExtremeReplicate() {
        assertThat(Bootstrap.bcaLevel(0.5, 0.9, 0.975)).isEqualTo(1);
        assertThat(Bootstrap.bcaLevel(-0.5, -0.9, 0.025)).isZero();
        double[] replicates = ramp(99);
        Bootstrap right = Bootstrap.of(50, replicates, 0.9);
        assertThat(right.bca(0.95).high()).isEqualTo(99);
        assertThat(right.bcaChanceAtMost(1)).isZero();
        assertThat(right.bcaChanceAtLeast(1)).isEqualTo(1);
        Bootstrap left = Bootstrap.of(50, replicates, -0.9);
        assertThat(left.bcaChanceAtMost(99)).isEqualTo(1);
        assertThat(left.bcaChanceAtLeast(99)).isZero();
    }

    /** The p-value is the level at which the interval's end touches the bound: the two must undo each other. */
    @ParameterizedTest
    @CsvSource({"0.80", "0.90", "0.95", "0.99"})
    void theChanceAtAnIntervalsEndIsItsTail(double level) {
        Bootstrap bootstrap = ofMean(JackknifeTest.AIR_CONDITIONING, 50_000);
        double tail = (1 - level) / 2;
        assertThat(bootstrap.bcaChanceAtMost(bootstrap.bca(level).low())).isCloseTo(tail, within(2e-4));
        assertThat(bootstrap.bcaChanceAtLeast(bootstrap.bca(level).high())).isCloseTo(tail, within(2e-4));
        assertThat(bootstrap.percentileChanceAtMost(bootstrap.percentile(level).low()))
                .isCloseTo(tail, within(2e-4));
        assertThat(bootstrap.percentileChanceAtLeast(bootstrap.percentile(level).high()))
                .isCloseTo(tail, within(2e-4));
    }

    /** Worked by hand: 99 replicates 1 to 99, so that p is k/100 at k and half-way between outside ranks. */
    @Test
    void sharesByHand() {
        Bootstrap bootstrap = Bootstrap.of(50, ramp(99), 0);
        assertThat(bootstrap.biasCorrection()).isCloseTo(0, within(1e-15));
        assertThat(bootstrap.percentileChanceAtMost(5)).isCloseTo(0.05, within(1e-15));
        assertThat(bootstrap.percentileChanceAtLeast(95)).isCloseTo(0.05, within(1e-15));
        assertThat(bootstrap.percentileChanceAtMost(0)).isCloseTo(0.005, within(1e-15));
        assertThat(bootstrap.percentile(0.90)).isEqualTo(new Interval(5, 95));
        assertThat(bootstrap.bca(0.90).low()).isCloseTo(5, within(1e-9));
        assertThat(bootstrap.bca(0.90).high()).isCloseTo(95, within(1e-9));
        assertThat(bootstrap.standardError()).isCloseTo(StrictMath.sqrt(825), within(1e-12));
    }

    @Test
    void resamplesWithoutTheRepairTypeAreLeftOut() {
        double[] replicates = {3, Double.NaN, 1, 2, Double.NaN};
        Bootstrap bootstrap = Bootstrap.of(2, replicates, 0);
        assertThat(bootstrap.usable()).isEqualTo(3);
        assertThat(bootstrap.percentile(0.5)).isEqualTo(new Interval(1, 3));
    }

    @Test
    void withoutEstimateOrReplicatesThereIsNoInterval() {
        for (Bootstrap none : new Bootstrap[] {
            Bootstrap.of(1, new double[] {1}, 0), Bootstrap.of(Double.NaN, new double[] {1, 2, 3}, 0)
        }) {
            assertThat(none.usable()).isZero();
            assertThat(none.percentile(0.9).low()).isNaN();
            assertThat(none.bca(0.9)).isEqualTo(Interval.NONE);
            assertThat(none.percentileChanceAtMost(1)).isNaN();
            assertThat(none.bcaChanceAtLeast(1)).isNaN();
            assertThat(none.standardError()).isNaN();
        }
        assertThat(Bootstrap.of(2, new double[] {1, 2, 3}, Double.NaN).bca(0.9)).isEqualTo(Interval.NONE);
        assertThat(Bootstrap.of(2, new double[] {1, 2, 3}, Double.NaN).bcaChanceAtMost(1))
                .isNaN();
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Bootstrap.of(2, new double[] {1, 2, 3}, 0).percentile(1.2));
    }

    private static double[] ramp(int count) {
        double[] values = new double[count];
        Arrays.setAll(values, i -> count - i);
        return values;
    }
}
