package benchtrue.command;

import static org.assertj.core.api.Assertions.assertThat;

import benchtrue.Desk;
import benchtrue.Office;
import benchtrue.workbook.draft.WriteRevisionWorkbook;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.DataValidation;
import org.apache.poi.ss.usermodel.DataValidationConstraint.ValidationType;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.ss.util.AreaReference;
import org.apache.poi.ss.util.CellReference;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The drafted book is decided on at a screen, or on paper beside the bench first. */
class DraftOnPaperTest {
    private static final Pattern PAGES = Pattern.compile("Pages: +([0-9]+)");

    @TempDir
    Path folder;

    private static XSSFWorkbook draft() throws IOException {
        try (InputStream bytes =
                Files.newInputStream(OneNight.onTheSample().results().resolve(WriteRevisionWorkbook.FILE))) {
            return new XSSFWorkbook(bytes);
        }
    }

    @Test
    void whatIsDecidedIsPrintedWithoutItsWorkingAndItsJobs() throws IOException {
        try (XSSFWorkbook draft = draft()) {
            Sheet decide = draft.getSheet("Decide");
            AreaReference printed = area(draft, decide);
            assertThat(printed.getFirstCell().getRow()).isZero();
            assertThat(printed.getFirstCell().getCol()).isZero();
            assertThat(printed.getLastCell().getRow()).isEqualTo(decide.getLastRowNum());
            Sheet jobs = draft.getSheet("Jobs");
            CellReference nothing = area(draft, jobs).getFirstCell();
            assertThat(area(draft, jobs).isSingleCell()).isTrue();
            assertThat(jobs.getRow(nothing.getRow()).getCell(nothing.getCol())).isNull();
            for (Sheet sheet : draft) {
                assertThat(sheet.getFitToPage()).as(sheet.getSheetName()).isTrue();
                assertThat(sheet.getPrintSetup().getFitWidth())
                        .as(sheet.getSheetName())
                        .isEqualTo((short) 1);
            }
        }
    }

    private static AreaReference area(XSSFWorkbook workbook, Sheet sheet) {
        return new AreaReference(
                workbook.getPrintArea(workbook.getSheetIndex(sheet)), workbook.getSpreadsheetVersion());
    }

    /** A word that stands in an unlocked cell, or is asked for by its heading, is one of a few. */
    @Test
    void everyCellThatTakesAWordOffersItsWords() throws IOException {
        List<String> asked = new ArrayList<>();
        try (XSSFWorkbook draft = draft()) {
            for (Sheet sheet : draft) {
                for (Row row : sheet) {
                    for (Cell cell : row) {
                        if (takesAWord(sheet, cell)) {
                            asked.add(sheet.getSheetName() + " " + cell.getAddress());
                            assertThat(offered((XSSFSheet) sheet, cell))
                                    .as(sheet.getSheetName() + " " + cell.getAddress())
                                    .isTrue();
                        }
                    }
                }
            }
        }
        assertThat(asked).contains("Decide F6").hasSizeGreaterThan(30);
    }

    private static boolean takesAWord(Sheet sheet, Cell cell) {
        if (!sheet.getProtect() || cell.getCellStyle().getLocked()) {
            return false;
        }
        return cell.getCellType() == CellType.STRING || heading(sheet, cell).startsWith("Decision");
    }

    private static String heading(Sheet sheet, Cell cell) {
        for (int row = cell.getRowIndex() - 1; row >= 0; row--) {
            Row above = sheet.getRow(row);
            Cell found = above == null ? null : above.getCell(cell.getColumnIndex());
            if (found != null && found.getCellType() == CellType.STRING) {
                return found.getStringCellValue();
            }
        }
        return "";
    }

    private static boolean offered(XSSFSheet sheet, Cell cell) {
        for (DataValidation rule : sheet.getDataValidations()) {
            boolean list = rule.getValidationConstraint().getValidationType() == ValidationType.LIST;
            if (list
                    && Stream.of(rule.getRegions().getCellRangeAddresses())
                            .anyMatch(region -> region.isInRange(cell))) {
                return true;
            }
        }
        return false;
    }

    @Test
    @Tag("office")
    void theSamplesDraftFillsAtMostEightPages() throws IOException, InterruptedException {
        Path results = OneNight.onTheWholeSample().results().toRealPath();
        Path printed = new Office(folder.resolve("office")).print(results.resolve(WriteRevisionWorkbook.FILE));
        Matcher pages = PAGES.matcher(new Desk(folder).poppler("pdfinfo", printed.toString()));
        assertThat(pages.find()).isTrue();
        assertThat(Integer.parseInt(pages.group(1))).isBetween(3, 8);
    }
}
