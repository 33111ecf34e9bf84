package benchtrue.calendar;

import static org.assertj.core.api.Assertions.assertThat;

import benchtrue.ShopBuilder;
import java.time.LocalDate;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

/** Weeks of one repair in a shop of three years, whose visits take five weeks in the middle. */
class WeeksApartTest {
    private interface Longer {
        int days(LocalDate opened, String instrumentClass);
    }

    private static List<String> told(long seed, Longer longer) {
        SplittableRandom random = new SplittableRandom(seed);
        ShopBuilder shop = new ShopBuilder().asOf("2026-12-31").type("reset", 10);
        for (int visit = 0; visit < 150; visit++) {
            LocalDate opened = LocalDate.parse("2024-01-08").plusDays(visit * 7L);
            String instrument = random.nextInt(3) == 0 ? "arch-top" : "flat-top";
            int days = 20 + random.nextInt(30) + longer.days(opened, instrument);
            LocalDate ready = opened.plusDays(days);
            shop.ticket("A" + (100 + visit))
                    .opened(opened.toString())
                    .of(instrument, "ada")
                    .line("reset", 10);
            shop.loggedOn(opened.plusDays(10).toString(), "ada", "1", 9).finished(ready.toString());
        }
        return CalendarOf.shop(shop).weeks().stream()
                .map(RepairWeeks::group)
                .filter(group -> !group.isEmpty())
                .toList();
    }

    @Test
    void aClassThatTakesLongerHasItsOwnWeeks() {
        assertThat(told(3, (opened, instrument) -> instrument.equals("arch-top") ? 21 : 0))
                .containsExactlyInAnyOrder("on arch top instruments", "on flat top instruments");
    }

    @Test
    void aSeasonThatTakesLongerEveryYearHasItsOwnWeeks() {
        assertThat(told(5, (opened, instrument) -> opened.getMonthValue() <= 3 ? 28 : 0))
                .contains("in January to March");
    }

    @Test
    void oneBusyQuarterIsNoSeason() {
        assertThat(told(7, (opened, instrument) -> opened.getYear() == 2025 && opened.getMonthValue() <= 3 ? 28 : 0))
                .isEmpty();
    }

    @Test
    void inShopsWithoutEitherHardlyOneIsTold() {
        int told = 0;
        for (long seed = 1; seed <= 40; seed++) {
            told += told(seed, (opened, instrument) -> 0).size();
        }
        assertThat(told).as("shops of the seeds 1 to 40").isLessThanOrEqualTo(8);
    }
}
