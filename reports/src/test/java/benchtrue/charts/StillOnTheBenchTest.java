package benchtrue.charts;

import static org.assertj.core.api.Assertions.assertThat;

import benchtrue.InventedShop;
import benchtrue.ShopBuilder;
import benchtrue.nightly.Review;
import java.time.LocalDate;
import java.util.Locale;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class StillOnTheBenchTest {
    private static final LocalDate AS_OF = LocalDate.of(2026, 10, 31);
    private static final double[] HOURS = {8.5, 9.5, 10, 10.5, 11.5, 13};

    @Test
    void theTitleSaysTheUsualJobWithAndWithoutWhatIsStillOnTheBench() {
        Picture picture = picture(6, 6).orElseThrow();
        assertThat(picture.name()).isEqualTo("still-on-the-bench");
        assertThat(picture.title()).isEqualTo("""
                refret: half of the jobs take more than 1.08 hours for each hour quoted; without the 6 still on the bench it \
                would look like 1.03""");
        assertThat(picture.note())
                .startsWith("30\u00a0finished jobs with hours of their own and 6\u00a0open ones in work;");
    }

    @Test
    void itSaysThatAnOpenJobOfFewHoursChangesNothing() {
        assertThat(picture(1, 3).orElseThrow().title())
                .contains("1.03 hours for each hour quoted; the one still on the bench does not change that");
    }

    @Test
    void aShopWithNothingInWorkHasNoSuchPicture() {
        assertThat(picture(0, 0)).isEmpty();
        assertThat(Pictures.of(review(0, 0)))
                .noneMatch(picture -> picture.name().equals("still-on-the-bench"));
    }

    private static Optional<Picture> picture(int open, int days) {
        return new StillOnTheBench(new ChartContext(review(open, days), ChartContext.Audience.OWNER)).picture();
    }

    /** Thirty refrets done, and open ones worked on for three hours a day from the third day on. */
    private static Review review(int open, int days) {
        ShopBuilder shop = new ShopBuilder().asOf(AS_OF.toString()).type("refret", 10);
        for (int i = 0; i < 30; i++) {
            shop.ticket(String.format(Locale.ROOT, "T%03d", i)).line("refret", 10);
            shop.logged("Ada", "1", HOURS[i % HOURS.length]);
        }
        for (int i = 0; i < open; i++) {
            shop.ticket(String.format(Locale.ROOT, "U%03d", i))
                    .opened(AS_OF.minusDays(days).toString())
                    .stillOpen()
                    .line("refret", 10);
            shop.logged("Ada", "1", 3.0 * (days - 2));
        }
        return InventedShop.reviewOf(shop.build(), InventedShop.settings("en", "EUR"));
    }
}
