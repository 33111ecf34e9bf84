package benchtrue.statistics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class HuberTest {
    /** Analytical Methods Committee 1989 (R MASS::chem); COMPUTED with {@code mad(chem)}. */
    @Test
    void copperOfTheAnalyticalMethodsCommittee() {
        assertThat(Mad.scaled(Copper.SORTED)).isCloseTo(0.526323, within(5e-7));
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

    @Test
    void weightsFallWithTheDistance() {
        assertThat(Huber.weight(1.345, Huber.K)).isEqualTo(1);
        assertThat(Huber.weight(-2.69, Huber.K)).isEqualTo(0.5);
    }

    @Test
    void fewJobsAndEqualJobs() {
        assertThat(Mad.raw(new double[0])).isNaN();
        assertThat(Mad.raw(new double[] {3})).isZero();
    }
}
