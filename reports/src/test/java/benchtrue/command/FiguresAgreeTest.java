package benchtrue.command;

import static org.assertj.core.api.Assertions.assertThat;

import benchtrue.nightly.Night;
import benchtrue.nightly.Progress;
import benchtrue.page.WritePage;
import benchtrue.settings.ReadSettings;
import benchtrue.workbook.WriteWorkbook;
import java.io.IOException;
import java.io.InputStream;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.ss.usermodel.Workbook;
import org.apache.poi.ss.usermodel.WorkbookFactory;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Whatever an owner opens, the sample shop's money is the same to the cent. */
@Tag("proof")
class FiguresAgreeTest {
    private static final Path SAMPLE = Path.of("..", "sample-exports");
    /** Columns of lines.csv, with the heading in the workbook and the balance on the page. */
    private static final Map<String, List<String>> FIGURES = Map.of(
            "labour_revenue", List.of("Labour revenue", "labour billed, else quoted"),
            "parts_revenue", List.of("Parts revenue", "parts billed, else quoted"),
            "labour_cost", List.of("Labour cost", "wages and payroll on-costs"),
            "parts_cost", List.of("Parts cost", "parts and outside work"),
            "overhead_cost", List.of("Overhead carried", "overhead carried by jobs"));

    @TempDir
    static Path folder;

    private static Path results;

    @BeforeAll
    static void aNightOnTheSample() throws IOException {
        Path shop = folder.resolve("shop");
        try (Stream<Path> files = Files.walk(SAMPLE)) {
            for (Path file : files.filter(found -> !found.startsWith(SAMPLE.resolve("out")))
                    .toList()) {
                Files.copy(file, shop.resolve(SAMPLE.relativize(file).toString()));
            }
        }
        results = new Night(List.of(new WriteWorkbook(), new WritePage()), Progress.UNHEARD, Clock.systemUTC(), "test")
                .run(shop, new ReadSettings().read(shop), (int)
                        LocalDate.of(2026, 10, 31).toEpochDay())
                .folder();
    }

    private static BigDecimal cents(BigDecimal amount) {
        return amount.setScale(2, RoundingMode.HALF_EVEN);
    }

    private static BigDecimal inLines(String column) throws IOException {
        List<String> rows = Files.readAllLines(results.resolve("lines.csv"));
        List<String> header = List.of(rows.get(0).split(","));
        int fromTheRight = header.size() - header.indexOf(column);
        BigDecimal sum = BigDecimal.ZERO;
        for (String row : rows.subList(1, rows.size())) {
            String[] cells = row.split(",", -1); // No text stands to the right of these columns.
            String cell = cells[cells.length - fromTheRight];
            sum = cell.isEmpty() ? sum : sum.add(new BigDecimal(cell));
        }
        return cents(sum);
    }

    private static BigDecimal inRecord(String figure) throws IOException {
        String json = Files.readString(results.resolve("run.json"));
        String lines = json.substring(json.indexOf("\"money\""));
        Matcher found = Pattern.compile("\"" + figure + "\": \"([-0-9.]+)\"").matcher(lines);
        assertThat(found.find()).as(figure).isTrue();
        return cents(new BigDecimal(found.group(1)));
    }

    private static BigDecimal onThePage(String balance) throws IOException {
        String page = Files.readString(results.resolve("review.html"), StandardCharsets.UTF_8)
                .replaceAll("<[^>]+>", " ")
                .replaceAll("\\s+", " ");
        Matcher found = Pattern.compile(Pattern.quote(balance) + " [0-9,.]+ lines ([0-9,.]+)")
                .matcher(page);
        assertThat(found.find()).as(balance).isTrue();
        return cents(new BigDecimal(found.group(1).replace(",", "")));
    }

    private static BigDecimal inWorkbook(Sheet lines, String heading) {
        Row headings = IntStream.rangeClosed(0, 5)
                .mapToObj(lines::getRow)
                .filter(row -> row != null && column(row, heading) >= 0)
                .findFirst()
                .orElseThrow();
        int column = column(headings, heading);
        BigDecimal sum = BigDecimal.ZERO;
        for (int row = headings.getRowNum() + 1; row <= lines.getLastRowNum(); row++) {
            Cell cell = lines.getRow(row) == null ? null : lines.getRow(row).getCell(column);
            if (cell != null && cell.getCellType() == CellType.NUMERIC) {
                sum = sum.add(BigDecimal.valueOf(cell.getNumericCellValue()));
            }
        }
        return cents(sum);
    }

    private static int column(Row row, String heading) {
        for (Cell cell : row) {
            if (cell.getCellType() == CellType.STRING
                    && cell.getStringCellValue().equals(heading)) {
                return cell.getColumnIndex();
            }
        }
        return -1;
    }

    @Test
    void linesWorkbookPageAndRecordTellTheSameMoney() throws IOException {
        try (InputStream file = Files.newInputStream(results.resolve("review.xlsx"));
                Workbook workbook = WorkbookFactory.create(file)) {
            for (Map.Entry<String, List<String>> figure : FIGURES.entrySet()) {
                BigDecimal lines = inLines(figure.getKey());
                assertThat(lines).as(figure.getKey()).isPositive();
                assertThat(inRecord(figure.getKey())).as(figure.getKey()).isEqualTo(lines);
                assertThat(inWorkbook(
                                workbook.getSheet("Lines"), figure.getValue().get(0)))
                        .as(figure.getKey())
                        .isEqualTo(lines);
                assertThat(onThePage(figure.getValue().get(1)))
                        .as(figure.getKey())
                        .isEqualTo(lines);
            }
        }
    }

    @Test
    void theMarginOfTheRecordIsThatOfTheLines() throws IOException {
        assertThat(inLines("margin")).isEqualTo(inRecord("margin"));
    }
}
