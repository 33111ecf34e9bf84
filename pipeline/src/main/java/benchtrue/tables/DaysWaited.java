package benchtrue.tables;

import benchtrue.reconcile.Ledger;
import benchtrue.shop.Absent;
import benchtrue.shop.Wait;
import benchtrue.shop.WaitReason;
import java.util.BitSet;
import java.util.function.Predicate;

/**
 * How many calendar days an instrument was on the shop's hands, and how many of them it waited; the first and the last day
 * count, and a day on which it waited for two reasons counts once in the whole. Absent where the shop keeps no record.
 */
public final class DaysWaited {
    private final Ledger ledger;
    private final int[] starts;

    /** Takes the records of a shop. */
    public DaysWaited(Ledger ledger) {
        this.ledger = ledger;
        starts = Wait.starts(ledger.waits(), ledger.tickets().size());
    }

    private int last(int ticket) {
        return Math.min(Absent.firstOf(ledger.tickets().closed(ticket), ledger.asOf()), ledger.asOf());
    }

    /** Returns the days from the first of a visit to its last, or to the as-of date while it is open. */
    public long inShop(int ticket) {
        int days = last(ticket) - ledger.tickets().opened(ticket) + 1;
        return days > 0 ? days : Absent.AMOUNT;
    }

    /** Returns the days on which an instrument waited for whatever reason. */
    public long waited(int ticket) {
        return known(ticket, reason -> true);
    }

    /** Returns the days on which an instrument waited for one reason. */
    public long waited(int ticket, WaitReason reason) {
        return known(ticket, reason::equals);
    }

    private long known(int ticket, Predicate<WaitReason> which) {
        return ledger.missing().contains("waits")
                ? Absent.AMOUNT
                : days(ticket, which).cardinality();
    }

    private BitSet days(int ticket, Predicate<WaitReason> which) {
        int opened = ledger.tickets().opened(ticket);
        BitSet days = new BitSet();
        for (Wait wait : ledger.waits().subList(starts[ticket], starts[ticket + 1])) {
            int from = Math.max(0, wait.from() - opened);
            int to = Math.min(Absent.firstOf(wait.to(), last(ticket)), last(ticket)) - opened;
            if (which.test(wait.reason()) && to >= from) {
                days.set(from, to + 1);
            }
        }
        return days;
    }
}
