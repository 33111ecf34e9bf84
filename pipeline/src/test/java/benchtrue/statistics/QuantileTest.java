package benchtrue.statistics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class QuantileTest {
    /** NIST e-Handbook 7.2.6.2, silicon resistivity (inputs and R6, R7, R8 VERIFIED-2, the rest COMPUTED with R 4.2.2). */
    private static final double[] RESISTIVITY = Quantile.sorted(ReferenceData.numbersIn(
            "95.1772 95.1567 95.1937 95.1959 95.1442 95.0610 95.1591 95.1195 95.1065 95.0925 95.1990 95.1682"));

    /** Hyndman and Fan 1996: VERIFIED in Hipparchus 1b58ec9 PercentileTest, COMPUTED with R 4.2.2 {@code quantile(c(1,3,2,4))}. */
    @ParameterizedTest
    @CsvSource({"0.25, 1.25, 1.75", "0.30, 1.5, 1.9", "0.50, 2.5, 2.5", "0.75, 3.75, 3.25"})
    void hyndmanAndFanOneToFour(double p, double exclusive, double inclusive) {
        both(new double[] {1, 2, 3, 4}, p, exclusive, inclusive);
    }

    /** COMPUTED with R 4.2.2 {@code quantile(h, p, type = 6)} and {@code 7}. */
    @ParameterizedTest
    @CsvSource({"0.10, 2.15, 2.55", "0.25, 2.75, 2.875", "0.50, 3.65, 3.65", "0.75, 4.55, 4.35", "0.90, 7.25, 5.25"})
    void benchHoursByBothDefinitions(double p, double exclusive, double inclusive) {
        both(BenchHours.SORTED, p, exclusive, inclusive);
    }

    /** With the ninth value right (95.1065); COMPUTED with R 4.2.2. */
    @ParameterizedTest
    @CsvSource({
        "0.25, 95.109750, 95.116250",
        "0.5, 95.157900, 95.157900",
        "0.75, 95.189575, 95.181325",
        "0.9, 95.19807, 95.19568"
    })
    void nistHandbookSiliconResistivity(double p, double exclusive, double inclusive) {
        both(RESISTIVITY, p, exclusive, inclusive);
    }

    private static void both(double[] sorted, double p, double exclusive, double inclusive) {
        assertThat(Quantile.exclusive(sorted, p)).as("type 6").isCloseTo(exclusive, within(6e-7));
        assertThat(Quantile.of(sorted, p)).as("type 7").isCloseTo(inclusive, within(6e-7));
    }

    /** Analytical Methods Committee 1989, 24 copper measurements (R MASS::chem; COMPUTED). */
    @Test
    void medianOfTheCopperMeasurements() {
        assertThat(Quantile.median(Copper.SORTED)).isCloseTo(3.385, within(1e-12));
    }

    /** At p = k/(n + 1) rounding error must not move the rank: 0.57 * 100 is 56.99999999999999. */
    @ParameterizedTest
    @ValueSource(ints = {7, 10, 29, 56, 57, 58, 93})
    void wholePercentilesOfNinetyNineAreTheirOwnRank(int percent) {
        double[] all = new double[99];
        for (int i = 0; i < 99; i++) {
            all[i] = i + 1;
        }
        assertThat(Quantile.exclusive(all, percent / 100.0)).isEqualTo(percent);
    }

    @Test
    void theEndsAreTheShortestAndTheLongestJob() {
        assertThat(Quantile.of(BenchHours.SORTED, 0)).isEqualTo(2.1);
        assertThat(Quantile.exclusive(BenchHours.SORTED, 0)).isEqualTo(2.1);
        assertThat(Quantile.of(BenchHours.SORTED, 1)).isEqualTo(7.5);
        assertThat(Quantile.exclusive(BenchHours.SORTED, 1)).isEqualTo(7.5);
        assertThat(Quantile.of(new double[] {3}, 0.9)).isEqualTo(3);
        assertThat(Quantile.exclusive(new double[] {3}, 0.9)).isEqualTo(3);
        assertThat(Quantile.of(new double[0], 0.9)).isNaN();
    }

    @Test
    void infiniteHoursDoNotPoisonTheFiniteQuantiles() {
        double[] sorted = {1, 2, Double.POSITIVE_INFINITY};
        assertThat(Quantile.of(sorted, 0.5)).isEqualTo(2);
        assertThat(Quantile.of(sorted, 1)).isEqualTo(Double.POSITIVE_INFINITY);
    }

    @Test
    void refusesWhatHasNoQuantile() {
        assertThatIllegalArgumentException().isThrownBy(() -> Quantile.of(BenchHours.SORTED, 1.1));
        assertThatIllegalArgumentException().isThrownBy(() -> Quantile.of(BenchHours.SORTED, -0.1));
        assertThatIllegalArgumentException().isThrownBy(() -> Quantile.of(new double[] {1, Double.NaN}, 0.5));
    }
}
