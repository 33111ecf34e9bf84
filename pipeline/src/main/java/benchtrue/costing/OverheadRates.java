package benchtrue.costing;

import benchtrue.reconcile.Ledger;
import benchtrue.shop.Absent;
import benchtrue.shop.Money;
import benchtrue.shop.TimeEntries;
import java.util.HashMap;
import java.util.Map;

/**
 * Overhead that a bench hour carries, set for each calendar year: by the owner, else the year before tells it where at
 * least six of its months have overheads and bench hours, else the year itself so far. Textbooks set it from a budget (OpenStax,
 * Principles of Accounting 2, section 4.4); a shop without one budgets what last year cost.
 */
final class OverheadRates implements EntryPrice {
    private static final int ENOUGH_MONTHS = 6;
    private final Map<Integer, Long> ofYear = new HashMap<>();

    private final TimeEntries time;

    private OverheadRates(TimeEntries time) {
        this.time = time;
    }

    /** Returns the rates of every year in which the ledger has bench hours, and of the as-of date. */
    static OverheadRates of(Ledger ledger) {
        OverheadRates rates = new OverheadRates(ledger.time());
        MonthSums amounts = MonthSums.overheads(ledger);
        MonthSums bench = MonthSums.benchSeconds(ledger);
        int last = Math.max(Months.year(bench.last()), Months.year(Months.of(ledger.asOf())));
        for (int year = Months.year(bench.first()); bench.last() >= bench.first() && year <= last; year++) {
            rates.set(year, amounts, bench);
        }
        return rates;
    }

    private void set(int year, MonthSums amounts, MonthSums bench) {
        Year before = Year.of(year - 1, amounts, bench);
        Year basis = before.months >= ENOUGH_MONTHS ? before : Year.of(year, amounts, bench);
        if (basis.months > 0) {
            ofYear.put(year, Rate.hourly(basis.amount, basis.seconds));
        }
    }

    /** Returns the rate of a year, or absent. */
    long ofYear(int year) {
        return ofYear.getOrDefault(year, Absent.AMOUNT);
    }

    @Override
    public long of(int entry) {
        if (!MonthSums.onBench(time, entry)) {
            return 0;
        }
        long rate = ofYear(Months.year(Months.of(time.workDay(entry))));
        return Absent.has(rate) ? Money.perHour(rate, time.seconds(entry)) : Absent.AMOUNT;
    }

    /** Overheads and bench hours of the months of a year that have both. */
    private record Year(int months, long amount, long seconds) {
        static Year of(int year, MonthSums amounts, MonthSums bench) {
            int months = 0;
            long amount = 0;
            long seconds = 0;
            for (int month = year * 12; month < year * 12 + 12; month++) {
                if (bench.get(month) > 0 && amounts.has(month)) {
                    months++;
                    amount = Math.addExact(amount, amounts.get(month));
                    seconds += bench.get(month);
                }
            }
            return new Year(months, amount, seconds);
        }
    }
}
