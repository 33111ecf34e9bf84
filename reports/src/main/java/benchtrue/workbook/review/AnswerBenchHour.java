package benchtrue.workbook.review;

import benchtrue.costing.BenchHour;
import benchtrue.costing.ShopMoney;
import benchtrue.format.Figures;
import benchtrue.nightly.Review;
import benchtrue.revision.LastChange;
import benchtrue.workbook.sheet.Amounts;
import benchtrue.workbook.sheet.CellStyles;
import benchtrue.workbook.sheet.RowFlow;

/** Fifth answer: what a bench hour costs and earns, how much paid time reached the log, and which book is in force. */
final class AnswerBenchHour {
    private final Review review;
    private final Figures figures;

    AnswerBenchHour(Review review, Figures figures) {
        this.review = review;
        this.figures = figures;
    }

    void write(RowFlow flow) {
        ShopMoney shop = review.costs().shop();
        BenchHour hour = shop.benchHour();
        String span = figures.month(hour.from()) + " to " + figures.month(hour.to());
        flow.title("5. What a bench hour costs and earns");
        fact(flow, "Costs", MoneyBenchHour.COST, hour.cost().total(), "an hour sold, " + span + ", all costs on it");
        fact(flow, "Earns", MoneyPrices.EARNS, hour.rates().earned(), "labour for an hour taken");
        fact(
                flow,
                "Must bring, to break even",
                MoneyPrices.BREAK_EVEN,
                hour.rates().breakEven(),
                "labour for an hour quoted");
        fact(
                flow,
                "Must bring, for the target margin",
                MoneyPrices.FOR_TARGET,
                hour.rates().forTarget(),
                "labour for an hour quoted");
        fact(flow, "Result", MoneyPrices.RESULT, hour.result(), "of those months, all costs paid");
        double logged = shop.loggedShare().share();
        live(
                flow,
                "Paid time in the log",
                MoneyPaidTime.LOGGED,
                logged,
                CellStyles.Kind.SHARE,
                "logged hours of hours paid");
        live(
                flow,
                "Paid time sold",
                MoneyPaidTime.SOLD,
                shop.loggedShare().soldShare(),
                CellStyles.Kind.SHARE,
                "hours on jobs that somebody pays for, of hours paid");
        flow.next()
                .text("Price book in force since")
                .number(
                        Amounts.serial(review.ledger()
                                .books()
                                .inForce(review.ledger().asOf())
                                .effective()),
                        CellStyles.Kind.DATE);
        flow.across(review.revision().lastChange().map(LastChange::sentence).orElse("the first on record"), 2);
    }

    private static void fact(RowFlow flow, String words, String name, long amount, String note) {
        live(flow, words, name, Amounts.money(amount), CellStyles.Kind.WHOLE_MONEY, note);
    }

    /** An empty cell would come over as zero, so only a number is taken. */
    private static void live(RowFlow flow, String words, String name, double value, CellStyles.Kind kind, String note) {
        flow.next()
                .text(words, CellStyles.Kind.WRAPPED)
                .formula("IF(ISNUMBER(" + name + ")," + name + ",\"\")", value, kind);
        flow.across(Double.isFinite(value) ? note : note + ": not known", 2);
    }
}
