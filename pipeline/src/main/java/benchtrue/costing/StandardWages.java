package benchtrue.costing;

import benchtrue.shop.Absent;
import benchtrue.shop.Money;

/** The wage, with payroll on-costs, that a bench hour is reckoned at for a year: what it cost on average in the year before. */
final class StandardWages {
    private final MonthSpan span;
    private final TypeTotals[] totals;
    private final StandardYears years;

    StandardWages(MonthSpan span, TypeTotals[] totals) {
        this.span = span;
        this.totals = totals;
        years = new StandardYears(span, totals);
    }

    /** Returns the standard wage of a year, absent where no job has hours. */
    long hourly(int year) {
        int basis = years.basis(year);
        long cost = 0;
        long seconds = 0;
        for (int month = Math.max(basis * 12, span.first()); month <= Math.min(basis * 12 + 11, span.last()); month++) {
            cost = Math.addExact(cost, TypeTotals.sum(totals[month - span.first()].labourCost()));
            seconds += TypeTotals.sum(totals[month - span.first()].actualSeconds());
        }
        return Rate.hourly(cost, seconds);
    }

    /** Returns the rate and efficiency variances of a month's jobs. */
    CostVariance variance(int month, long actualCost, long actualSeconds, long allowedSeconds) {
        long rate = hourly(Months.year(month));
        return Absent.has(rate)
                ? CostVariance.of(actualCost, Money.perHour(rate, actualSeconds), Money.perHour(rate, allowedSeconds))
                : CostVariance.UNKNOWN;
    }
}
