package benchtrue.statistics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.SplittableRandom;
import java.util.concurrent.ForkJoinPool;
import org.junit.jupiter.api.Test;

class ResamplingTest {
    private static double[] sums(double[] weights) {
        double sum = 0;
        double firstHalf = 0;
        for (int i = 0; i < weights.length; i++) {
            sum += weights[i] * (i + 0.1);
            firstHalf += i < weights.length / 2 ? weights[i] / 3 : 0;
        }
        return new double[] {sum, firstHalf};
    }

    @Test
    void theNumberOfThreadsCannotChangeABit() throws Exception {
        Resampling resampling = new Resampling(20260101, 500, 40);
        double[][] one = new ForkJoinPool(1)
                .submit(() -> resampling.replicates(ResamplingTest::sums))
                .get();
        double[][] four = new ForkJoinPool(4)
                .submit(() -> resampling.replicates(ResamplingTest::sums))
                .get();
        assertThat(four).isDeepEqualTo(one);
        assertThat(one.length).isEqualTo(2);
        assertThat(one[0].length).isEqualTo(500);
        assertThat(Arrays.stream(one[0]).distinct().count()).isGreaterThan(300);
    }

    @Test
    void everyTicketIsDrawnOnceOnAverageAndLeftOutInOneResampleOfE() {
        int resamples = 20_000;
        int groups = 25;
        double[][] columns = new Resampling(7, resamples, groups).replicates(w -> w.clone());
        for (double[] ticket : columns) {
            Moments moments = Moments.of(ticket);
            assertThat(moments.mean()).isCloseTo(1, within(4.5 / StrictMath.sqrt(resamples)));
            assertThat(moments.variance()).isCloseTo(1, within(0.07));
            double leftOut = Arrays.stream(ticket).filter(w -> w == 0).count() / (double) resamples;
            assertThat(leftOut).isCloseTo(StrictMath.exp(-1), within(0.016));
        }
    }

    /** A long run of tickets and a long run of resamples are both free of correlation between neighbours. */
    @Test
    void neighbouringTicketsAndResamplesAreDrawnIndependently() {
        double[][] columns = new Resampling(11, 400, 400).replicates(w -> w.clone());
        double acrossTickets = 0;
        double acrossResamples = 0;
        for (int i = 0; i + 1 < 400; i++) {
            for (int j = 0; j + 1 < 400; j++) {
                acrossTickets += (columns[i][j] - 1) * (columns[i + 1][j] - 1);
                acrossResamples += (columns[i][j] - 1) * (columns[i][j + 1] - 1);
            }
        }
        assertThat(acrossTickets / 399 / 399).isCloseTo(0, within(4.5 / 399));
        assertThat(acrossResamples / 399 / 399).isCloseTo(0, within(4.5 / 399));
    }

    @Test
    void seedsAreKeyedByShopMethodAndRepairType() {
        long seed = Seed.of(1, "verdicts", "FRET-DRESS");
        assertThat(Seed.of(1, "verdicts", "FRET-DRESS")).isEqualTo(seed);
        assertThat(Seed.of(2, "verdicts", "FRET-DRESS")).isNotEqualTo(seed);
        assertThat(Seed.of(1, "drift", "FRET-DRESS")).isNotEqualTo(seed);
        assertThat(Seed.of(1, "verdicts", "NUT")).isNotEqualTo(seed);
        assertThat(Seed.of(1, "verdictsF", "RET-DRESS")).isNotEqualTo(seed);
    }

    /** The JDK's own generator steps through the same sequence; ours can be read at any place. */
    @Test
    void theSequenceIsThatOfSplittableRandom() {
        SplittableRandom random = new SplittableRandom(42);
        for (int i = 0; i < 1_000; i++) {
            assertThat(Seed.uniform(42, i)).isEqualTo(random.nextDouble());
        }
    }

    /** Pinned, so that last year's review can be repeated to the bit. */
    @Test
    void theDrawsOfASeedNeverChange() {
        assertThat(new Resampling(42, 1, 12).drawn(0)).containsExactly(0, 3, 1, 0, 1, 0, 0, 1, 0, 1, 1, 0);
    }

    @Test
    void noResampleAndNoTicketGiveNothing() {
        assertThat(new Resampling(1, 0, 5).replicates(w -> w).length).isZero();
        assertThat(new Resampling(1, 3, 0).replicates(ResamplingTest::sums)[0]).containsExactly(0, 0, 0);
    }
}
