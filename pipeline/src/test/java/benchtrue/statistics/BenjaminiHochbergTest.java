package benchtrue.statistics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import org.junit.jupiter.api.Test;

class BenjaminiHochbergTest {
    private static final double NA = Double.NaN;

    /** Inputs and "4 rejected" VERIFIED-2 (several public suites cite the paper); adjusted p COMPUTED, R 4.2.2 {@code p.adjust}. */
    @Test
    void myocardialInfarctionOfBenjaminiAndHochberg1995() {
        double[] p = {
            0.0001, 0.0004, 0.0019, 0.0095, 0.0201, 0.0278, 0.0298, 0.0344, 0.0459, 0.3240, 0.4262, 0.5719, 0.6528,
            0.7590, 1.0
        };
        double[] adjusted = BenjaminiHochberg.adjust(p);
        assertThat(adjusted)
                .containsExactly(
                        new double[] {
                            0.0015,
                            0.003,
                            0.0095,
                            0.035625,
                            0.0603,
                            0.063857143,
                            0.063857143,
                            0.0645,
                            0.0765,
                            0.486,
                            0.581181818,
                            0.714875,
                            0.753230769,
                            0.813214286,
                            1
                        },
                        within(5e-10));
        assertThat(Arrays.stream(adjusted).filter(q -> q <= 0.05).count()).isEqualTo(4);
    }

    /** VERIFIED: SciPy 3dbf660 test_morestats.py. */
    @Test
    void eightValuesOfTheScipySuite() {
        assertThat(BenjaminiHochberg.adjust(new double[] {0.005, 0.009, 0.019, 0.022, 0.051, 0.101, 0.361, 0.387}))
                .containsExactly(new double[] {0.036, 0.036, 0.044, 0.044, 0.082, 0.135, 0.387, 0.387}, within(5e-4));
    }

    /** The rest COMPUTED with R 4.2.2 {@code p.adjust}. */
    @Test
    void tiesShareAValue() {
        assertThat(BenjaminiHochberg.adjust(new double[] {.01, .02, .02, .04, .5}))
                .containsExactly(new double[] {1 / 30.0, 1 / 30.0, 1 / 30.0, .05, .5}, within(1e-15));
    }

    @Test
    void aTypeWithTooFewJobsLeavesTheCount() {
        assertThat(BenjaminiHochberg.adjust(new double[] {.04, NA, .01, .03}))
                .containsExactly(new double[] {.04, NA, .03, .04}, within(1e-15));
    }

    @Test
    void theLargestThatPassesCarriesTheOthers() {
        assertThat(BenjaminiHochberg.adjust(new double[] {.010, .049, .020, .045, .0499}))
                .containsExactly(new double[] {.0499, .0499, .0499, .0499, .0499}, within(1e-15));
    }

    @Test
    void oneStaysAndNoneStaysNone() {
        assertThat(BenjaminiHochberg.adjust(new double[] {.3})).containsExactly(.3);
        assertThat(BenjaminiHochberg.adjust(new double[] {NA})).containsExactly(NA);
        assertThat(BenjaminiHochberg.adjust(new double[0])).isEmpty();
    }

    @Test
    void refusesWhatIsNoChance() {
        assertThatIllegalArgumentException().isThrownBy(() -> BenjaminiHochberg.adjust(new double[] {.3, 1.2}));
        assertThatIllegalArgumentException().isThrownBy(() -> BenjaminiHochberg.adjust(new double[] {.3, -.2}));
    }
}
