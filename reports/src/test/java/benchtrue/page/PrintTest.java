package benchtrue.page;

import static org.assertj.core.api.Assertions.assertThat;

import benchtrue.Desk;
import benchtrue.InventedShop;
import benchtrue.nightly.Report;
import benchtrue.nightly.Review;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The page on paper, printed by a browser that shows screens dark. */
@Tag("browser")
class PrintTest {
    private static final String LONG = "Neck reset, dovetail joint steamed, shimmed and refitted cold";
    private static final Pattern WORD =
            Pattern.compile("<word xMin=\"([0-9.]+)\" yMin=\"([0-9.]+)\" xMax=\"([0-9.]+)\" yMax=\"([0-9.]+)\">");

    @TempDir
    Path folder;

    private Desk desk;

    private Path print(Report report, String file, Review review, String paper)
            throws IOException, InterruptedException {
        desk = new Desk(folder);
        report.write(review, folder);
        String page = Files.readString(folder.resolve(file))
                .replace("</head>", "<style>@page { size: " + paper + "; }</style></head>");
        Path sheet = Files.writeString(folder.resolve("paper.html"), page);
        Path pdf = folder.resolve("paper.pdf");
        desk.chromium(
                "--blink-settings=preferredColorScheme=0",
                "--no-pdf-header-footer",
                "--print-to-pdf=" + pdf,
                sheet.toUri().toString());
        return pdf;
    }

    private static Review shop(String names) {
        List<String> titles = names.equals("short")
                ? InventedShop.TITLES
                : IntStream.range(0, 30).mapToObj(i -> LONG).toList();
        return InventedShop.review(titles, 30 * titles.size(), InventedShop.settings("en", "EUR"));
    }

    @ParameterizedTest
    @CsvSource({"A4, 595, 842, short", "Letter, 612, 792, short", "A4, 595, 842, long", "Letter, 612, 792, long"})
    void theFirstSheetHoldsTheFiveAnswersAndNothingIsCutOrDark(String paper, int width, int height, String names)
            throws IOException, InterruptedException {
        Path pdf = print(new WritePage(), "review.html", shop(names), paper);
        String first = desk.poppler("pdftotext", "-f", "1", "-l", "1", pdf.toString(), "-");
        assertThat(first)
                .contains("What loses most a year", "What to change", "What was given away", "Whom to call")
                .contains("What a bench hour costs", "Paid time in the log", "Price book");
        String second = desk.poppler("pdftotext", "-f", "2", "-l", "2", pdf.toString(), "-");
        assertThat(second.strip()).startsWith("The evidence");
        within(desk.poppler("pdftotext", "-bbox", pdf.toString(), "-"), width, height, 1_000);
        desk.poppler("pdftoppm", "-r", "20", "-png", pdf.toString(), "sheet");
        white(folder, 5);
    }

    @ParameterizedTest
    @CsvSource({
        "price-list.html, A4, 595, 842",
        "price-list.html, Letter, 612, 792",
        "quote-table.html, A4, 595, 842",
        "quote-table.html, Letter, 612, 792",
        "price-explained.html, A4, 595, 842",
        "price-explained.html, Letter, 612, 792"
    })
    void whatIsHandedOutIsPrintedWholeOnEitherPaper(String file, String paper, int width, int height)
            throws IOException, InterruptedException {
        Path pdf = print(new WriteBookPages(), file, shop("long"), paper);
        assertThat(desk.poppler("pdftotext", pdf.toString(), "-")).contains("Neck reset", "steamed");
        within(desk.poppler("pdftotext", "-bbox", pdf.toString(), "-"), width, height, 300);
        desk.poppler("pdftoppm", "-r", "20", "-png", pdf.toString(), "sheet");
        white(folder, 0);
    }

    private static void within(String boxes, int width, int height, int least) {
        Matcher word = WORD.matcher(boxes);
        int words = 0;
        while (word.find()) {
            words++;
            assertThat(Double.parseDouble(word.group(1))).as(word.group()).isGreaterThan(20);
            assertThat(Double.parseDouble(word.group(2))).as(word.group()).isGreaterThan(20);
            assertThat(Double.parseDouble(word.group(3))).as(word.group()).isLessThan(width - 20);
            assertThat(Double.parseDouble(word.group(4))).as(word.group()).isLessThan(height - 20);
        }
        assertThat(words).isGreaterThan(least);
    }

    /** Every sheet's margin is paper, and most of the sheet too. */
    private static void white(Path folder, int least) throws IOException {
        List<Path> sheets;
        try (var files = Files.list(folder)) {
            sheets = files.filter(file -> file.getFileName().toString().matches("sheet.*png"))
                    .toList();
        }
        assertThat(sheets).hasSizeGreaterThan(least);
        for (Path sheet : sheets) {
            BufferedImage image = ImageIO.read(sheet.toFile());
            int light = 0;
            for (int x = 0; x < image.getWidth(); x++) {
                for (int y = 0; y < image.getHeight(); y++) {
                    light += (image.getRGB(x, y) & 0xff) > 200 ? 1 : 0;
                }
            }
            assertThat(image.getRGB(2, 2) & 0xffffff).isEqualTo(0xffffff);
            assertThat(light).isGreaterThan(image.getWidth() * image.getHeight() * 6 / 10);
        }
    }
}
