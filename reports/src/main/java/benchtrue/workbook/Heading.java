package benchtrue.workbook;

import java.util.List;
import org.apache.poi.ss.usermodel.Sheet;

/**
 * One column's heading.
 *
 * @param words what it says, with its unit
 * @param width in characters
 */
record Heading(String words, int width) {
    /** A heading takes up to four lines. */
    private static final float HEIGHT_POINTS = 62;

    /** Writes headings into a row, sets widths, freezes what stands above the rows and repeats it on paper. */
    static void write(List<Heading> headings, int row, Sheet sheet, Grid grid) {
        grid.row(row).tall(HEIGHT_POINTS);
        for (int i = 0; i < headings.size(); i++) {
            grid.text(headings.get(i).words, Look.Kind.HEADING);
            sheet.setColumnWidth(i, headings.get(i).width * 256);
        }
        sheet.createFreezePane(1, row);
        sheet.setRepeatingRows(new org.apache.poi.ss.util.CellRangeAddress(row - 1, row - 1, -1, -1));
        sheet.getPrintSetup().setLandscape(true);
        sheet.setFitToPage(true);
        sheet.getPrintSetup().setFitWidth((short) 1);
        sheet.getPrintSetup().setFitHeight((short) 0);
    }
}
