package benchtrue.findings;

import static org.assertj.core.api.Assertions.assertThat;

import benchtrue.ShopBuilder;
import java.util.Random;
import org.junit.jupiter.api.Test;

class CopiedQuotesTest {
    private static final long SEED = 20260110;

    @Test
    void honestLogsThatLandOnTheQuoteByRoundingAreNotCalledCopies() {
        CopiedQuotes honest = copied(shop(0.0, 1.0));
        assertThat(honest.matches()).as("seed %d", SEED).isBetween(15, 60);
        assertThat(honest.expectedMatches()).isBetween(0.6 * honest.matches(), 1.6 * honest.matches());
        assertThat(honest.share()).isLessThan(0.06);
        assertThat(honest.many()).isFalse();
    }

    @Test
    void theShareOfCopiesAmongHonestTotalsIsFound() {
        CopiedQuotes third = copied(shop(0.33, 1.0));
        assertThat(third.share()).as("seed %d", SEED).isBetween(0.25, 0.41);
        assertThat(third.many()).isTrue();
    }

    @Test
    void aRepairWhoseLogRepeatsTheQuoteIsJudgedByItsMeasuredJobs() {
        RepairFinding nut = JudgedShop.find(shop(0.85, 1.3)).repairs().get(0);
        assertThat(nut.loadFactor()).isBetween(0.96, 1.0499);
        assertThat(nut.verdict()).isEqualTo(Verdict.UNDER_QUOTED);
        // Hours stand in tenths, and nothing tells whether they were rounded up.
        assertThat(nut.lower()).isGreaterThan(1.05);
        assertThat(nut.upper()).isGreaterThan(1.3);
        assertThat(nut.why()).contains("repeat the quote to the minute").contains("without them the jobs took 1.2");
        assertThat(nut.why())
                .containsPattern(
                        "the jobs took 1\\.2\\d, 1\\.2\\d without what rounding may have added \\(90.% range 1\\.\\d\\d to 1\\.\\d\\d\\); verdict and money rest on \\d\\d measured of 240 jobs");
    }

    @Test
    void whereEveryTotalRepeatsTheQuoteNothingIsKnown() {
        RepairFinding nut = JudgedShop.find(shop(1.0, 1.0)).repairs().get(0);
        assertThat(nut.loadFactor()).isEqualTo(1);
        assertThat(nut.verdict()).isEqualTo(Verdict.TOO_FEW_JOBS);
    }

    @Test
    void aTechniciansStepIsTheCoarsestThatNineInTenEntriesFit() {
        ShopBuilder shop = new ShopBuilder().type("nut", 1).ticket("T").line("nut", 1);
        for (int i = 1; i <= 10; i++) {
            shop.logged("Ada", "1", i * 0.25).logged("Ben", "1", i * 0.1).logged("Cleo", "1", i * 0.01);
        }
        var ledger = shop.build();
        EntryGrid grid = EntryGrid.of(ledger.time(), 3);
        assertThat(grid.window(0, 3_600)).isEqualTo(900);
        assertThat(grid.window(0, 3_000)).isZero();
        assertThat(grid.window(1, 3_600)).isEqualTo(360);
        // Steps of 36 seconds: one below, one on, one above the quote.
        assertThat(grid.window(2, 3_600)).isEqualTo(108);
    }

    /** 240 nuts quoted at 2 hours, some logged as quoted, the others at {@code load} with a spread of 0.3, in steps of 0.1 h. */
    private static ShopBuilder shop(double copied, double load) {
        Random random = new Random(SEED);
        ShopBuilder shop = new ShopBuilder().type("nut", 2).type("setup", 1);
        for (int i = 0; i < 240; i++) {
            double honest = StrictMath.rint(20 * load * StrictMath.exp(0.3 * random.nextGaussian() - 0.045)) / 10;
            double hours = random.nextDouble() < copied ? 2 : honest;
            shop.ticket("T" + i).line("nut", 2).logged("Ada", "1", hours);
        }
        return shop;
    }

    private static CopiedQuotes copied(ShopBuilder shop) {
        return JudgedShop.find(shop).copiedQuotes().get(0);
    }
}
