package benchtrue.hours;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import benchtrue.settings.Settings;
import java.util.Arrays;
import java.util.Random;
import java.util.function.UnaryOperator;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** The split under other ticket weights. */
class SplitModelTest {
    private static final JobLines SHOP = split(new KnownShop(1, 500));

    private static JobLines split(KnownShop shop) {
        return new SplitHours().split(shop.build().build(), Settings.DEFAULTS);
    }

    private static double[] ones(int size) {
        double[] ones = new double[size];
        Arrays.fill(ones, 1);
        return ones;
    }

    private static double[] weights(long seed, int size) {
        Random random = new Random(seed);
        return IntStream.range(0, size).mapToDouble(i -> random.nextInt(3)).toArray();
    }

    @Test
    void weightsOfOneGiveThePlainSplit() {
        double[] loads = SHOP.model().loads(ones(SHOP.model().tickets()));
        for (int type = 0; type < loads.length; type++) {
            double hours = 0;
            double quoted = 0;
            for (int line = 0; line < SHOP.size(); line++) {
                if (SHOP.ledger().lines().repairType(line) == type) {
                    hours += SHOP.actualSeconds(line) / 3_600.0;
                    quoted += SHOP.todayQuotedHours(line);
                }
            }
            assertThat(loads[type]).isCloseTo(hours / quoted, within(1e-4));
        }
    }

    @Test
    void nothingNewOfAnyLineLeavesTheSplitAsItWas() {
        SplitAgain again = SHOP.model().again(ones(SHOP.size()));
        for (int line = 0; line < SHOP.size(); line++) {
            assertThat(again.expected()[line]).isCloseTo(SHOP.expectedHours(line), within(1e-4));
            assertThat(again.taken()[line]).isCloseTo(SHOP.actualSeconds(line) / 3_600.0, within(1e-3));
        }
    }

    /** Every second job of a repair takes twice as long: once that is known, the others are dealt what they took before. */
    @Test
    void whatSomeJobsTakeLongerIsNoLongerDealtToTheOthersOnceItIsKnown() {
        int type = 1;
        JobLines slow = split(new KnownShop(1, 500).slower(type));
        double[] times = ones(slow.size());
        double blind = 0;
        double known = 0;
        double before = 0;
        Arrays.setAll(
                times,
                line -> slow.ledger().lines().repairType(line) == type
                                && KnownShop.isSlower(slow.ledger().lines().ticket(line))
                        ? 2
                        : 1);
        SplitAgain again = slow.model().again(times);
        for (int line = 0; line < slow.size(); line++) {
            if (slow.ledger().lines().repairType(line) == type && times[line] == 1) {
                blind += slow.actualSeconds(line) / 3_600.0;
                known += again.taken()[line];
                before += SHOP.actualSeconds(line) / 3_600.0;
            }
        }
        assertThat(blind / before).isGreaterThan(1.05);
        assertThat(known / before).isCloseTo(1, within(0.04));
    }

    @Test
    void leavingTicketsOutComesNearToAShopThatNeverHadThem() {
        int kept = 400;
        JobLines fewer = split(new KnownShop(1, kept));
        double[] weights = ones(500);
        Arrays.fill(weights, kept, 500, 0);
        double[] left = SHOP.model().loads(weights);
        double[] never = fewer.model().loads(ones(kept));
        double[] all = SHOP.model().loads(ones(500));
        double moved = 0;
        double missed = 0;
        for (int type = 0; type < left.length; type++) {
            moved += Math.abs(never[type] - all[type]);
            missed += Math.abs(never[type] - left[type]);
        }
        assertThat(missed).isLessThan(0.12 * moved);
    }

    @Test
    void aTypeWithoutWeightedLinesHasNoLoad() {
        double[] weights = ones(500);
        for (int line = 0; line < SHOP.size(); line++) {
            if (SHOP.ledger().lines().repairType(line) == 3) {
                weights[SHOP.ledger().lines().ticket(line)] = 0;
            }
        }
        assertThat(SHOP.model().loads(weights)[3]).isNaN();
    }

    @Test
    void parallelCallersGetTheBitsOfOneCaller() {
        double[][] alone = IntStream.range(0, 40)
                .mapToObj(seed -> SHOP.model().loads(weights(seed, 500)))
                .toArray(double[][]::new);
        double[][] together = IntStream.range(0, 40)
                .parallel()
                .mapToObj(seed -> SHOP.model().loads(weights(seed, 500)))
                .toArray(double[][]::new);
        assertThat(together).isDeepEqualTo(alone);
    }

    @Test
    void groupsOfTicketsToFirstOrderScatterAsTheExactOnesDo() {
        int groups = 100;
        int[] groupOf = IntStream.range(0, 500).map(t -> t % groups).toArray();
        SplitModel model = SHOP.model();
        UnaryOperator<double[]> firstOrder = model.firstOrder(groupOf, groups);
        UnaryOperator<double[]> exact = weights -> model.loads(
                IntStream.of(groupOf).mapToDouble(group -> weights[group]).toArray());
        double[] plain = exact.apply(ones(groups));
        assertThat(firstOrder.apply(ones(groups))).containsExactly(plain, within(1e-9));
        double missed = 0;
        double scatter = 0;
        for (int seed = 0; seed < 60; seed++) {
            double[] weights = weights(seed, groups);
            double[] there = exact.apply(weights);
            double[] here = firstOrder.apply(weights);
            for (int type = 0; type < there.length; type++) {
                missed += Math.pow(here[type] - there[type], 2);
                scatter += Math.pow(there[type] - plain[type], 2);
            }
        }
        assertThat(Math.sqrt(missed / scatter)).isLessThan(0.2);
    }
}
