package benchtrue.findings;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import benchtrue.ShopBuilder;
import benchtrue.findings.FindVerdicts.SumUnquotedWork;
import benchtrue.shop.Money;
import java.util.List;
import org.junit.jupiter.api.Test;

class FindFoundWorkTest {
    @Test
    void aBraceFoundLooseOnEveryFifthCrackIsForetold() {
        ShopBuilder shop = shop();
        for (int i = 0; i < 10; i++) {
            shop.ticket("C" + i).line("crack", 2);
            if (i % 5 == 0 || i == 1) {
                shop.line("brace", 1.5).foundOn("2026-01-15");
            }
            shop.ticket("S" + i).line("setup", 1);
        }
        List<FoundWork> found = FindFoundWork.of(JudgedShop.costs(shop));
        assertThat(found).hasSize(1);
        FoundWork brace = found.get(0);
        assertThat(brace.quoted()).isEqualTo(1);
        assertThat(brace.found()).isZero();
        assertThat(brace.tickets()).isEqualTo(10);
        assertThat(brace.times()).isEqualTo(3);
        assertThat(brace.share()).isEqualTo(0.3);
        // Exact interval of Clopper and Pearson: R 4.2.2, binom.test(3, 10, conf.level = .9).
        assertThat(brace.lower()).isCloseTo(0.08726443, within(1e-7));
        assertThat(brace.upper()).isCloseTo(0.60662421, within(1e-7));
        // 3 x 1.5 hours in the 294 days that the records cover, at 100 an hour.
        assertThat(brace.annualHours()).isCloseTo(4.5 * 365 / 294, within(1e-9));
        assertThat(brace.annualMoney()).isEqualTo(StrictMath.round(4.5 * 365 / 294 * 100 * Money.UNIT));
    }

    @Test
    void whatIsFoundOnEverythingAlikeIsNoWarning() {
        ShopBuilder shop = shop();
        for (int i = 0; i < 12; i++) {
            shop.ticket("T" + i).line(i % 2 == 0 ? "crack" : "setup", 1);
            if (i % 4 < 2) {
                shop.line("brace", 1).foundOn("2026-01-15");
            }
        }
        assertThat(FindFoundWork.of(JudgedShop.costs(shop))).isEmpty();
    }

    @Test
    void declinedFindsAndLinesQuotedOnTheFirstDayDoNotCount() {
        ShopBuilder shop = shop();
        for (int i = 0; i < 5; i++) {
            shop.ticket("A" + i).line("crack", 1).line("brace", 1).foundOn("2026-01-10");
            shop.ticket("B" + i)
                    .line("crack", 1)
                    .line("brace", 1)
                    .foundOn("2026-01-15")
                    .declined();
            shop.ticket("S" + i).line("setup", 1);
        }
        assertThat(FindFoundWork.of(JudgedShop.costs(shop))).isEmpty();
    }

    @Test
    void hoursNobodyQuotedAreAddedUpByRepair() {
        ShopBuilder shop = shop();
        shop.ticket("A")
                .line("crack", 2)
                .logged("Ada", "1", 2)
                .did("Ada", "setup", 0.5)
                .did("Ben", "setup", 0.25);
        shop.ticket("B").line("crack", 2).did("Ada", "setup", 1).did("Ada", "brace", 3);
        shop.ticket("C").opened("2024-01-10").line("crack", 2).did("Ada", "setup", 8);
        List<UnquotedTotal> totals = SumUnquotedWork.of(JudgedShop.costs(shop));
        assertThat(totals)
                .containsExactly(
                        new UnquotedTotal(0, 1, 3 * 3_600, 3, 300 * Money.UNIT),
                        new UnquotedTotal(2, 3, 35_100, 1.75, 175 * Money.UNIT));
    }

    private static ShopBuilder shop() {
        return new ShopBuilder()
                .asOf("2026-10-31")
                .type("brace", 1)
                .type("crack", 2)
                .type("setup", 1);
    }
}
