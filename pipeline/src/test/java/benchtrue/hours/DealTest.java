package benchtrue.hours;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.Random;
import org.junit.jupiter.api.Test;

class DealTest {
    @Test
    void fiveHoursOverThreeQuotesAreDealtByHand() {
        // 18,000 s over 1.5, 2.5 and 0.5 h: 6000, 10000, 2000 exactly.
        assertThat(Deal.seconds(18_000, new double[] {1.5, 2.5, 0.5})).containsExactly(6_000, 10_000, 2_000);
    }

    @Test
    void theLargestRemainderGetsTheLastSecond() {
        assertThat(Deal.seconds(10, new double[] {1, 1, 1})).containsExactly(4, 3, 3);
        assertThat(Deal.seconds(10, new double[] {1, 1, 1.1})).containsExactly(3, 3, 4);
    }

    @Test
    void withoutWeightsPartsAreEqual() {
        assertThat(Deal.seconds(7, new double[] {0, 0})).containsExactly(4, 3);
    }

    @Test
    void partsAlwaysAddUpAndAreWithinASecondOfTheirShare() {
        Random random = new Random(4);
        for (int i = 0; i < 2_000; i++) {
            double[] weights = random.doubles(1 + random.nextInt(6)).toArray();
            long total = random.nextInt(200_000);
            long[] parts = Deal.seconds(total, weights);
            double sum = Arrays.stream(weights).sum();
            assertThat(Arrays.stream(parts).sum()).isEqualTo(total);
            for (int j = 0; j < parts.length; j++) {
                assertThat(Math.abs(parts[j] - total * weights[j] / sum)).isLessThan(1);
            }
        }
    }
}
