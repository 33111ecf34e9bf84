package benchtrue.workbook;

import static org.assertj.core.api.Assertions.assertThat;

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
import org.apache.poi.xssf.usermodel.XSSFWorkbook;

/** The formulas of a workbook, and what another spreadsheet program makes of them. */
final class Formulas {
    private static final double TOLERANCE = 1e-6;

    private Formulas() {}

    static XSSFWorkbook open(Path file) throws IOException {
        try (InputStream bytes = Files.newInputStream(file)) {
            return new XSSFWorkbook(bytes);
        }
    }

    static List<Cell> formulas(Sheet sheet) {
        List<Cell> cells = new ArrayList<>();
        for (Row row : sheet) {
            for (Cell cell : row) {
                if (cell.getCellType() == CellType.FORMULA) {
                    cells.add(cell);
                }
            }
        }
        return cells;
    }

    /** Holds a recalculated cell to the value that the program stored with the formula. */
    static void same(Cell stored, Cell recalculated) {
        String place = stored.getSheet().getSheetName() + "!" + stored.getAddress() + " = " + stored.getCellFormula();
        assertThat(recalculated).as(place).isNotNull();
        assertThat(recalculated.getCellType()).as(place).isEqualTo(CellType.FORMULA);
        assertThat(recalculated.getCachedFormulaResultType()).as(place).isEqualTo(stored.getCachedFormulaResultType());
        if (stored.getCachedFormulaResultType() == CellType.NUMERIC) {
            double value = stored.getNumericCellValue();
            assertThat(Math.abs(recalculated.getNumericCellValue() - value))
                    .as(place + ": stored " + value + ", recalculated " + recalculated.getNumericCellValue())
                    .isLessThanOrEqualTo(TOLERANCE * Math.max(1, Math.abs(value)));
        } else {
            assertThat(recalculated.getStringCellValue()).as(place).isEqualTo(stored.getStringCellValue());
        }
    }
}
