package benchtrue.workbook;

import benchtrue.findings.RepairFinding;
import benchtrue.nightly.Review;
import benchtrue.reconcile.Ledger;
import benchtrue.shop.Hours;
import benchtrue.shop.RepairType;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.apache.poi.ss.usermodel.Name;
import org.apache.poi.ss.usermodel.Sheet;

/** One row a repair type, worst loss first, worked out by formulas over the lines where all lines are on their sheet. */
final class RepairsSheet {
    static final String NAME = "Repairs";
    private static final int FIRST_ROW = 6;
    private static final int WHY_WIDTH = 62;
    private static final float LINE_POINTS = 14;
    private static final List<Heading> HEADINGS = List.of(
            new Heading("Repair", 28),
            new Heading("In the price book as", 17),
            new Heading("Family", 11),
            new Heading("Jobs", 6),
            new Heading("Quoted hours against today's book", 10),
            new Heading("Bench hours", 9),
            new Heading("Hours putting it right", 9),
            new Heading("Hours per quoted hour", 8),
            new Heading("at least (90 % sure)", 8),
            new Heading("at most (90 % sure)", 8),
            new Heading("Usual job, hours per quoted hour", 9),
            new Heading("Lost a year (money; minus is gained)", 10),
            new Heading("at least (90 % sure)", 9),
            new Heading("at most (90 % sure)", 9),
            new Heading("Verdict", 13),
            new Heading("Why", WHY_WIDTH));

    private final Review review;
    private final LinesSheet lines;
    private final Ledger ledger;

    RepairsSheet(Review review, LinesSheet lines) {
        this.review = review;
        this.lines = lines;
        this.ledger = review.ledger();
    }

    void write(Sheet sheet, Look look) {
        Grid grid = new Grid(sheet, look);
        grid.row(1).text("Which repairs are quoted too low", Look.Kind.TITLE);
        grid.row(2)
                .text(
                        lines.whole()
                                ? "Jobs and hours are formulas over the sheet Lines: change a line there and they follow."
                                : "The sheet Lines holds only the newest lines, so figures here are plain numbers over all lines.");
        grid.row(3)
                .text("Shop rate (" + review.settings().currency() + " a bench hour)")
                .number(Amounts.money(review.costs().shopRate()), Look.Kind.INPUT);
        Name rate = sheet.getWorkbook().createName();
        rate.setNameName("ShopRate");
        rate.setRefersToFormula(NAME + "!$B$3");
        Heading.write(HEADINGS, FIRST_ROW - 1, sheet, grid);
        int row = FIRST_ROW;
        for (RepairFinding finding : worstFirst()) {
            repair(grid.row(row), row, finding);
            row++;
        }
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
        return review.findings().repairs().stream()
                .sorted(Comparator.comparingLong(RepairFinding::annualShortfall)
                        .reversed()
                        .thenComparingInt(RepairFinding::repairType))
                .toList();
    }

    private void repair(Grid grid, int row, RepairFinding finding) {
        String key = ledger.repairTypes().name(finding.repairType());
        Optional<RepairType> type = ledger.books().type(key, ledger.asOf());
        grid.tall(LINE_POINTS * (1 + finding.why().length() / WHY_WIDTH))
                .text(type.map(RepairType::title).orElse(key), Look.Kind.WRAPPED)
                .text(key)
                .text(type.map(RepairType::family).orElse(""));
        sums(grid, row, finding);
        grid.formula(
                        "IF(E#>0,(F#+G#)/E#,\"\")".replace("#", Integer.toString(row)),
                        finding.loadFactor(),
                        Look.Kind.RATIO)
                .number(finding.lower(), Look.Kind.RATIO)
                .number(finding.upper(), Look.Kind.RATIO)
                .number(finding.typicalFactor(), Look.Kind.RATIO)
                .number(Amounts.money(finding.annualShortfall()), Look.Kind.WHOLE_MONEY)
                .number(Amounts.money(finding.annualShortfallLower()), Look.Kind.WHOLE_MONEY)
                .number(Amounts.money(finding.annualShortfallUpper()), Look.Kind.WHOLE_MONEY)
                .text(finding.verdict().words())
                .text(finding.why(), Look.Kind.WRAPPED);
    }

    private void sums(Grid grid, int row, RepairFinding finding) {
        double actual = Hours.of(finding.actualSeconds());
        double rework = Hours.of(finding.reworkSeconds());
        if (!lines.whole()) {
            grid.number(finding.lines(), Look.Kind.COUNT)
                    .number(finding.quotedHours(), Look.Kind.HOURS)
                    .number(actual, Look.Kind.HOURS)
                    .number(rework, Look.Kind.HOURS);
            return;
        }
        String which = lines.range('C') + ",$B" + row + "," + lines.range('H') + ",\"yes\")";
        grid.formula("COUNTIFS(" + which, finding.lines(), Look.Kind.COUNT)
                .formula("SUMIFS(" + lines.range('J') + "," + which, finding.quotedHours(), Look.Kind.HOURS)
                .formula("SUMIFS(" + lines.range('M') + "," + which, actual, Look.Kind.HOURS)
                .formula("SUMIFS(" + lines.range('N') + "," + which, rework, Look.Kind.HOURS);
    }
}
