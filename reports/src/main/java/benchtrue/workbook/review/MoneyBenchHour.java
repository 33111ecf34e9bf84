package benchtrue.workbook.review;

import benchtrue.costing.BenchHour;
import benchtrue.costing.HourCost;
import benchtrue.format.Figures;
import benchtrue.nightly.Review;
import benchtrue.workbook.sheet.Amounts;
import benchtrue.workbook.sheet.CellStyles;
import benchtrue.workbook.sheet.RowFlow;
import java.util.Map;

/** What a bench hour costs and earns; the first sheet asks for its cells by name. */
final class MoneyBenchHour {
    static final String COST = "BenchHourCost";

    private final Review review;
    private final BenchHour hour;
    private final Figures figures;

    MoneyBenchHour(Review review) {
        this.review = review;
        hour = review.costs().shop().benchHour();
        figures = review.settings().figures();
    }

    void write(RowFlow flow, Map<Integer, Integer> rowOfMonth) {
        flow.skip(1);
        flow.title("What a bench hour costs and earns, " + span());
        cost(flow);
        new MoneyPrices(flow, review, FinishedJobs.of(review.costs().shop(), rowOfMonth)).write();
    }

    private String span() {
        return figures.month(hour.from()) + " to " + figures.month(hour.to());
    }

    private void cost(RowFlow flow) {
        HourCost cost = hour.cost();
        int first = flow.row() + 1;
        fact(
                flow,
                "Wages and payroll on-costs",
                cost.wages(),
                "of an hour on jobs sold or put into the shop's own stock");
        fact(flow, "Time not sold", cost.unsold(), "logged time that stands on no such job");
        fact(flow, "Overtime", cost.overtime(), "what it cost above the wage");
        fact(flow, "Paid time not logged", cost.notLogged(), "wages of paid time that never reached the log");
        fact(flow, "Overhead", cost.overhead(), "what keeping the doors open cost");
        fact(flow, "Supplies", cost.supplies(), "parts and materials drawn without a ticket");
        flow.next()
                .text("A bench hour costs", CellStyles.Kind.TOTAL_WORDS)
                .skip()
                .skip()
                .formula(
                        "IF(OR(D" + first + "=\"\",D" + (first + 4) + "=\"\"),\"\",SUM(D" + first + ":D" + (first + 5)
                                + "))",
                        Amounts.money(cost.total()),
                        CellStyles.Kind.TOTAL);
        flow.across("an hour sold, all costs on it", 4);
        flow.name(COST, 'D');
    }

    private static void fact(RowFlow flow, String words, long amount, String note) {
        flow.fact(words, Amounts.money(amount), CellStyles.Kind.MONEY, note);
    }
}
