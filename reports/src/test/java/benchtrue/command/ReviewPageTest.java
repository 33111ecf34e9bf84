package benchtrue.command;

import static org.assertj.core.api.Assertions.assertThat;

import benchtrue.Desk;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The page of a shop of 1,200 tickets, as its owner opens it. */
class ReviewPageTest {
    private static final int MOST_ELEMENTS = 8_000;

    private static String page;

    @TempDir
    Path folder;

    @BeforeAll
    static void aNight() throws IOException {
        page = Files.readString(OneNight.onTheWholeSample().results().resolve("review.html"));
    }

    private static List<String> found(String pattern, String text) {
        return Pattern.compile(pattern)
                .matcher(text)
                .results()
                .map(MatchResult::group)
                .toList();
    }

    @Test
    void aTelephoneLoadsFewerThanEightThousandElements() {
        assertThat(found("<[a-z]", page)).hasSizeBetween(2_000, MOST_ELEMENTS - 1);
    }

    @Test
    void eachLandmarkHasANameOfItsOwn() {
        List<String> named = found("(?<=<section )[^>]*(?=>)", page).stream()
                .map(section -> section.replaceFirst(".*aria-labelledby=\"([^\"]+)\".*", "$1"))
                .map(heading -> page.replaceFirst("(?s).* id=\"" + heading + "\">(.*?)</h[23]>.*", "$1"))
                .map(words -> words.replaceAll("<[^>]+>", "").strip())
                .toList();
        assertThat(named).hasSizeGreaterThan(12).doesNotContain("").doesNotHaveDuplicates();
        assertThat(page).doesNotContain("role=\"region\"");
        assertThat(found("<(nav|main|header)[ >]", page)).doesNotHaveDuplicates();
    }

    @Test
    void theReviewOfAboutAMonthBeforeIsOneStepAway() {
        assertThat(page).contains("<a href=\"../2026-09-30/review.html\">The review before</a>");
        Path results = OneNight.onTheWholeSample().results();
        assertThat(results.resolveSibling("2026-09-30/review.html"))
                .content()
                .contains("Sep 30, 2026")
                .doesNotContain("The review before");
        assertThat(results.resolve("run.json")).content().contains("2026-09-30/run.json");
    }

    @ParameterizedTest
    @ValueSource(ints = {1280, 1366, 1920})
    @Tag("browser")
    void noTableIsCutOnADesk(int width) throws IOException, InterruptedException {
        String measured = page.replaceFirst("<meta http-equiv[^>]*>", "")
                .replace(
                        "</body>",
                        "<script>document.title='widths '+[...document.querySelectorAll('.scroll')]"
                                + ".map(d=>Math.max(d.scrollWidth-d.clientWidth,0)+'/'+d.scrollWidth).join(' ')</script></body>");
        Path file = Files.writeString(folder.resolve("page.html"), measured);
        String dom = new Desk(folder)
                .chromium(
                        "--window-size=" + width + ",900",
                        "--dump-dom",
                        file.toUri().toString());
        assertThat(found("(?<=<title>widths )[^<]+", dom).get(0).split(" "))
                .hasSizeGreaterThan(8)
                .allMatch(one -> one.matches("0/11[0-9]{2}"));
    }
}
