package benchtrue.page;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import benchtrue.InventedShop;
import benchtrue.ShopBuilder;
import benchtrue.charts.DrawCharts;
import benchtrue.costing.BenchHour;
import benchtrue.costing.Restatement;
import benchtrue.nightly.Review;
import benchtrue.settings.Disclosure;
import benchtrue.settings.Settings;
import benchtrue.shop.Absent;
import benchtrue.shop.CostBehaviour;
import benchtrue.shop.Hours;
import benchtrue.shop.Money;
import benchtrue.shop.RepairType;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.w3c.dom.Document;
import org.w3c.dom.NodeList;

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
    void everyFigureOfTheFiveAnswersLinksToItsRows() throws IOException {
        String page = page(InventedShop.review());
        String answers = page.substring(page.indexOf("id=\"answers\""), page.indexOf("id=\"evidence\""));
        List<String> told = found("(?s)<li>.*?</li>|<dt>.*?</dd>", answers);
        assertThat(told)
                .hasSizeGreaterThan(12)
                .allSatisfy(figure -> assertThat(figure).contains("href=\"#"));
        assertThat(page).contains("id=\"given-1\"", "id=\"bench-worked\"", "id=\"bench-finished\"");
    }

    @Test
    void aBenchHourCostsWhatItsMonthsAddUpTo() throws IOException {
        Review night = InventedShop.review();
        String page = page(night);
        String together = found("<th scope=\"row\">Together</th>.*?</tr>", page).get(0);
        List<Double> sums = found("(?<=<td class=\"n\">)[0-9\u20ac,.]+", together).stream()
                .map(figure -> Double.valueOf(figure.replaceAll("[\u20ac,]", "")))
                .toList();
        BenchHour hour = night.costs().shop().benchHour();
        assertThat(sums.get(0)).isCloseTo(Hours.of(hour.seconds()), within(1.0));
        assertThat(sums.get(1) / sums.get(0)).isCloseTo(Money.units(hour.cost().wages()), within(0.05));
    }

    @Test
    void aBigShopsPageShowsTheFirstSingleRepairsAndSaysWhereTheRestStand() throws IOException {
        List<String> titles =
                IntStream.range(0, 48).mapToObj(i -> "repair " + i).toList();
        String page = page(InventedShop.review(titles, 1_400, InventedShop.settings("en", "EUR")));
        assertThat(found("id=\"picture-jobs-[^\"]+", page)).hasSize(12);
        assertThat(page).containsPattern("[0-9]+ more pictures of single repairs stand in the folder charts");
    }

    @Test
    void thePageAsksForNothingAndRunsNothing() throws IOException {
        String page = page(InventedShop.review());
        assertThat(page).doesNotContain("<script", "<link", "<img", "@import", "url(", "src=");
        assertThat(found("https?://[^\"' )]+", page).stream().distinct()).containsExactly("http://www.w3.org/2000/svg");
    }

    /** A shop whose every text column tries to run a script. */
    private static Review hostile() {
        ShopBuilder shop = new ShopBuilder();
        String key = "setup" + SCRIPT;
        shop.type(new RepairType(
                key, SCRIPT, SCRIPT, 5_400, 1_500_000, Absent.AMOUNT, List.of(SCRIPT), Absent.AMOUNT, 0));
        for (int i = 0; i < 45; i++) {
            shop.ticket(SCRIPT + i)
                    .opened("2026-0" + (1 + i % 9) + "-10")
                    .of(SCRIPT + i % 2, SCRIPT, SCRIPT)
                    .line(key, 1.5)
                    .logged(SCRIPT, "1", 2 + (i % 7) / 10.0);
        }
        shop.ticket(SCRIPT)
                .opened("2026-10-01")
                .of(SCRIPT, SCRIPT, SCRIPT)
                .line(key, 1.5)
                .logged(SCRIPT, "1", 4);
        shop.stillOpen();
        shop.part("1", SCRIPT, 1, 3)
                .wage(SCRIPT, 25, "2020-01-01")
                .overhead("2026-01", SCRIPT, 900, CostBehaviour.FIXED);
        return InventedShop.reviewOf(shop.build(), InventedShop.settings("en", "EUR", Disclosure.SHOWN));
    }

    @Test
    void textFromExportsStaysText() throws IOException {
        String page = page(hostile());
        String wall = Files.readString(folder.resolve("review-wall.html"));
        assertThat(page).contains("&lt;script&gt;");
        for (String text : List.of(page, wall)) {
            assertThat(text).doesNotContain("<script", "<img");
            assertThat(found("<[a-zA-Z][^>]*\\son[a-z]+=", text)).isEmpty();
        }
    }

    @Test
    void textFromExportsStaysTextInPicturesToo() throws Exception {
        new DrawCharts().write(hostile(), folder);
        try (Stream<Path> files = Files.list(folder.resolve("charts"))) {
            for (Path file : files.filter(f -> f.toString().endsWith(".svg")).toList()) {
                Document svg = DocumentBuilderFactory.newInstance()
                        .newDocumentBuilder()
                        .parse(file.toFile());
                NodeList all = svg.getElementsByTagName("*");
                for (int i = 0; i < all.getLength(); i++) {
                    assertThat(all.item(i).getNodeName())
                            .isIn(
                                    "svg",
                                    "title",
                                    "g",
                                    "text",
                                    "rect",
                                    "line",
                                    "path",
                                    "circle",
                                    "polygon",
                                    "ellipse",
                                    "polyline");
                }
            }
        }
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
                .contains(
                        "<dt><a href=\"#bench-worked\">Costs</a></dt><dd>not known</dd>",
                        "<dt><a href=\"#bench-worked\">Paid time in the log</a></dt><dd>not known</dd>");
    }

    @Test
    void aShopWithoutAFinishedJobStillGetsItsPage() throws IOException {
        ShopBuilder shop = new ShopBuilder().type("setup", 1.5);
        shop.ticket("T1").line("setup", 1.5).stillOpen();
        assertThat(page(InventedShop.reviewOf(shop.build(), InventedShop.settings("en", "XXX"))))
                .contains("No repair is surely under-quoted", "No change is proposed");
    }

    @Test
    void aSealedMonthThatChangedIsTold() throws IOException {
        Review night = InventedShop.review();
        Restatement changed = new Restatement(
                2026 * 12 + 8, "earned labour_cost", "12.5000", "", List.of("ticket T00001 labour cost"));
        String page = page(new Review(
                night.settings(),
                night.ledger(),
                night.jobs(),
                night.costs(),
                night.calendar(),
                night.findings(),
                night.revision(),
                night.balances(),
                night.notices(),
                List.of(changed),
                night.setAside(),
                List.of(),
                Optional.empty()));
        assertThat(page)
                .contains("Sep\u00a02026</th><td>earned labour cost</td><td class=\"n\">12.5000</td>")
                .contains("<td class=\"n\">not known</td><td>ticket T00001 labour cost</td>");
    }

    @Test
    void theCopyForTheWallIsWrittenOnlyWhereTheOwnerAsksForIt() throws IOException {
        page(InventedShop.review());
        assertThat(folder.resolve("review-wall.html")).doesNotExist();
    }

    @Test
    void theWallShowsNoMoneyNoTicketAndNoName() throws IOException {
        Settings settings = InventedShop.settings("en", "EUR", Disclosure.SHOWN);
        page(InventedShop.review(InventedShop.TITLES, 240, settings));
        String wall = Files.readString(folder.resolve("review-wall.html")).replaceAll("(?s)<style>.*?</style>", "");
        assertThat(wall).contains("Refret, bound board").contains("9.00\u00a0h \u2192");
        assertThat(wall).doesNotContain("\u20ac", "EUR", "T00", ">ann<", ">bo<");
        assertThat(found("\\b(ann|bo)\\b", wall)).isEmpty();
    }

    @Test
    void twoNightsOnTheSameRecordsGiveTheSamePage() throws IOException {
        String first = page(InventedShop.review());
        assertThat(page(InventedShop.review())).isEqualTo(first);
    }
}
