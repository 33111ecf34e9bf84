package benchtrue.costing;

import benchtrue.reconcile.Ledger;
import benchtrue.settings.MoneyRules;
import benchtrue.shop.Absent;
import benchtrue.shop.Months;
import benchtrue.shop.PaidHours;
import benchtrue.shop.PayBasis;
import benchtrue.shop.TimeEntries;
import benchtrue.shop.Wage;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Arrays;

/**
 * Hours paid against hours logged, and overtime, by month. The premium falls on a technician's logged time beyond the
 * weekly hours of the settings, weeks from Monday, and counts in the month of the week's Thursday; only technicians paid by
 * the hour earn it.
 */
final class PaidTime {
    private static final int WEEK = 7;
    /** Days from a Monday to 1970-01-01, a Thursday. */
    private static final int MONDAY = 3;

    private final Ledger ledger;
    private final Wages wages;
    private final MonthSpan span;
    private final long[] paid;
    private final long[] logged;
    private final long[] notLogged;
    private final long[] premium;

    PaidTime(Ledger ledger, Wages wages, MoneyRules rules) {
        this.ledger = ledger;
        this.wages = wages;
        span = MonthSpan.of(ledger);
        paid = new long[span.months()];
        Arrays.fill(paid, Absent.AMOUNT);
        logged = paid.clone();
        notLogged = paid.clone();
        premium = new long[span.months()];
        long[] byTechnician = loggedByTechnician();
        for (PaidHours row : ledger.paidHours()) {
            if (row.month() <= span.last()) {
                compare(row, byTechnician[row.technician() * span.months() + row.month() - span.first()]);
            }
        }
        if (rules.overtimePremium() > 0) {
            addPremiums(rules);
        }
    }

    /** Returns hours paid in a month, absent where not recorded. */
    long paidSeconds(int month) {
        return paid[month - span.first()];
    }

    /** Returns hours logged in a month by those whose paid hours are recorded, absent without any. */
    long loggedSeconds(int month) {
        return logged[month - span.first()];
    }

    /** Returns the wages of paid time not logged; absent where paid hours or a wage are not recorded. */
    long notLoggedCost(int month) {
        return notLogged[month - span.first()];
    }

    /** Returns what overtime cost above the wage. */
    long overtimePremium(int month) {
        return premium[month - span.first()];
    }

    private long[] loggedByTechnician() {
        long[] sums = new long[ledger.technicians().size() * span.months()];
        TimeEntries time = ledger.time();
        for (int entry = 0; entry < time.size(); entry++) {
            int month = Months.of(time.workDay(entry)) - span.first();
            sums[time.technician(entry) * span.months() + month] += time.seconds(entry);
        }
        return sums;
    }

    private void compare(PaidHours row, long loggedSeconds) {
        int month = row.month() - span.first();
        boolean first = !Absent.has(paid[month]);
        paid[month] = Absent.firstOf(paid[month], 0) + row.seconds();
        logged[month] = Absent.firstOf(logged[month], 0) + loggedSeconds;
        int lastDay = (int) Months.yearMonth(row.month()).atEndOfMonth().toEpochDay();
        long wage = wages.hourly(row.technician(), lastDay);
        boolean known = Absent.has(wage) && (first || Absent.has(notLogged[month]));
        notLogged[month] = known
                ? Absent.firstOf(notLogged[month], 0) + wages.cost(wage, Math.max(0, row.seconds() - loggedSeconds))
                : Absent.AMOUNT;
    }

    private void addPremiums(MoneyRules rules) {
        TimeEntries time = ledger.time();
        int firstWeek = Math.floorDiv(firstDay() + MONDAY, WEEK);
        int weeks = Math.floorDiv(ledger.asOf() + MONDAY, WEEK) - firstWeek + 1;
        long[] sums = new long[ledger.technicians().size() * weeks];
        for (int entry = 0; entry < time.size(); entry++) {
            int week = Math.floorDiv(time.workDay(entry) + MONDAY, WEEK) - firstWeek;
            sums[time.technician(entry) * weeks + week] += time.seconds(entry);
        }
        for (int i = 0; i < sums.length; i++) {
            long over = sums[i] - rules.overtimeAfterSeconds();
            int thursday = (firstWeek + i % weeks) * WEEK;
            if (over > 0) {
                addPremium(i / weeks, thursday, over, rules.overtimePremium());
            }
        }
    }

    private int firstDay() {
        TimeEntries time = ledger.time();
        int first = ledger.asOf();
        for (int entry = 0; entry < time.size(); entry++) {
            first = Math.min(first, time.workDay(entry));
        }
        return first;
    }

    private void addPremium(int technician, int thursday, long over, double share) {
        long wage = wages.hourly(technician, thursday);
        if (Absent.has(wage) && byTheHour(technician, thursday)) {
            long extra = BigDecimal.valueOf(wage)
                    .multiply(BigDecimal.valueOf(share))
                    .setScale(0, RoundingMode.HALF_EVEN)
                    .longValueExact();
            int month = Math.max(span.first(), Math.min(span.last(), Months.of(thursday)));
            premium[month - span.first()] += wages.cost(extra, over);
        }
    }

    private boolean byTheHour(int technician, int day) {
        PayBasis basis = PayBasis.HOURLY;
        for (Wage wage : ledger.wages()) {
            if (wage.technician() == technician && wage.effectiveFrom() <= day) {
                basis = wage.payBasis();
            }
        }
        return basis == null || basis == PayBasis.HOURLY;
    }
}
