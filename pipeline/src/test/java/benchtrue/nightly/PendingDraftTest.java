package benchtrue.nightly;

import static org.assertj.core.api.Assertions.assertThat;

import benchtrue.ShopBuilder;
import benchtrue.shop.Absent;
import benchtrue.tables.WriteTables;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class PendingDraftTest {
    private static final String CHANGE = "repair_type,book_hours,proposed_hours\r\nrefret,10.0000,12.0000\r\n";
    private static final String NO_CHANGE = "repair_type,book_hours,proposed_hours\r\nrefret,10.0000,10.0000\r\n";

    @TempDir
    Path out;

    /** Refrets that take three tenths more than the book, to the last of October. */
    private static Review review() {
        ShopBuilder shop = new ShopBuilder().asOf("2026-10-31").type("refret", 10);
        for (int i = 0; i < 20; i++) {
            shop.ticket("T" + (10 + i)).line("refret", 10).logged("ada", "1", 12.5 + i % 3 * 0.5);
        }
        return Reviewed.shop(shop, List.of(), new TreeMap<>());
    }

    private void result(String date, String revision) throws IOException {
        Path folder = Files.createDirectories(out.resolve(date));
        Files.writeString(folder.resolve(WriteTables.REVISION), revision);
    }

    private String waitingSince(String lastDecided) throws IOException {
        int decided = lastDecided.isEmpty() ? Absent.DAY : ShopBuilder.day(lastDecided);
        return PendingDraft.of(new PublishedResults(out), decided, review())
                .map(PublishedResults.Result::asOf)
                .map(LocalDate::toString)
                .orElse("");
    }

    @Test
    void aDraftWaitsSinceTheFirstNightThatProposedAChangeAfterTheLastDecision() throws IOException {
        result("2026-07-31", NO_CHANGE);
        result("2026-08-31", CHANGE);
        result("2026-09-15", CHANGE);
        assertThat(waitingSince("")).isEqualTo("2026-08-31");
        assertThat(waitingSince("2026-09-01")).isEqualTo("2026-09-15");
        assertThat(waitingSince("2026-09-15")).isEmpty();
    }

    @Test
    void aDraftOfLessThanAMonthIsNotMentioned() throws IOException {
        result("2026-10-01", CHANGE);
        assertThat(waitingSince("")).isEmpty();
    }

    private static WhatChanged digest(int waitingSince) {
        return new WhatChanged(review(), waitingSince, new DecisionFiles(List.of(), List.of()));
    }

    @Test
    void theDigestSaysSinceWhenItWaits() {
        String digest = digest(ShopBuilder.day("2026-08-31")).first();
        assertThat(digest).contains("Waiting since 31 Aug 2026: a drafted price book that nobody decided on.");
        assertThat(digest(Absent.DAY).first()).doesNotContain("Waiting since");
    }
}
