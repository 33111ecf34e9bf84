package benchtrue.workbook.review;

import benchtrue.answers.Answers;
import benchtrue.findings.RepairFinding;
import benchtrue.findings.ShortfallParts;
import benchtrue.nightly.Review;
import benchtrue.workbook.sheet.Amounts;
import benchtrue.workbook.sheet.CellStyles;
import benchtrue.workbook.sheet.Grid;
import benchtrue.workbook.sheet.RowFlow;
import java.util.List;

/** First answer: which repairs lose most a year, as a range, and where from. */
final class AnswerLosses {
    private static final String ROUNDED = "IF(Repairs!@#=\"\",\"\",Repairs!@#)";

    private final Review review;
    private final RepairsSheet repairs;

    AnswerLosses(Review review, RepairsSheet repairs) {
        this.review = review;
        this.repairs = repairs;
    }

    void write(RowFlow flow) {
        flow.title("1. What loses most a year, and why");
        List<RepairFinding> losses =
                review.answers().losing().stream().limit(Answers.FEW_REPAIRS).toList();
        if (losses.isEmpty()) {
            flow.sentence("No repair is surely under-quoted. What leans that way stands on the sheet Repairs.");
            return;
        }
        flow.headings(
                List.of(
                        "Repair",
                        "Lost a year: at least (90 % sure)",
                        "at most (90 % sure)",
                        "about, from hours beyond the book",
                        "from quotes below it",
                        "from slower work",
                        "from jobs that came back",
                        "Why (a part below zero makes up for others)"),
                0,
                7);
        losses.forEach(finding -> loss(flow, finding));
    }

    private void loss(RowFlow flow, RepairFinding finding) {
        String row = Integer.toString(repairs.row(finding.repairType()));
        double lower = Amounts.money(finding.annualShortfallLower());
        double upper = Amounts.money(finding.annualShortfallUpper());
        Grid grid = flow.next()
                .text(review.ledger().title(finding.repairType()), CellStyles.Kind.WRAPPED)
                .formula(
                        ROUNDED.replace("@", "M").replace("#", row),
                        Amounts.end(lower, upper - lower),
                        CellStyles.Kind.WHOLE_MONEY)
                .formula(
                        ROUNDED.replace("@", "N").replace("#", row),
                        Amounts.end(upper, upper - lower),
                        CellStyles.Kind.WHOLE_MONEY);
        review.findings().shortfalls().stream()
                .filter(parts -> parts.repairType() == finding.repairType())
                .findFirst()
                .ifPresentOrElse(
                        parts -> parts(grid, parts),
                        () -> grid.skip().skip().skip().skip());
        flow.across(finding.why(), 7);
    }

    private static void parts(Grid grid, ShortfallParts parts) {
        for (long part : new long[] {parts.book(), parts.quotes(), parts.slower(), parts.rework()}) {
            grid.number(Amounts.about(part), CellStyles.Kind.WHOLE_MONEY);
        }
    }
}
