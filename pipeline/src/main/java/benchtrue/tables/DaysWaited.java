package benchtrue.tables;

import benchtrue.reconcile.Ledger;
import benchtrue.shop.Absent;
import benchtrue.shop.Tickets;
import benchtrue.shop.Wait;
import benchtrue.shop.WaitReason;
import java.util.BitSet;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.Map;

/**
 * How many calendar days an instrument was on the shop's hands, and how many of them it waited; the first and the last day
 * count, and a day on which it waited for two reasons counts once in the whole. Absent where the shop keeps no record.
 */
public final class DaysWaited {
    private final Ledger ledger;
    private final Map<Integer, Map<WaitReason, BitSet>> waits = new HashMap<>();

    /** Takes the records of a shop. */
    public DaysWaited(Ledger ledger) {
        this.ledger = ledger;
        ledger.waits().forEach(this::add);
    }

    private void add(Wait wait) {
        Tickets tickets = ledger.tickets();
        int from = Math.max(0, wait.from() - tickets.opened(wait.ticket()));
        int to = Math.min(Absent.firstOf(wait.to(), last(wait.ticket())), last(wait.ticket()));
        if (to >= tickets.opened(wait.ticket()) + from) {
            waits.computeIfAbsent(wait.ticket(), ticket -> new EnumMap<>(WaitReason.class))
                    .computeIfAbsent(wait.reason(), reason -> new BitSet())
                    .set(from, to - tickets.opened(wait.ticket()) + 1);
        }
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
        BitSet all = new BitSet();
        waits.getOrDefault(ticket, Map.of()).values().forEach(all::or);
        return known(all.cardinality());
    }

    /** Returns the days on which an instrument waited for one reason. */
    public long waited(int ticket, WaitReason reason) {
        BitSet days = waits.getOrDefault(ticket, Map.of()).get(reason);
        return known(days == null ? 0 : days.cardinality());
    }

    private long known(int days) {
        return ledger.missing().contains("waits") ? Absent.AMOUNT : days;
    }
}
