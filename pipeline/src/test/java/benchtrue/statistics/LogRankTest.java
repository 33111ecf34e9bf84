package benchtrue.statistics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class LogRankTest {
    @Test
    void aGroupsScoresSumToWhatWasObservedLessWhatWasExpected() {
        // R survival 3.5, survdiff(Surv(time, status) ~ x, aml): 7 observed, 10.69 expected; 11 observed, 7.31
        // expected.
        double[] scores = LogRank.scores(Aml.BOTH.times(), Aml.BOTH.observed());
        int maintained = Aml.MAINTAINED.times().length;
        assertThat(Arrays.stream(scores).limit(maintained).sum()).isCloseTo(7 - 10.69, within(0.005));
        assertThat(Arrays.stream(scores).skip(maintained).sum()).isCloseTo(11 - 7.31, within(0.005));
    }

    @Test
    void twoGroupsAreHeldAgainstEachOtherByStudentsTest() {
        // Student 1908, Cushny and Peebles' hours of sleep: t = 1.861 with 18 degrees of freedom, p = 0.0792.
        double[] sleep = {
            0.7, -1.6, -0.2, -1.2, -0.1, 3.4, 3.7, 0.8, 0, 2, 1.9, 0.8, 1.1, 0.1, -0.1, 4.4, 5.5, 1.6, 4.6, 3.4
        };
        boolean[] first = new boolean[20];
        Arrays.fill(first, 0, 10, true);
        assertThat(LogRank.chance(sleep, first)).isCloseTo(0.07919, within(0.00001));
    }

    @Test
    void aloneOnOneSideSaysNothing() {
        assertThat(LogRank.chance(new double[] {1, 2, 3}, new boolean[] {true, false, false}))
                .isNaN();
        assertThat(LogRank.chance(new double[] {1, 2, 3}, new boolean[] {true, true, false}))
                .isNaN();
    }

    @Test
    void groupsThatEndAlikeAreRarelyTold() {
        SplittableRandom random = new SplittableRandom(11);
        int told = 0;
        for (int shop = 0; shop < 1_000; shop++) {
            double[] times = random.doubles(60)
                    .map(u -> Math.rint(-20 * StrictMath.log(u)))
                    .toArray();
            boolean[] ended = new boolean[60];
            boolean[] in = new boolean[60];
            IntStream.range(0, 60).forEach(i -> {
                ended[i] = times[i] <= 40;
                times[i] = Math.min(40, times[i]);
                in[i] = i % 3 == 0;
            });
            told += LogRank.chance(LogRank.scores(times, ended), in) < 0.05 ? 1 : 0;
        }
        assertThat(told).isBetween(25, 75);
    }
}
