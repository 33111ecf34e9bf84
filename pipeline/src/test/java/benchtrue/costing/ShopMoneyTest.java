package benchtrue.costing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;
import static org.assertj.core.api.Assertions.within;

import benchtrue.ShopBuilder;
import benchtrue.ShopSettings;
import benchtrue.hours.SplitHours;
import benchtrue.settings.Disclosure;
import benchtrue.settings.MoneyRules;
import benchtrue.settings.Settings;
import benchtrue.shop.Absent;
import benchtrue.shop.CostBehaviour;
import benchtrue.shop.Hours;
import benchtrue.shop.Money;
import benchtrue.shop.PaidBy;
import benchtrue.shop.ReturnReason;
import benchtrue.shop.Ticket;
import benchtrue.shop.TicketStatus;
import benchtrue.shop.TimeKind;
import java.math.BigDecimal;
import java.util.List;
import org.junit.jupiter.api.Test;

class ShopMoneyTest {
    private static final MoneyRules RULES = MoneyRules.DEFAULTS;

    private static long money(double amount) {
        return Money.of(BigDecimal.valueOf(amount));
    }

    private static long hours(double hours) {
        return Hours.seconds(BigDecimal.valueOf(hours));
    }

    private static Settings settings(double burden, MoneyRules rules, Disclosure people) {
        return new ShopSettings().burden(burden).money(rules).people(people).build();
    }

    private static ShopMoney money(ShopBuilder shop) {
        return money(shop, settings(0, RULES, Disclosure.HIDDEN));
    }

    private static ShopMoney money(ShopBuilder shop, Settings settings) {
        return new CostLines()
                .cost(new SplitHours().split(shop.build(), settings), settings)
                .shop();
    }

    private static WorkMonth worked(ShopMoney shop, String month) {
        return shop.work().stream()
                .filter(row -> row.month() == ShopBuilder.month(month))
                .findFirst()
                .orElseThrow();
    }

    private static EarnedMonth earned(ShopMoney shop, String month) {
        return shop.earned().stream()
                .filter(row -> row.month() == ShopBuilder.month(month))
                .findFirst()
                .orElseThrow();
    }

    private static ShopBuilder shop() {
        return new ShopBuilder().type("refret", 10).type("setup", 1.5, "setup").wage("ada", 30, "2020-01-01");
    }

    @Test
    void timeIsToldByWhatItWasFor() {
        WorkMonth january = worked(
                money(shop().time("ada", TimeKind.SHOP, 2)
                        .ticket("T1")
                        .line("refret", 10)
                        .logged("ada", "1", 8)
                        .line("setup", 1)
                        .paidBy(PaidBy.GOODWILL)
                        .logged("ada", "2", 1)
                        .line("setup", 1)
                        .paidBy(PaidBy.HOUSE)
                        .logged("ada", "3", 4)
                        .time("ada", TimeKind.QUOTING, 0.5)
                        .ticket("T2")
                        .line("setup", 1)
                        .putsRight("T1", "1", ReturnReason.OUR_FAULT)
                        .logged("ada", "1", 3)
                        .did("ada", "refret", 0.25)),
                "2026-01");
        assertThat(january.seconds(WorkKind.SOLD)).isEqualTo(hours(8));
        assertThat(january.seconds(WorkKind.GIVEN)).isEqualTo(hours(1));
        assertThat(january.seconds(WorkKind.OWN_STOCK)).isEqualTo(hours(4));
        assertThat(january.seconds(WorkKind.PUTTING_RIGHT)).isEqualTo(hours(3));
        assertThat(january.seconds(WorkKind.UNQUOTED)).isEqualTo(hours(0.25));
        assertThat(january.seconds(WorkKind.QUOTING)).isEqualTo(hours(0.5));
        assertThat(january.seconds(WorkKind.SHOP)).isEqualTo(hours(2));
        assertThat(january.unsoldWages()).isEqualTo(money(30 * 2.75));
        assertThat(january.allWages()).isEqualTo(money(30 * 18.75));
    }

    @Test
    void paidTimeThatNeverReachedTheLogIsPricedAndOpensTheReview() {
        ShopMoney shop = money(shop().asOf("2026-01-31")
                .paid("ada", "2026-01", 100)
                .ticket("T1")
                .line("refret", 10)
                .logged("ada", "1", 75));
        WorkMonth january = worked(shop, "2026-01");
        assertThat(january.loggedShare()).isCloseTo(0.75, within(1e-12));
        assertThat(january.utilisation()).isCloseTo(0.75, within(1e-12));
        assertThat(january.paidNotLogged()).isEqualTo(money(25 * 30));
        assertThat(shop.loggedShare().opensTheReview()).isTrue();
        assertThat(shop.benchHour().cost().notLogged()).isEqualTo(money(10));
    }

    @Test
    void overtimeBeyondTheWeeksHoursCostsItsPremiumOnNoJob() {
        MoneyRules half = new MoneyRules(0.5, hours(40), 0.2, 0.8, Absent.AMOUNT);
        ShopBuilder builder = shop().asOf("2026-01-31")
                .ticket("T1")
                .line("refret", 10)
                .logged("ada", "1", 24)
                .logged("ada", "1", 22);
        CostedLines costs = new CostLines()
                .cost(new SplitHours().split(builder.build(), Settings.DEFAULTS), settings(0, half, Disclosure.HIDDEN));
        assertThat(worked(costs.shop(), "2026-01").overtimePremium()).isEqualTo(money(6 * 15));
        assertThat(costs.labourCost(0)).isEqualTo(money(46 * 30));
    }

    /**
     * OpenStax, Principles of Accounting 2, section 8.3, in a shop a thousandth the size: 11 jobs at 1.5 h, 16 h taken at
     * 35.35, standard 35. Rate 5.60 unfavourable, time 17.50 favourable.
     */
    @Test
    void labourVariancesAreAgainstLastYearsWageAndTheBooksHours() {
        ShopBuilder shop = new ShopBuilder().type("setup", 1.5).wage("ada", 35, "2020-01-01");
        for (int month = 1; month <= 6; month++) {
            shop.ticket("A" + month)
                    .opened("2025-0" + month + "-03")
                    .line("setup", 1.5)
                    .logged("ada", "1", 2);
        }
        shop.wage("ada", 35.35, "2026-01-01");
        for (int job = 0; job < 11; job++) {
            shop.ticket("B" + job).line("setup", 1.5).logged("ada", "1", job < 6 ? 1 : 2);
        }
        EarnedMonth january = earned(money(shop), "2026-01");
        assertThat(january.standardSeconds()).isEqualTo(hours(16.5));
        assertThat(january.actualSeconds()).isEqualTo(hours(16));
        assertThat(january.labourCost()).isEqualTo(money(565.6));
        assertThat(january.labour()).isEqualTo(new CostVariance(money(5.6), money(-17.5)));
    }

    /** OpenStax, section 8.2: strings at a standard 7.00, 20 used at 9.00: 40 unfavourable by price. */
    @Test
    void materialVariancesAreAgainstLastYearsPartsOfTheSameRepair() {
        ShopBuilder shop = shop();
        for (int month = 1; month <= 6; month++) {
            shop.ticket("A" + month)
                    .opened("2025-0" + month + "-03")
                    .line("setup", 1.5)
                    .part("1", "strings", 10, 7);
        }
        shop.ticket("B1")
                .line("setup", 1.5)
                .part("1", "strings", 20, 9)
                .part("1", "saddle", 1, 12)
                .ticket("B2")
                .line("setup", 1.5);
        EarnedMonth january = earned(money(shop), "2026-01");
        assertThat(january.materials()).isEqualTo(new CostVariance(money(40), 0));
        assertThat(january.withoutStandard()).isEqualTo(money(12));
        assertThat(january.partsCost()).isEqualTo(money(192));
    }

    /** OpenStax, section 4.6: what the hours carried against what the month cost. */
    @Test
    void overheadNotCarriedIsShownByMonthAndSplitIntoSpendingAndVolume() {
        MoneyRules owners = new MoneyRules(0, hours(40), 0.2, 0.8, money(33.5));
        ShopMoney shop = money(
                shop().overhead("2026-01", "rent", 209.25, CostBehaviour.FIXED)
                        .ticket("T1")
                        .line("refret", 10)
                        .logged("ada", "1", 6.24),
                settings(0, owners, Disclosure.HIDDEN));
        OverheadMonth january = worked(shop, "2026-01").overhead();
        assertThat(january.carried()).isEqualTo(money(209.04));
        assertThat(january.underApplied()).isEqualTo(money(0.21));
        assertThat(january.variance()).isEqualTo(new OverheadVariance(0, 0, 0, money(0.21)));
    }

    @Test
    void workOnTheShopsOwnStockIsNoLoss() {
        ShopMoney shop = money(shop().ticket("T1")
                .line("refret", 10)
                .logged("ada", "1", 10)
                .line("refret", 10)
                .paidBy(PaidBy.HOUSE)
                .logged("ada", "2", 10));
        assertThat(earned(shop, "2026-01").margin()).isEqualTo(money(700));
        assertThat(shop.groups().payers()).extracting(GroupMoney::name).containsExactly("customer");
        assertThat(shop.groups().ownStock().get(0).labourCost()).isEqualTo(money(300));
    }

    @Test
    void anUnfinishedRestorationIsCarriedAtCostUntilItIsFinished() {
        ShopBuilder builder = shop().ticket("T1")
                .stillOpen()
                .line("refret", 10)
                .logged("ada", "1", 12)
                .ticket("T2")
                .stillOpen()
                .with(t -> new Ticket(
                        t.ticket(),
                        t.opened(),
                        t.promised(),
                        t.closed(),
                        ShopBuilder.day("2026-02-20"),
                        TicketStatus.OPEN,
                        t.instrumentClass(),
                        t.builtYear(),
                        t.traits(),
                        t.quotedBy(),
                        t.reworkOf()))
                .line("setup", 1.5)
                .logged("ada", "1", 2);
        ShopMoney shop = money(builder);
        assertThat(shop.earned()).hasSize(1);
        assertThat(earned(shop, "2026-02").margin()).isEqualTo(money(150 - 60));
    }

    @Test
    void theTicketsThatLostMostAreNamed() {
        ShopMoney shop = money(shop().ticket("T1")
                .line("refret", 10)
                .logged("ada", "1", 50)
                .ticket("T2")
                .line("setup", 1.5)
                .logged("ada", "1", 1)
                .ticket("T3")
                .line("setup", 1.5)
                .logged("ada", "1", 24));
        assertThat(shop.groups().worstTickets())
                .extracting(GroupMoney::name, GroupMoney::margin)
                .containsExactly(tuple("T3", money(-570)), tuple("T1", money(-500)));
    }

    @Test
    void quoteWritersAreShownOnlyWhereTheOwnerWantsIt() {
        ShopBuilder shop =
                shop().ticket("T1").of("archtop", "wren").line("refret", 10).logged("ada", "1", 10);
        assertThat(money(shop).groups().writers()).isEmpty();
        assertThat(money(shop, settings(0, RULES, Disclosure.SHOWN)).groups().writers())
                .extracting(GroupMoney::name)
                .containsExactly("wren");
    }

    @Test
    void whatAMissingTableTellsIsAbsentWithASentence() {
        ShopMoney shop = money(new ShopBuilder()
                .type("refret", 10)
                .without("technicians")
                .without("overheads")
                .without("parts-usage")
                .without("waits")
                .ticket("T1")
                .line("refret", 10)
                .logged("ada", "1", 10));
        assertThat(shop.leftOut()).hasSize(5).allMatch(sentence -> sentence.startsWith("Without the table "));
        assertThat(shop.monthBridges()).isEmpty();
        assertThat(earned(shop, "2026-01").margin()).isEqualTo(Absent.AMOUNT);
        assertThat(earned(shop, "2026-01").labour()).isEqualTo(CostVariance.UNKNOWN);
        assertThat(earned(shop, "2026-01").partsCost()).isEqualTo(Absent.AMOUNT);
        assertThat(worked(shop, "2026-01").allWages()).isEqualTo(Absent.AMOUNT);
        assertThat(worked(shop, "2026-01").overhead()).isEqualTo(OverheadMonth.UNKNOWN);
        BenchHour hour = shop.benchHour();
        assertThat(hour.cost().total()).isEqualTo(Absent.AMOUNT);
        assertThat(hour.result()).isEqualTo(Absent.AMOUNT);
        assertThat(hour.rates().breakEven()).isEqualTo(Absent.AMOUNT);
        assertThat(hour.sensitivity()).isEmpty();
        assertThat(hour.rates().earned()).isEqualTo(money(100));
        assertThat(shop.loggedShare().share()).isNaN();
        assertThat(shop.loggedShare().opensTheReview()).isFalse();
    }

    /**
     * One month by hand: 20 h sold in 22 h quoted at 100, wage 30, 4 h shop time, overhead 500, no parts. Costs 600 + 120 +
     * 500 = 1,220 of revenue 2,200. A margin of 20 % needs 1,220 / 0.8 = 1,525.
     */
    @Test
    void theBenchHourOfAMonthByHand() {
        BenchHour hour = money(shop().asOf("2026-01-31")
                        .overhead("2026-01", "rent", 500, CostBehaviour.FIXED)
                        .time("ada", TimeKind.SHOP, 4)
                        .ticket("T1")
                        .line("refret", 22)
                        .logged("ada", "1", 20))
                .benchHour();
        assertThat(hour.seconds()).isEqualTo(hours(20));
        assertThat(hour.cost()).isEqualTo(new HourCost(money(30), money(6), 0, Absent.AMOUNT, money(25), 0));
        assertThat(hour.cost().total()).isEqualTo(money(61));
        assertThat(hour.result()).isEqualTo(money(980));
        assertThat(hour.rates())
                .isEqualTo(new ShopRates(
                        money(100),
                        money(100),
                        money(110),
                        Rate.hourly(money(1_220), hours(22)),
                        Rate.hourly(money(1_525), hours(22)),
                        money(110),
                        money(80)));
        assertThat(hour.breakEvenHours()).isCloseTo(620 / 80.0, within(1e-9));
        assertThat(hour.sensitivity())
                .contains(
                        new WhatIf(0, 0, money(980)),
                        new WhatIf(10, 0, money(1_200)),
                        new WhatIf(0, -10, money(980 - 220 + 60)),
                        new WhatIf(10, 10, money(2_662 - 660 - 620)));
    }

    @Test
    void whatWasGivenAwayIsToldWithWhoGotIt() {
        List<Gift> gifts = money(shop().type("wiring", 2)
                        .ticket("T1")
                        .line("refret", 10)
                        .logged("ada", "1", 10)
                        .did("ada", "wiring", 2)
                        .line("setup", 1.5)
                        .paidBy(PaidBy.GOODWILL)
                        .logged("ada", "2", 3)
                        .ticket("T2")
                        .line("setup", 1.5)
                        .putsRight("T1", "1", ReturnReason.OUR_FAULT)
                        .paidBy(PaidBy.GOODWILL)
                        .logged("ada", "1", 4))
                .gifts();
        assertThat(gifts)
                .extracting(Gift::what, Gift::toWhom, Gift::times, Gift::seconds, Gift::worth)
                .containsExactly(
                        tuple(Gift.PUTTING_RIGHT, "goodwill", 1, hours(4), money(400)),
                        tuple(Gift.UNQUOTED, "customer", 1, hours(2), money(200)),
                        tuple(Gift.GOODWILL, "goodwill", 1, hours(3), money(150)));
        assertThat(gifts.stream().flatMap(gift -> gift.rows().stream()))
                .extracting(Given::ticket, Given::worth)
                .containsExactly(tuple(1, money(400)), tuple(0, money(200)), tuple(0, money(150)));
    }

    @Test
    void declinedQuotesAreCountedByRepairType() {
        QuoteOutcome refrets = money(shop().asOf("2026-03-31")
                        .ticket("T1")
                        .line("refret", 10)
                        .declined()
                        .ticket("T2")
                        .line("refret", 12)
                        .ticket("T3")
                        .line("refret", 11)
                        .ticket("T4")
                        .voided()
                        .line("refret", 11))
                .groups()
                .quotes()
                .get(0);
        assertThat(refrets).isEqualTo(new QuoteOutcome(0, 3, 1, hours(10), money(1_000)));
    }
}
