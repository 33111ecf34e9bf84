package benchtrue.workbook.sheet;

import org.apache.poi.ss.usermodel.DataValidation;
import org.apache.poi.ss.usermodel.DataValidationConstraint;
import org.apache.poi.ss.util.CellRangeAddressList;
import org.apache.poi.xssf.streaming.SXSSFSheet;

/** What may be typed into cells, checked as it is typed; an empty cell always may be. */
public final class TypedCells {
    private TypedCells() {}

    /** Offers some words as a list, and takes no others. */
    public static void oneOf(SXSSFSheet sheet, CellRangeAddressList cells, String expected, String... words) {
        check(sheet, sheet.getDataValidationHelper().createExplicitListConstraint(words), cells, expected);
    }

    /**
     * Takes what a rule lets through.
     *
     * @param expected what may be typed, for the reader
     */
    public static void check(
            SXSSFSheet sheet, DataValidationConstraint rule, CellRangeAddressList cells, String expected) {
        DataValidation validation = sheet.getDataValidationHelper().createValidation(rule, cells);
        validation.createErrorBox("Not understood", "Expected " + expected + ".");
        validation.setShowErrorBox(true);
        validation.setEmptyCellAllowed(true);
        sheet.addValidationData(validation);
    }
}
