package benchtrue.statistics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.function.ToDoubleFunction;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class JackknifeTest {
    /** R boot::aircondit (Davison and Hinkley 1997, example 1.1). */
    static final double[] AIR_CONDITIONING = {3, 5, 7, 18, 43, 85, 91, 98, 100, 130, 230, 487};
    /** SciPy 3dbf660 test_resampling.py. */
    static final double[] SIXTEEN = {10, 12, 12.5, 12.5, 13.9, 15, 21, 22, 23, 34, 50, 81, 89, 121, 134, 213};

    static double[] leftOut(double[] values, ToDoubleFunction<double[]> statistic) {
        double[] result = new double[values.length];
        for (int out = 0; out < values.length; out++) {
            double[] rest = new double[values.length - 1];
            System.arraycopy(values, 0, rest, 0, out);
            System.arraycopy(values, out + 1, rest, out, rest.length - out);
            result[out] = statistic.applyAsDouble(rest);
        }
        return result;
    }

    static double mean(double[] values) {
        return Moments.of(values).mean();
    }

    static Jackknife ofMean(double[] values) {
        return Jackknife.of(mean(values), leftOut(values, JackknifeTest::mean));
    }

    /** The jackknife of a mean is the textbook standard error s / sqrt(n), without bias (Efron 1982). */
    @Test
    void theMeansJackknifeIsItsStandardError() {
        Jackknife jackknife = ofMean(AIR_CONDITIONING);
        assertThat(jackknife.groups()).isEqualTo(12);
        assertThat(jackknife.estimate()).isCloseTo(108.083333, within(5e-7));
        assertThat(jackknife.standardError())
                .isCloseTo(Moments.of(AIR_CONDITIONING).standardDeviation() / StrictMath.sqrt(12), within(1e-10));
        assertThat(jackknife.standardError()).isCloseTo(37.652552 * StrictMath.sqrt(12 / 11.0), within(1e-6));
        assertThat(jackknife.mean()).isCloseTo(jackknife.estimate(), within(1e-10));
    }

    /** Accelerations: COMPUTED with R 4.2.2, the first for data of SciPy 3dbf660 test_resampling.py. */
    @Test
    void accelerationOfTwoPublishedSamples() {
        assertThat(ofMean(SIXTEEN).acceleration()).isCloseTo(0.0615288696126, within(5e-14));
        assertThat(ofMean(AIR_CONDITIONING).acceleration()).isCloseTo(0.0937980738839, within(5e-14));
    }

    /** Efron and Tibshirani 1993, chapter 14, spatial test data A (inputs MEMORY; a COMPUTED). The variance by n is biased by -s2/n. */
    @Test
    void spatialTestDataOfEfronAndTibshirani() {
        double[] data =
                ReferenceData.numbersIn("48 36 20 29 42 42 20 42 22 41 45 14 6 0 33 28 34 4 32 24 47 41 24 26 30 41");
        ToDoubleFunction<double[]> byCount = v -> Moments.of(v).variance() * (v.length - 1) / v.length;
        Jackknife jackknife = Jackknife.of(byCount.applyAsDouble(data), leftOut(data, byCount));
        assertThat(jackknife.estimate()).isCloseTo(171.534024, within(5e-7));
        assertThat(jackknife.acceleration()).isCloseTo(0.0612401198, within(5e-11));
        assertThat(jackknife.estimate() - (jackknife.groups() - 1) * (jackknife.mean() - jackknife.estimate()))
                .isCloseTo(Moments.of(data).variance(), within(1e-9));
    }

    /** Student 1908, sleep: the t interval and p of the mean difference (R 4.2.2 {@code t.test}, COMPUTED). */
    @Test
    void sleepOfStudent1908() {
        double[] differences = {1.2, 2.4, 1.3, 1.3, 0.0, 1.0, 1.8, 0.8, 4.6, 1.4};
        Jackknife jackknife = ofMean(differences);
        Interval interval = jackknife.interval(0.95);
        assertThat(interval.low()).isCloseTo(0.700114236723, within(1e-9));
        assertThat(interval.high()).isCloseTo(2.459885763277, within(1e-9));
        assertThat(jackknife.chanceAtMost(0)).isCloseTo(0.0014164451, within(5e-11));
        assertThat(jackknife.chanceAtLeast(0)).isCloseTo(1 - 0.0014164451, within(5e-11));
    }

    /** Against the delta method: to first order the error of a log is the relative error. */
    @Test
    void theLogOfARatioHasItsRelativeError() {
        double[] leftOut = {1.2001, 1.1999, 1.2002, 1.1998, 1.2};
        Jackknife plain = Jackknife.of(1.2, leftOut);
        Jackknife log = Jackknife.ofLog(1.2, leftOut);
        assertThat(log.estimate()).isEqualTo(StrictMath.log(1.2));
        assertThat(log.standardError()).isCloseTo(plain.standardError() / 1.2, within(1e-8));
    }

    /** Leaving a group out that holds none of the repair type repeats the estimate; equal values have no error and no skew. */
    @ParameterizedTest
    @ValueSource(ints = {2, 5})
    void equalValuesHaveNoErrorAndNoSkew(int groups) {
        double[] same = new double[groups];
        Arrays.fill(same, 1.25);
        Jackknife jackknife = Jackknife.of(1.25, same);
        assertThat(jackknife.standardError()).isZero();
        assertThat(jackknife.acceleration()).isZero();
        assertThat(jackknife.chanceAtMost(1)).isZero();
        assertThat(jackknife.interval(0.9)).isEqualTo(new Interval(1.25, 1.25));
    }

    @Test
    void oneTicketTellsNothingAboutScatter() {
        Jackknife jackknife = Jackknife.of(1.2, new double[] {1.2});
        assertThat(jackknife.groups()).isEqualTo(1);
        assertThat(jackknife.standardError()).isNaN();
        assertThat(jackknife.acceleration()).isNaN();
        assertThat(jackknife.chanceAtMost(1)).isNaN();
        assertThat(jackknife.interval(0.9).low()).isNaN();
        assertThat(Jackknife.of(1.2, new double[] {1.2, Double.NaN}).standardError())
                .isNaN();
    }

    /** Variances of independent sources add: 3-4-5. */
    @Test
    void aFurtherVarianceWidensTheIntervalAndNothingElse() {
        Jackknife jackknife = new Jackknife(9, 1, 1, 3, 0.1).widened(16);
        assertThat(jackknife.standardError()).isEqualTo(5);
        assertThat(jackknife.groups()).isEqualTo(9);
        assertThat(jackknife.estimate()).isEqualTo(1);
        assertThat(jackknife.acceleration()).isEqualTo(0.1);
    }
}
