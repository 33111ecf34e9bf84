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
    @CsvSource({
        "0.25, 1 1.5 1 1 1.5 1.25 1.75 1.41667 1.4375",
        "0.30, 2 2 1 1.2 1.7 1.5 1.9 1.63333 1.65",
        "0.50, 2 2.5 2 2 2.5 2.5 2.5 2.5 2.5",
        "0.75, 3 3.5 3 3 3.5 3.75 3.25 3.58333 3.5625"
    })
    void hyndmanAndFanOneToFour(double p, String types) {
        nineTypes(new double[] {1, 2, 3, 4}, p, types, 6e-6);
    }

    /** COMPUTED with R 4.2.2 {@code quantile(h, p, type = 1:9)}. */
    @ParameterizedTest
    @CsvSource({
        "0.10, 2.1 2.35 2.1 2.1 2.35 2.15 2.55 2.283333 2.3",
        "0.25, 2.8 2.8 2.6 2.7 2.8 2.75 2.875 2.783333 2.7875",
        "0.50, 3.4 3.65 3.4 3.4 3.65 3.65 3.65 3.65 3.65",
        "0.75, 4.4 4.4 4.4 4.3 4.4 4.55 4.35 4.45 4.4375",
        "0.90, 5.0 6.25 5.0 5.0 6.25 7.25 5.25 6.583333 6.5"
    })
    void benchHoursByNineDefinitions(double p, String types) {
        nineTypes(BenchHours.SORTED, p, types, 6e-7);
    }

    @ParameterizedTest
    @CsvSource({
        "0.9, 95.1959 95.1959 95.1959 95.19546 95.19683 95.19807 95.19568 95.197243 95.19714",
    })
    void nistHandbookSiliconResistivity(double p, String types) {
        nineTypes(RESISTIVITY, p, types, 6e-7);
    }

    /** With the ninth value right (95.1065); COMPUTED with R 4.2.2. */
    @ParameterizedTest
    @CsvSource({
        "6, 0.25, 95.109750",
        "7, 0.25, 95.116250",
        "7, 0.5, 95.157900",
        "1, 0.5, 95.1567",
        "6, 0.75, 95.189575",
        "7, 0.75, 95.181325"
    })
    void nistHandbookSiliconResistivityQuartiles(int type, double p, double expected) {
        assertThat(Quantile.of(RESISTIVITY, p, type)).isCloseTo(expected, within(1e-9));
    }

    private static void nineTypes(double[] sorted, double p, String types, double tolerance) {
        double[] expected = ReferenceData.numbersIn(types);
        for (int type = 1; type <= 9; type++) {
            assertThat(Quantile.of(sorted, p, type))
                    .as("type %d", type)
                    .isCloseTo(expected[type - 1], within(tolerance));
        }
    }

    /** Analytical Methods Committee 1989, 24 copper measurements (R MASS::chem; COMPUTED). */
    @Test
    void medianOfTheCopperMeasurements() {
        assertThat(Quantile.median(Copper.SORTED)).isCloseTo(3.385, within(1e-12));
    }

    /** At p = k/n rounding error must not move the rank: 0.57 * 100 is 56.99999999999999. */
    @ParameterizedTest
    @ValueSource(ints = {7, 10, 29, 56, 57, 58, 93})
    void wholePercentilesOfAHundredAreTheirOwnRank(int percent) {
        double[] hundred = new double[100];
        for (int i = 0; i < 100; i++) {
            hundred[i] = i + 1;
        }
        assertThat(Quantile.of(hundred, percent / 100.0, 1)).isEqualTo(percent);
        assertThat(Quantile.of(hundred, percent / 100.0, 2)).isEqualTo(percent + 0.5);
    }

    @Test
    void theEndsAreTheShortestAndTheLongestJob() {
        for (int type = 1; type <= 9; type++) {
            assertThat(Quantile.of(BenchHours.SORTED, 0, type)).isEqualTo(2.1);
            assertThat(Quantile.of(BenchHours.SORTED, 1, type)).isEqualTo(7.5);
            assertThat(Quantile.of(new double[] {3}, 0.9, type)).isEqualTo(3);
            assertThat(Quantile.of(new double[0], 0.9, type)).isNaN();
        }
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
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Quantile.of(BenchHours.SORTED, 0.5, 0))
                .withMessageContaining("found 0");
        assertThatIllegalArgumentException().isThrownBy(() -> Quantile.of(new double[] {1, Double.NaN}, 0.5));
    }
}
