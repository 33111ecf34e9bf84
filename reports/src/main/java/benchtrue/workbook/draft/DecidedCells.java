package benchtrue.workbook.draft;

import benchtrue.revision.CellFault;
import benchtrue.shop.ExitCode;
import benchtrue.shop.Refusal;
import benchtrue.workbook.sheet.Amounts;
import java.util.ArrayList;
import java.util.List;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.Name;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.ss.usermodel.Workbook;
import org.apache.poi.ss.util.CellReference;

/** Cells of a sheet that a person may have changed; what can't be used is refused with the cell's name. */
final class DecidedCells {
    private final String file;
    private final Workbook workbook;
    private final Sheet sheet;

    DecidedCells(String file, Workbook workbook, Sheet sheet) {
        this.file = file;
        this.workbook = workbook;
        this.sheet = sheet;
    }

    /** Refuses a sheet whose columns were moved, with every cell that is not in its place. */
    void expectHeadings(int number) {
        Row row = sheet.getRow(number - 1);
        List<String> moved = new ArrayList<>();
        for (DecideColumn column : DecideColumn.values()) {
            Value found = row == null ? new Value(null, column.letter() + number) : at(row, column);
            if (!found.text().equals(column.heading().words())) {
                moved.add(found.fault("", "the heading \"" + column.heading().words() + "\"")
                        .words());
            }
        }
        if (!moved.isEmpty()) {
            throw new Refusal(
                    ExitCode.UNUSABLE_FILE,
                    file + ": found columns that are not in their place:\n  " + String.join("\n  ", moved)
                            + "\nPut them back, or decide in the newest workbook. Nothing was written.");
        }
    }

    Value at(Row row, DecideColumn column) {
        return at(row, column.ordinal());
    }

    /** Returns the cell of a row in a column, numbered from 0. */
    Value at(Row row, int column) {
        return new Value(row.getCell(column), CellReference.convertNumToColString(column) + (row.getRowNum() + 1));
    }

    Value named(String title) {
        Name name = workbook.getName(title);
        if (name == null || name.isDeleted()) {
            throw new Refusal(
                    ExitCode.UNUSABLE_FILE,
                    file + ": found no cell named " + title
                            + ", expected the named cells of the draft to be left in place.");
        }
        CellReference place = new CellReference(name.getRefersToFormula());
        Row row = sheet.getRow(place.getRow());
        String address = new CellReference(place.getRow(), place.getCol()).formatAsString();
        return new Value(row == null ? null : row.getCell(place.getCol()), address);
    }

    /** One cell, with the value that the spreadsheet program stored. */
    final class Value {
        private final Cell cell;
        private final String address;

        Value(Cell cell, String address) {
            this.cell = cell;
            this.address = address;
        }

        String address() {
            return address;
        }

        private CellType type() {
            if (cell == null) {
                return CellType.BLANK;
            }
            return cell.getCellType() == CellType.FORMULA ? cell.getCachedFormulaResultType() : cell.getCellType();
        }

        boolean isEmpty() {
            return type() == CellType.BLANK || (type() == CellType.STRING && text().isBlank());
        }

        String text() {
            return switch (type()) {
                case STRING -> cell.getStringCellValue();
                case NUMERIC -> Amounts.plain(cell.getNumericCellValue());
                default -> "";
            };
        }

        boolean isNumber() {
            return type() == CellType.NUMERIC;
        }

        /** Returns the number of a cell that holds one. */
        double number() {
            return cell.getNumericCellValue();
        }

        /** Returns the fault that something else was expected here, in the row of a repair. */
        CellFault fault(String repair, String expected) {
            String found = isEmpty() ? "nothing" : (isNumber() ? "" : "the text ") + "\"" + text() + "\"";
            return new CellFault(sheet.getSheetName(), address, repair, found, expected);
        }
    }
}
