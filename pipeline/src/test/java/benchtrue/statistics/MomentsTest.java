package benchtrue.statistics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.data.Percentage.withPercentage;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** NIST Statistical Reference Datasets, univariate (VERIFIED: Hipparchus 1b58ec9, copies of the NIST files). */
class MomentsTest {
    @Test
    void nistUnivariateNumAcc1() {
        Moments moments = Moments.of(new double[] {10000001, 10000003, 10000002});
        assertThat(moments.mean()).isEqualTo(10000002);
        assertThat(moments.standardDeviation()).isEqualTo(1);
    }

    @Test
    void nistUnivariateNumAcc2() {
        pairsAround(1.2, 1.1, 1.3, 1e-13);
    }

    @Test
    void nistUnivariateNumAcc3() {
        pairsAround(1000000.2, 1000000.1, 1000000.3, 1e-8);
    }

    /** 10000000.1 is no double, which leaves about eight digits to any method. */
    @Test
    void nistUnivariateNumAcc4() {
        pairsAround(10000000.2, 10000000.1, 10000000.3, 1e-7);
    }

    private static void pairsAround(double middle, double low, double high, double relative) {
        double[] values = new double[1001];
        values[0] = middle;
        for (int i = 1; i < values.length; i += 2) {
            values[i] = low;
            values[i + 1] = high;
        }
        Moments moments = Moments.of(values);
        assertThat(moments.count()).isEqualTo(1001);
        assertThat(moments.mean()).isCloseTo(middle, within(1e-15 * middle));
        assertThat(moments.standardDeviation()).isCloseTo(0.1, within(0.1 * relative));
    }

    @ParameterizedTest
    @CsvSource({"lew, 200, -177.435000000000, 277.332168044316", "lottery, 218, 518.958715596330, 291.699727470969"})
    void nistUnivariateObservedData(String name, int count, double mean, double deviation) {
        Moments moments = Moments.of(ReferenceData.read("nist-" + name + ".csv").numbers(name));
        assertThat(moments.count()).isEqualTo(count);
        assertThat(moments.mean()).isCloseTo(mean, withPercentage(1e-12));
        assertThat(moments.standardDeviation()).isCloseTo(deviation, withPercentage(1e-12));
    }

    /** Constructed bench hours; COMPUTED with R 4.2.2 {@code sd(h)}. */
    @Test
    void benchHoursScatterAsRSays() {
        Moments moments = Moments.of(BenchHours.SORTED);
        assertThat(moments.standardDeviation()).isCloseTo(1.54704018478, within(1e-11));
    }

    @Test
    void noJobHasNoMeanAndOneJobHasNoScatter() {
        assertThat(Moments.of(new double[0]).mean()).isNaN();
        assertThat(Moments.of(new double[] {3}).mean()).isEqualTo(3);
        assertThat(Moments.of(new double[] {3}).variance()).isNaN();
        assertThat(Moments.of(new double[] {3, Double.NaN}).mean()).isNaN();
    }

    /** The classic failure of plain summing (Neumaier 1974): the ones are lost beside 1e100. */
    @Test
    void aSumKeepsTheLowBits() {
        assertThat(Moments.sum(new double[] {1, 1e100, 1, -1e100})).isEqualTo(2);
        assertThat(Moments.sum(new double[0])).isZero();
    }
}
