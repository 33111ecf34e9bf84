package benchtrue.costing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import benchtrue.shop.Hours;
import benchtrue.shop.Money;
import java.math.BigDecimal;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Worked examples of OpenStax, Principles of Accounting, Volume 2: Managerial Accounting (Rice University, 2019), by
 * section, and of Horngren et al., Cost Accounting, 13th edition (2009). Costs above the standard are positive.
 */
class TextbookTest {
    private static long money(String amount) {
        return Money.of(new BigDecimal(amount));
    }

    private static long money(double amount) {
        return Money.of(BigDecimal.valueOf(amount));
    }

    private static long hours(String hours) {
        return Hours.seconds(new BigDecimal(hours));
    }

    /** Section 8.2: SP is the standard price, AP the actual; AQ and SQ the quantities. */
    @ParameterizedTest
    @CsvSource({
        // SP, AP, AQ, SQ, price variance, quantity variance
        "7.00, 6.00, 20, 20, -20, 0",
        "7.00, 9.00, 20, 20, 40, 0",
        "7.00, 7.00, 0.20, 0.25, 0, -0.35",
        "7.00, 7.00, 0.50, 0.25, 0, 1.75",
        "0.85, 0.84, 89000, 88000, -890, 850",
    })
    void materialsOfSection82(
            double standardPrice, double actualPrice, double actual, double standard, double price, double quantity) {
        CostVariance variance = CostVariance.of(
                money(actual * actualPrice), money(actual * standardPrice), money(standard * standardPrice));
        assertThat(variance.price()).isEqualTo(money(price));
        assertThat(variance.quantity()).isEqualTo(money(quantity));
    }

    /** Section 8.3. The book's figure misprints two of the last row's results; these follow its formula. */
    @ParameterizedTest
    @CsvSource({
        // SR, SH, AH, cost, rate variance, time variance
        "8.00, 0.10, 0.10, 0.75, -0.05, 0",
        "8.00, 0.10, 0.10, 0.95, 0.15, 0",
        "8.00, 0.10, 0.05, 0.40, 0, -0.40",
        "8.00, 0.10, 0.20, 1.60, 0, 0.80",
        "8.00, 0.10, 0.20, 1.90, 0.30, 0.80",
        "35, 16500, 16000, 565600, 5600, -17500",
    })
    void labourOfSection83(String rate, String allowed, String actual, String cost, String byRate, String byTime) {
        CostVariance variance = CostVariance.of(
                money(cost), Money.perHour(money(rate), hours(actual)), Money.perHour(money(rate), hours(allowed)));
        assertThat(variance.price()).isEqualTo(money(byRate));
        assertThat(variance.quantity()).isEqualTo(money(byTime));
    }

    /** Section 8.4: 2,000 hours for 1,000 units, variable overhead 4,000, fixed 6,000. */
    @ParameterizedTest
    @CsvSource({
        // hours worked, hours allowed, variable overhead, spending, efficiency
        "2500, 2000, 7000, 2000, 1000",
        "2000, 2000, 3500, -500, 0",
        "1800, 2000, 3500, -100, -400",
    })
    void variableOverheadOfSection84(
            String worked, String allowed, String variable, String spending, String efficiency) {
        OverheadRates.YearRate rate = new OverheadRates.YearRate(money("3"), money("2"), money("6000"));
        long carried = Money.perHour(rate.hourly(), hours(allowed));
        OverheadVariance variance = OverheadVariance.of(
                new OverheadVariance.Actual(money("6000"), money(variable), hours(worked), hours(allowed)),
                rate,
                carried);
        assertThat(variance.variableSpending()).isEqualTo(money(spending));
        assertThat(variance.variableEfficiency()).isEqualTo(money(efficiency));
        assertThat(variance.fixedSpending()).isZero();
        assertThat(Totals.of(variance)).isEqualTo(money("6000") + money(variable) - carried);
    }

    /** From section 8.4's figures: 900 units are 1,800 standard hours; fixed overhead of 600 is not carried. */
    @Test
    void hoursBelowTheBudgetLeaveFixedOverheadUncarried() {
        OverheadRates.YearRate rate = new OverheadRates.YearRate(money("3"), money("2"), money("6000"));
        OverheadVariance variance = OverheadVariance.of(
                new OverheadVariance.Actual(money("6000"), money("3600"), hours("1800"), hours("1800")),
                rate,
                Money.perHour(rate.hourly(), hours("1800")));
        assertThat(variance.volume()).isEqualTo(money("600"));
    }

    /**
     * A textbook problem seen in a solution page (book not named there): normal 25,000 hours, 20,600 allowed, 21,000 worked,
     * overhead 118,000, rate 4 variable and 2 fixed. Volume 8,800 unfavourable; the rest is controllable, 14,400 favourable.
     */
    @Test
    void volumeAndControllableVarianceAddUpToWhatWasNotCarried() {
        OverheadRates.YearRate rate = new OverheadRates.YearRate(money("2"), money("4"), money("50000"));
        OverheadVariance variance = OverheadVariance.of(
                new OverheadVariance.Actual(money("50000"), money("68000"), hours("21000"), hours("20600")),
                rate,
                Money.perHour(rate.hourly(), hours("20600")));
        assertThat(variance.volume()).isEqualTo(money("8800"));
        assertThat(variance.variableSpending() + variance.variableEfficiency() + variance.fixedSpending())
                .isEqualTo(money("-14400"));
        assertThat(Totals.of(variance)).isEqualTo(money("-5600"));
    }

    /** Sections 4.4 and 4.6: actual overhead against what was applied. */
    @ParameterizedTest
    @CsvSource({"256500, 250000, 6500", "248000, 250000, -2000", "209250, 209040, 210"})
    void overheadIsUnderOrOverApplied(String actual, String applied, String under) {
        OverheadMonth month =
                new OverheadMonth(money(actual), 0, money(applied), new OverheadVariance(0, 0, 0, money(under)));
        assertThat(month.underApplied()).isEqualTo(money(under));
    }

    /** Section 4.6: 6,240 hours at 33.50. */
    @Test
    void hoursAtTheRateAreWhatIsApplied() {
        assertThat(Money.perHour(money("33.50"), hours("6240"))).isEqualTo(money("209040"));
    }

    /** Sections 3.1, 3.2 and 3.5. */
    @ParameterizedTest
    @CsvSource({
        // fixed, profit, contribution of a unit, units
        "18000, 0, 80, 225",
        "85000, 0, 50, 1700",
        "85000, 10000, 50, 1900",
        "220000, 0, 22, 10000",
    })
    void unitsThatBreakEven(String fixed, String profit, String contribution, double units) {
        assertThat(BreakEven.units(money(fixed), money(profit), money(contribution)))
                .isCloseTo(units, within(1e-9));
    }

    /** Section 3.4: siding in the mix 5 : 3 : 2 contributes 30.75 a set; fixed costs 145,000. */
    @Test
    void setsThatBreakEven() {
        assertThat(BreakEven.units(money("145000"), 0, money("30.75"))).isCloseTo(4_715.447, within(5e-4));
    }

    /** Section 3.5: sales of 225,000 against 153,000 at break-even. */
    @Test
    void marginOfSafety() {
        assertThat(BreakEven.marginOfSafety(225_000, 153_000)).isCloseTo(0.32, within(1e-12));
    }

    /** Section 9.4's identities: margin = markup / (1 + markup); 192 at a margin of 40 % is 320, not 268.80. */
    @ParameterizedTest
    @CsvSource({"192, 0.40, 320", "100, 0.20, 125", "60, 0.40, 100", "100, 0.5, 200"})
    void aMarginIsNoMarkup(String cost, double share, String revenue) {
        assertThat(BreakEven.revenueForMargin(money(cost), share)).isEqualTo(money(revenue));
    }

    private static TypeMoney units(long[] units, double... margins) {
        TypeMoney totals = TypeMoney.none(units.length);
        for (int type = 0; type < units.length; type++) {
            totals.lines()[type] = units[type];
            totals.standardSeconds()[type] = units[type];
            totals.labourRevenue()[type] = units[type] * money(margins[type]);
        }
        return totals;
    }

    /** Horngren et al., pp. 517-519: quantity 1,054,000 favourable, mix 234,000 unfavourable. */
    @Test
    void mixAndVolumeOfThreeProducts() {
        MarginBridge bridge = MarginBridge.between(
                0,
                units(new long[] {400_000, 600_000, 1_500_000}, 2.00, 1.20, 2.50),
                1,
                units(new long[] {480_000, 900_000, 1_620_000}, 2.00, 1.20, 2.50));
        assertThat(bridge.volume()).isEqualTo(money("1054000"));
        assertThat(bridge.mix()).isEqualTo(money("-234000"));
        assertThat(bridge.change()).isEqualTo(money("820000"));
    }

    /** An exam question: 5,500 and 4,500 become 6,000 each; mix 3,300 favourable, quantity 13,950, together 17,250. */
    @Test
    void mixAndVolumeOfTwoProducts() {
        MarginBridge bridge = MarginBridge.between(
                0, units(new long[] {5_500, 4_500}, 4.50, 10.00), 1, units(new long[] {6_000, 6_000}, 4.50, 10.00));
        assertThat(bridge.volume()).isEqualTo(money("13950"));
        assertThat(bridge.mix()).isEqualTo(money("3300"));
        assertThat(bridge.price() + bridge.efficiency() + bridge.wages()).isZero();
        assertThat(bridge.change()).isEqualTo(money("17250"));
    }
}
