package benchtrue.workbook.draft;

import benchtrue.format.Words;
import benchtrue.nightly.Review;
import benchtrue.revision.BackTest;
import benchtrue.revision.PastMethod;
import benchtrue.settings.Policy;
import benchtrue.shop.Money;
import benchtrue.workbook.sheet.Amounts;
import benchtrue.workbook.sheet.CellStyles;
import benchtrue.workbook.sheet.Grid;
import benchtrue.workbook.sheet.TypedCells;
import java.util.stream.Stream;
import org.apache.poi.ss.usermodel.Name;
import org.apache.poi.ss.util.CellRangeAddressList;
import org.apache.poi.xssf.streaming.SXSSFSheet;

/** The head of the sheet: what it is for, and the inputs that everything below follows. */
final class DecideInputs {
    private static final int FIRST_INPUT_ROW = 4;
    private static final int VALUE_COLUMN = 5;

    /** What the cell of the method may hold. */
    static final String OWN = "own";

    static final String SIMPLER = "simpler";

    /** What the cell of the rule may hold. */
    static final String[] RULES = Stream.of(Policy.Rule.values()).map(Words::of).toArray(String[]::new);

    /** The named cells, in the order of their rows. */
    enum Input {
        SHOP_RATE("ShopRate", "Shop rate (money a bench hour)"),
        COVERAGE_POLICY("CoveragePolicy", "Share of jobs that should fit the quote"),
        POLICY_RULE("PolicyRule", "Asked for: larger (of average and fit), break-even or coverage"),
        PRICE_STEP("PriceStep", "Prices are rounded to"),
        TOLERANCE("Tolerance", "Leave the book where it is this near"),
        METHOD("Method", "Proposals stand on: own (the program's method) or simpler"),
        DRAFT_DIGEST("DraftDigest", "Draft (do not change)");

        private final String name;
        private final String words;

        Input(String name, String words) {
            this.name = name;
            this.words = words;
        }

        String title() {
            return name;
        }
    }

    private final Review review;
    private final String draft;
    private final FamiliesSheet families;

    DecideInputs(Review review, String draft, FamiliesSheet families) {
        this.review = review;
        this.draft = draft;
        this.families = families;
    }

    void write(SXSSFSheet sheet, Grid grid, DecideTotals totals) {
        String asOf = review.settings().figures().day(review.ledger().asOf());
        grid.row(1).text("Next price book, drafted on " + asOf + ": you decide row by row", CellStyles.Kind.TITLE);
        grid.row(2)
                .text(
                        "Fill the yellow cells: take, keep (with a reason and a date) or own (with your hours); an empty row stays"
                                + " as it is. Save as .xlsx, then: benchtrue adopt --shop DIR price-book-revision.xlsx --effective DATE");
        Policy policy = review.settings().policy();
        int row = FIRST_INPUT_ROW;
        for (Input input : Input.values()) {
            grid.row(row).text(input.words).at(VALUE_COLUMN);
            CellRangeAddressList cell = new CellRangeAddressList(row - 1, row - 1, VALUE_COLUMN, VALUE_COLUMN);
            switch (input) {
                case SHOP_RATE -> grid.number(Amounts.money(review.costs().shopRate()), CellStyles.Kind.INPUT);
                case COVERAGE_POLICY -> grid.number(policy.coverage(), CellStyles.Kind.INPUT_SHARE);
                case POLICY_RULE -> {
                    grid.text(DecideRow.rule(policy), CellStyles.Kind.INPUT);
                    TypedCells.oneOf(sheet, cell, "larger, break-even or coverage", RULES);
                }
                case PRICE_STEP -> grid.number(Money.units(policy.priceRounding()), CellStyles.Kind.INPUT);
                case TOLERANCE -> grid.number(review.settings().tolerance(), CellStyles.Kind.INPUT_SHARE);
                case METHOD -> {
                    method(grid);
                    TypedCells.oneOf(sheet, cell, "own or simpler", OWN, SIMPLER);
                }
                case DRAFT_DIGEST -> grid.text(draft);
            }
            totals.write(grid, row - FIRST_INPUT_ROW);
            Name name = sheet.getWorkbook().createName();
            name.setNameName(input.name);
            name.setRefersToFormula(DecideSheet.NAME + "!$F$" + row);
            row++;
        }
        review.answers().notRead().ifPresent(sentence -> grid.row(3).text(sentence));
        grid.row(row)
                .text(
                        "Ventilation, cure, clamping and paperwork time belong in the quote. Quotes already accepted stand."
                                + (families.needed()
                                        ? " Some families of repairs have inputs of their own, on the sheet "
                                                + FamiliesSheet.NAME + "; all others follow those above."
                                        : ""));
        grid.row(row + 1).text(String.join(" ", review.answers().books()));
    }

    /** Where the proposals fell back to a simpler method, which and why stands beside the cell that chooses. */
    private void method(Grid grid) {
        BackTest test = review.revision().backTest();
        if (test.used() == PastMethod.PROPOSAL) {
            grid.text(OWN);
            return;
        }
        grid.text(SIMPLER, CellStyles.Kind.INPUT)
                .skip()
                .text("simpler is " + test.used().words()
                        + ": on past jobs, within the guard rails, it missed by less than"
                        + " the program's own method, beyond chance. Type own to see and take that one's hours.");
    }
}
