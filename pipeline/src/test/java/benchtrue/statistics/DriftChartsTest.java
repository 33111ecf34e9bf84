package benchtrue.statistics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class DriftChartsTest {
    private static final double[] MONTGOMERY =
            ReferenceData.numbersIn("102.0 94.8 98.3 98.4 102.0 98.5 99.0 97.7 100.0 98.1"
                    + " 101.3 98.7 101.1 98.4 97.0 96.7 100.3 101.4 97.2 101.0");
    private static final double[] NIST_CUSUM = ReferenceData.numbersIn(
            "324.925 324.675 324.725 324.350 325.350 325.225 324.125"
                    + " 324.525 325.225 324.600 324.625 325.150 328.325 327.250 327.825 328.500 326.675 327.775 326.875 328.350");

    /** NIST e-Handbook 6.3.2.4 (VERIFIED-2; last level and growing limits COMPUTED). */
    @Test
    void nistEwma() {
        double[] values =
                ReferenceData.numbersIn("52.0 47.0 53.0 49.3 50.1 47.0 51.0 50.1 51.2 50.5 49.6 47.6 49.9 51.3 47.8"
                        + " 51.2 52.6 52.4 53.6 52.1");
        double[] levels =
                ReferenceData.numbersIn("50.60 49.52 50.56 50.18 50.16 49.21 49.75 49.85 50.26 50.33 50.11 49.36"
                        + " 49.52 50.05 49.38 49.92 50.73 51.23 51.94 51.99");
        Ewma chart = Ewma.of(values, 50, 2.0539, 0.3, 3);
        for (int i = 0; i < 20; i++) {
            assertThat(chart.level(i)).as("point %d", i + 1).isCloseTo(levels[i], within(0.005 + 1e-9));
        }
        assertThat(chart.level(19)).isCloseTo(51.988243, within(5e-7));
        double[][] growing = {
            {1, 51.848510},
            {2, 52.256394},
            {3, 52.431406},
            {4, 52.512715},
            {5, 52.551611},
            {10, 52.587399},
            {20, 52.588431}
        };
        for (double[] point : growing) {
            Interval limits = chart.limits((int) point[0] - 1);
            assertThat(limits.high()).isCloseTo(point[1], within(5e-7));
            assertThat(limits.low()).isCloseTo(100 - point[1], within(5e-7));
        }
        assertThat(chart.firstAbove()).isEqualTo(-1);
    }

    @Test
    void anEwmaSignalsSlowerWorkAndSkipsWhatIsMissing() {
        double[] slower = {0, Double.NaN, 2, 2, 2};
        Ewma chart = Ewma.of(slower, 0, 1, 0.2, 2);
        assertThat(chart.level(1)).isEqualTo(chart.level(0));
        assertThat(chart.limits(1)).isEqualTo(chart.limits(0));
        // By hand: levels 0.4, 0.72; limits 2/3 sqrt(1 - 0.8^4) = 0.512, 2/3 sqrt(1 - 0.8^6) = 0.573.
        assertThat(chart.level(3)).isCloseTo(0.72, within(1e-15));
        assertThat(chart.firstAbove()).isEqualTo(3);
        assertThat(Ewma.of(slower, 0, 1, 1, 2).level(4)).isEqualTo(2);
        assertThatIllegalArgumentException().isThrownBy(() -> Ewma.of(slower, 0, 1, 0, 2));
        assertThatIllegalArgumentException().isThrownBy(() -> Ewma.of(slower, 0, 1, 1.1, 2));
    }

    /** NIST e-Handbook 6.3.2.3 (VERIFIED-2; the last eight sums COMPUTED). */
    @Test
    void nistCusum() {
        double[] sums = Cusum.sums(NIST_CUSUM, 325, 0.3175);
        double[] high =
                ReferenceData.numbersIn("0 0 0 0 0.03 0 0 0 0 0 0 0 3.01 4.94 7.45 10.63 11.99 14.44 16.00 19.04");
        double[] exact = ReferenceData.numbersIn("3.0075 4.94 7.4475 10.63 11.9875 14.445 16.0025 19.035");
        for (int i = 0; i < 20; i++) {
            assertThat(sums[i]).as("high %d", i + 1).isCloseTo(high[i], within(0.005 + 1e-9));
            assertThat(sums[i]).isCloseTo(i < 12 ? sums[i] : exact[i - 12], within(1e-9));
        }
        assertThat(Cusum.startOfRise(NIST_CUSUM, 325, 0.3175, 13)).isEqualTo(12);
        assertThat(ChangePoint.byLikelihood(NIST_CUSUM)).isEqualTo(12);
    }

    /** Montgomery and Runger 2002, Table 16-8 (VERIFIED, p. 636). */
    @Test
    void montgomeryAndRungerCusum() {
        double[] sums = Cusum.sums(MONTGOMERY, 99, 1);
        double[] high = ReferenceData.numbersIn("2.0 0 0 0 2.0 0.5 0 0 0 0 1.3 0 1.1 0 0 0 0.3 1.7 0 1.0");
        for (int i = 0; i < 20; i++) {
            assertThat(sums[i]).isCloseTo(high[i], within(1e-9));
        }
    }

    @Test
    void aCusumSkipsWhatIsMissing() {
        double[] values = {2, Double.NaN, 2, 2};
        assertThat(Cusum.sums(values, 0, 0.5)[1]).isEqualTo(1.5);
        assertThat(Cusum.startOfRise(values, 0, 0.5, 3)).isZero();
    }

    /** Worked by hand: values 0 0 0 0 0 0 0 0 3 3 with one early 1; sums about the mean 0.7 are largest after the eighth. */
    @Test
    void theStartOfAChangeByHand() {
        double[] late = {1, 0, 0, 0, 0, 0, 0, 0, 3, 3};
        assertThat(ChangePoint.byLikelihood(late)).isEqualTo(8);
        // Sums about the mean 1: -1, -2, -1, -0.6, -0.2, 0.2 ...
        double[] mixed = {0, 0, 2, 1.4, 1.4, 1.4, 1.4, 1.4, 1.4, -0.4};
        assertThat(ChangePoint.byLikelihood(mixed)).isEqualTo(2);
    }

    @Test
    void whereNothingVariesThereIsNoChange() {
        assertThat(ChangePoint.byLikelihood(new double[] {2})).isEqualTo(-1);
        assertThat(ChangePoint.byLikelihood(new double[0])).isEqualTo(-1);
        assertThatIllegalArgumentException()
                .isThrownBy(() -> ChangePoint.byLikelihood(new double[] {1, Double.NaN, 2}));
    }
}
