package benchtrue.workbook.draft;

import benchtrue.nightly.Review;
import benchtrue.settings.FamilyPolicy;
import benchtrue.settings.Policy;
import benchtrue.shop.Money;
import benchtrue.workbook.draft.DecideInputs.Input;
import benchtrue.workbook.sheet.Amounts;
import benchtrue.workbook.sheet.CellStyles;
import benchtrue.workbook.sheet.Grid;
import benchtrue.workbook.sheet.Heading;
import benchtrue.workbook.sheet.PageSetup;
import benchtrue.workbook.sheet.TypedCells;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;
import org.apache.poi.ss.usermodel.DataValidationConstraint.OperatorType;
import org.apache.poi.ss.usermodel.DataValidationHelper;
import org.apache.poi.ss.util.CellRangeAddressList;
import org.apache.poi.xssf.streaming.SXSSFSheet;

/**
 * Inputs of families of repairs, one row a family: its own where the owner set them, those of the whole shop where a cell is
 * left empty. Rows on which the owner decides refer to the cells of what holds.
 */
public final class FamiliesSheet {
    public static final String NAME = "Families";
    public static final int FIRST_ROW = 6;
    public static final int OWN_RATE = 1;
    public static final int OWN_COVERAGE = 2;
    public static final int OWN_RULE = 3;
    public static final int OWN_STEP = 4;
    private static final List<Heading> HEADINGS = List.of(
            Heading.text("Family", 20),
            Heading.figure("Own rate (money a bench hour)", 12),
            Heading.figure("Own share of jobs that should fit", 12),
            Heading.note("Own rule: larger, break-even or coverage", 14),
            Heading.figure("Own rounding of prices", 12),
            Heading.figure("Rate that holds", 12),
            Heading.figure("Share that holds", 12),
            Heading.note("Rule that holds", 14),
            Heading.figure("Rounding that holds", 12));

    private final Policy policy;
    private final long shopRate;
    private final List<String> families;

    FamiliesSheet(Review review) {
        policy = review.settings().policy();
        shopRate = review.costs().shopRate();
        TreeSet<String> all = new TreeSet<>();
        review.revision().against(review.ledger()).types().values().forEach(type -> all.add(type.family()));
        all.remove("");
        families = policy.families().isEmpty() ? List.of() : List.copyOf(all);
    }

    /** Returns whether any family has inputs of its own; without, the named cells hold for all. */
    boolean needed() {
        return !families.isEmpty();
    }

    /** Returns by named input the cell that holds for a family; empty where the named cells hold. */
    Map<String, String> cells(String family) {
        int place = families.indexOf(family);
        if (place < 0) {
            return Map.of();
        }
        String row = "$" + (FIRST_ROW + place);
        return Map.of(
                Input.SHOP_RATE.title(), NAME + "!$F" + row,
                Input.COVERAGE_POLICY.title(), NAME + "!$G" + row,
                Input.POLICY_RULE.title(), NAME + "!$H" + row,
                Input.PRICE_STEP.title(), NAME + "!$I" + row);
    }

    void write(SXSSFSheet sheet, CellStyles look) {
        Grid grid = new Grid(sheet, look);
        grid.row(1).text("Families of repairs with inputs of their own", CellStyles.Kind.TITLE);
        grid.row(2)
                .text("An empty yellow cell follows the cell of the whole shop on the sheet " + DecideSheet.NAME + ".");
        grid.row(3).text("What you try here counts in this workbook; shop.toml holds it for the nights to come.");
        Heading.write(HEADINGS, FIRST_ROW - 1, sheet, grid);
        int row = FIRST_ROW;
        for (String family : families) {
            grid.row(row).text(family);
            own(grid, family);
            holds(grid, family, row);
            row++;
        }
        FamilyRules.apply(sheet, FIRST_ROW, row - 1);
        PageSetup.area(sheet, HEADINGS.size(), row - 1);
    }

    private void own(Grid grid, String family) {
        Optional<FamilyPolicy> own = policy.families().stream()
                .filter(found -> found.family().equals(family))
                .findFirst();
        number(grid, own.map(found -> Amounts.money(found.rate())).orElse(Double.NaN), CellStyles.Kind.INPUT);
        number(
                grid,
                own.map(found -> found.coverage().orElse(Double.NaN)).orElse(Double.NaN),
                CellStyles.Kind.INPUT_SHARE);
        Optional<String> rule = own.flatMap(FamilyPolicy::rule).map(benchtrue.format.Words::of);
        rule.ifPresentOrElse(word -> grid.text(word, CellStyles.Kind.ENTRY), () -> grid.empty(CellStyles.Kind.ENTRY));
        number(grid, own.map(found -> Amounts.money(found.priceRounding())).orElse(Double.NaN), CellStyles.Kind.INPUT);
    }

    private static void number(Grid grid, double value, CellStyles.Kind kind) {
        if (Double.isFinite(value)) {
            grid.number(value, kind);
        } else {
            grid.empty(kind);
        }
    }

    private void holds(Grid grid, String family, int row) {
        Policy holds = policy.of(family);
        grid.formula(
                        number("B" + row, Input.SHOP_RATE),
                        Amounts.money(policy.rate(family, shopRate)),
                        CellStyles.Kind.MONEY)
                .formula(number("C" + row, Input.COVERAGE_POLICY), holds.coverage(), CellStyles.Kind.SHARE)
                .formula(
                        "IF(D" + row + "=\"\"," + Input.POLICY_RULE.title() + ",D" + row + ")",
                        DecideRow.rule(holds),
                        CellStyles.Kind.NOTE)
                .formula(
                        number("E" + row, Input.PRICE_STEP), Money.units(holds.priceRounding()), CellStyles.Kind.MONEY);
    }

    private static String number(String own, Input shop) {
        return "IF(ISNUMBER(" + own + ")," + own + "," + shop.title() + ")";
    }

    /** What may be typed into the inputs of families; all else on their sheet is locked, without a password. */
    static final class FamilyRules {
        private FamilyRules() {}

        static void apply(SXSSFSheet sheet, int firstRow, int lastRow) {
            DataValidationHelper helper = sheet.getDataValidationHelper();
            CellRangeAddressList rates =
                    new CellRangeAddressList(firstRow - 1, lastRow - 1, FamiliesSheet.OWN_RATE, FamiliesSheet.OWN_RATE);
            rates.addCellRangeAddress(firstRow - 1, FamiliesSheet.OWN_STEP, lastRow - 1, FamiliesSheet.OWN_STEP);
            TypedCells.check(
                    sheet,
                    helper.createDecimalConstraint(OperatorType.GREATER_THAN, "0", null),
                    rates,
                    "an amount above 0, or nothing");
            TypedCells.check(
                    sheet,
                    helper.createDecimalConstraint(OperatorType.BETWEEN, "0.3", "0.95"),
                    new CellRangeAddressList(
                            firstRow - 1, lastRow - 1, FamiliesSheet.OWN_COVERAGE, FamiliesSheet.OWN_COVERAGE),
                    "a share from 30 % to 95 %, or nothing");
            TypedCells.oneOf(
                    sheet,
                    new CellRangeAddressList(firstRow - 1, lastRow - 1, FamiliesSheet.OWN_RULE, FamiliesSheet.OWN_RULE),
                    "larger, break-even, coverage or nothing",
                    DecideInputs.RULES);
            sheet.enableLocking();
            sheet.lockFormatColumns(false);
        }
    }
}
