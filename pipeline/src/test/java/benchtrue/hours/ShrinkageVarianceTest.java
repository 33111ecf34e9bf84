package benchtrue.hours;

import static org.assertj.core.api.Assertions.assertThat;

import benchtrue.ShopBuilder;
import benchtrue.settings.Settings;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** What the split leans on is doubt as well, and no resample shows it. */
class ShrinkageVarianceTest {
    private static final int SPRAY = 2;
    private static final int BUFF = 0;
    private static final int NUT = 1;

    @Test
    void whereEveryHourNamesItsLineNothingIsLeantOn() {
        ShopBuilder shop = shop();
        Random random = new Random(1);
        for (int i = 0; i < 60; i++) {
            shop.ticket("T" + i).line("spray", 3).line("buff", 2);
            shop.logged("Ada", "1", hours(random, 3)).logged("Ada", "2", hours(random, 2));
        }
        assertThat(variances(shop)).containsOnly(0);
    }

    @Test
    void twoRepairsThatAlwaysComeTogetherAreInDoubtHoweverManyJobsThereAre() {
        ShopBuilder shop = shop();
        Random random = new Random(1);
        for (int i = 0; i < 120; i++) {
            shop.ticket("T" + i).line("spray", 3).line("buff", 2).whole("Ada", hours(random, 5));
            shop.ticket("N" + i).line("nut", 1);
            shop.logged("Ada", "1", hours(random, 1));
        }
        double[] variance = variances(shop);
        assertThat(variance[SPRAY]).isGreaterThan(1e-4);
        // The smaller part of the sum moves further, in proportion.
        assertThat(variance[BUFF]).isGreaterThan(variance[SPRAY]);
        assertThat(variance[NUT]).isZero();
    }

    private static ShopBuilder shop() {
        return new ShopBuilder().type("buff", 2).type("nut", 1).type("spray", 3);
    }

    private static double hours(Random random, double mean) {
        return StrictMath.rint(100 * mean * StrictMath.exp(0.2 * random.nextGaussian())) / 100;
    }

    private static double[] variances(ShopBuilder shop) {
        return new SplitHours().split(shop.build(), Settings.DEFAULTS).model().leaningVariance();
    }
}
