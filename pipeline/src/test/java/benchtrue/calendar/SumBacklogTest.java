package benchtrue.calendar;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import benchtrue.ShopBuilder;
import benchtrue.shop.Absent;
import benchtrue.shop.Money;
import benchtrue.shop.WaitReason;
import org.junit.jupiter.api.Test;

/** Work in the shop, and what waits. */
class SumBacklogTest {
    private static ShopBuilder shop() {
        return new ShopBuilder().asOf("2026-03-31").type("refret", 10).type("setup", 1.5, "setup");
    }

    @Test
    void theBacklogIsWorkedInTheOrderOfPromises() {
        ShopBuilder builder = shop().wage("ada", 30, "2020-01-01");
        for (int job = 0; job < 30; job++) {
            builder.ticket("A" + (10 + job))
                    .opened("2026-03-01")
                    .line("refret", 10)
                    .logged("ada", "1", job % 2 == 0 ? 9.9 : 10.1);
        }
        builder.ticket("X")
                .opened("2026-03-20")
                .stillOpen()
                .promised("2026-04-30")
                .line("refret", 10);
        builder.ticket("Y")
                .opened("2026-03-20")
                .stillOpen()
                .promised("2026-04-06")
                .line("refret", 10);
        builder.ticket("Z")
                .opened("2026-03-20")
                .stillOpen()
                .promised("2026-04-08")
                .line("refret", 30);
        Calendar calendar = CalendarOf.shop(builder);
        Backlog backlog = calendar.backlog();
        assertThat(backlog.weeklyHours()).isEqualTo(30);
        assertThat(backlog.hours()).isBetween(49.0, 53.0);
        assertThat(backlog.lower()).isLessThan(backlog.hours());
        assertThat(backlog.upper()).isGreaterThan(backlog.hours());
        assertThat(backlog.weeks()).isCloseTo(backlog.hours() / 30, within(1e-12));
        assertThat(backlog.promises())
                .extracting(promise -> promise.promised() - ShopBuilder.day("2026-04-01"))
                .containsExactly(5, 7, 29);
        assertThat(backlog.promises()).extracting(Promise::atRisk).containsExactly(false, true, false);
        assertThat(calendar.calls())
                .singleElement()
                .satisfies(call -> assertThat(call.reasons()).containsExactly(Call.Reason.LIKELY_LATE));
    }

    @Test
    void unfinishedWorkStandsAtCostAndFinishedWorkIsNotAhead() {
        ShopBuilder builder = shop().wage("ada", 30, "2020-01-01");
        builder.ticket("T1").stillOpen().line("refret", 10).logged("ada", "1", 12);
        builder.ticket("T2")
                .stillOpen()
                .line("setup", 1.5)
                .logged("ada", "1", 2)
                .finished("2026-02-20");
        Backlog backlog = CalendarOf.shop(builder).backlog();
        // Payroll on-costs are 30 % by default.
        assertThat(backlog.atCost()).isEqualTo(468 * Money.UNIT);
        assertThat(backlog.lines()).hasSize(2);
        assertThat(backlog.lines().get(1).expectedHours()).isEqualTo(2);
        assertThat(backlog.hours()).isCloseTo(backlog.lines().get(0).expectedHours() - 12, within(1e-9));
    }

    @Test
    void withoutWagesNobodyKnowsWhatUnfinishedWorkCost() {
        ShopBuilder builder = shop();
        builder.ticket("T1").stillOpen().line("refret", 10).logged("ada", "1", 12);
        assertThat(CalendarOf.shop(builder).backlog().atCost()).isEqualTo(Absent.AMOUNT);
    }

    @Test
    void waitingDaysStandWithTheMoneyTiedUp() {
        ShopBuilder builder = shop().wage("ada", 30, "2020-01-01")
                .ticket("T1")
                .stillOpen()
                .line("refret", 10)
                .logged("ada", "1", 6)
                .waited("2026-02-01", "2026-02-11", WaitReason.GLUE_CURING)
                .waits("2026-03-21", WaitReason.PARTS);
        assertThat(CalendarOf.shop(builder).waiting())
                .containsExactly(
                        new Waiting(WaitReason.GLUE_CURING, 1, 10, 0, 0, 0),
                        new Waiting(WaitReason.PARTS, 1, 10, 1, 234 * Money.UNIT, 1_000 * Money.UNIT));
    }
}
