package benchtrue.workbook;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import benchtrue.ReviewOf;
import benchtrue.ShopBuilder;
import benchtrue.costing.MarginBridge;
import benchtrue.nightly.Review;
import benchtrue.shop.CostBehaviour;
import benchtrue.shop.Money;
import benchtrue.workbook.review.WriteWorkbook;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.ss.util.CellReference;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class AnswersAndMoneyTest {
    @TempDir
    Path folder;

    private static ShopBuilder twoMonths() {
        ShopBuilder shop = new ShopBuilder()
                .type("setup", 1.5)
                .type("refret", 12)
                .wage("ana", 30, "2020-01-01")
                .overhead("2026-01", "rent", 2_000, CostBehaviour.FIXED)
                .overhead("2026-02", "rent", 2_200, CostBehaviour.FIXED);
        for (int i = 0; i < 12; i++) {
            String opened = i < 5 ? "2026-01-05" : "2026-02-05";
            shop.ticket("R" + (100 + i)).opened(opened).line("refret", 12).logged("ana", "1", 17 + i % 4);
            shop.ticket("S" + (100 + i)).opened(opened).line("setup", 1.5).logged("ana", "1", 1 + i % 3 * 0.25);
        }
        return shop;
    }

    @Test
    void theFirstSheetGivesTheFiveAnswersInTheirOrder() throws IOException {
        try (XSSFWorkbook workbook = written(ReviewOf.shop(twoMonths()))) {
            assertThat(workbook.getSheetName(0)).isEqualTo("Answers");
            assertThat(texts(workbook.getSheetAt(0)).stream()
                            .filter(text -> text.matches("[1-5]\\. .*"))
                            .map(text -> text.substring(0, 1)))
                    .containsExactly("1", "2", "3", "4", "5");
        }
    }

    @Test
    void theRepairThatLosesMostStandsFirstWithARangeThatFollowsTheShopRate() throws IOException {
        try (XSSFWorkbook workbook = written(ReviewOf.shop(twoMonths()))) {
            Sheet answers = workbook.getSheet("Answers");
            Row refret = row(answers, "refret");
            assertThat(refret.getCell(1).getCellFormula()).contains("Repairs!M");
            double before = refret.getCell(1).getNumericCellValue();
            assertThat(before).isPositive().isLessThan(refret.getCell(2).getNumericCellValue());
            Cell rate = cell(
                    workbook.getSheet("Repairs"),
                    new CellReference(workbook.getName("ShopRate").getRefersToFormula()));
            rate.setCellValue(2 * rate.getNumericCellValue());
            double after = workbook.getCreationHelper()
                    .createFormulaEvaluator()
                    .evaluate(refret.getCell(1))
                    .getNumberValue();
            assertThat(after).isCloseTo(2 * before, within(0.06 * before));
        }
    }

    @Test
    void thePartsOfAMonthThatMovedAddUpToTheMarginsBesideThem() throws IOException {
        Review review = ReviewOf.shop(twoMonths());
        MarginBridge bridge = review.costs().shop().monthBridges().get(0);
        try (XSSFWorkbook workbook = written(review)) {
            Row moved = workbook.getSheet("Money").getRow(1 + lastRow(workbook.getSheet("Money"), "Month"));
            double parts = 0;
            for (int part = 4; part <= 10; part++) {
                parts += moved.getCell(part) == null ? 0 : moved.getCell(part).getNumericCellValue();
            }
            assertThat(parts).isCloseTo(moved.getCell(11).getNumericCellValue(), within(1e-6));
            assertThat(moved.getCell(12).getNumericCellValue()).isCloseTo(Money.units(bridge.after()), within(1e-9));
        }
    }

    @Test
    void theMarginByMonthIsAChartOfTheSpreadsheetsOwnOverTheCells() throws IOException {
        try (XSSFWorkbook workbook = written(ReviewOf.shop(twoMonths()))) {
            XSSFSheet money = workbook.getSheet("Money");
            assertThat(money.getDrawingPatriarch().getCharts()).hasSize(1);
            String drawn = money.getDrawingPatriarch()
                    .getCharts()
                    .get(0)
                    .getCTChartSpace()
                    .toString();
            assertThat(drawn).contains("Money!$K$");
        }
    }

    @Test
    void aShopWithoutWagesAndOverheadsIsToldSoAndSeesNoZeros() throws IOException {
        ShopBuilder shop =
                new ShopBuilder().type("setup", 2).ticket("T1").line("setup", 2).whole("ana", 3);
        try (XSSFWorkbook workbook = written(ReviewOf.shop(shop))) {
            assertThat(texts(workbook.getSheet("Money")))
                    .anyMatch(text -> text.startsWith("Without the table technicians"))
                    .anyMatch(text -> text.startsWith("Without the table overheads"));
            CellReference cost =
                    new CellReference(workbook.getName("BenchHourCost").getRefersToFormula());
            assertThat(cell(workbook.getSheet("Money"), cost).getStringCellValue())
                    .isEmpty();
            Row costs = row(workbook.getSheet("Answers"), "Costs");
            assertThat(costs.getCell(1).getCachedFormulaResultType()).isEqualTo(CellType.STRING);
            assertThat(costs.getCell(2).getStringCellValue()).endsWith("not known");
        }
    }

    @Test
    void nobodyIsNamedUnlessTheSettingsAskForIt() throws IOException {
        ShopBuilder shop = twoMonths()
                .ticket("W1")
                .of("acoustic-guitar", "willa")
                .line("setup", 1.5)
                .whole("ana", 2);
        try (XSSFWorkbook workbook = written(ReviewOf.shop(shop))) {
            for (String name : List.of("Answers", "Money")) {
                assertThat(texts(workbook.getSheet(name)))
                        .noneMatch(text -> text.contains("willa") || text.contains("ana "));
            }
        }
    }

    private static Cell cell(Sheet sheet, CellReference place) {
        return sheet.getRow(place.getRow()).getCell(place.getCol());
    }

    private static Row row(Sheet sheet, String first) {
        for (Row row : sheet) {
            if (row.getCell(0) != null
                    && row.getCell(0).getCellType() == CellType.STRING
                    && row.getCell(0).getStringCellValue().equals(first)) {
                return row;
            }
        }
        throw new AssertionError("no row begins with " + first);
    }

    private static int lastRow(Sheet sheet, String first) {
        int last = -1;
        for (Row row : sheet) {
            if (row.getCell(0) != null
                    && row.getCell(0).getCellType() == CellType.STRING
                    && row.getCell(0).getStringCellValue().equals(first)) {
                last = row.getRowNum();
            }
        }
        return last;
    }

    private static List<String> texts(Sheet sheet) {
        List<String> texts = new ArrayList<>();
        for (Row row : sheet) {
            for (Cell cell : row) {
                if (cell.getCellType() == CellType.STRING) {
                    texts.add(cell.getStringCellValue());
                }
            }
        }
        return texts;
    }

    private XSSFWorkbook written(Review review) throws IOException {
        new WriteWorkbook().write(review, folder);
        try (InputStream bytes = Files.newInputStream(folder.resolve("review.xlsx"))) {
            return new XSSFWorkbook(bytes);
        }
    }
}
