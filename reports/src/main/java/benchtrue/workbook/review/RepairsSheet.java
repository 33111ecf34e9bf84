package benchtrue.workbook.review;

import benchtrue.findings.RepairFinding;
import benchtrue.nightly.Review;
import benchtrue.reconcile.Ledger;
import benchtrue.shop.Hours;
import benchtrue.shop.RepairType;
import benchtrue.workbook.sheet.Amounts;
import benchtrue.workbook.sheet.CellStyles;
import benchtrue.workbook.sheet.Grid;
import benchtrue.workbook.sheet.Heading;
import benchtrue.workbook.sheet.PageSetup;
import benchtrue.workbook.sheet.TextHeight;
import java.util.List;
import java.util.Optional;
import org.apache.poi.ss.usermodel.Name;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.xssf.streaming.SXSSFSheet;

/** One row a repair type, worst loss first, worked out by formulas over the lines where all lines are on their sheet. */
public final class RepairsSheet {
    public static final String NAME = "Repairs";
    private static final int FIRST_ROW = 6;
    private static final int WHY_WIDTH = 50;
    private static final List<Heading> HEADINGS = List.of(
            Heading.text("Repair", 25),
            Heading.text("In the price book as", 15),
            Heading.text("Family", 11),
            Heading.figure("Jobs", 6),
            Heading.figure("Quoted hours against today's book", 10),
            Heading.figure("Bench hours", 9),
            Heading.figure("Hours putting it right", 9),
            Heading.figure("Hours per quoted hour", 7),
            Heading.figure("at least (90 % sure)", 8),
            Heading.figure("at most (90 % sure)", 8),
            Heading.figure("Usual job, hours per quoted hour", 9),
            Heading.figure("Lost a year (money; minus is gained)", 10),
            Heading.figure("lost at least (90 % sure)", 9),
            Heading.figure("lost at most (90 % sure)", 9),
            Heading.note("Verdict", 13),
            Heading.note("Why", WHY_WIDTH),
            Heading.figure("Hours a year beyond the quote", 10),
            Heading.figure("at least (90 % sure), h", 9),
            Heading.figure("at most (90 % sure), h", 9),
            Heading.note("Chance alone would seldom show it", 11),
            Heading.note("Leans", 11));

    /** The columns that are printed; what follows is the working. */
    private static final int PRINTED = 16;

    private final Review review;
    private final LinesSheet lines;
    private final Ledger ledger;
    private final RepairMoney money;

    RepairsSheet(Review review, LinesSheet lines) {
        this.review = review;
        this.lines = lines;
        this.ledger = review.ledger();
        money = new RepairMoney(review);
    }

    void write(SXSSFSheet sheet, CellStyles look) {
        Grid grid = new Grid(sheet, look);
        grid.row(1).text("Which repairs are quoted too low", CellStyles.Kind.TITLE);
        grid.row(2)
                .text(
                        lines.whole()
                                ? "Jobs and hours are formulas over the sheet Lines: change a line there and they follow. Money and verdicts follow the yellow cells."
                                : "The sheet Lines holds only the newest lines, so hours here are plain numbers over all lines. Money and verdicts follow the yellow cells.");
        String currency = review.settings().currency();
        input(
                sheet,
                grid.row(3).text("Shop rate (" + currency + " a bench hour)"),
                RepairMoney.SHOP_RATE,
                3,
                review.costs().shopRate());
        input(
                sheet,
                grid.row(4).text("Big enough to matter (" + currency + " a year)"),
                RepairMoney.MATTERS,
                4,
                review.settings().materiality(review.costs().shopRate()));
        Heading.write(HEADINGS, FIRST_ROW - 1, sheet, grid);
        int row = FIRST_ROW;
        for (RepairFinding finding : worstFirst()) {
            repair(grid.row(row), row, finding);
            row++;
        }
        Heading.table("RepairsTable", HEADINGS, FIRST_ROW - 1, row - 1, sheet);
        PageSetup.area(sheet, PRINTED, row - 1);
    }

    private static void input(Sheet sheet, Grid grid, String title, int row, long amount) {
        grid.number(Amounts.money(amount), CellStyles.Kind.INPUT);
        Name name = sheet.getWorkbook().createName();
        name.setNameName(title);
        name.setRefersToFormula(NAME + "!$B$" + row);
    }

    /** Returns the row of a repair type, numbered from 1. */
    int row(int repairType) {
        List<RepairFinding> rows = worstFirst();
        int row = FIRST_ROW;
        while (rows.get(row - FIRST_ROW).repairType() != repairType) {
            row++;
        }
        return row;
    }

    private List<RepairFinding> worstFirst() {
        return review.answers().worstFirst();
    }

    private void repair(Grid grid, int row, RepairFinding finding) {
        String key = ledger.repairTypes().name(finding.repairType());
        Optional<RepairType> type = ledger.books().type(key, ledger.asOf());
        grid.tall(TextHeight.of(finding.why(), WHY_WIDTH))
                .text(type.map(RepairType::title).orElse(key), CellStyles.Kind.WRAPPED)
                .text(key)
                .text(type.map(RepairType::family).orElse(""));
        sums(grid, row, finding);
        grid.formula(
                        "IF(E#>0,(F#+G#)/E#,\"\")".replace("#", Integer.toString(row)),
                        finding.loadFactor(),
                        CellStyles.Kind.RATIO)
                .number(finding.lower(), CellStyles.Kind.RATIO)
                .number(finding.upper(), CellStyles.Kind.RATIO)
                .number(finding.typicalFactor(), CellStyles.Kind.RATIO);
        money.lost(grid, row, finding);
        grid.text(finding.why(), CellStyles.Kind.NOTE);
        money.working(grid, finding);
    }

    private void sums(Grid grid, int row, RepairFinding finding) {
        double actual = Hours.of(finding.actualSeconds());
        double rework = Hours.of(finding.reworkSeconds());
        if (!lines.whole()) {
            grid.number(finding.lines(), CellStyles.Kind.COUNT)
                    .number(finding.quotedHours(), CellStyles.Kind.HOURS)
                    .number(actual, CellStyles.Kind.HOURS)
                    .number(rework, CellStyles.Kind.HOURS);
            return;
        }
        String which = lines.range("C") + ",$B" + row + "," + lines.range("H") + ",\"yes\")";
        grid.formula("COUNTIFS(" + which, finding.lines(), CellStyles.Kind.COUNT)
                .formula("SUMIFS(" + lines.range("J") + "," + which, finding.quotedHours(), CellStyles.Kind.HOURS)
                .formula("SUMIFS(" + lines.range("M") + "," + which, actual, CellStyles.Kind.HOURS)
                .formula("SUMIFS(" + lines.range("N") + "," + which, rework, CellStyles.Kind.HOURS);
    }
}
