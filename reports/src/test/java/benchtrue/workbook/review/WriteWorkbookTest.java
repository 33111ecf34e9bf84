package benchtrue.workbook.review;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import benchtrue.ReviewOf;
import benchtrue.ShopBuilder;
import benchtrue.nightly.Review;
import benchtrue.shop.CostBehaviour;
import benchtrue.workbook.draft.WriteRevisionWorkbook.JobsSheet;
import benchtrue.workbook.sheet.CellStyles;
import benchtrue.workbook.sheet.SteadyWorkbook;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.CellValue;
import org.apache.poi.ss.usermodel.FormulaEvaluator;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.xssf.usermodel.XSSFTable;
import org.apache.poi.xssf.usermodel.XSSFTableColumn;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class WriteWorkbookTest {
    @TempDir
    Path folder;

    private static ShopBuilder busyShop() {
        ShopBuilder shop = new ShopBuilder()
                .type("setup", 1.5)
                .type("refret", 12)
                .wage("ana", 30, "2020-01-01")
                .overhead("2026-01", "rent", 2_000, CostBehaviour.FIXED);
        for (int i = 0; i < 12; i++) {
            shop.ticket("T" + (100 + i)).line("refret", 12).line("setup", 1.5).whole("ana", 15 + i % 4);
            shop.ticket("S" + (100 + i)).line("setup", 1.5).logged("ana", "1", 1 + i % 3 * 0.25);
        }
        return shop;
    }

    @Test
    void everyFormulaStandsBesideTheValueItGives() throws IOException {
        try (XSSFWorkbook workbook = written(ReviewOf.shop(busyShop()))) {
            int checked = 0;
            FormulaEvaluator evaluator = workbook.getCreationHelper().createFormulaEvaluator();
            for (Sheet sheet : workbook) {
                for (Row row : sheet) {
                    for (Cell cell : row) {
                        checked += cell.getCellType() == CellType.FORMULA ? check(cell, evaluator.evaluate(cell)) : 0;
                    }
                }
            }
            assertThat(checked).isGreaterThan(100);
        }
    }

    private static int check(Cell cell, CellValue value) {
        if (cell.getCachedFormulaResultType() == CellType.NUMERIC) {
            assertThat(value.getNumberValue())
                    .as(cell.getSheet().getSheetName() + cell.getAddress())
                    .isCloseTo(cell.getNumericCellValue(), within(1e-9));
        } else {
            assertThat(value.getStringValue())
                    .as(cell.getSheet().getSheetName() + cell.getAddress())
                    .isEqualTo(cell.getStringCellValue());
        }
        return 1;
    }

    @Test
    void theSameReviewGivesTheSameBytes() throws IOException {
        Review review = ReviewOf.shop(busyShop());
        new WriteWorkbook().write(review, Files.createDirectory(folder.resolve("a")));
        new WriteWorkbook().write(review, Files.createDirectory(folder.resolve("b")));
        assertThat(folder.resolve("a/review.xlsx")).hasSameBinaryContentAs(folder.resolve("b/review.xlsx"));
    }

    @Test
    void textThatLooksLikeAFormulaStaysText() throws IOException {
        ShopBuilder shop = new ShopBuilder()
                .type("=1+1", 2)
                .ticket("=HYPERLINK(\"x\")")
                .of("+cmd", "@w")
                .line("=1+1", 2)
                .whole("ana", 3);
        try (XSSFWorkbook workbook = written(ReviewOf.shop(shop))) {
            Row line = workbook.getSheet(LinesSheet.NAME).getRow(3);
            assertThat(line.getCell(0).getCellType()).isEqualTo(CellType.STRING);
            assertThat(line.getCell(0).getStringCellValue()).isEqualTo("=HYPERLINK(\"x\")");
            assertThat(line.getCell(2).getCellType()).isEqualTo(CellType.STRING);
            assertThat(line.getCell(3).getCellType()).isEqualTo(CellType.STRING);
        }
    }

    @Test
    void aSheetThatCannotHoldAllSaysHowManyAreMissingAndWhereTheyAre() throws IOException {
        Review review = ReviewOf.shop(busyShop());
        try (SteadyWorkbook workbook =
                new SteadyWorkbook(folder.resolve("part.xlsx"), review.ledger().asOf())) {
            CellStyles look = new CellStyles(workbook);
            LinesSheet lines = new LinesSheet(review, 10);
            lines.write(workbook.createSheet(LinesSheet.NAME), look);
            assertThat(lines.whole()).isFalse();
            new RepairsSheet(review, lines).write(workbook.createSheet(RepairsSheet.NAME), look);
            new JobsSheet(review, 10).write(workbook.createSheet(JobsSheet.NAME), look);
            assertThat(workbook.getSheet(LinesSheet.NAME).getLastRowNum()).isEqualTo(12);
            assertThat(text(workbook.getSheet(LinesSheet.NAME)))
                    .startsWith("Only the newest 10 of 36 lines; all are in lines.csv.");
            assertThat(text(workbook.getSheet(JobsSheet.NAME)))
                    .isEqualTo("Only the newest 10 of 36 jobs; all are in lines.csv.");
            assertThat(text(workbook.getSheet(RepairsSheet.NAME))).contains("only the newest lines", "over all lines");
            assertThat(workbook.getSheet(RepairsSheet.NAME).getRow(5).getCell(3).getCellType())
                    .isEqualTo(CellType.NUMERIC);
        }
    }

    private static String text(Sheet sheet) {
        return sheet.getRow(1).getCell(0).getStringCellValue();
    }

    @Test
    void rowsAreTablesThatCanBeSortedWithTheHeadingsOfTheirCells() throws IOException {
        try (XSSFWorkbook workbook = written(ReviewOf.shop(busyShop()))) {
            for (String name : List.of("LinesTable", "RepairsTable")) {
                XSSFTable table = workbook.getTable(name);
                Sheet sheet = table.getXSSFSheet();
                assertThat(table.getEndRowIndex()).as(name).isEqualTo(sheet.getLastRowNum());
                Row headings = sheet.getRow(table.getStartRowIndex());
                assertThat(table.getColumns().stream().map(XSSFTableColumn::getName))
                        .containsExactlyElementsOf(texts(headings))
                        .doesNotHaveDuplicates();
            }
        }
    }

    private static List<String> texts(Row row) {
        List<String> texts = new ArrayList<>();
        row.forEach(cell -> texts.add(cell.getStringCellValue()));
        return texts;
    }

    @Test
    void nothingLiesBesideTheWorkbooksOnceTheyAreWritten() throws IOException {
        written(ReviewOf.shop(busyShop())).close();
        assertThat(folder).isDirectoryContaining("glob:**/review.xlsx").isDirectoryNotContaining("glob:**/*.xml");
    }

    @Test
    void aReaderThatHoldsToTheFormatFindsFontsInItsOrderATitleAndChartsWithWords() throws IOException {
        List<String> order = List.of("b", "i", "sz", "color", "name", "family", "scheme");
        try (XSSFWorkbook workbook = written(ReviewOf.shop(busyShop()))) {
            for (int i = 0; i < workbook.getNumberOfFonts(); i++) {
                List<String> parts = new ArrayList<>();
                for (var n = workbook.getFontAt(i).getCTFont().getDomNode().getFirstChild(); n != null; ) {
                    parts.add(n.getLocalName());
                    n = n.getNextSibling();
                }
                assertThat(order).containsAll(parts);
                assertThat(parts).contains("name").isSortedAccordingTo(Comparator.comparing(order::indexOf));
            }
            assertThat(workbook.getProperties().getCoreProperties().getTitle()).startsWith("Benchtrue: review of 20");
            int charts = 0;
            for (Sheet sheet : workbook) {
                var drawing = workbook.getSheet(sheet.getSheetName()).getDrawingPatriarch();
                if (drawing != null) {
                    for (var anchor : drawing.getCTDrawing().getTwoCellAnchorList()) {
                        var named =
                                anchor.getGraphicFrame().getNvGraphicFramePr().getCNvPr();
                        assertThat(named.getName()).doesNotStartWith("Diagramm").contains(" ");
                        assertThat(named.getDescr()).startsWith("Bars: ");
                        charts++;
                    }
                }
            }
            assertThat(charts).isPositive();
        }
    }

    @Test
    void whatTheShopDidNotRecordIsAnEmptyCell() throws IOException {
        ShopBuilder shop =
                new ShopBuilder().type("setup", 2).ticket("T1").line("setup", 2).whole("ana", 3);
        try (XSSFWorkbook workbook = written(ReviewOf.shop(shop))) {
            Row line = workbook.getSheet(LinesSheet.NAME).getRow(3);
            assertThat(line.getCell(16)).as("labour cost without wages").isNull();
            assertThat(line.getCell(19).getStringCellValue()).as("margin").isEmpty();
        }
    }

    private XSSFWorkbook written(Review review) throws IOException {
        new WriteWorkbook().write(review, folder);
        try (InputStream bytes = Files.newInputStream(folder.resolve("review.xlsx"))) {
            return new XSSFWorkbook(bytes);
        }
    }
}
