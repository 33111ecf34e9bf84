package benchtrue.truth;

import static org.assertj.core.api.Assertions.assertThat;

import benchtrue.calendar.Calendar;
import benchtrue.calendar.OpenTicket;
import benchtrue.calendar.PlanCalendar;
import benchtrue.reconcile.Ledger;
import benchtrue.settings.Settings;
import benchtrue.shop.TicketStatus;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** In shops whose records are in every way untidy each open ticket stands in exactly one place. */
class OpenTicketsTruthTest {
    private static void everyOpenTicketStandsOnce(long seed) {
        KnownShop shop = KnownShop.of(seed, options -> options.withTickets(400).withYears(2));
        Ledger ledger = shop.ledger();
        Calendar calendar = new PlanCalendar().plan(shop.costs(), Settings.DEFAULTS);
        assertThat(calendar.balance().holds()).as("balance of shop %s", seed).isTrue();
        assertThat(calendar.open().stream().map(OpenTicket::ticket).sorted())
                .as("open tickets of shop %s", seed)
                .containsExactlyElementsOf(IntStream.range(0, ledger.tickets().size())
                        .filter(ticket -> ledger.tickets().status(ticket) == TicketStatus.OPEN)
                        .boxed()
                        .toList());
        assertThat(calendar.open())
                .as("shop %s", seed)
                .allSatisfy(ticket -> assertThat(ticket.since()).isLessThanOrEqualTo(ledger.asOf()));
        assertThat(calendar.calls()).as("shop %s", seed).allSatisfy(call -> {
            assertThat(call.saves()).isNotNegative();
            assertThat(call.why()).endsWith(".");
            assertThat(call.say()).isNotBlank();
        });
    }

    @Test
    void everyOpenTicketStandsInExactlyOnePlace() {
        for (long seed = 7_001; seed <= 7_004; seed++) {
            everyOpenTicketStandsOnce(seed);
        }
    }

    @Test
    @Tag("proof")
    void soDoesEveryOneOfThreeHundredShops() {
        for (long seed = 8_001; seed <= 8_300; seed++) {
            everyOpenTicketStandsOnce(seed);
        }
    }
}
