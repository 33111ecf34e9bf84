package benchtrue.reconcile;

import benchtrue.intake.columns.TimeColumn;
import benchtrue.shop.Absent;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** Pairs each negative entry with the one it takes back: same technician, same ticket, same hours; the nearest day first. */
final class CancelPairs {
    private final RowDispositions table;
    private final EntryTickets tickets;
    private final long[] seconds;
    private final BitSet cancelled = new BitSet();

    CancelPairs(RowDispositions table, EntryTickets tickets, long[] seconds) {
        this.table = table;
        this.tickets = tickets;
        this.seconds = seconds;
    }

    /** One technician's hours on one ticket. */
    private record What(int technician, int ticketCode, long seconds) {}

    /** Returns the rows that take one another back; a negative entry that takes nothing back is set aside. */
    BitSet pair() {
        Map<What, List<Integer>> candidates = new HashMap<>();
        List<Integer> negative = new ArrayList<>();
        for (int row = 0; row < seconds.length; row++) {
            if (seconds[row] < 0 && Absent.has(seconds[row]) && table.inQuestion(row)) {
                negative.add(row);
                candidates.put(what(row), new ArrayList<>());
            }
        }
        if (!negative.isEmpty()) {
            collect(candidates);
            negative.forEach(row -> pair(row, candidates.get(what(row))));
        }
        return cancelled;
    }

    private What what(int row) {
        return new What(
                table.rows().code(TimeColumn.TECHNICIAN, row),
                table.rows().code(TimeColumn.TICKET, row),
                Math.abs(seconds[row]));
    }

    private void collect(Map<What, List<Integer>> candidates) {
        for (int row = 0; row < seconds.length; row++) {
            if (seconds[row] > 0 && table.accepted(row)) {
                List<Integer> found = candidates.get(what(row));
                if (found != null) {
                    found.add(row);
                }
            }
        }
    }

    private void pair(int negative, List<Integer> candidates) {
        Integer best = null;
        for (int candidate : table.accepted(negative) ? candidates : List.<Integer>of()) {
            if (best == null || distance(negative, candidate) < distance(negative, best)) {
                best = candidate;
            }
        }
        if (best == null) {
            table.setAside(
                    negative,
                    TimeColumn.HOURS,
                    table.rows().text(TimeColumn.HOURS, negative),
                    "hours above zero, or an entry of the same technician and ticket that this one takes back");
            return;
        }
        candidates.remove(best);
        cancelled.set(negative);
        cancelled.set(best);
        int taken = best;
        table.doubt(
                Doubt.CANCELLED_PAIR,
                negative,
                () -> "takes back " + table.rows().place(taken));
    }

    private int distance(int left, int right) {
        return Math.abs(
                table.rows().day(TimeColumn.WORK_DATE, left) - table.rows().day(TimeColumn.WORK_DATE, right));
    }
}
