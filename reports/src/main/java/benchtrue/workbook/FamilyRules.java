package benchtrue.workbook;

import org.apache.poi.ss.usermodel.DataValidation;
import org.apache.poi.ss.usermodel.DataValidationConstraint;
import org.apache.poi.ss.usermodel.DataValidationConstraint.OperatorType;
import org.apache.poi.ss.usermodel.DataValidationHelper;
import org.apache.poi.ss.util.CellRangeAddressList;
import org.apache.poi.xssf.streaming.SXSSFSheet;

/** What may be typed into the inputs of families; all else on their sheet is locked, without a password. */
final class FamilyRules {
    private FamilyRules() {}

    static void apply(SXSSFSheet sheet, int firstRow, int lastRow) {
        DataValidationHelper helper = sheet.getDataValidationHelper();
        CellRangeAddressList rates =
                new CellRangeAddressList(firstRow - 1, lastRow - 1, FamiliesSheet.OWN_RATE, FamiliesSheet.OWN_RATE);
        rates.addCellRangeAddress(firstRow - 1, FamiliesSheet.OWN_STEP, lastRow - 1, FamiliesSheet.OWN_STEP);
        add(
                sheet,
                helper.createDecimalConstraint(OperatorType.GREATER_THAN, "0", null),
                rates,
                "an amount above 0, or nothing");
        add(
                sheet,
                helper.createDecimalConstraint(OperatorType.BETWEEN, "0.3", "0.95"),
                new CellRangeAddressList(
                        firstRow - 1, lastRow - 1, FamiliesSheet.OWN_COVERAGE, FamiliesSheet.OWN_COVERAGE),
                "a share from 30 % to 95 %, or nothing");
        add(
                sheet,
                helper.createExplicitListConstraint(new String[] {"larger", "break-even", "coverage"}),
                new CellRangeAddressList(firstRow - 1, lastRow - 1, FamiliesSheet.OWN_RULE, FamiliesSheet.OWN_RULE),
                "larger, break-even, coverage or nothing");
        sheet.enableLocking();
        sheet.lockFormatColumns(false);
    }

    private static void add(
            SXSSFSheet sheet, DataValidationConstraint rule, CellRangeAddressList cells, String expected) {
        DataValidation validation = sheet.getDataValidationHelper().createValidation(rule, cells);
        validation.createErrorBox("Not understood", "Expected " + expected + ".");
        validation.setShowErrorBox(true);
        validation.setEmptyCellAllowed(true);
        sheet.addValidationData(validation);
    }
}
