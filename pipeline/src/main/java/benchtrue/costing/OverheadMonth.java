package benchtrue.costing;

import benchtrue.reconcile.Ledger;
import benchtrue.shop.Absent;
import benchtrue.shop.Balance;
import benchtrue.shop.Overhead;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * Overhead of one month. All figures are absent where the month has no overheads or its year no rate.
 *
 * @param fixed fixed overhead that the month cost
 * @param variable overhead that follows bench hours
 * @param carried what the month's bench hours carried at the rate set for the year
 * @param variance why the two differ
 */
public record OverheadMonth(long fixed, long variable, long carried, OverheadVariance variance) {
    /** A month without overheads or without a rate. */
    static final OverheadMonth UNKNOWN =
            new OverheadMonth(Absent.AMOUNT, Absent.AMOUNT, Absent.AMOUNT, OverheadVariance.UNKNOWN);

    /** Returns all overheads read against what jobs carried of them and what they did not. */
    static Balance balance(Ledger ledger, List<WorkMonth> months) {
        long read = 0;
        for (Overhead row : ledger.overheads()) {
            read = Math.addExact(read, row.amount());
        }
        long carried = 0;
        long notCarried = 0;
        for (WorkMonth month : months) {
            if (Absent.has(month.overhead().carried())) {
                carried = Math.addExact(carried, month.overhead().carried());
                notCarried = Math.addExact(notCarried, month.overhead().underApplied());
            }
        }
        return new Balance(
                "overheads",
                "ten-thousandths",
                read,
                List.of(
                        new Balance.Term("carried by the bench hours of their month", carried),
                        new Balance.Term("not carried", notCarried),
                        new Balance.Term("years without a rate", withoutRate(ledger, months))));
    }

    private static long withoutRate(Ledger ledger, List<WorkMonth> months) {
        Set<Integer> known = months.stream()
                .filter(month -> Absent.has(month.overhead().carried()))
                .map(WorkMonth::month)
                .collect(Collectors.toSet());
        return ledger.overheads().stream()
                .filter(row -> !known.contains(row.month()))
                .mapToLong(Overhead::amount)
                .reduce(0, Math::addExact);
    }

    /** Returns what the month cost, absent where not recorded. */
    public long actual() {
        return Absent.has(fixed) ? fixed + variable : Absent.AMOUNT;
    }

    /** Returns what the jobs did not carry; negative where they carried more than the month cost; absent where unknown. */
    public long underApplied() {
        return Absent.has(fixed) && Absent.has(carried) ? actual() - carried : Absent.AMOUNT;
    }
}
