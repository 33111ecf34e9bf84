package benchtrue.costing;

import static org.assertj.core.api.Assertions.assertThat;

import benchtrue.ShopBuilder;
import benchtrue.ShopSettings;
import benchtrue.hours.PlainJobLines;
import benchtrue.settings.Settings;
import benchtrue.shop.Absent;
import benchtrue.shop.Balance;
import benchtrue.shop.CostBehaviour;
import benchtrue.shop.Money;
import benchtrue.shop.PaidBy;
import benchtrue.shop.QuotedLine;
import benchtrue.shop.TimeKind;
import java.math.BigDecimal;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class CostLinesTest {
    private static CostedLines cost(ShopBuilder shop) {
        return new CostLines().cost(PlainJobLines.of(shop.build()), Settings.DEFAULTS);
    }

    private static long money(String amount) {
        return Money.of(new BigDecimal(amount));
    }

    private static QuotedLine billed(QuotedLine q, String labour, String parts) {
        return new QuotedLine(
                q.ticket(),
                q.line(),
                q.repairType(),
                q.quotedSeconds(),
                q.quotedLabour(),
                q.quotedParts(),
                q.outcome(),
                q.quotedOn(),
                q.firstQuotedSeconds(),
                q.firstQuotedLabour(),
                money(labour),
                money(parts),
                q.chargeKind(),
                q.quoteBasis(),
                q.paidBy(),
                q.reworkOf(),
                q.reworkOfLine(),
                q.returnReason());
    }

    private static ShopBuilder refretShop() {
        return new ShopBuilder().type("refret", 10).type("setup", 1.5);
    }

    /**
     * OpenStax, Principles of Accounting 2, section 4.8: part 42, 3 hours at 25, overhead as large as direct labour; billed
     * 70 for the part and 3 hours at 80.
     */
    @Test
    void theTextbooksRepairJobCosts192AndLeaves118() {
        CostedLines costs = new CostLines()
                .cost(
                        PlainJobLines.of(refretShop()
                                .wage("ada", 25, "2020-01-01")
                                .overhead("2026-01", "rent", 75, CostBehaviour.FIXED)
                                .ticket("T1")
                                .line("refret", 3)
                                .withLine(q -> billed(q, "240", "70"))
                                .logged("ada", "1", 3)
                                .part("1", "board", 1, 42)
                                .build()),
                        withBurden(0));
        assertThat(costs.labourCost(0)).isEqualTo(money("75"));
        assertThat(costs.overheadCost(0)).isEqualTo(money("75"));
        assertThat(costs.labourCost(0) + costs.partsCost(0) + costs.overheadCost(0))
                .isEqualTo(money("192"));
        assertThat(costs.margin(0)).isEqualTo(money("118"));
        assertThat(costs.effectiveRate(0)).isEqualTo(money("80"));
    }

    private static Settings withBurden(double burden) {
        return new ShopSettings().burden(burden).build();
    }

    @Test
    void theWageIsTheOneOfTheDayWithPayrollOnCosts() {
        CostedLines costs = cost(refretShop()
                .wage("ada", 20, "2025-01-01")
                .wage("ada", 30, "2026-01-12")
                .ticket("T1")
                .line("setup", 1.5)
                .logged("ada", "1", 2)
                .ticket("T2")
                .opened("2025-06-01")
                .line("setup", 1.5)
                .logged("ada", "1", 2));
        assertThat(costs.labourCost(0)).isEqualTo(money("78"));
        assertThat(costs.labourCost(1)).isEqualTo(money("52"));
    }

    @Test
    void splitHoursCostWhatTheirTechniciansEarn() {
        CostedLines costs = cost(refretShop()
                .wage("ada", 40, "2020-01-01")
                .wage("ben", 20, "2020-01-01")
                .ticket("T1")
                .line("refret", 9)
                .line("setup", 3)
                .whole("ada", 4)
                .logged("ben", "2", 1)
                .whole("ben", 8));
        assertThat(costs.labourCost(0)).isEqualTo(money("312"));
        assertThat(costs.labourCost(1)).isEqualTo(money("130"));
    }

    @Test
    void oneSprayOverTwoBodiesIsPricedOnceAndShared() {
        CostedLines costs = cost(refretShop()
                .wage("ada", 10, "2020-01-01")
                .ticket("T1")
                .line("refret", 9)
                .ticket("T2")
                .line("refret", 9)
                .shared("ada", 3, "T1", "T2"));
        assertThat(costs.labourCost(0)).isEqualTo(money("19.5"));
        assertThat(costs.labourCost(1)).isEqualTo(money("19.5"));
    }

    @Test
    void aTechnicianWithoutAWageLeavesTheLinesCostUnknown() {
        CostedLines costs = cost(refretShop()
                .wage("ada", 40, "2020-01-01")
                .ticket("T1")
                .line("refret", 9)
                .line("setup", 3)
                .logged("zoe", "1", 4)
                .logged("ada", "2", 1)
                .ticket("T2")
                .line("setup", 3)
                .whole("ada", 1)
                .whole("zoe", 1));
        assertThat(costs.labourCost(0)).isEqualTo(Absent.AMOUNT);
        assertThat(costs.labourCost(1)).isEqualTo(money("52"));
        assertThat(costs.labourCost(2)).isEqualTo(Absent.AMOUNT);
        assertThat(costs.margin(2)).isEqualTo(Absent.AMOUNT);
    }

    @Test
    void withoutAnOptionalTableItsCostIsAbsentAndNeverZero() {
        CostedLines costs = cost(refretShop()
                .without("technicians")
                .without("overheads")
                .without("parts-usage")
                .ticket("T1")
                .line("refret", 9)
                .logged("ada", "1", 4));
        assertThat(costs.labourCost(0)).isEqualTo(Absent.AMOUNT);
        assertThat(costs.overheadCost(0)).isEqualTo(Absent.AMOUNT);
        assertThat(costs.partsCost(0)).isEqualTo(Absent.AMOUNT);
        assertThat(costs.margin(0)).isEqualTo(Absent.AMOUNT);
        assertThat(costs.labourRevenue(0)).isEqualTo(money("900"));
        assertThat(costs.balances())
                .extracting(Balance::name)
                .containsExactly("labour billed, else quoted", "parts billed, else quoted");
    }

    @Test
    void declinedVoidAndGivenWorkBringsNothing() {
        CostedLines costs = cost(refretShop()
                .ticket("T1")
                .line("refret", 9)
                .declined()
                .line("setup", 3)
                .paidBy(PaidBy.GOODWILL)
                .line("setup", 3)
                .paidBy(PaidBy.TRADE)
                .ticket("T2")
                .voided()
                .line("refret", 9));
        assertThat(IntStream.range(0, 4).mapToLong(costs::labourRevenue)).containsExactly(0L, 0L, money("300"), 0L);
    }

    @Test
    void theBillComesBeforeTheQuote() {
        CostedLines costs =
                cost(refretShop().ticket("T1").line("refret", 9).withLine(q -> billed(q, "850.55", "12.3456")));
        assertThat(costs.labourRevenue(0)).isEqualTo(money("850.55"));
        assertThat(costs.partsRevenue(0)).isEqualTo(money("12.3456"));
    }

    /** OpenStax, Principles of Accounting 2, section 4.6: 209,250 over 6,240 hours is set from what is known before. */
    @Test
    void lastYearSetsWhatABenchHourCarriesThisYear() {
        ShopBuilder shop = refretShop();
        for (int month = 1; month <= 6; month++) {
            shop.overhead("2025-0" + month, "rent", 1_000, CostBehaviour.FIXED)
                    .ticket("A" + month)
                    .opened("2025-0" + month + "-03")
                    .line("refret", 10)
                    .logged("ada", "1", 20);
        }
        CostedLines costs = cost(shop.overhead("2026-01", "rent", 9_999, CostBehaviour.FIXED)
                .ticket("B")
                .line("refret", 10)
                .logged("ada", "1", 10));
        assertThat(costs.overheadCost(0)).isEqualTo(money("1000"));
        assertThat(costs.overheadCost(6)).isEqualTo(money("500"));
    }

    @Test
    void thePostedRateIsTheBooksWhereTheSettingsNameNone() {
        assertThat(cost(refretShop().ticket("T1").line("setup", 1)).shopRate()).isEqualTo(money("100"));
    }

    @Test
    void partsForATicketAreDealtOverItsAcceptedLinesByWhatTheyCharge() {
        CostedLines costs = cost(refretShop()
                .ticket("T1")
                .line("refret", 9)
                .withLine(q -> billed(q, "900", "60"))
                .line("setup", 3)
                .withLine(q -> billed(q, "300", "30"))
                .line("setup", 3)
                .declined()
                .part("", "fretwire", 3, 10)
                .part("2", "strings", 1, 5));
        assertThat(IntStream.range(0, 3).mapToLong(costs::partsCost)).containsExactly(money("20"), money("15"), 0L);
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8})
    void whatWasReadStandsOnLinesOrIsNamedToTheTenThousandth(long seed) {
        CostedLines costs = cost(randomShop(new SplittableRandom(seed)));
        assertThat(costs.balances()).as("seed %d", seed).hasSize(6).allMatch(Balance::holds);
    }

    private static ShopBuilder randomShop(SplittableRandom random) {
        ShopBuilder shop = refretShop()
                .time("ada", TimeKind.SHOP, 3.3333)
                .part("", "glue", 1.37, 3.1)
                .overhead("2026-01", "rent", 1_234.5678, CostBehaviour.FIXED)
                .wage("ada", 23.4567, "2020-01-01")
                .wage("ben", 31.17, "2026-02-03");
        for (int t = 0; t < 40; t++) {
            shop.ticket("T" + (100 + t)).opened(random.nextBoolean() ? "2026-01-10" : "2026-02-02");
            int lines = random.nextInt(4);
            for (int l = 0; l < lines; l++) {
                shop.line(random.nextBoolean() ? "refret" : "setup", 1 + random.nextInt(40) / 7.0);
                if (random.nextInt(5) == 0) {
                    shop.declined();
                }
            }
            shop.whole("ada", random.nextInt(1, 900) / 97.0)
                    .whole("ben", random.nextInt(1, 900) / 97.0)
                    .did("ben", "setup", 0.77)
                    .time("ada", TimeKind.HANDLING, 0.21)
                    .part("", "wire", random.nextInt(1, 50) / 7.0, 3.3333);
            if (random.nextInt(6) == 0) {
                shop.voided();
            }
        }
        return shop.shared("ada", 4.4444, "T101", "T105", "T117");
    }
}
