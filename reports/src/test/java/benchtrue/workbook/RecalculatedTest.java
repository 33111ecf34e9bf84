package benchtrue.workbook;

import static org.assertj.core.api.Assertions.assertThat;

import benchtrue.Office;
import benchtrue.ReviewOf;
import benchtrue.ShopBuilder;
import benchtrue.nightly.Review;
import benchtrue.shop.CostBehaviour;
import benchtrue.tables.WriteTables;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A spreadsheet program of another make recalculates every formula and must find what is stored. */
@Tag("office")
class RecalculatedTest {
    private static final double TOLERANCE = 1e-6;

    @TempDir
    Path folder;

    @Test
    void anotherProgramFindsTheStoredValueOfEveryFormula() throws Exception {
        Review review = ReviewOf.shop(shop());
        new WriteWorkbook().write(review, folder);
        Files.writeString(folder.resolve(WriteTables.REVISION), "repair_type\n");
        new WriteRevisionWorkbook().write(review, folder);
        Path recalculated = new Office(folder.resolve("office"))
                .recalculate(folder.resolve("review.xlsx"), folder.resolve(WriteRevisionWorkbook.FILE));
        assertThat(compare("review.xlsx", recalculated)).isGreaterThan(100);
        assertThat(compare(WriteRevisionWorkbook.FILE, recalculated)).isGreaterThan(20);
    }

    private static ShopBuilder shop() {
        ShopBuilder shop = new ShopBuilder()
                .type("setup", 1.5)
                .type("refret", 12)
                .wage("ana", 30, "2020-01-01")
                .overhead("2026-01", "rent", 2_000, CostBehaviour.FIXED)
                .overhead("2026-02", "rent", 2_200, CostBehaviour.FIXED);
        for (int i = 0; i < 12; i++) {
            String opened = i < 5 ? "2026-01-05" : "2026-02-05";
            shop.ticket("T" + (100 + i))
                    .opened(opened)
                    .line("refret", 12)
                    .line("setup", 1.5)
                    .whole("ana", 18 + i % 4);
            shop.ticket("R" + (100 + i)).opened(opened).line("refret", 12).logged("ana", "1", 17 + i % 4);
            shop.ticket("S" + (100 + i)).opened(opened).line("setup", 1.5).logged("ana", "1", 1 + i % 3 * 0.25);
        }
        return shop;
    }

    /** Compares every formula's value and returns how many there were. */
    private int compare(String file, Path recalculated) throws IOException {
        int formulas = 0;
        try (XSSFWorkbook ours = open(folder.resolve(file));
                XSSFWorkbook theirs = open(recalculated.resolve(file))) {
            for (Sheet sheet : ours) {
                for (Row row : sheet) {
                    for (Cell cell : row) {
                        if (cell.getCellType() == CellType.FORMULA) {
                            same(cell, theirs);
                            formulas++;
                        }
                    }
                }
            }
        }
        return formulas;
    }

    private static void same(Cell cell, XSSFWorkbook theirs) {
        String place = cell.getSheet().getSheetName() + "!" + cell.getAddress() + " = " + cell.getCellFormula();
        Cell other = theirs.getSheet(cell.getSheet().getSheetName())
                .getRow(cell.getRowIndex())
                .getCell(cell.getColumnIndex());
        assertThat(other).as(place).isNotNull();
        assertThat(other.getCellType()).as(place).isEqualTo(CellType.FORMULA);
        assertThat(other.getCachedFormulaResultType()).as(place).isEqualTo(cell.getCachedFormulaResultType());
        if (cell.getCachedFormulaResultType() == CellType.NUMERIC) {
            double stored = cell.getNumericCellValue();
            assertThat(Math.abs(other.getNumericCellValue() - stored))
                    .as(place + ": stored " + stored + ", recalculated " + other.getNumericCellValue())
                    .isLessThanOrEqualTo(TOLERANCE * Math.max(1, Math.abs(stored)));
        } else {
            assertThat(other.getStringCellValue()).as(place).isEqualTo(cell.getStringCellValue());
        }
    }

    private static XSSFWorkbook open(Path file) throws IOException {
        try (InputStream bytes = Files.newInputStream(file)) {
            return new XSSFWorkbook(bytes);
        }
    }
}
