package benchtrue.workbook.review;

import benchtrue.findings.RepairFinding;
import benchtrue.findings.Verdict;
import benchtrue.nightly.Review;
import benchtrue.shop.Absent;
import benchtrue.shop.Money;
import benchtrue.workbook.sheet.Amounts;
import benchtrue.workbook.sheet.CellStyles;
import benchtrue.workbook.sheet.Grid;

/**
 * What a repair loses a year, to the digits that the width of its range bears, and whether it is big enough to matter: hours
 * beyond the quote at the shop rate, so that both follow the yellow cells above the table. The columns to the right hold what they are worked out from.
 */
final class RepairMoney {
    static final String SHOP_RATE = "ShopRate";
    static final String MATTERS = "BigEnough";
    private static final String WIDTH = "IF(R#=\"\",ABS(Q#),S#-R#)*" + SHOP_RATE;
    private static final String LOST =
            "IF(@#=\"\",\"\",ROUND(@#*" + SHOP_RATE + ",-MAX(0,INT(LOG10(MAX(1," + WIDTH + ")))-1)))";
    private static final String SURE = "IF(AND(T#=\"yes\",ABS(Q#*" + SHOP_RATE + ")>=" + MATTERS + "),";
    private static final String VERDICT = "IF(U#=\"under\"," + SURE + "\"under-quoted\",\"leaning under\"),"
            + "IF(U#=\"over\"," + SURE + "\"over-quoted\",\"leaning over\"),U#))";

    private final double rate;
    private final double falseDiscovery;

    RepairMoney(Review review) {
        rate = Money.units(review.costs().shopRate());
        falseDiscovery = review.settings().falseDiscovery();
    }

    void lost(Grid grid, int row, RepairFinding finding) {
        long[] amounts = {finding.annualShortfall(), finding.annualShortfallLower(), finding.annualShortfallUpper()};
        double width =
                Absent.has(amounts[1]) ? Amounts.money(amounts[2] - amounts[1]) : Math.abs(Amounts.money(amounts[0]));
        String number = Integer.toString(row);
        for (int i = 0; i < amounts.length; i++) {
            String column = Character.toString('Q' + i);
            grid.formula(
                    LOST.replace("@", column).replace("#", number),
                    Amounts.end(Amounts.money(amounts[i]), width),
                    CellStyles.Kind.WHOLE_MONEY);
        }
        grid.formula(VERDICT.replace("#", number), finding.verdict().words(), CellStyles.Kind.NOTE);
    }

    /** Hours a year beyond the quote, and on what the verdict stands besides money. */
    void working(Grid grid, RepairFinding finding) {
        grid.number(hours(finding.annualShortfall()), CellStyles.Kind.HOURS)
                .number(hours(finding.annualShortfallLower()), CellStyles.Kind.HOURS)
                .number(hours(finding.annualShortfallUpper()), CellStyles.Kind.HOURS)
                .text(finding.adjustedP() <= falseDiscovery ? "yes" : "no", CellStyles.Kind.NOTE)
                .text(side(finding.verdict()), CellStyles.Kind.NOTE);
    }

    private double hours(long amount) {
        return Absent.has(amount) ? Amounts.money(amount) / rate : Double.NaN;
    }

    private static String side(Verdict verdict) {
        return switch (verdict) {
            case UNDER_QUOTED, LEANING_UNDER -> "under";
            case OVER_QUOTED, LEANING_OVER -> "over";
            default -> verdict.words();
        };
    }
}
