package benchtrue.revision;

import static org.assertj.core.api.Assertions.assertThat;

import benchtrue.ShopBuilder;
import benchtrue.hours.SplitHours;
import benchtrue.settings.Settings;
import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;

/** A long or a large history is tried at its newest quarters only, so that a night ends. */
class BoundedHistoryTest {
    private static final LocalDate FIRST = LocalDate.of(2012, 1, 2);
    private final ShopBuilder shop =
            new ShopBuilder().asOf("2026-10-31").book("2010-01-01").type("setup", 2);
    private int tickets;

    private void setups(LocalDate day, int count) {
        for (int i = 0; i < count; i++) {
            shop.ticket("T%06d".formatted(tickets++)).opened(day.toString());
            shop.line("setup", 2).logged("ada", "1", 2 + 0.1 * (tickets % 7));
        }
    }

    /** Eight setups in each of the quarters after the first day's. */
    private void quarters(int count) {
        for (int quarter = 1; quarter <= count; quarter++) {
            setups(FIRST.plusMonths(3L * quarter), 8);
        }
    }

    private List<LocalDate> days() {
        return new TryPastJobs(new SplitHours().split(shop.build(), Settings.DEFAULTS), Settings.DEFAULTS).days();
    }

    @Test
    void fiftyQuartersAreTriedAtTheNewestForty() {
        setups(FIRST, 8);
        quarters(50);
        assertThat(days()).hasSize(40).first().isEqualTo(LocalDate.of(2014, 10, 1));
        assertThat(days()).last().isEqualTo(LocalDate.of(2024, 7, 1));
    }

    /** With at most 20,000 lines before each, the twelfth newest quarter brings them to 240,000. */
    @Test
    void aShopOfMoreThanTwentyThousandLinesIsTriedAtItsNewestTwelveQuarters() {
        setups(FIRST, 20_100);
        quarters(20);
        assertThat(days()).hasSize(12).last().isEqualTo(LocalDate.of(2017, 1, 1));
    }
}
