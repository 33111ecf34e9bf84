package benchtrue.workbook.sheet;

import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;

/** Fills one row of a sheet from left to right; unknown numbers leave their cell empty. */
public final class Grid {
    private final Sheet sheet;
    private final CellStyles look;
    private Row row;
    private int column;

    public Grid(Sheet sheet, CellStyles look) {
        this.sheet = sheet;
        this.look = look;
    }

    /** Begins a row, numbered from 1 as a person sees it. */
    public Grid row(int number) {
        row = sheet.createRow(number - 1);
        column = 0;
        return this;
    }

    public Grid tall(float points) {
        row.setHeightInPoints(points);
        return this;
    }

    /** Goes on at a column, numbered from 0. */
    public Grid at(int place) {
        column = place;
        return this;
    }

    public Grid skip() {
        column++;
        return this;
    }

    /** Leaves a cell for the owner to fill. */
    public Grid empty(CellStyles.Kind kind) {
        next(kind);
        return this;
    }

    public Grid text(String text, CellStyles.Kind kind) {
        if (!text.isEmpty()) {
            next(kind).setCellValue(text);
        } else {
            column++;
        }
        return this;
    }

    public Grid text(String text) {
        return text(text, CellStyles.Kind.TEXT);
    }

    public Grid number(double value, CellStyles.Kind kind) {
        if (Double.isFinite(value)) {
            next(kind).setCellValue(value);
        } else {
            column++;
        }
        return this;
    }

    /** Writes an amount that is given as text; empty where it was not known. */
    public Grid amount(String decimal) {
        return number(decimal.isEmpty() ? Double.NaN : Double.parseDouble(decimal), CellStyles.Kind.MONEY);
    }

    /** Writes a formula with the value that it has; empty text where the value is unknown. */
    public Grid formula(String formula, double value, CellStyles.Kind kind) {
        Cell cell = next(kind);
        cell.setCellFormula(formula);
        if (Double.isFinite(value)) {
            cell.setCellValue(value);
        } else {
            cell.setCellValue("");
        }
        return this;
    }

    /** Writes a formula that gives text. */
    public Grid formula(String formula, String text, CellStyles.Kind kind) {
        Cell cell = next(kind);
        cell.setCellFormula(formula);
        cell.setCellValue(text);
        return this;
    }

    private Cell next(CellStyles.Kind kind) {
        Cell cell = row.createCell(column++);
        cell.setCellStyle(look.of(kind));
        return cell;
    }
}
