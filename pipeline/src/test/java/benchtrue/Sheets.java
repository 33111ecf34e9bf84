package benchtrue;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.Map;
import org.apache.poi.xssf.usermodel.XSSFRow;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;

/** Writes a workbook of several sheets; a number is written as one, everything else as text. */
public final class Sheets {
    private Sheets() {}

    /** Returns a workbook; a row is its cells with {@code |} between them. */
    public static byte[] of(Map<String, List<String>> sheets) {
        try (XSSFWorkbook book = new XSSFWorkbook();
                ByteArrayOutputStream out = new ByteArrayOutputStream()) {
            sheets.forEach((name, rows) -> {
                XSSFSheet sheet = book.createSheet(name);
                for (int row = 0; row < rows.size(); row++) {
                    write(sheet.createRow(row), rows.get(row).split("\\|", -1));
                }
            });
            book.write(out);
            return out.toByteArray();
        } catch (IOException failed) {
            throw new UncheckedIOException(failed);
        }
    }

    private static void write(XSSFRow row, String... cells) {
        for (int cell = 0; cell < cells.length; cell++) {
            if (cells[cell].matches("-?\\d+(\\.\\d+)?")) {
                row.createCell(cell).setCellValue(Double.parseDouble(cells[cell]));
            } else if (!cells[cell].isEmpty()) {
                row.createCell(cell).setCellValue(cells[cell]);
            }
        }
    }
}
