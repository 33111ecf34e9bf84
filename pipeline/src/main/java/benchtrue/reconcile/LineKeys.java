package benchtrue.reconcile;

import benchtrue.intake.TextColumn;
import benchtrue.shop.Absent;
import benchtrue.shop.Names;
import java.util.stream.IntStream;

/** Finds lines by ticket and line key. */
final class LineKeys {
    private final Names names;
    private int[] codes = {};
    private int[] starts = {};

    LineKeys(TextColumn keys) {
        names = Names.of(
                IntStream.range(1, keys.distinct()).mapToObj(keys::text).toList());
    }

    /**
     * Takes the lines in the ledger's order.
     *
     * @param lineCodes code of the key of each line
     * @param lineTickets ticket of each line, ascending
     * @param tickets how many tickets there are
     */
    void take(int[] lineCodes, int[] lineTickets, int tickets) {
        codes = lineCodes;
        starts = new int[tickets + 1];
        for (int ticket : lineTickets) {
            starts[ticket + 1]++;
        }
        for (int t = 0; t < tickets; t++) {
            starts[t + 1] += starts[t];
        }
    }

    int code(String line) {
        return names.code(line);
    }

    int[] codes(TextColumn column) {
        return column.each(names::code);
    }

    /** Returns the index of a ticket's line, or {@link Absent#INDEX} where the ticket lacks it. */
    int find(int ticket, int code) {
        for (int line = starts[ticket]; line < starts[ticket + 1]; line++) {
            if (codes[line] == code && code != Absent.INDEX) {
                return line;
            }
        }
        return Absent.INDEX;
    }
}
