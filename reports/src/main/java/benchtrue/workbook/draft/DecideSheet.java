package benchtrue.workbook.draft;

import benchtrue.answers.Answers;
import benchtrue.findings.RepairFinding;
import benchtrue.format.Words;
import benchtrue.nightly.Review;
import benchtrue.reconcile.Ledger;
import benchtrue.revision.ProposalInputs;
import benchtrue.revision.ProposedChange;
import benchtrue.settings.Policy;
import benchtrue.shop.Absent;
import benchtrue.shop.Hours;
import benchtrue.shop.Money;
import benchtrue.shop.PriceBook;
import benchtrue.shop.RepairType;
import benchtrue.workbook.sheet.CellStyles;
import benchtrue.workbook.sheet.Grid;
import benchtrue.workbook.sheet.Heading;
import benchtrue.workbook.sheet.PageSetup;
import benchtrue.workbook.sheet.TextHeight;
import benchtrue.workbook.sheet.TypedCells;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.apache.poi.ss.usermodel.DataValidationConstraint.OperatorType;
import org.apache.poi.ss.usermodel.DataValidationHelper;
import org.apache.poi.ss.util.CellRangeAddressList;
import org.apache.poi.xssf.streaming.SXSSFSheet;

/** One row a repair type of the newest adopted book, on which the owner decides, in the order of the answers. */
public final class DecideSheet {
    public static final String NAME = "Decide";
    public static final int FIRST_ROW = 14;

    private final Review review;
    private final Ledger ledger;
    private final PriceBook against;
    private final String draft;
    private final FamiliesSheet families;
    private final Map<Integer, RepairFinding> findings;

    DecideSheet(Review review, String draft, FamiliesSheet families) {
        this.review = review;
        this.ledger = review.ledger();
        this.against = review.revision().against(ledger);
        this.draft = draft;
        this.families = families;
        findings = review.findings().repairs().stream()
                .collect(Collectors.toMap(RepairFinding::repairType, Function.identity()));
    }

    void write(SXSSFSheet sheet, CellStyles look) {
        Grid grid = new Grid(sheet, look);
        Answers answers = review.answers();
        List<ProposedChange> changes = answers.drafted();
        DecideTotals totals = new DecideTotals(answers);
        new DecideInputs(review, draft, families).write(sheet, grid, totals);
        List<Heading> headings =
                Arrays.stream(DecideColumn.values()).map(DecideColumn::heading).toList();
        Heading.write(headings, FIRST_ROW - 1, sheet, grid);
        int row = FIRST_ROW;
        for (ProposedChange change : changes) {
            change(grid.row(row), row, change);
            row++;
        }
        totals.name(sheet, FIRST_ROW, row - 1);
        Heading.table("DecideTable", headings, FIRST_ROW - 1, row - 1, sheet);
        DecideRules.apply(sheet, FIRST_ROW, Math.max(row - 1, FIRST_ROW));
    }

    private void change(Grid grid, int row, ProposedChange change) {
        String key = ledger.repairTypes().name(change.repairType());
        RepairType type = against.type(key).orElseThrow();
        RepairFinding finding = findings.get(change.repairType());
        String why =
                change.heldBecause().isEmpty() ? change.basis() : change.basis() + ". Held: " + change.heldBecause();
        grid.tall(Math.max(height(DecideColumn.WHY, why), height(DecideColumn.REPAIR, type.title())));
        text(grid, DecideColumn.REPAIR, type.title());
        text(grid, DecideColumn.KEY, key);
        text(grid, DecideColumn.FAMILY, type.family());
        number(grid, DecideColumn.JOBS, finding.lines());
        number(grid, DecideColumn.LOAD, finding.loadFactor());
        number(grid, DecideColumn.LOWER, finding.lower());
        number(grid, DecideColumn.UPPER, finding.upper());
        number(grid, DecideColumn.CHANCE, told(finding.chanceOver()));
        text(grid, DecideColumn.VERDICT, finding.verdict().words());
        number(grid, DecideColumn.HOURS, Hours.of(change.bookSeconds()));
        number(grid, DecideColumn.PRICE, Money.units(change.bookLabour()));
        Policy policy = review.settings().policy().of(type.family());
        DecideRow cells = new DecideRow(grid, row, change, policy, families.cells(type.family()));
        cells.proposal(why).decision().outcome();
        working(grid, cells, change, type);
    }

    private static void working(Grid grid, DecideRow cells, ProposedChange change, RepairType type) {
        ProposalInputs grounds = change.grounds();
        number(grid, DecideColumn.SIMPLER, grounds.simplerFactor());
        number(grid, DecideColumn.MEAN, grounds.meanFactor());
        number(grid, DecideColumn.LEVEL, grounds.level());
        number(grid, DecideColumn.SURE_DOWN, grounds.sureDown());
        number(grid, DecideColumn.SURE_UP, grounds.sureUp());
        number(grid, DecideColumn.LOWEST, Hours.of(grounds.lowestSeconds()));
        number(grid, DecideColumn.HIGHEST, Hours.of(grounds.highestSeconds()));
        text(grid, DecideColumn.SHORTENING, Words.of(grounds.shortening()).replace('-', ' '));
        number(grid, DecideColumn.LEAST_PRICE, Money.units(Absent.firstOf(type.leastLabour(), 0)));
        number(grid, DecideColumn.YEARLY, grounds.jobsAYear());
        cells.working();
    }

    /** No chance is told as certain. */
    private static double told(double chance) {
        return Math.max(0.01, Math.min(0.99, chance));
    }

    private static float height(DecideColumn column, String words) {
        return TextHeight.of(words, column.heading().width());
    }

    private static void text(Grid grid, DecideColumn column, String words) {
        grid.at(column.ordinal()).text(words, column.kind());
    }

    private static void number(Grid grid, DecideColumn column, double value) {
        grid.at(column.ordinal()).number(value, column.kind());
    }

    /** What may be typed where: decisions are checked as they are typed, and all else is locked, without a password. */
    static final class DecideRules {
        private DecideRules() {}

        static void apply(SXSSFSheet sheet, int firstRow, int lastRow) {
            DataValidationHelper helper = sheet.getDataValidationHelper();
            TypedCells.oneOf(
                    sheet,
                    cells(DecideColumn.DECISION, firstRow, lastRow),
                    "take, keep or own; empty leaves the row as it is",
                    "take",
                    "keep",
                    "own");
            TypedCells.check(
                    sheet,
                    helper.createDecimalConstraint(OperatorType.BETWEEN, "0.05", "2000"),
                    cells(DecideColumn.OWN_HOURS, firstRow, lastRow),
                    "bench hours, such as 11.5");
            TypedCells.check(
                    sheet,
                    helper.createDateConstraint(OperatorType.GREATER_THAN, "DATE(2000,1,1)", null, null),
                    cells(DecideColumn.UNTIL, firstRow, lastRow),
                    "a date, such as 2027-06-30");
            sheet.enableLocking();
            sheet.lockFormatColumns(false);
            sheet.lockAutoFilter(false);
            PageSetup.area(sheet, DecideColumn.LAST_PRINTED.ordinal() + 1, lastRow);
        }

        private static CellRangeAddressList cells(DecideColumn column, int firstRow, int lastRow) {
            return new CellRangeAddressList(firstRow - 1, lastRow - 1, column.ordinal(), column.ordinal());
        }
    }
}
