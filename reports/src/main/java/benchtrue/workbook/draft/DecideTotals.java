package benchtrue.workbook.draft;

import benchtrue.answers.Answers;
import benchtrue.revision.ProposedChange;
import benchtrue.shop.Money;
import benchtrue.workbook.sheet.CellStyles;
import benchtrue.workbook.sheet.Grid;
import java.util.List;
import org.apache.poi.ss.usermodel.Name;
import org.apache.poi.xssf.streaming.SXSSFSheet;

/** Beside the inputs: how many changes are sure and how many only lean, and what each bring a year, as the rows stand. */
final class DecideTotals {
    private static final int FIRST_COLUMN = DecideColumn.PROPOSED.ordinal();

    private final Answers answers;

    DecideTotals(Answers answers) {
        this.answers = answers;
    }

    /** Writes one line into a row that was begun; nothing below the last. */
    void write(Grid grid, int line) {
        switch (line) {
            case 0 ->
                grid.at(FIRST_COLUMN)
                        .text("Number")
                        .text("If taken")
                        .text("Decided")
                        .text("Changes, and the money a year that they bring");
            case 1 -> line(grid, "sure", "Sure: wrong in the book beyond chance", answers.sure());
            case 2 -> line(grid, "leans", "Only leaning, or by your policy", answers.leaning());
            default -> {
                // The other inputs have no total beside them.
            }
        }
    }

    private static void line(Grid grid, String standing, String words, List<ProposedChange> rows) {
        String which = "RowStanding,\"" + standing + "\"";
        grid.at(FIRST_COLUMN)
                .formula("COUNTIF(" + which + ")", rows.size(), CellStyles.Kind.COUNT)
                .formula(
                        "SUMIF(" + which + ",RowIfTaken)",
                        Money.units(Answers.together(rows)),
                        CellStyles.Kind.WHOLE_MONEY)
                .formula("SUMIF(" + which + ",RowDecided)", 0, CellStyles.Kind.WHOLE_MONEY)
                .text(words);
    }

    /** Names the columns that the totals ask for. */
    void name(SXSSFSheet sheet, int firstRow, int lastRow) {
        name(sheet, "RowStanding", DecideColumn.STANDING, firstRow, lastRow);
        name(sheet, "RowIfTaken", DecideColumn.TAKE_EFFECT, firstRow, lastRow);
        name(sheet, "RowDecided", DecideColumn.EFFECT, firstRow, lastRow);
    }

    private static void name(SXSSFSheet sheet, String title, DecideColumn column, int firstRow, int lastRow) {
        Name name = sheet.getWorkbook().createName();
        name.setNameName(title);
        String letter = "$" + column.letter() + "$";
        name.setRefersToFormula(
                DecideSheet.NAME + "!" + letter + firstRow + ":" + letter + Math.max(firstRow, lastRow));
    }
}
