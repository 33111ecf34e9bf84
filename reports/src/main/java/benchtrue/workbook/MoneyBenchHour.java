package benchtrue.workbook;

import benchtrue.costing.BenchHour;
import benchtrue.costing.HourCost;
import benchtrue.costing.LoggedShare;
import benchtrue.costing.ShopRates;
import benchtrue.costing.WhatIf;
import benchtrue.nightly.Review;
import benchtrue.shop.Figures;
import java.util.List;

/** What a bench hour costs and earns, and what other prices and hours sold would do; the first sheet asks for the names. */
final class MoneyBenchHour {
    static final String COST = "BenchHourCost";
    static final String EARNS = "BenchHourEarns";
    static final String BREAK_EVEN = "BenchHourBreakEven";
    static final String FOR_TARGET = "BenchHourForTarget";
    static final String RESULT = "BenchHourResult";
    static final String LOGGED = "PaidTimeInTheLog";

    private final BenchHour hour;
    private final LoggedShare logged;
    private final Figures figures;

    MoneyBenchHour(Review review) {
        hour = review.costs().shop().benchHour();
        logged = review.costs().shop().loggedShare();
        figures = review.settings().figures();
    }

    void write(Flow flow) {
        flow.skip(1);
        flow.title("What a bench hour costs and earns, " + span());
        cost(flow);
        prices(flow);
        flow.skip(1);
        flow.title("What other prices and other hours sold would do to the result");
        if (hour.sensitivity().isEmpty()) {
            flow.sentence("Not known without wages and overheads.");
            return;
        }
        flow.headings(List.of("Labour prices", "Hours sold", "", "Result", "Against the result"));
        hour.sensitivity().forEach(whatIf -> whatIf(flow, whatIf));
    }

    private String span() {
        return figures.month(hour.from()) + " to " + figures.month(hour.to());
    }

    private void cost(Flow flow) {
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
                .text("A bench hour costs", Look.Kind.TOTAL_WORDS)
                .skip()
                .skip()
                .formula(
                        "IF(OR(D" + first + "=\"\",D" + (first + 4) + "=\"\"),\"\",SUM(D" + first + ":D" + (first + 5)
                                + "))",
                        Amounts.money(cost.total()),
                        Look.Kind.TOTAL);
        flow.across("an hour sold, all costs on it", 4);
        flow.name(COST, 'D');
    }

    private void prices(Flow flow) {
        ShopRates rates = hour.rates();
        fact(flow, "The shop posts", rates.posted(), "its rate for an hour");
        fact(flow, "It charges", rates.charged(), "labour of finished jobs for an hour quoted");
        fact(flow, "It earns", rates.earned(), "labour of finished jobs for an hour taken");
        flow.name(EARNS, 'D');
        fact(flow, "To break even it must bring", rates.breakEven(), "labour for an hour quoted");
        flow.name(BREAK_EVEN, 'D');
        fact(flow, "For the target margin", rates.forTarget(), "labour for an hour quoted");
        flow.name(FOR_TARGET, 'D');
        fact(
                flow,
                "One more hour in paid time brings",
                rates.nextHour(),
                "revenue less parts and overhead that follows");
        fact(flow, "One more hour paid extra brings", rates.nextHourExtra(), "the same less wages with overtime");
        fact(flow, "Result of those months", hour.result(), "revenue of the jobs finished less all costs");
        flow.name(RESULT, 'D');
        number(
                flow,
                "Hours that break even",
                hour.breakEvenHours(),
                Look.Kind.HOURS,
                "on finished jobs, in those months");
        number(flow, "Sold hours may fall by", hour.marginOfSafety(), Look.Kind.SHARE, "before the result is lost");
        number(flow, "Paid time in the log", logged.share(), Look.Kind.SHARE, "logged hours of hours paid");
        flow.name(LOGGED, 'D');
    }

    private static void fact(Flow flow, String words, long amount, String note) {
        number(flow, words, Amounts.money(amount), Look.Kind.MONEY, note);
    }

    private static void number(Flow flow, String words, double value, Look.Kind kind, String note) {
        flow.next().text(words).skip().skip().number(value, kind);
        flow.across(Double.isFinite(value) ? note : note + ": not known", 4);
    }

    private void whatIf(Flow flow, WhatIf whatIf) {
        double result = Amounts.money(whatIf.result());
        flow.next()
                .number(whatIf.pricePercent() / 100.0, Look.Kind.CHANGE)
                .number(whatIf.hoursPercent() / 100.0, Look.Kind.CHANGE)
                .skip()
                .number(result, Look.Kind.WHOLE_MONEY)
                .formula("D" + flow.row() + "-" + RESULT, result - Amounts.money(hour.result()), Look.Kind.WHOLE_MONEY);
    }
}
