package benchtrue.calendar;

import benchtrue.costing.CostedLines;
import benchtrue.hours.JobLines;
import benchtrue.reconcile.Ledger;
import benchtrue.shop.Absent;
import benchtrue.shop.LineState;
import benchtrue.shop.TicketStatus;
import benchtrue.shop.Wait;
import benchtrue.shop.WaitReason;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** Sums waiting time by reason, and the money in the instruments that wait now. */
final class SumWaiting {
    private static final WaitReason[] REASONS = WaitReason.values();
    private final CostedLines costs;
    private final Ledger ledger;
    private final int since;

    SumWaiting(CostedLines costs, int since) {
        this.costs = costs;
        this.since = since;
        ledger = costs.jobs().ledger();
    }

    /** Returns one row a reason that occurs. */
    List<Waiting> sum() {
        int[] waits = new int[REASONS.length];
        long[] days = new long[REASONS.length];
        Map<Integer, Wait> now = new TreeMap<>();
        for (Wait wait : ledger.waits()) {
            int until = Math.min(Absent.firstOf(wait.to(), ledger.asOf()), ledger.asOf());
            if (until >= since) {
                waits[wait.reason().ordinal()]++;
                days[wait.reason().ordinal()] += Math.max(0, until - Math.max(wait.from(), since));
            }
            if (waitsNow(wait)) {
                now.merge(wait.ticket(), wait, (a, b) -> b.from() >= a.from() ? b : a);
            }
        }
        List<Waiting> rows = new ArrayList<>();
        for (WaitReason reason : REASONS) {
            if (waits[reason.ordinal()] > 0) {
                rows.add(row(reason, waits[reason.ordinal()], days[reason.ordinal()], now));
            }
        }
        return rows;
    }

    private boolean waitsNow(Wait wait) {
        boolean ended = Absent.has(wait.to()) && wait.to() < ledger.asOf();
        return !ended && ledger.tickets().status(wait.ticket()) == TicketStatus.OPEN;
    }

    private Waiting row(WaitReason reason, int waits, long days, Map<Integer, Wait> now) {
        JobLines jobs = costs.jobs();
        int[] starts = ledger.lines().starts(ledger.tickets().size());
        int instruments = 0;
        long cost = 0;
        long worth = 0;
        for (Wait wait : now.values()) {
            if (wait.reason() != reason) {
                continue;
            }
            instruments++;
            for (int line = starts[wait.ticket()]; line < starts[wait.ticket() + 1]; line++) {
                if (jobs.state(line) == LineState.OPEN) {
                    cost += costs.knownCost(line);
                    worth += Absent.firstOf(costs.labourRevenue(line), 0) + Absent.firstOf(costs.partsRevenue(line), 0);
                }
            }
        }
        return new Waiting(reason, waits, days, instruments, ledger.wages().isEmpty() ? Absent.AMOUNT : cost, worth);
    }
}
