package benchtrue.findings;

import static org.assertj.core.api.Assertions.assertThat;

import benchtrue.ShopBuilder;
import benchtrue.hours.InseparablePair;
import java.util.Locale;
import java.util.Random;
import org.junit.jupiter.api.Test;

class LeaningRangeTest {
    private static final double[] OTHERS = {0.80, 0.88, 0.95, 1.05, 1.15, 1.28};
    private static final double SPRAY = 1.25;
    private static final double BUFF = 0.81;
    private static final int SHOPS = 20;

    @Test
    void rangesOfRepairsThatAlwaysComeTogetherHoldTheirTrueLoadsAllTheSame() {
        int held = 0;
        for (long seed = 1; seed <= SHOPS; seed++) {
            Findings findings = JudgedShop.find(shop(new Random(seed)));
            for (RepairFinding repair : findings.repairs().subList(0, 2)) {
                double load = repair.repairType() == 0 ? BUFF : SPRAY;
                held += repair.lower() <= load && load <= repair.upper() ? 1 : 0;
            }
        }
        System.out.printf(
                Locale.ROOT, "ranges of an inseparable pair that hold the truth: %d of %d%n", held, 2 * SHOPS);
        assertThat(held).isBetween(33, 40);
    }

    @Test
    void theReviewSaysThatTheTwoCantBeToldApart() {
        Findings findings = JudgedShop.find(shop(new Random(1)));
        InseparablePair pair =
                JudgedShop.costs(shop(new Random(1))).jobs().inseparable().get(0);
        assertThat(pair.first()).isZero();
        assertThat(pair.second()).isEqualTo(1);
        assertThat(findings.repairs().get(0).why())
                .contains("can't be told apart from those of clear-spray, both together took 1.");
    }

    /** A buffing and a spraying that never come alone and are never named; other repairs are. */
    private static ShopBuilder shop(Random random) {
        ShopBuilder shop = new ShopBuilder().type("buff", 2).type("clear-spray", 3);
        for (int type = 0; type < OTHERS.length; type++) {
            shop.type("other-" + type, 2);
        }
        for (int i = 0; i < 60; i++) {
            shop.ticket(name("P", i)).line("buff", 2).line("clear-spray", 3);
            shop.whole("Ada", rounded(hours(random, 2 * BUFF) + hours(random, 3 * SPRAY)));
        }
        for (int i = 0; i < 25 * OTHERS.length; i++) {
            int type = i % OTHERS.length;
            shop.ticket(name("T", i)).line("other-" + type, 2);
            shop.logged("Ada", "1", rounded(hours(random, 2 * OTHERS[type])));
        }
        return shop;
    }

    private static String name(String kind, int number) {
        return String.format(Locale.ROOT, "%s%03d", kind, number);
    }

    private static double hours(Random random, double mean) {
        return mean * StrictMath.exp(0.25 * random.nextGaussian() - 0.03125);
    }

    private static double rounded(double hours) {
        return StrictMath.rint(100 * hours) / 100;
    }
}
