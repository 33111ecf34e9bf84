package benchtrue.page;

import benchtrue.costing.CostedLines;
import benchtrue.hours.JobLines;
import benchtrue.shop.Absent;
import benchtrue.shop.Figures;
import benchtrue.shop.Hours;
import benchtrue.shop.LineState;
import benchtrue.shop.PaidHours;
import benchtrue.shop.PriceBook;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.function.IntToLongFunction;

/** Fifth answer: what a bench hour costs and earns, and how much paid time reached the log. */
final class TellBenchHour {
    private final Told told;
    private final CostedLines costs;
    private final JobLines jobs;

    TellBenchHour(Told told) {
        this.told = told;
        costs = told.review().costs();
        jobs = costs.jobs();
    }

    List<ReviewView.Fact> tell() {
        List<ReviewView.Fact> facts = new ArrayList<>();
        facts.add(new ReviewView.Fact("Posted", told.figures().price(costs.shopRate()), "price of a bench hour"));
        facts.add(
                new ReviewView.Fact("Earned", perHour(costs::labourRevenue), "labour on closed jobs of the last year"));
        facts.add(new ReviewView.Fact("Wages", perHour(costs::labourCost), "with payroll on-costs"));
        facts.add(new ReviewView.Fact("Overhead", perHour(costs::overheadCost), "carried by the same hours"));
        facts.add(new ReviewView.Fact("Paid time in the log", paidTime(), "logged hours of hours paid, last year"));
        facts.add(lastBook());
        return facts;
    }

    /** Money for each bench hour over last year's closed lines that have both. */
    private String perHour(IntToLongFunction amount) {
        double money = 0;
        long seconds = 0;
        for (int line = 0; line < jobs.size(); line++) {
            if (jobs.state(line) == LineState.CLOSED
                    && told.lastYear(jobs.ledger().lines().ticket(line))
                    && Absent.has(amount.applyAsLong(line))) {
                money += amount.applyAsLong(line);
                seconds += jobs.actualSeconds(line);
            }
        }
        return seconds == 0 ? Figures.UNKNOWN : told.figures().price(Math.round(money / Hours.of(seconds) / 100) * 100);
    }

    private String paidTime() {
        LocalDate asOf = LocalDate.ofEpochDay(jobs.ledger().asOf());
        int thisMonth = asOf.getYear() * 12 + asOf.getMonthValue() - 1;
        long paid = 0;
        int first = Integer.MAX_VALUE;
        for (PaidHours row : jobs.ledger().paidHours()) {
            if (row.month() >= thisMonth - 12 && row.month() < thisMonth) {
                paid += row.seconds();
                first = Math.min(first, row.month());
            }
        }
        return paid == 0 ? Figures.UNKNOWN : told.figures().percent((double) logged(first, thisMonth) / paid);
    }

    private long logged(int firstMonth, int endMonth) {
        long from = LocalDate.of(firstMonth / 12, firstMonth % 12 + 1, 1).toEpochDay();
        long until = LocalDate.of(endMonth / 12, endMonth % 12 + 1, 1).toEpochDay();
        long seconds = 0;
        for (int row = 0; row < jobs.ledger().time().size(); row++) {
            int day = jobs.ledger().time().workDay(row);
            seconds += day >= from && day < until ? jobs.ledger().time().seconds(row) : 0;
        }
        return seconds;
    }

    private ReviewView.Fact lastBook() {
        PriceBook book = jobs.ledger().books().inForce(jobs.ledger().asOf());
        return new ReviewView.Fact(
                "Price book",
                told.figures().day(book.effective()),
                "in force since; compare its picture before and after");
    }
}
