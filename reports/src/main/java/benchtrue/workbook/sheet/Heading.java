package benchtrue.workbook.sheet;

import java.util.List;
import org.apache.poi.ss.SpreadsheetVersion;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.ss.util.AreaReference;
import org.apache.poi.ss.util.CellReference;
import org.apache.poi.xssf.streaming.SXSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFTable;

/**
 * One column's heading.
 *
 * @param words what it says, with its unit
 * @param width in characters
 * @param kind stands above text or above figures
 */
public record Heading(String words, int width, CellStyles.Kind kind) {
    public static Heading text(String words, int width) {
        return new Heading(words, width, CellStyles.Kind.HEADING);
    }

    /** Stands off from a figure before it. */
    public static Heading note(String words, int width) {
        return new Heading(words, width, CellStyles.Kind.NOTE_HEADING);
    }

    /** Figures stand at the right of their column, and so does their heading. */
    public static Heading figure(String words, int width) {
        return new Heading(words, width, CellStyles.Kind.FIGURE_HEADING);
    }

    /** Writes headings into a row, sets widths, freezes what stands above the rows and repeats it on paper. */
    public static void write(List<Heading> headings, int row, Sheet sheet, Grid grid) {
        float height = 0;
        for (Heading heading : headings) {
            height = Math.max(height, TextHeight.bold(heading.words, heading.width));
        }
        grid.row(row).tall(height);
        for (int i = 0; i < headings.size(); i++) {
            grid.text(headings.get(i).words, headings.get(i).kind);
            sheet.setColumnWidth(i, headings.get(i).width * 256);
        }
        sheet.createFreezePane(1, row);
        PageSetup.landscape(sheet);
        PageSetup.repeat(sheet, row);
    }

    /**
     * Makes the headings and the rows below them a table of the spreadsheet program's own, which can be sorted and filtered.
     * The library would read the columns' names from cells that are on the disk already, so they are given here.
     */
    public static void table(String name, List<Heading> headings, int row, int lastRow, SXSSFSheet sheet) {
        XSSFSheet whole = sheet.getWorkbook().getXSSFWorkbook().getSheet(sheet.getSheetName());
        AreaReference area = new AreaReference(
                new CellReference(row - 1, 0),
                new CellReference(Math.max(lastRow, row + 1) - 1, headings.size() - 1),
                SpreadsheetVersion.EXCEL2007);
        XSSFTable table = whole.createTable(area);
        table.setName(name);
        table.setDisplayName(name);
        for (int i = 0; i < headings.size(); i++) {
            table.getCTTable().getTableColumns().getTableColumnArray(i).setName(headings.get(i).words);
        }
        table.getCTTable().addNewAutoFilter().setRef(area.formatAsString());
    }
}
