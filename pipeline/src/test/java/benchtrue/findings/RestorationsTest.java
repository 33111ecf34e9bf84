package benchtrue.findings;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import benchtrue.ShopBuilder;
import benchtrue.findings.Restorations.By;
import benchtrue.reconcile.Completeness;
import java.util.List;
import java.util.Random;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;

/** Large visits are judged as wholes. */
class RestorationsTest {
    private final Random random = new Random(14);

    /** Forty visits: a reset, lacquer, frets and a setup; every other one of a mandolin, and one repair found at the bench. */
    private ShopBuilder shop(double reset, double onMandolins, double lacquerOnMandolins) {
        ShopBuilder shop = new ShopBuilder()
                .type("reset", 12, "structural")
                .type("lacquer", 6, "finish")
                .type("frets", 4)
                .type("setup", 1, "setup")
                .type("cleat", 2, "structural");
        for (int i = 0; i < 40; i++) {
            boolean mandolin = i % 2 == 0;
            double longer = (mandolin ? onMandolins : 1) * StrictMath.exp(0.1 * random.nextGaussian());
            shop.ticket("T%03d".formatted(i))
                    .of(mandolin ? "mandolin" : "flat-top", "")
                    .line("reset", 12)
                    .line("lacquer", 6)
                    .line("frets", 4)
                    .line("setup", 1)
                    .line("cleat", 2)
                    .foundOn("2026-02-12")
                    .logged("Bo", "1", 12 * reset * longer)
                    .logged("Bo", "2", 6 * longer * (mandolin ? lacquerOnMandolins : 1))
                    .logged("Bo", "3", 4 * longer)
                    .logged("Bo", "4", longer)
                    .logged("Bo", "5", 2 * longer);
        }
        return shop;
    }

    private static Restorations row(Findings found, By by, String group) {
        return found.restorations().stream()
                .filter(row -> row.by() == by && row.group().equals(group))
                .findAny()
                .orElseThrow();
    }

    @Test
    void theStageThatRunsOverIsNamedAndWhatWasFoundIsCounted() {
        Findings found = JudgedShop.find(shop(1.5, 1, 1));
        Restorations all = row(found, By.ALL, "all restorations");
        assertThat(all.restorations()).isEqualTo(40);
        assertThat(all.load()).isCloseTo((12 * 1.5 + 13) / 25, within(0.03)).isBetween(all.lower(), all.upper());
        assertThat(all.standing()).isEqualTo(Verdict.UNDER_QUOTED);
        assertThat(all.foundShare()).isCloseTo(2.0 / 25, within(1e-9));
        assertThat(row(found, By.STAGE, "structural").standing()).isEqualTo(Verdict.UNDER_QUOTED);
        assertThat(row(found, By.STAGE, "finish").standing()).isEqualTo(Verdict.ON_THE_MARK);
        assertThat(row(found, By.KIND, "structural").restorations()).isEqualTo(40);
    }

    @Test
    void aFirstSignIsNamedOnlyWhereItsVisitsTakeLonger() {
        Restorations mandolins = row(JudgedShop.find(shop(1, 1.4, 1)), By.FIRST_SIGN, "on mandolin instruments");
        assertThat(mandolins.told()).isEqualTo("take longer than the others");
        assertThat(mandolins.worthTelling()).isTrue();
        Restorations alike = row(JudgedShop.find(shop(1, 1, 1)), By.FIRST_SIGN, "on mandolin instruments");
        assertThat(alike.told()).isEqualTo("not surely other than the others");
        assertThat(alike.worthTelling()).isFalse();
    }

    @Test
    void aClassIsNotToldApartForGettingRepairsThatRunOverOnAllInstruments() {
        ShopBuilder shop = shop(1, 1, 1).type("crack", 10, "structural");
        for (int i = 0; i < 30; i++) {
            boolean banjo = i % 2 == 0;
            double taken = (banjo || i % 3 == 0 ? 15 : 4) * StrictMath.exp(0.1 * random.nextGaussian());
            shop.ticket("U%03d".formatted(i))
                    .of(banjo ? "banjo" : "solid-body", "")
                    .line(banjo || i % 3 == 0 ? "crack" : "frets", banjo || i % 3 == 0 ? 10 : 4)
                    .line("reset", 12)
                    .logged("Bo", "1", taken)
                    .logged("Bo", "2", 12 * StrictMath.exp(0.1 * random.nextGaussian()));
        }
        Restorations banjos = row(JudgedShop.find(shop), By.FIRST_SIGN, "on banjo instruments");
        assertThat(banjos.load()).isGreaterThan(1.15);
        assertThat(banjos.told()).isEqualTo("not surely other than the others");
    }

    @Test
    void whereHoursAreLoggedToTheVisitAsAWholeTheStageCantBeTold() {
        ShopBuilder shop = new ShopBuilder().type("reset", 12, "structural").type("lacquer", 10, "finish");
        for (int i = 0; i < 20; i++) {
            shop.ticket("T%03d".formatted(i))
                    .line("reset", 12)
                    .line("lacquer", 10)
                    .whole("Bo", 30 * StrictMath.exp(0.1 * random.nextGaussian()));
        }
        Findings found = JudgedShop.find(shop);
        assertThat(row(found, By.ALL, "all restorations").standing()).isEqualTo(Verdict.UNDER_QUOTED);
        assertThat(row(found, By.STAGE, "finish").told()).startsWith("can't be told");
    }

    @Test
    void whereAThirdOfAllHoursCouldNotBeReadNoGroupIsJudged() {
        Completeness third = new Completeness(
                2_000_000,
                1_000_000,
                "hours",
                new TreeMap<>(),
                new TreeMap<>(),
                new double[0],
                new double[0],
                0,
                0.05,
                List.of());
        Findings found = JudgedShop.find(shop(1.5, 1.4, 1).read(third));
        assertThat(found.restorations())
                .filteredOn(row -> row.standing() != Verdict.TOO_FEW_JOBS)
                .isNotEmpty()
                .allMatch(row -> row.standing() == Verdict.NOT_JUDGED);
    }

    @Test
    void aShopOfSmallJobsHasNone() {
        ShopBuilder shop = new ShopBuilder().type("setup", 1);
        for (int i = 0; i < 20; i++) {
            shop.ticket("T%03d".formatted(i)).line("setup", 1).logged("Bo", "1", 1.2);
        }
        assertThat(JudgedShop.find(shop).restorations()).isEmpty();
    }
}
