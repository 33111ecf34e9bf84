package benchtrue.costing;

import benchtrue.reconcile.Ledger;
import benchtrue.shop.Absent;
import benchtrue.shop.CostBehaviour;
import benchtrue.shop.Money;
import benchtrue.shop.Months;
import benchtrue.shop.TimeEntries;
import java.util.Arrays;

/**
 * Overhead that a bench hour carries, set for each calendar year: by the owner, else the year before tells it where at
 * least six of its months have overheads and bench hours, else the year itself so far. Textbooks set it from a budget
 * (OpenStax, Principles of Accounting 2, section 4.4); a shop without one budgets what last year cost.
 */
final class OverheadRates implements EntryPrice {
    private static final int ENOUGH_MONTHS = 6;
    private final int firstYear;
    private final YearRate[] ofYear;
    private final TimeEntries time;
    private final MonthSums fixed;
    private final MonthSums variable;
    private final MonthSums bench;
    private final long owners;

    /**
     * What a year's bench hours carry.
     *
     * @param fixedRate fixed overhead of a bench hour
     * @param variableRate variable overhead of a bench hour
     * @param monthlyFixed fixed overhead budgeted for a month
     */
    record YearRate(long fixedRate, long variableRate, long monthlyFixed) {
        long hourly() {
            return fixedRate + variableRate;
        }
    }

    /** Takes the ledger and the rate the owner set for every year, or absent. */
    OverheadRates(Ledger ledger, long owners) {
        time = ledger.time();
        this.owners = owners;
        fixed = MonthSums.overheads(ledger, CostBehaviour.FIXED);
        variable = MonthSums.overheads(ledger, CostBehaviour.VARIABLE);
        bench = MonthSums.benchSeconds(ledger);
        boolean worked = bench.last() >= bench.first();
        int last = Math.max(Months.year(bench.last()), Months.year(Months.of(ledger.asOf())));
        firstYear = Months.year(bench.first());
        ofYear = new YearRate[worked ? last - firstYear + 1 : 0];
        Arrays.setAll(ofYear, i -> rate(firstYear + i));
    }

    /** Returns a year's rates, null where neither it nor the year before tells them. */
    private YearRate rate(int year) {
        Year before = year(year - 1);
        Year basis = before.months >= ENOUGH_MONTHS ? before : year(year);
        if (basis.months == 0) {
            return null;
        }
        long variableRate = Rate.hourly(basis.variable, basis.seconds);
        long fixedRate = Absent.has(owners) ? owners - variableRate : Rate.hourly(basis.fixed, basis.seconds);
        return new YearRate(fixedRate, variableRate, basis.monthlyFixed());
    }

    /** Returns whether a year's rate is known. */
    boolean has(int year) {
        return year >= firstYear && year < firstYear + ofYear.length && ofYear[year - firstYear] != null;
    }

    /** Returns whether a month's overheads are recorded. */
    boolean recorded(int month) {
        return fixed.has(month) || variable.has(month);
    }

    /** Returns what a month's overheads of a behaviour cost, 0 where the month has only others. */
    long actual(int month, CostBehaviour behaviour) {
        return (behaviour == CostBehaviour.FIXED ? fixed : variable).get(month);
    }

    /** Returns a year's rates, which must be known. */
    YearRate ofYear(int year) {
        return ofYear[year - firstYear];
    }

    /** Returns what a bench hour of a year carries, or absent. */
    long hourly(int year) {
        return has(year) ? ofYear(year).hourly() : Absent.AMOUNT;
    }

    @Override
    public long of(int entry) {
        if (!MonthSums.onBench(time, entry)) {
            return 0;
        }
        long rate = hourly(Months.year(Months.of(time.workDay(entry))));
        return Absent.has(rate) ? Money.perHour(rate, time.seconds(entry)) : Absent.AMOUNT;
    }

    /** Sums the months of a year that have both overheads and bench hours. */
    private Year year(int year) {
        Year sum = new Year(0, 0, 0, 0);
        for (int month = year * 12; month < year * 12 + 12; month++) {
            if (bench.get(month) > 0 && (fixed.has(month) || variable.has(month))) {
                sum = new Year(
                        sum.months + 1,
                        Math.addExact(sum.fixed, fixed.get(month)),
                        Math.addExact(sum.variable, variable.get(month)),
                        sum.seconds + bench.get(month));
            }
        }
        return sum;
    }

    private record Year(int months, long fixed, long variable, long seconds) {
        long monthlyFixed() {
            return Rate.halfEven(fixed, months);
        }
    }
}
