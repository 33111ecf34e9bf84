package benchtrue.page;

import static org.assertj.core.api.Assertions.assertThat;

import benchtrue.InventedShop;
import benchtrue.ShopBuilder;
import benchtrue.nightly.Review;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Collections;
import java.util.List;
import java.util.TreeSet;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class WritePageTest {
    private static final String SCRIPT = "<script>alert(1)</script>\"'><img src=x onerror=alert(1)>&amp;{{7}}";

    @TempDir
    private Path folder;

    private String page(Review review) throws IOException {
        new WritePage().write(review, folder);
        return Files.readString(folder.resolve("review.html"));
    }

    private static List<String> found(String regex, String page) {
        return Pattern.compile(regex)
                .matcher(page)
                .results()
                .map(MatchResult::group)
                .toList();
    }

    @Test
    void theFiveAnswersStandBeforeTheEvidenceAndTheEvidenceBeforeTheFigures() throws IOException {
        String page = page(InventedShop.review());
        assertThat(List.of(
                        "answer-1", "answer-2", "answer-3", "answer-4", "answer-5", "evidence", "figures", "cautions"))
                .isSortedAccordingTo((a, b) -> page.indexOf("id=\"" + a + "\"") - page.indexOf("id=\"" + b + "\""));
        assertThat(page).contains("Refret, bound board</a>");
    }

    @Test
    void everyLinkWithinThePageLandsOnSomething() throws IOException {
        String page = page(InventedShop.review());
        TreeSet<String> ids = new TreeSet<>(found("(?<= id=\")[^\"]+", page));
        assertThat(found("(?<=href=\"#)[^\"]+", page))
                .isNotEmpty()
                .allSatisfy(id -> assertThat(ids).contains(id));
        assertThat(found("(?<= id=\")[^\"]+", page)).doesNotHaveDuplicates();
    }

    @Test
    void thePageAsksForNothingAndRunsNothing() throws IOException {
        String page = page(InventedShop.review());
        assertThat(page).doesNotContain("<script", "<link", "<img", "@import", "url(", "src=");
        assertThat(found("https?://[^\"' )]+", page).stream().distinct()).containsExactly("http://www.w3.org/2000/svg");
    }

    @Test
    void textFromExportsStaysText() throws IOException {
        String page =
                page(InventedShop.review(Collections.nCopies(6, SCRIPT), 120, InventedShop.settings("en", "EUR")));
        assertThat(page).contains("&lt;script&gt;").doesNotContain("<script", "<img", "onerror=alert(1)>\"");
        assertThat(found("<[a-z]+[^>]*onerror", page)).isEmpty();
    }

    @Test
    void aTableThatIsNotThereIsASentenceAndNeverAZero() throws IOException {
        ShopBuilder shop = new ShopBuilder()
                .type("setup", 1.5)
                .without("technicians")
                .without("overheads")
                .without("paid-hours")
                .without("waits")
                .without("parts-usage");
        for (int i = 0; i < 8; i++) {
            shop.ticket("T" + i).line("setup", 1.5).logged("ann", "1", 1.4);
        }
        String page = page(InventedShop.reviewOf(shop.build(), InventedShop.settings("en", "EUR")));
        assertThat(page)
                .contains("Without the table technicians", "Without the table paid-hours", "Without the table waits")
                .contains("<dt>Costs</dt><dd>not known</dd>", "<dt>Paid time in the log</dt><dd>not known</dd>");
    }

    @Test
    void aShopWithoutAFinishedJobStillGetsItsPage() throws IOException {
        ShopBuilder shop = new ShopBuilder().type("setup", 1.5);
        shop.ticket("T1").line("setup", 1.5).stillOpen();
        assertThat(page(InventedShop.reviewOf(shop.build(), InventedShop.settings("en", "XXX"))))
                .contains("No repair is surely under-quoted", "No change is proposed");
    }

    @Test
    void twoNightsOnTheSameRecordsGiveTheSamePage() throws IOException {
        String first = page(InventedShop.review());
        assertThat(page(InventedShop.review())).isEqualTo(first);
    }
}
