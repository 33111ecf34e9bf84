package benchtrue.revision;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import benchtrue.ShopBuilder;
import benchtrue.format.Figures;
import benchtrue.hours.JobLines;
import benchtrue.hours.SplitHours;
import benchtrue.settings.Settings;
import benchtrue.shop.Money;
import java.util.Locale;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class FollowLastChangeTest {
    /** A refret of 8 h at 100 an hour, from July of 10 h; the set-up stays as it was. */
    private static ShopBuilder twoBooks() {
        return new ShopBuilder()
                .type("refret", 8)
                .type("setup", 1.5)
                .book("2026-07-01")
                .type("refret", 10)
                .type("setup", 1.5)
                .asOf("2026-10-31");
    }

    private static void jobs(ShopBuilder shop, String from, int count, double quoted, double taken) {
        for (int job = 0; job < count; job++) {
            double chance = (job % 5 - 2) * 0.1;
            shop.ticket(from + "-" + String.format(Locale.ROOT, "%03d", job))
                    .opened(from)
                    .line("refret", quoted)
                    .logged("ann", "1", taken + chance);
        }
    }

    private static Optional<LastChange> follow(ShopBuilder shop) {
        JobLines jobs = new SplitHours().split(shop.build(), Settings.DEFAULTS);
        return FollowLastChange.follow(jobs, Figures.of("en", "USD"));
    }

    @Test
    void aBookThatCaughtUpWithTheWorkIsSaidToHaveWorked() {
        ShopBuilder shop = twoBooks();
        jobs(shop, "2026-03-02", 40, 8, 10);
        jobs(shop, "2026-07-06", 35, 10, 10);
        LastChange change = follow(shop).orElseThrow();
        FollowUp refret = change.byType().get(0);
        assertThat(change.byType()).hasSize(1);
        assertThat(refret.hoursBefore().ratio()).isCloseTo(1.25, within(1e-9));
        assertThat(refret.hoursSince().ratio()).isCloseTo(1.00, within(1e-9));
        assertThat(refret.hoursSince().lower()).isBetween(0.99, 1.0);
        assertThat(refret.hoursSince().upper()).isBetween(1.0, 1.01);
        assertThat(change.sentence())
                .contains("changed 1 repair.", "It worked", "1.25", "100", "40 quotes", "35 quotes", "chance alone");
    }

    @Test
    void noVerdictIsGivenOnWhatChanceCouldDoAndAFurtherBookIsCalledSo() {
        ShopBuilder same = twoBooks();
        jobs(same, "2026-03-02", 40, 8, 8);
        jobs(same, "2026-07-06", 35, 10, 10);
        assertThat(follow(same).orElseThrow().sentence()).contains("can't be told from chance");
        ShopBuilder further = twoBooks();
        jobs(further, "2026-03-02", 40, 8, 8);
        jobs(further, "2026-07-06", 35, 10, 8);
        assertThat(follow(further).orElseThrow().sentence()).contains("It did not work");
    }

    @Test
    void theMoneyIsWhatTheNewPriceAddedOnTheJobsThatCame() {
        ShopBuilder shop = twoBooks();
        jobs(shop, "2025-07-01", 73, 8, 10);
        jobs(shop, "2026-07-06", 20, 10, 10);
        FollowUp refret = follow(shop).orElseThrow().byType().get(0);
        // 20 jobs quoted at 1,000 instead of 800; 73 jobs in the 365 days before, 123 days since: 24.6 jobs expected.
        assertThat(refret.realised()).isEqualTo(20 * 200L * Money.UNIT);
        assertThat(refret.forecast()).isEqualTo(49_200_000L / 10_000 * Money.UNIT);
    }

    @Test
    void fewQuotesAreSaidToBeTooFew() {
        ShopBuilder shop = twoBooks();
        jobs(shop, "2026-03-02", 40, 8, 10);
        jobs(shop, "2026-07-06", 3, 10, 10);
        shop.ticket("declined").opened("2026-08-03").line("refret", 10).declined();
        LastChange change = follow(shop).orElseThrow();
        Acceptance since = change.together().quotesSince();
        assertThat(since.quotes()).isEqualTo(4);
        assertThat(since.accepted()).isEqualTo(3);
        // Exact 90 % interval of 3 of 4, Clopper and Pearson (1934): R, binom.test(3, 4, conf.level = 0.9).
        assertThat(since.lower()).isCloseTo(0.2486, within(5e-4));
        assertThat(since.upper()).isCloseTo(0.9873, within(5e-4));
        assertThat(change.sentence()).contains("can't be told yet", "too few quotes to compare");
    }

    @Test
    void aShopThatNeverChangedItsBookIsToldNothing() {
        ShopBuilder shop = new ShopBuilder().type("refret", 8);
        jobs(shop, "2026-03-02", 10, 8, 10);
        assertThat(follow(shop)).isEmpty();
        ShopBuilder ahead = twoBooks().asOf("2026-06-30");
        jobs(ahead, "2026-03-02", 10, 8, 10);
        assertThat(follow(ahead)).isEmpty();
    }
}
