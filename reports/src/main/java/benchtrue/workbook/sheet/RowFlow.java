package benchtrue.workbook.sheet;

import java.util.List;
import org.apache.poi.ss.usermodel.Name;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.ss.util.CellRangeAddress;

/** Writes a sheet of several short tables from top to bottom, with sentences across its whole width. */
public final class RowFlow {
    private static final float TITLE_POINTS = 21;

    private final Sheet sheet;
    private final Grid grid;
    private final int[] widths;
    private int row;

    /** Takes the width of each column in characters. */
    public RowFlow(Sheet sheet, CellStyles look, int... widths) {
        this.sheet = sheet;
        this.widths = widths.clone();
        grid = new Grid(sheet, look);
        for (int i = 0; i < widths.length; i++) {
            sheet.setColumnWidth(i, widths[i] * 256);
        }
    }

    /** Returns the last row begun, numbered from 1. */
    public int row() {
        return row;
    }

    /** Begins the next row. */
    public Grid next() {
        row++;
        return grid.row(row);
    }

    public void skip(int rows) {
        row += rows;
    }

    public void title(String words) {
        next().tall(TITLE_POINTS).text(words, CellStyles.Kind.TITLE);
    }

    /** Writes headings of figures, except where a column, numbered from 0, holds text. */
    public void headings(List<String> words, Integer... textColumns) {
        float height = 0;
        for (int i = 0; i < words.size(); i++) {
            height = Math.max(height, TextHeight.bold(words.get(i), widths[i]));
        }
        next().tall(height);
        for (int i = 0; i < words.size(); i++) {
            grid.text(words.get(i), kind(i, List.of(textColumns)));
        }
    }

    /** Text that follows figures stands off from them. */
    private static CellStyles.Kind kind(int column, List<Integer> textColumns) {
        if (!textColumns.contains(column)) {
            return CellStyles.Kind.FIGURE_HEADING;
        }
        return column == 0 || textColumns.contains(column - 1) ? CellStyles.Kind.HEADING : CellStyles.Kind.NOTE_HEADING;
    }

    /** Writes words into a column that the row has reached and across all that follow, in as many lines as they need. */
    public void across(String words, int fromColumn) {
        int width = 0;
        for (int i = fromColumn; i < widths.length; i++) {
            width += widths[i];
        }
        grid.tall(TextHeight.of(words, width))
                .text(words, fromColumn == 0 ? CellStyles.Kind.WRAPPED : CellStyles.Kind.NOTE);
        if (fromColumn < widths.length - 1) {
            sheet.addMergedRegion(new CellRangeAddress(row - 1, row - 1, fromColumn, widths.length - 1));
        }
    }

    public void sentence(String words) {
        next();
        across(words, 0);
    }

    /** Writes a figure beside its words, and what it is about. */
    public void fact(String words, double value, CellStyles.Kind kind, String note) {
        next().text(words).skip().skip().number(value, kind);
        about(value, note);
    }

    /** Writes what a figure in the fourth column is about, and that it is not known where it is not. */
    public void about(double value, String note) {
        across(Double.isFinite(value) ? note : note + ": not known", 4);
    }

    /** Names a cell of the last row begun. */
    public void name(String title, char column) {
        name(title, column, row, row);
    }

    /** Names a stretch of a column. */
    public void name(String title, char column, int firstRow, int lastRow) {
        Name name = sheet.getWorkbook().createName();
        name.setNameName(title);
        String first = "$" + column + "$" + firstRow;
        name.setRefersToFormula(
                sheet.getSheetName() + "!" + first + (lastRow > firstRow ? ":$" + column + "$" + lastRow : ""));
    }

    /** Sets what is printed: all of it, landscape, as wide as the paper; the first rows stay in sight. */
    public void finish(int frozenRows) {
        sheet.createFreezePane(1, frozenRows);
        PageSetup.landscape(sheet);
        PageSetup.area(sheet, widths.length, row);
    }
}
