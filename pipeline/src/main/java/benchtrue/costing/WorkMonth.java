package benchtrue.costing;

import benchtrue.shop.Absent;
import benchtrue.shop.Hours;
import java.util.Collections;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.Map;
import java.util.Set;

/**
 * One month of the bench, by the day worked. Money is in ten-thousandths, absent where the shop's files can't tell.
 *
 * @param month {@code year * 12 + month - 1}
 * @param seconds logged time of each kind, every kind present
 * @param wages wages and payroll on-costs of that time, every kind present; absent all where the wage list is missing
 * @param unpricedSeconds logged time of technicians without a wage on the day; its cost is missing from {@code wages}
 * @param overtimePremium what overtime cost above the wage; on no line, since no one job is to blame
 * @param paidSeconds hours paid, absent where not recorded
 * @param loggedOfPaidSeconds logged time of the technicians whose paid hours are recorded; absent without any
 * @param paidNotLogged wages and on-costs of paid time that never reached the log, absent where not recorded
 * @param supplies parts and materials drawn without a ticket, absent without the table of parts
 * @param overhead what keeping the doors open cost and what the bench hours carried, absent figures without overheads
 */
public record WorkMonth(
        int month,
        Map<WorkKind, Long> seconds,
        Map<WorkKind, Long> wages,
        long unpricedSeconds,
        long overtimePremium,
        long paidSeconds,
        long loggedOfPaidSeconds,
        long paidNotLogged,
        long supplies,
        OverheadMonth overhead) {
    private static final Set<WorkKind> NOT_ON_JOBS =
            EnumSet.of(WorkKind.UNQUOTED, WorkKind.WITHOUT_LINE, WorkKind.HANDLING, WorkKind.QUOTING, WorkKind.SHOP);

    public WorkMonth {
        seconds = Collections.unmodifiableMap(new EnumMap<>(seconds));
        wages = Collections.unmodifiableMap(new EnumMap<>(wages));
    }

    /** Returns the logged time of a kind. */
    public long seconds(WorkKind kind) {
        return seconds.get(kind);
    }

    /** Returns all logged time. */
    public long loggedSeconds() {
        return seconds.values().stream().mapToLong(Long::longValue).sum();
    }

    /** Returns the wages of time that stands on no line, absent without a wage list. */
    public long unsoldWages() {
        return wages(NOT_ON_JOBS);
    }

    /** Returns the wages of all logged time, absent without a wage list. */
    public long allWages() {
        return wages(EnumSet.allOf(WorkKind.class));
    }

    /** Returns the wages of time on jobs that somebody pays for or that went into the shop's own stock. */
    public long productiveWages() {
        return wages(EnumSet.of(WorkKind.SOLD, WorkKind.OWN_STOCK));
    }

    private long wages(Set<WorkKind> kinds) {
        long sum = 0;
        for (WorkKind kind : kinds) {
            if (!Absent.has(wages.get(kind))) {
                return Absent.AMOUNT;
            }
            sum = Math.addExact(sum, wages.get(kind));
        }
        return sum;
    }

    /** Returns the share of paid time that reached the log, NaN where paid hours are not recorded. */
    public double loggedShare() {
        return ofPaid(loggedOfPaidSeconds);
    }

    /** Returns the share of paid hours sold, NaN where paid hours are not recorded. */
    public double utilisation() {
        return ofPaid(seconds(WorkKind.SOLD));
    }

    private double ofPaid(long part) {
        return Absent.has(paidSeconds) && paidSeconds > 0 ? Hours.of(part) / Hours.of(paidSeconds) : Double.NaN;
    }
}
