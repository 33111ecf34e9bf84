package benchtrue.statistics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import org.junit.jupiter.api.Test;

class RatioOfSumsTest {
    /** R boot::city, populations of ten cities in 1930 and 1920 (Davison and Hinkley 1997, example 1.2; from memory). */
    private static final double[] LATER = {143, 104, 69, 260, 75, 63, 50, 48, 111, 50};

    private static final double[] EARLIER = {138, 93, 61, 179, 48, 37, 29, 23, 30, 2};

    @Test
    void tenCitiesGrewByHalfAndTheErrorIsTheJackknifesToFirstOrder() {
        double[] out = new double[LATER.length];
        double later = Arrays.stream(LATER).sum();
        double earlier = Arrays.stream(EARLIER).sum();
        Arrays.setAll(out, i -> StrictMath.log((later - LATER[i]) / (earlier - EARLIER[i])));
        double mean = Arrays.stream(out).average().orElseThrow();
        double squares = Arrays.stream(out).map(x -> (x - mean) * (x - mean)).sum();
        assertThat(later / earlier).isCloseTo(1.52, within(0.001));
        assertThat(RatioOfSums.logError(LATER, EARLIER)).isCloseTo(StrictMath.sqrt(0.9 * squares), within(0.02));
    }

    @Test
    void jobsOfOneRatioHaveNoErrorAndOneJobTellsNone() {
        assertThat(RatioOfSums.logError(new double[] {3, 6, 1.5}, new double[] {2, 4, 1}))
                .isZero();
        assertThat(RatioOfSums.logError(new double[] {3}, new double[] {2})).isNaN();
    }
}
