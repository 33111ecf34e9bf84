package benchtrue.reconcile;

import benchtrue.shop.Ints;
import benchtrue.shop.TimeEntries;
import java.util.Arrays;
import java.util.function.IntUnaryOperator;

/** Puts rows in the ledger's order: by ticket, then by day or line, then as they were read. */
final class RowOrder {
    private static final int LEAST_TICKET = TimeEntries.SHARED;

    private RowOrder() {}

    /** Returns the rows that were accepted, as they were read. */
    static int[] accepted(RowDispositions table) {
        Ints rows = new Ints();
        for (int row = 0; row < table.size(); row++) {
            if (table.accepted(row)) {
                rows.add(row);
            }
        }
        return rows.toArray();
    }

    /**
     * Returns rows in order.
     *
     * @param rows rows as they were read
     * @param ticket index of a row's ticket, or what stands for none or several
     * @param second what orders rows of one ticket
     */
    static int[] sorted(int[] rows, IntUnaryOperator ticket, IntUnaryOperator second) {
        int[] tickets =
                Arrays.stream(rows).map(ticket).map(t -> t - LEAST_TICKET).toArray();
        int[] next = new int[Arrays.stream(tickets).max().orElse(0) + 2];
        for (int place : tickets) {
            next[place + 1]++;
        }
        for (int i = 1; i < next.length; i++) {
            next[i] += next[i - 1];
        }
        int[] sorted = new int[rows.length];
        for (int i = 0; i < rows.length; i++) {
            sorted[next[tickets[i]]++] = rows[i];
        }
        for (int i = 0, from = 0; i + 1 < next.length; from = next[i++]) {
            sortBy(second, sorted, from, next[i]);
        }
        return sorted;
    }

    private static void sortBy(IntUnaryOperator second, int[] rows, int from, int to) {
        long[] keyed = new long[to - from];
        for (int i = from; i < to; i++) {
            keyed[i - from] = (long) second.applyAsInt(rows[i]) << 32 | rows[i];
        }
        Arrays.sort(keyed);
        for (int i = from; i < to; i++) {
            rows[i] = (int) keyed[i - from];
        }
    }
}
