package benchtrue.statistics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

class BootstrapTest {
    /** The ordinary bootstrap: as many draws with replacement as there are values. */
    private static Bootstrap ofMean(double[] values, int resamples) {
        SplittableRandom random = new SplittableRandom(1972);
        double[] replicates = new double[resamples];
        Arrays.setAll(
                replicates,
                resample -> random.ints(values.length, 0, values.length)
                        .mapToDouble(place -> values[place])
                        .average()
                        .orElseThrow());
        Jackknife jackknife = JackknifeTest.ofMean(values);
        return Bootstrap.of(jackknife.estimate(), replicates, jackknife.acceleration());
    }

    /** Upper limits VERIFIED: SciPy 3dbf660 test_resampling.py, there from R boot with 10^6 resamples. */
    @Test
    void sixteenValuesOfTheScipySuite() {
        Bootstrap bootstrap = ofMean(JackknifeTest.SIXTEEN, 200_000);
        assertThat(bootstrap.bcaChanceAtLeast(91.43)).isCloseTo(0.025, within(0.0015));
    }

    /** Davison and Hinkley 1997 example 1.1 (R boot::aircondit); COMPUTED with R boot 1.3-28.1, 99 999 resamples and more. */
    @Test
    void airConditioningOfDavisonAndHinkley() {
        Bootstrap bootstrap = ofMean(JackknifeTest.AIR_CONDITIONING, 200_000);
        assertThat(bootstrap.bcaChanceAtLeast(225.8)).isCloseTo(0.025, within(0.0015));
        assertThat(bootstrap.bcaChanceAtLeast(202.2)).isCloseTo(0.05, within(0.002));
    }

    /** Beyond the pole of the acceleration the extreme replicate is all there is to give. */
    @Test
    void anExtremeSkewEndsAtTheExtremeReplicate() {
        double[] replicates = ramp(99);
        assertThat(Bootstrap.of(50, replicates, 0.9).bcaChanceAtLeast(1)).isEqualTo(1);
        assertThat(Bootstrap.of(50, replicates, -0.9).bcaChanceAtLeast(99)).isZero();
    }

    /** Worked by hand: 99 replicates 1 to 99, so that p is k/100 at k and half-way between outside ranks. */
    @Test
    void sharesByHand() {
        Bootstrap bootstrap = Bootstrap.of(50, ramp(99), 0);
        assertThat(bootstrap.bcaChanceAtLeast(0)).isCloseTo(0.995, within(1e-9));
        assertThat(bootstrap.bcaChanceAtLeast(95)).isCloseTo(0.05, within(1e-9));
    }

    @Test
    void resamplesWithoutTheRepairTypeAreLeftOut() {
        Bootstrap bootstrap = Bootstrap.of(2, new double[] {3, Double.NaN, 1, 2, Double.NaN}, 0);
        assertThat(bootstrap.bcaChanceAtLeast(2.5)).isCloseTo(1 - 2.5 / 4, within(1e-9));
    }

    @Test
    void withoutEstimateOrReplicatesThereIsNoChance() {
        for (Bootstrap none : new Bootstrap[] {
            Bootstrap.of(1, new double[] {1}, 0), Bootstrap.of(Double.NaN, new double[] {1, 2, 3}, 0)
        }) {
            assertThat(none.bcaChanceAtLeast(1)).isNaN();
        }
        assertThat(Bootstrap.of(2, new double[] {1, 2, 3}, Double.NaN).bcaChanceAtLeast(1))
                .isNaN();
    }

    private static double[] ramp(int count) {
        double[] values = new double[count];
        Arrays.setAll(values, i -> count - i);
        return values;
    }
}
