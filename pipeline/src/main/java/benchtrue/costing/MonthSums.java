package benchtrue.costing;

import benchtrue.reconcile.Ledger;
import benchtrue.shop.Absent;
import benchtrue.shop.CostBehaviour;
import benchtrue.shop.Months;
import benchtrue.shop.Overhead;
import benchtrue.shop.TimeEntries;
import benchtrue.shop.TimeKind;
import java.util.BitSet;
import java.util.List;

/** Seconds or money by month. A month in which nothing was recorded is told from one that sums to zero. */
final class MonthSums {
    private final int first;
    private final long[] sums;
    private final BitSet recorded = new BitSet();

    private MonthSums(int first, int last) {
        this.first = first;
        sums = new long[Math.max(0, last - first + 1)];
    }

    /** Returns the ledger's bench seconds by month worked. */
    static MonthSums benchSeconds(Ledger ledger) {
        TimeEntries time = ledger.time();
        int firstDay = Integer.MAX_VALUE;
        int lastDay = Integer.MIN_VALUE;
        for (int entry = 0; entry < time.size(); entry++) {
            firstDay = Math.min(firstDay, time.workDay(entry));
            lastDay = Math.max(lastDay, time.workDay(entry));
        }
        if (time.size() == 0) {
            return new MonthSums(0, -1);
        }
        MonthSums bench = new MonthSums(Months.of(firstDay), Months.of(lastDay));
        for (int entry = 0; entry < time.size(); entry++) {
            if (onBench(time, entry)) {
                bench.add(Months.of(time.workDay(entry)), time.seconds(entry));
            }
        }
        return bench;
    }

    /** Returns whether an entry is bench time on a ticket. */
    static boolean onBench(TimeEntries time, int entry) {
        return time.kind(entry) == TimeKind.BENCH && time.ticket(entry) != Absent.INDEX;
    }

    /** Returns the ledger's overheads of a behaviour by month. */
    static MonthSums overheads(Ledger ledger, CostBehaviour behaviour) {
        List<Overhead> rows = ledger.overheads().stream()
                .filter(row -> row.behaviour() == behaviour)
                .toList();
        int first = rows.stream().mapToInt(Overhead::month).min().orElse(0);
        int last = rows.stream().mapToInt(Overhead::month).max().orElse(-1);
        MonthSums amounts = new MonthSums(first, last);
        for (Overhead row : rows) {
            amounts.add(row.month(), row.amount());
        }
        return amounts;
    }

    private void add(int month, long amount) {
        sums[month - first] = Math.addExact(sums[month - first], amount);
        recorded.set(month - first);
    }

    /** Returns the first month; meaningless where {@link #last} is before it. */
    int first() {
        return first;
    }

    /** Returns the last month. */
    int last() {
        return first + sums.length - 1;
    }

    /** Returns whether anything was recorded in a month. */
    boolean has(int month) {
        return month >= first && month <= last() && recorded.get(month - first);
    }

    /** Returns the sum of a month, 0 where nothing was recorded. */
    long get(int month) {
        return has(month) ? sums[month - first] : 0;
    }
}
