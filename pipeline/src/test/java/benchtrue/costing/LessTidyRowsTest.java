package benchtrue.costing;

import static org.assertj.core.api.Assertions.assertThat;

import benchtrue.ShopBuilder;
import benchtrue.hours.JobLines;
import benchtrue.hours.LineMark;
import benchtrue.hours.SplitHours;
import benchtrue.settings.Settings;
import benchtrue.shop.ChargeKind;
import benchtrue.shop.Money;
import benchtrue.shop.PaidBy;
import benchtrue.shop.QuoteBasis;
import benchtrue.shop.QuotedLine;
import java.math.BigDecimal;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** How the less tidy rows of the data contract count, in hours and in money. */
class LessTidyRowsTest {
    private static final long HOUR = 3_600;

    private static ShopBuilder shop() {
        return new ShopBuilder().type("refret", 10).type("setup", 1, "setup").wage("ada", 30, "2020-01-01");
    }

    private static JobLines split(ShopBuilder shop) {
        return new SplitHours().split(shop.build(), Settings.DEFAULTS);
    }

    private static long revenue(JobLines jobs, int line) {
        return new CostLines().cost(jobs, Settings.DEFAULTS).labourRevenue(line);
    }

    private static long money(String amount) {
        return Money.of(new BigDecimal(amount));
    }

    private static QuotedLine byTime(QuotedLine q) {
        return quoted(q, q.firstQuotedSeconds(), QuoteBasis.TIME);
    }

    private static QuotedLine quoted(QuotedLine q, long first, QuoteBasis basis) {
        return new QuotedLine(
                q.ticket(),
                q.line(),
                q.repairType(),
                q.quotedSeconds(),
                q.quotedLabour(),
                q.quotedParts(),
                q.outcome(),
                q.quotedOn(),
                first,
                q.firstQuotedLabour(),
                q.billedLabour(),
                q.billedParts(),
                q.chargeKind(),
                basis,
                q.paidBy(),
                q.reworkOf(),
                q.reworkOfLine(),
                q.returnReason());
    }

    @Test
    void hoursAreJudgedAgainstTheFirstAcceptedQuote() {
        JobLines jobs = split(shop().ticket("T1")
                .line("refret", 14)
                .withLine(q -> quoted(q, 8 * HOUR, QuoteBasis.FIXED))
                .logged("ada", "1", 12));
        assertThat(jobs.todayQuotedHours(0)).isEqualTo(8);
        assertThat(revenue(jobs, 0)).as("money follows the quote in force").isEqualTo(money("1400"));
    }

    @Test
    void aQuoteOfZeroHoursTakesTheBooksHoursOfThatDay() {
        JobLines jobs = split(new ShopBuilder()
                .book("2020-01-01")
                .type("refret", 8)
                .book("2026-06-01")
                .type("refret", 10)
                .ticket("T1")
                .opened("2026-01-05")
                .line("refret", 0)
                .logged("ada", "1", 9));
        assertThat(jobs.marked(0, LineMark.QUOTE_FROM_BOOK)).isTrue();
        assertThat(jobs.bookSecondsThen(0)).isEqualTo(8 * HOUR);
        assertThat(jobs.judged(0)).isTrue();
    }

    @ParameterizedTest
    @EnumSource(
            value = ChargeKind.class,
            names = {"MINIMUM", "RUSH", "EVALUATION", "STORAGE", "OUTSIDE_WORK"})
    void whatSellsNoRepairStaysOutOfVerdictsAndInTheMoney(ChargeKind kind) {
        JobLines jobs = split(shop().ticket("T1")
                .line("setup", 1)
                .charged(kind)
                .line("setup", 1)
                .logged("ada", "2", 1));
        assertThat(jobs.judged(0)).isFalse();
        assertThat(jobs.judged(1)).isTrue();
        assertThat(revenue(jobs, 0)).isEqualTo(money("100"));
    }

    @Test
    void noChargeKindIsForgotten() {
        Set<ChargeKind> judged = EnumSet.noneOf(ChargeKind.class);
        for (ChargeKind kind : ChargeKind.values()) {
            if (split(shop().ticket("T1").line("setup", 1).charged(kind).logged("ada", "1", 1))
                    .judged(0)) {
                judged.add(kind);
            }
        }
        assertThat(judged).containsExactlyInAnyOrder(ChargeKind.REPAIR, ChargeKind.PACKAGE);
    }

    @Test
    void workQuotedByTimeStaysOutOfVerdictsAndInTheMoney() {
        JobLines jobs = split(shop().ticket("T1")
                .line("refret", 10)
                .withLine(LessTidyRowsTest::byTime)
                .logged("ada", "1", 14));
        assertThat(jobs.judged(0)).isFalse();
        assertThat(jobs.actualSeconds(0)).isEqualTo(14 * HOUR);
        assertThat(revenue(jobs, 0)).isEqualTo(money("1000"));
    }

    @ParameterizedTest
    @EnumSource(PaidBy.class)
    void allHoursCountForTimingWhoeverPays(PaidBy payer) {
        JobLines jobs =
                split(shop().ticket("T1").line("refret", 10).paidBy(payer).logged("ada", "1", 12));
        assertThat(jobs.judged(0)).isTrue();
        assertThat(jobs.actualSeconds(0)).isEqualTo(12 * HOUR);
    }

    @Test
    void timeOverTicketsThatExpectNothingIsSharedEqually() {
        JobLines jobs = split(shop().ticket("T1")
                .line("one-off", 0)
                .withoutQuotedHours()
                .ticket("T2")
                .line("one-off", 0)
                .withoutQuotedHours()
                .shared("ada", 3, "T1", "T2"));
        assertThat(List.of(jobs.actualSeconds(0), jobs.actualSeconds(1))).containsExactly(5_400L, 5_400L);
    }
}
