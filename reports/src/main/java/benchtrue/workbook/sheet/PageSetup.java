package benchtrue.workbook.sheet;

import org.apache.poi.ss.usermodel.Footer;
import org.apache.poi.ss.usermodel.PageMargin;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.ss.util.CellRangeAddress;

/** How a sheet is printed: as wide as the paper, with narrow margins and its name and page below. */
public final class PageSetup {
    private static final double MARGIN_INCHES = 0.4;
    private static final double FOOTER_INCHES = 0.7;

    private PageSetup() {}

    public static void landscape(Sheet sheet) {
        portrait(sheet);
        sheet.getPrintSetup().setLandscape(true);
    }

    static void portrait(Sheet sheet) {
        sheet.setFitToPage(true);
        sheet.getPrintSetup().setFitWidth((short) 1);
        sheet.getPrintSetup().setFitHeight((short) 0);
        for (PageMargin side : new PageMargin[] {PageMargin.LEFT, PageMargin.RIGHT, PageMargin.TOP}) {
            sheet.setMargin(side, MARGIN_INCHES);
        }
        sheet.setMargin(PageMargin.BOTTOM, FOOTER_INCHES);
        Footer footer = sheet.getFooter();
        footer.setLeft("&A");
        footer.setRight("&P / &N");
    }

    /** Prints a row, numbered from 1, on every page. */
    static void repeat(Sheet sheet, int row) {
        sheet.setRepeatingRows(new CellRangeAddress(row - 1, row - 1, -1, -1));
    }

    /** Prints nothing of a table: an empty cell beside it, which fills no page. */
    public static void nothing(Sheet sheet, int columns) {
        sheet.getWorkbook().setPrintArea(sheet.getWorkbook().getSheetIndex(sheet), columns + 1, columns + 1, 0, 0);
    }

    /** Prints the first columns and rows only. */
    public static void area(Sheet sheet, int columns, int rows) {
        sheet.getWorkbook()
                .setPrintArea(sheet.getWorkbook().getSheetIndex(sheet), 0, columns - 1, 0, Math.max(rows - 1, 0));
    }
}
