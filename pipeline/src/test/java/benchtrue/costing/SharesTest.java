package benchtrue.costing;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class SharesTest {
    @Test
    void theLargestRemainderTakesWhatRoundingLeaves() {
        assertThat(Shares.deal(100, new long[] {1, 1, 1})).containsExactly(34, 33, 33);
        assertThat(Shares.deal(10, new long[] {3, 7, 5})).containsExactly(2, 5, 3);
        assertThat(Shares.deal(-100, new long[] {1, 1, 1})).containsExactly(-34, -33, -33);
    }

    @Test
    void withoutWeightsEachTakesTheSame() {
        assertThat(Shares.deal(9, new long[] {0, 0})).containsExactly(5, 4);
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
            long[] parts = Shares.deal(total, weights);
            assertThat(Arrays.stream(parts).sum()).as("seed %d", seed).isEqualTo(total);
            for (int i = 0; i < parts.length && sum > 0; i++) {
                double share = (double) total * weights[i] / sum;
                assertThat((double) parts[i])
                        .as("seed %d", seed)
                        .isCloseTo(share, org.assertj.core.data.Offset.offset(1 + share * 1e-9));
            }
        }
    }
}
