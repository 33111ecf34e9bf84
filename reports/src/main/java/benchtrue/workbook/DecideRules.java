package benchtrue.workbook;

import org.apache.poi.ss.usermodel.DataValidation;
import org.apache.poi.ss.usermodel.DataValidationConstraint;
import org.apache.poi.ss.usermodel.DataValidationConstraint.OperatorType;
import org.apache.poi.ss.usermodel.DataValidationHelper;
import org.apache.poi.ss.util.CellRangeAddressList;
import org.apache.poi.xssf.streaming.SXSSFSheet;

/** What may be typed where: decisions are checked as they are typed, and all else is locked, without a password. */
final class DecideRules {
    private DecideRules() {}

    static void apply(SXSSFSheet sheet, int firstRow, int lastRow) {
        DataValidationHelper helper = sheet.getDataValidationHelper();
        add(
                sheet,
                helper.createExplicitListConstraint(new String[] {"take", "keep", "own"}),
                DecideColumn.DECISION,
                firstRow,
                lastRow,
                "take, keep or own; empty leaves the row as it is");
        add(
                sheet,
                helper.createDecimalConstraint(OperatorType.BETWEEN, "0.05", "2000"),
                DecideColumn.OWN_HOURS,
                firstRow,
                lastRow,
                "bench hours, such as 11.5");
        add(
                sheet,
                helper.createDateConstraint(OperatorType.GREATER_THAN, "DATE(2000,1,1)", null, null),
                DecideColumn.UNTIL,
                firstRow,
                lastRow,
                "a date, such as 2027-06-30");
        sheet.enableLocking();
        sheet.lockFormatColumns(false);
        sheet.lockAutoFilter(false);
        Paper.area(sheet, DecideColumn.LAST_PRINTED.ordinal() + 1, lastRow);
    }

    private static void add(
            SXSSFSheet sheet,
            DataValidationConstraint rule,
            DecideColumn column,
            int firstRow,
            int lastRow,
            String expected) {
        int place = column.ordinal();
        DataValidation validation = sheet.getDataValidationHelper()
                .createValidation(rule, new CellRangeAddressList(firstRow - 1, lastRow - 1, place, place));
        validation.createErrorBox("Not understood", "Expected " + expected + ".");
        validation.setShowErrorBox(true);
        validation.setEmptyCellAllowed(true);
        sheet.addValidationData(validation);
    }
}
