package benchtrue.costing;

import benchtrue.hours.JobLines;
import benchtrue.shop.Absent;
import benchtrue.shop.Balance;
import benchtrue.shop.Ints;
import benchtrue.shop.Longs;
import benchtrue.shop.PartUses;
import benchtrue.statistics.LargestRemainder;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;

/**
 * Parts, materials and outside work on the lines they were drawn for. What was drawn for a ticket as a whole is dealt over
 * its accepted lines by what they charge for parts, equally where they charge nothing.
 *
 * @param part code of the part of each share
 * @param quantity quantity of each share, in ten-thousandths
 * @param balance what was read against where it went
 */
record PartShares(int[] line, int[] part, long[] quantity, long[] cost, Balance balance) {
    static PartShares of(JobLines jobs, long[] partsRevenue) {
        return new Dealer(jobs, partsRevenue).deal();
    }

    int size() {
        return line.length;
    }

    /** Returns the cost of each line. */
    long[] ofLines(int lines) {
        long[] costs = new long[lines];
        for (int share = 0; share < line.length; share++) {
            costs[line[share]] = Math.addExact(costs[line[share]], cost[share]);
        }
        return costs;
    }

    private static final class Dealer {
        private final JobLines jobs;
        private final long[] partsRevenue;
        private final int[] starts;
        private final Ints line = new Ints();
        private final Ints part = new Ints();
        private final Longs quantity = new Longs();
        private final Longs cost = new Longs();
        private long read;
        private long supplies;
        private long withoutLine;

        Dealer(JobLines jobs, long[] partsRevenue) {
            this.jobs = jobs;
            this.partsRevenue = partsRevenue;
            starts = jobs.ledger().lines().starts(jobs.ledger().tickets().size());
        }

        PartShares deal() {
            PartUses uses = jobs.ledger().partUses();
            for (int use = 0; use < uses.size(); use++) {
                place(uses, use);
            }
            long[] costs = cost.toArray();
            List<Balance.Term> terms = List.of(
                    new Balance.Term("lines", Arrays.stream(costs).reduce(0, Math::addExact)),
                    new Balance.Term("tickets without an accepted line", withoutLine),
                    new Balance.Term("shop supplies", supplies));
            Balance balance = new Balance("parts and outside work", "ten-thousandths", read, terms);
            return new PartShares(line.toArray(), part.toArray(), quantity.toArray(), costs, balance);
        }

        private void place(PartUses uses, int use) {
            long spent = uses.get(use).cost();
            read = Math.addExact(read, spent);
            if (uses.line(use) != Absent.INDEX) {
                add(uses.line(use), uses.part(use), uses.quantity(use), spent);
            } else if (uses.ticket(use) == Absent.INDEX) {
                supplies = Math.addExact(supplies, spent);
            } else {
                dealOverTicket(uses, use, spent);
            }
        }

        private void dealOverTicket(PartUses uses, int use, long spent) {
            int ticket = uses.ticket(use);
            int[] accepted = IntStream.range(starts[ticket], starts[ticket + 1])
                    .filter(row -> jobs.state(row).accepted())
                    .toArray();
            if (accepted.length == 0) {
                withoutLine = Math.addExact(withoutLine, spent);
                return;
            }
            long[] weights = Arrays.stream(accepted)
                    .mapToLong(row -> Math.max(0, Absent.firstOf(partsRevenue[row], 0)))
                    .toArray();
            long[] costs = LargestRemainder.deal(spent, weights);
            long[] quantities = LargestRemainder.deal(uses.quantity(use), weights);
            for (int i = 0; i < accepted.length; i++) {
                add(accepted[i], uses.part(use), quantities[i], costs[i]);
            }
        }

        private void add(int onLine, int ofPart, long much, long spent) {
            line.add(onLine);
            part.add(ofPart);
            quantity.add(much);
            cost.add(spent);
        }
    }
}
