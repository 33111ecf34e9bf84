package benchtrue.statistics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import org.junit.jupiter.api.Test;

class IsotonicTest {
    private static final double[] ONES = {1, 1, 1, 1, 1, 1, 1, 1, 1};

    /** The example of {@code isoreg} in R's documentation, from memory: 0.5 twice, then 3. */
    @Test
    void risingValuesAreThoseOfRsIsoreg() {
        double[] fitted = Isotonic.fit(new double[] {1, 0, 4, 3, 3, 5, 4, 2, 0}, ONES, Isotonic.Way.RISING);
        assertThat(fitted).containsExactly(new double[] {0.5, 0.5, 3, 3, 3, 3, 3, 3, 3}, within(1e-12));
    }

    @Test
    void fallingValuesMirrorRisingOnes() {
        double[] values = {-1, 0, -4, -3, -3, -5, -4, -2, 0};
        double[] fitted = Isotonic.fit(values, ONES, Isotonic.Way.FALLING);
        assertThat(Arrays.stream(fitted).map(x -> -x).toArray())
                .containsExactly(new double[] {0.5, 0.5, 3, 3, 3, 3, 3, 3, 3}, within(1e-12));
    }

    @Test
    void poolsWeighTheirValuesAndKeepTheirSum() {
        double[] fitted = Isotonic.fit(new double[] {2, 1}, new double[] {3, 1}, Isotonic.Way.RISING);
        assertThat(fitted).containsExactly(new double[] {1.75, 1.75}, within(1e-12));
    }
}
