package benchtrue.workbook.review;

import benchtrue.costing.BenchHour;
import benchtrue.costing.ShopRates;
import benchtrue.costing.WhatIf;
import benchtrue.nightly.Review;
import benchtrue.workbook.sheet.Amounts;
import benchtrue.workbook.sheet.CellStyles;
import benchtrue.workbook.sheet.Grid;
import benchtrue.workbook.sheet.RowFlow;
import java.util.List;

/** What an hour is priced at and should be, and what other prices and hours sold would do; follows the yellow cells. */
final class MoneyPrices {
    static final String EARNS = "BenchHourEarns";
    static final String BREAK_EVEN = "BenchHourBreakEven";
    static final String FOR_TARGET = "BenchHourForTarget";
    static final String RESULT = "BenchHourResult";
    private static final String TARGET = "TargetMargin";
    private static final String LABOUR = "FinishedLabour";
    private static final String PARTS = "FinishedParts";
    private static final String QUOTED = "FinishedQuotedHours";
    private static final String TAKEN = "FinishedBenchHours";
    private static final String FOLLOWS = "FollowsHoursSold";
    private static final String COSTS_ALL = "(" + LABOUR + "+" + PARTS + "-" + RESULT + ")";

    private final RowFlow flow;
    private final BenchHour hour;
    private final FinishedJobs jobs;
    private final double target;
    private final double result;

    MoneyPrices(RowFlow flow, Review review, FinishedJobs jobs) {
        this.flow = flow;
        this.jobs = jobs;
        hour = review.costs().shop().benchHour();
        target = review.settings().money().targetMargin();
        result = Amounts.money(hour.result());
    }

    void write() {
        bases();
        rates();
        ahead();
        sensitivity();
    }

    /** A month on record is needed: without any there is nothing to add up. */
    private void bases() {
        boolean any = !jobs.months().isEmpty();
        base("Labour of the jobs finished", any, 'F', jobs.labour(), CellStyles.Kind.MONEY, LABOUR);
        base("Parts of the jobs finished", any, 'G', jobs.parts(), CellStyles.Kind.MONEY, PARTS);
        base("Hours quoted for them", any, 'D', jobs.quotedHours(), CellStyles.Kind.HOURS, QUOTED);
        base("Hours they took", any, 'E', jobs.hours(), CellStyles.Kind.HOURS, TAKEN);
        flow.fact(
                "Result of those months", result, CellStyles.Kind.MONEY, "revenue of the jobs finished less all costs");
        flow.name(RESULT, 'D');
        flow.fact(
                "Follows the hours sold",
                Double.isFinite(result) ? jobs.followsHours() : Double.NaN,
                CellStyles.Kind.MONEY,
                "parts revenue less parts, wages and overhead that grow with bench hours");
        flow.name(FOLLOWS, 'D');
        flow.next().text("Target margin").skip().skip().number(target, CellStyles.Kind.INPUT_SHARE);
        flow.across("share of revenue that should be left after all costs", 4);
        flow.name(TARGET, 'D');
    }

    private void base(String words, boolean any, char column, double value, CellStyles.Kind kind, String name) {
        Grid grid = flow.next().text(words).skip().skip();
        if (any) {
            grid.formula(jobs.sum(column), value, kind);
        } else {
            grid.number(0, kind);
        }
        flow.across("of the months above", 4);
        flow.name(name, 'D');
    }

    private void rates() {
        ShopRates rates = hour.rates();
        flow.next()
                .text("The shop posts")
                .skip()
                .skip()
                .formula(RepairMoney.SHOP_RATE, Amounts.money(rates.posted()), CellStyles.Kind.MONEY);
        flow.across("its rate for an hour", 4);
        rate("It charges", QUOTED + "=0", LABOUR + "/" + QUOTED, rates.charged(), "labour for an hour quoted");
        rate("It earns", TAKEN + "=0", LABOUR + "/" + TAKEN, rates.earned(), "labour for an hour taken");
        flow.name(EARNS, 'D');
        String unknown = "OR(" + RESULT + "=\"\"," + QUOTED + "=0)";
        rate(
                "To break even it must bring",
                unknown,
                "(" + LABOUR + "-" + RESULT + ")/" + QUOTED,
                rates.breakEven(),
                "labour for an hour quoted");
        flow.name(BREAK_EVEN, 'D');
        rate(
                "For the target margin",
                unknown,
                "(" + COSTS_ALL + "/(1-" + TARGET + ")-" + PARTS + ")/" + QUOTED,
                rates.forTarget(),
                "labour for an hour quoted");
        flow.name(FOR_TARGET, 'D');
    }

    private void rate(String words, String unknown, String formula, long rate, String note) {
        double value = Amounts.money(rate);
        flow.next()
                .text(words)
                .skip()
                .skip()
                .formula("IF(" + unknown + ",\"\",ROUND(" + formula + ",4))", value, CellStyles.Kind.MONEY);
        flow.about(value, note);
    }

    private void ahead() {
        flow.fact(
                "One more hour in paid time brings",
                Amounts.money(hour.rates().nextHour()),
                CellStyles.Kind.MONEY,
                "revenue less parts and overhead that follows");
        flow.fact(
                "One more hour paid extra brings",
                Amounts.money(hour.rates().nextHourExtra()),
                CellStyles.Kind.MONEY,
                "the same less wages with overtime");
        flow.fact(
                "Hours that break even",
                hour.breakEvenHours(),
                CellStyles.Kind.HOURS,
                "on finished jobs, in those months");
        flow.fact("Sold hours may fall by", hour.marginOfSafety(), CellStyles.Kind.SHARE, "before the result is lost");
    }

    private void sensitivity() {
        flow.skip(1);
        flow.title("What other prices and other hours sold would do to the result");
        if (hour.sensitivity().isEmpty()) {
            flow.sentence("Not known without wages and overheads.");
            return;
        }
        flow.sentence("Change the yellow cells to try your own.");
        flow.headings(List.of("Labour prices", "Hours sold", "", "Result", "Against the result"));
        hour.sensitivity().forEach(this::whatIf);
    }

    private void whatIf(WhatIf whatIf) {
        double price = whatIf.pricePercent() / 100.0;
        double hours = whatIf.hoursPercent() / 100.0;
        double change = jobs.labour() * ((1 + price) * (1 + hours) - 1) + jobs.followsHours() * hours;
        Grid grid = flow.next();
        String row = Integer.toString(flow.row());
        grid.number(price, CellStyles.Kind.INPUT_CHANGE)
                .number(hours, CellStyles.Kind.INPUT_CHANGE)
                .skip()
                .formula(
                        (RESULT + "+" + LABOUR + "*((1+A#)*(1+B#)-1)+" + FOLLOWS + "*B#").replace("#", row),
                        result + change,
                        CellStyles.Kind.WHOLE_MONEY)
                .formula("D" + row + "-" + RESULT, change, CellStyles.Kind.WHOLE_MONEY);
    }
}
