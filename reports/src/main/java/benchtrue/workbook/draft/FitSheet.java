package benchtrue.workbook.draft;

import benchtrue.format.Figures;
import benchtrue.nightly.Review;
import benchtrue.reconcile.Ledger;
import benchtrue.revision.FitCurve;
import benchtrue.revision.ProposedChange;
import benchtrue.shop.PriceBook;
import benchtrue.shop.RepairType;
import benchtrue.workbook.sheet.CellStyles;
import benchtrue.workbook.sheet.Grid;
import benchtrue.workbook.sheet.Heading;
import benchtrue.workbook.sheet.PageSetup;
import java.util.ArrayList;
import java.util.List;
import org.apache.poi.ss.usermodel.Name;
import org.apache.poi.ss.usermodel.Workbook;
import org.apache.poi.ss.util.CellReference;
import org.apache.poi.xssf.streaming.SXSSFSheet;

/** How many hours per book hour so and so many jobs of each repair stay within: what another share in the draft is read from. */
final class FitSheet {
    static final String NAME = "Jobs that fit";
    private static final int FIRST_ROW = 5;
    private static final int FIRST_SHARE = 2;
    private static final String STEPS = "ROUND((CoveragePolicy-" + FitCurve.LEAST + ")/" + FitCurve.STEP + ",6)";
    private static final String PLACE = "MIN(" + (FitCurve.SHARES - 1) + ",INT(" + STEPS + ")+1)";

    /** Hours per book hour that the share asked for stays within, straight between the shares of the sheet. */
    static final String FORMULA =
            ratio(PLACE) + "+(" + STEPS + "-" + PLACE + "+1)*(" + ratio(PLACE + "+1") + "-" + ratio(PLACE) + ")";

    private final Figures figures;
    private final Ledger ledger;
    private final PriceBook against;
    private final List<ProposedChange> changes;

    FitSheet(Review review) {
        figures = review.settings().figures();
        ledger = review.ledger();
        against = review.revision().against(ledger);
        changes = review.answers().drafted();
    }

    private static String ratio(String place) {
        return "INDEX(FitRatio,MATCH({KEY},FitRepair,0)," + place + ")";
    }

    void write(SXSSFSheet sheet, CellStyles look) {
        Grid grid = new Grid(sheet, look);
        grid.row(1).text("Hours per book hour that so many jobs stay within", CellStyles.Kind.TITLE);
        grid.row(2)
                .text(
                        "From jobs with hours of their own that do not repeat their quote; a repair with few of them leans on"
                                + " its family, a family with few on the shop.");
        List<Heading> headings = new ArrayList<>();
        headings.add(Heading.text("Repair", 30));
        headings.add(Heading.note("In the price book as", 22));
        for (int place = 0; place < FitCurve.SHARES; place++) {
            headings.add(Heading.figure(figures.percent(FitCurve.share(place)), 7));
        }
        Heading.write(headings, FIRST_ROW - 1, sheet, grid);
        for (int i = 0; i < changes.size(); i++) {
            row(grid.row(FIRST_ROW + i), changes.get(i));
        }
        PageSetup.area(sheet, headings.size(), FIRST_ROW + changes.size() - 1);
    }

    private void row(Grid grid, ProposedChange change) {
        String key = ledger.repairTypes().name(change.repairType());
        grid.text(against.type(key).map(RepairType::title).orElse(key)).text(key, CellStyles.Kind.NOTE);
        change.grounds().fits().ratios().forEach(ratio -> grid.number(ratio, CellStyles.Kind.RATIO));
    }

    /** Names the ranges that formulas of other sheets ask for. */
    void name(Workbook workbook) {
        name(workbook, "FitRepair", FIRST_SHARE - 1, FIRST_SHARE - 1);
        name(workbook, "FitRatio", FIRST_SHARE, FIRST_SHARE + FitCurve.SHARES - 1);
    }

    private void name(Workbook workbook, String title, int from, int to) {
        Name name = workbook.createName();
        name.setNameName(title);
        int last = FIRST_ROW + Math.max(changes.size(), 1) - 1;
        name.setRefersToFormula("'" + NAME + "'!$" + CellReference.convertNumToColString(from) + "$" + FIRST_ROW + ":$"
                + CellReference.convertNumToColString(to) + "$" + last);
    }
}
