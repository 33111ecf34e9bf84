package benchtrue.hours;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class EffectsTest {
    @Test
    void theShortSeriesIsTheExponential() {
        for (double x = -0.2; x < 0.2; x += 0.0007) {
            assertThat(Effects.exp(x) / StrictMath.exp(x)).isCloseTo(1, within(4e-16));
        }
    }
}
