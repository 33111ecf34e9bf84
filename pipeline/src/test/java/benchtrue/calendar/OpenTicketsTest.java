package benchtrue.calendar;

import static org.assertj.core.api.Assertions.assertThat;

import benchtrue.ShopBuilder;
import benchtrue.shop.Absent;
import benchtrue.shop.WaitReason;
import org.junit.jupiter.api.Test;

/** Where open tickets stand. */
class OpenTicketsTest {
    private static ShopBuilder shop() {
        ShopBuilder shop =
                new ShopBuilder().asOf("2026-03-31").type("refret", 10).type("setup", 1.5, "setup");
        for (int job = 0; job < 10; job++) {
            shop.ticket("A" + job)
                    .opened("2026-01-05")
                    .line("refret", 10)
                    .loggedOn("2026-01-12", "ada", "1", 6)
                    .loggedOn("2026-01-14", "ada", "1", 4)
                    .waited("2026-01-14", "2026-01-2" + job, WaitReason.GLUE_CURING)
                    .finished("2026-01-31");
        }
        return shop;
    }

    private static ShopBuilder open(ShopBuilder shop, String ticket, String opened) {
        return shop.ticket(ticket).opened(opened).stillOpen().line("refret", 10);
    }

    private static OpenTicket only(ShopBuilder shop) {
        Calendar calendar = CalendarOf.shop(shop);
        assertThat(calendar.balance().holds()).isTrue();
        assertThat(calendar.open()).hasSize(1);
        return calendar.open().get(0);
    }

    private static void stands(ShopBuilder shop, OpenState state, String since) {
        OpenTicket ticket = only(shop);
        assertThat(ticket.state()).isEqualTo(state);
        assertThat(ticket.since()).isEqualTo(ShopBuilder.day(since));
    }

    @Test
    void anInstrumentNobodyTouchedIsNotBegun() {
        stands(open(shop(), "X", "2026-03-20"), OpenState.NOT_BEGUN, "2026-03-20");
    }

    @Test
    void oneThatOnlyWaitsForTheBenchIsNotBegunEither() {
        stands(
                open(shop(), "X", "2026-03-02").waits("2026-03-05", WaitReason.BENCH),
                OpenState.NOT_BEGUN,
                "2026-03-02");
    }

    @Test
    void oneThatTakesUpHumidityWaitsThoughNoWorkWasDone() {
        stands(
                open(shop(), "X", "2026-03-02").waits("2026-03-05", WaitReason.ACCLIMATISING),
                OpenState.WAITING,
                "2026-03-05");
    }

    @Test
    void aWaitIsUsuallyOverOnTheDayThatFourInFiveEarlierOnesWere() {
        OpenTicket ticket = only(open(shop(), "X", "2026-03-02").waits("2026-03-20", WaitReason.GLUE_CURING));
        assertThat(ticket.reason()).isEqualTo("glue curing");
        // Ten waits of 6 to 15 days: four in five were over within 13 and a half, so within 14.
        assertThat(ticket.until()).isEqualTo(ShopBuilder.day("2026-04-03"));
    }

    @Test
    void oneWorkedOnLatelyIsOnTheBench() {
        stands(open(shop(), "X", "2026-03-02").loggedOn("2026-03-24", "ada", "1", 3), OpenState.ON_BENCH, "2026-03-24");
    }

    @Test
    void oneThatNobodyTouchedForLongerThanUsualIsLeftLying() {
        stands(open(shop(), "X", "2026-01-20").loggedOn("2026-02-10", "ada", "1", 3), OpenState.STALLED, "2026-02-10");
    }

    @Test
    void daysOfARecordedWaitDoNotMakeItLeftLying() {
        stands(
                open(shop(), "X", "2026-01-20")
                        .loggedOn("2026-02-10", "ada", "1", 3)
                        .waited("2026-02-11", "2026-03-25", WaitReason.FINISH_CURING),
                OpenState.ON_BENCH,
                "2026-02-10");
    }

    @Test
    void aWaitWithoutAnEndIsOverWhereSomebodyWorksOn() {
        stands(
                open(shop(), "X", "2026-01-20")
                        .waits("2026-03-01", WaitReason.PARTS)
                        .loggedOn("2026-03-28", "ada", "1", 3),
                OpenState.ON_BENCH,
                "2026-03-28");
    }

    @Test
    void finishedWorkWaitsForItsOwnerWhateverElseIsWritten() {
        OpenTicket ticket = only(open(shop(), "X", "2026-01-20")
                .loggedOn("2026-02-10", "ada", "1", 3)
                .waits("2026-03-01", WaitReason.PARTS)
                .finished("2026-03-02"));
        assertThat(ticket.state()).isEqualTo(OpenState.FINISHED);
        assertThat(ticket.worth()).isEqualTo(10_000_000);
    }

    @Test
    void anInstrumentWhoseOwnerWantsNothingDoneIsToBeCollected() {
        OpenTicket ticket = only(open(shop(), "X", "2026-03-20").declined());
        assertThat(ticket.state()).isEqualTo(OpenState.FINISHED);
        assertThat(ticket.repairs()).isEmpty();
        assertThat(ticket.worth()).isZero();
    }

    @Test
    void aTicketWithoutAPriceBringsNobodyKnowsWhat() {
        ShopBuilder shop = open(shop(), "X", "2026-03-20").withoutPrice();
        assertThat(only(shop).worth()).isEqualTo(Absent.AMOUNT);
    }
}
