package benchtrue.costing;

import benchtrue.shop.Absent;
import benchtrue.shop.Balance;
import java.util.BitSet;
import java.util.List;

/**
 * A cost that came with hours, on the lines where the hours went.
 *
 * @param known what is known of the cost of each line
 * @param incomplete lines with hours whose cost can't be known
 * @param read what all hours cost, summed as they were read
 * @param terms where all of it went, lines and others
 */
record HourCosts(long[] known, BitSet incomplete, long read, List<Balance.Term> terms) {
    /** Returns the cost of each line, absent where a part of it can't be known. */
    long[] ofLines() {
        long[] costs = known.clone();
        incomplete.stream().forEach(line -> costs[line] = Absent.AMOUNT);
        return costs;
    }

    /** Returns what was read against where it went. */
    Balance balance(String name) {
        return new Balance(name, "ten-thousandths", read, terms);
    }
}
