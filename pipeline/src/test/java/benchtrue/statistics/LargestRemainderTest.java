package benchtrue.statistics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.util.Arrays;
import java.util.Random;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class LargestRemainderTest {
    @Test
    void theLargestRemainderTakesWhatRoundingLeaves() {
        assertThat(LargestRemainder.deal(100, new long[] {1, 1, 1})).containsExactly(34, 33, 33);
        assertThat(LargestRemainder.deal(10, new long[] {3, 7, 5})).containsExactly(2, 5, 3);
        assertThat(LargestRemainder.deal(-100, new long[] {1, 1, 1})).containsExactly(-34, -33, -33);
    }

    @Test
    void withoutWeightsEachTakesTheSame() {
        assertThat(LargestRemainder.deal(9, new long[] {0, 0})).containsExactly(5, 4);
        assertThatIllegalArgumentException().isThrownBy(() -> LargestRemainder.deal(9, new long[0]));
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5})
    void partsAddUpAndNoneStandsAWholeStepFromItsShare(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        for (int round = 0; round < 200; round++) {
            long[] weights = random.longs(1 + random.nextInt(12), 0, 1L << (1 + random.nextInt(40)))
                    .toArray();
            long sum = Arrays.stream(weights).sum();
            long total = random.nextLong(1L << (1 + random.nextInt(50)));
            long[] parts = LargestRemainder.deal(total, weights);
            assertThat(Arrays.stream(parts).sum()).as("seed %d", seed).isEqualTo(total);
            for (int i = 0; i < parts.length && sum > 0; i++) {
                double share = (double) total * weights[i] / sum;
                assertThat((double) parts[i])
                        .as("seed %d", seed)
                        .isCloseTo(share, org.assertj.core.data.Offset.offset(1 + share * 1e-9));
            }
        }
    }

    @Test
    void fiveHoursOverThreeQuotesAreDealtByHand() {
        // 18,000 s over 1.5, 2.5 and 0.5 h: 6000, 10000, 2000 exactly.
        assertThat(LargestRemainder.deal(18_000, new double[] {1.5, 2.5, 0.5})).containsExactly(6_000, 10_000, 2_000);
    }

    @Test
    void ofRatiosTheLargestRemainderGetsTheLastSecond() {
        assertThat(LargestRemainder.deal(10, new double[] {1, 1, 1})).containsExactly(4, 3, 3);
        assertThat(LargestRemainder.deal(10, new double[] {1, 1, 1.1})).containsExactly(3, 3, 4);
    }

    @Test
    void withoutRatiosPartsAreEqual() {
        assertThat(LargestRemainder.deal(7, new double[] {0, 0})).containsExactly(4, 3);
    }

    @Test
    void partsByRatiosAddUpAndAreWithinASecondOfTheirShare() {
        Random random = new Random(4);
        for (int i = 0; i < 2_000; i++) {
            double[] weights = random.doubles(1 + random.nextInt(6)).toArray();
            long total = random.nextInt(200_000);
            long[] parts = LargestRemainder.deal(total, weights);
            double sum = Arrays.stream(weights).sum();
            assertThat(Arrays.stream(parts).sum()).isEqualTo(total);
            for (int j = 0; j < parts.length; j++) {
                assertThat(Math.abs(parts[j] - total * weights[j] / sum)).isLessThan(1);
            }
        }
    }
}
