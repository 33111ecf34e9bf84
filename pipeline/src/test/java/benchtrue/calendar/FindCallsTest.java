package benchtrue.calendar;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import benchtrue.ShopBuilder;
import benchtrue.calendar.Call.Reason;
import benchtrue.shop.Hours;
import benchtrue.shop.Money;
import benchtrue.shop.PaidBy;
import benchtrue.shop.WaitReason;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Whom to call, what it is worth, and what to say. */
class FindCallsTest {
    /** Refrets quoted at ten hours take a good fifteen; finished instruments are collected within the week. */
    private static ShopBuilder shop() {
        ShopBuilder shop = new ShopBuilder()
                .asOf("2026-03-31")
                .type("refret", 10)
                .type("setup", 1.5, "setup")
                .wage("ada", 30, "2020-01-01");
        for (int job = 0; job < 30; job++) {
            shop.ticket("A" + (10 + job))
                    .opened("2026-01-05")
                    .line("refret", 10)
                    .loggedOn("2026-01-12", "ada", "1", job % 2 == 0 ? 15 : 16)
                    .finished("2026-01-15")
                    .closed("2026-01-" + (17 + job % 5));
        }
        for (int job = 0; job < 30; job++) {
            shop.ticket("B" + (10 + job))
                    .opened("2026-01-05")
                    .line("setup", 1.5)
                    .logged("ada", "1", 1 + 0.1 * (job % 3));
        }
        return shop;
    }

    private static List<Call> calls(ShopBuilder shop) {
        return CalendarOf.shop(shop).calls();
    }

    private static Call only(ShopBuilder shop) {
        assertThat(calls(shop)).hasSize(1);
        return calls(shop).get(0);
    }

    @Test
    void anOverrunIsWorthACallBeforeWorkBegins() {
        Call call = only(shop().ticket("X").opened("2026-03-30").stillOpen().line("refret", 10));
        assertThat(call.reasons()).containsExactly(Reason.LIKELY_OVER);
        assertThat(call.why())
                .startsWith("Refret will likely take about 15.")
                .contains("quoted are 10.00")
                .endsWith("; work has not begun.");
        assertThat(call.say()).startsWith("Before we begin: refret looks like about 15.");
        assertThat(call.saves())
                .isCloseTo(StrictMath.round((call.expectedHours() - 10) * 100) * Money.UNIT, within(Money.UNIT));
    }

    @Test
    void aQuoteUsedUpIsWorthTheHoursStillToCome() {
        Call call = only(shop().ticket("X")
                .opened("2026-03-20")
                .stillOpen()
                .line("refret", 10)
                .loggedOn("2026-03-29", "ada", "1", 12));
        assertThat(call.reasons()).containsExactly(Reason.OVER_THE_QUOTE);
        assertThat(call.secondsSoFar()).isEqualTo(12 * Hours.SECONDS);
        assertThat(call.saves())
                .isCloseTo(StrictMath.round((call.expectedHours() - 12) * 100) * Money.UNIT, within(Money.UNIT));
    }

    @Test
    void workThatNobodyQuotedIsToldBeforeItIsGivenAway() {
        Call call = only(shop().ticket("X")
                .opened("2026-03-20")
                .stillOpen()
                .line("setup", 1.5)
                .logged("ada", "1", 1)
                .did("ada", "refret", 0.5));
        assertThat(call.reasons()).contains(Reason.NEVER_QUOTED);
        assertThat(call.why()).contains("0.50\u00a0h of refret were done and never quoted");
        assertThat(call.saves()).isGreaterThanOrEqualTo(50 * Money.UNIT);
    }

    @Test
    void aBillThatStandsLongIsWorthWhatWouldStillStand() {
        ShopBuilder shop = shop().ticket("X")
                .opened("2026-02-01")
                .stillOpen()
                .line("refret", 16)
                .logged("ada", "1", 15)
                .finished("2026-02-20");
        Call call = only(shop);
        assertThat(call.reasons()).containsExactly(Reason.NOT_COLLECTED);
        assertThat(call.cost()).contains("1,600").contains("less what was paid ahead");
        // One such case, of which nothing later is known: even odds.
        assertThat(call.saves()).isEqualTo(800 * Money.UNIT);
    }

    @Test
    void oneThatWasFinishedTheOtherDayIsNotCalledAbout() {
        assertThat(calls(shop().ticket("X")
                        .opened("2026-02-01")
                        .stillOpen()
                        .line("refret", 16)
                        .logged("ada", "1", 15)
                        .finished("2026-03-28")))
                .isEmpty();
    }

    @Test
    void whatTheHouseItselfPaysForIsNobodysToAsk() {
        assertThat(calls(shop().ticket("X")
                        .opened("2026-03-30")
                        .stillOpen()
                        .line("refret", 10)
                        .paidBy(PaidBy.HOUSE)))
                .isEmpty();
    }

    @Test
    void aWaitForAYesAndOneBeyondTheUsualAreCalls() {
        ShopBuilder shop = shop();
        for (int job = 0; job < 10; job++) {
            shop.ticket("A" + (10 + job))
                    .opened("2026-01-05")
                    .line("refret", 16)
                    .waited("2026-01-06", "2026-01-1" + job, WaitReason.PARTS);
        }
        shop.ticket("X").opened("2026-03-01").stillOpen().line("setup", 1.5).waits("2026-03-02", WaitReason.PARTS);
        shop.ticket("Y").opened("2026-03-01").stillOpen().line("setup", 2.5).waits("2026-03-02", WaitReason.APPROVAL);
        assertThat(calls(shop))
                .extracting(call -> call.reasons().iterator().next())
                .containsExactly(Reason.WAITS_FOR_APPROVAL, Reason.WAITS_TOO_LONG);
        assertThat(calls(shop).get(1).say()).startsWith("Ask the supplier");
    }

    @Test
    void aPromisePastIsToldAndWhatIsWorthMostComesFirst() {
        ShopBuilder shop = shop();
        shop.ticket("X").opened("2026-03-01").stillOpen().line("setup", 1.5).promised("2026-03-20");
        shop.ticket("Y").opened("2026-03-30").stillOpen().line("refret", 10);
        assertThat(calls(shop))
                .extracting(call -> call.reasons().iterator().next())
                .containsExactly(Reason.LIKELY_OVER, Reason.OVERDUE);
        assertThat(calls(shop).get(1).saves()).isZero();
        assertThat(calls(shop).get(1).why()).isEqualTo("It was promised for 20 Mar 2026.");
    }
}
