package benchtrue.statistics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

class CompetingEndsTest {
    /** By hand from the definition (Aalen, Johansen 1978): five things, two ways to end, one censored. */
    @Test
    void eachWayHasItsShareOfWhatStillLasted() {
        double[] times = {1, 2, 2, 3, 4};
        int[] ends = {1, 2, CompetingEnds.OPEN, 1, 1};
        CompetingEnds first = CompetingEnds.of(times, ends, 1);
        CompetingEnds second = CompetingEnds.of(times, ends, 2);
        assertThat(first.by(0.5)).isZero();
        assertThat(first.by(1)).isCloseTo(0.2, within(1e-12));
        assertThat(second.by(2)).isCloseTo(0.8 / 4, within(1e-12));
        assertThat(first.by(3)).isCloseTo(0.2 + 0.6 / 2, within(1e-12));
        assertThat(first.by(9)).isCloseTo(0.8, within(1e-12));
        assertThat(second.by(9)).isCloseTo(0.2, within(1e-12));
        assertThat(first.quantile(0.5)).isEqualTo(3);
        assertThat(first.quantile(0.9)).isNaN();
        assertThat(CompetingEnds.of(new double[0], new int[0], 1).quantile(0.5)).isNaN();
    }

    @Test
    void withOneWayToEndItIsWhatTheProductLimitLeaves() {
        SplittableRandom random = new SplittableRandom(5);
        double[] times = random.doubles(200, 0, 100).map(StrictMath::rint).toArray();
        int[] ends = random.ints(200, 0, 2).toArray();
        boolean[] finished = new boolean[ends.length];
        for (int i = 0; i < ends.length; i++) {
            finished[i] = ends[i] == 1;
        }
        KaplanMeier curve = KaplanMeier.of(times, finished);
        CompetingEnds one = CompetingEnds.of(times, ends, 1);
        for (int time = 0; time <= 100; time++) {
            assertThat(one.by(time)).isCloseTo(1 - curve.survivalAt(time), within(1e-9));
        }
    }
}
