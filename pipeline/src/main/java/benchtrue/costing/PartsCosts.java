package benchtrue.costing;

import benchtrue.hours.JobLines;
import benchtrue.shop.Absent;
import benchtrue.shop.Balance;
import benchtrue.shop.LineState;
import benchtrue.shop.PartUses;
import benchtrue.shop.QuotedLines;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;

/**
 * What parts, materials and outside work cost each line. What was drawn for a ticket as a whole is dealt over its accepted
 * lines by what they charge for parts, equally where they charge nothing.
 *
 * @param ofLine cost of each line
 * @param balance what was read against where it went
 */
record PartsCosts(long[] ofLine, Balance balance) {
    static PartsCosts of(JobLines jobs, long[] partsRevenue) {
        return new Dealer(jobs, partsRevenue).deal();
    }

    private static final class Dealer {
        private final JobLines jobs;
        private final long[] partsRevenue;
        private final long[] ofLine;
        private final long[] ofTicket;
        private long read;
        private long supplies;

        Dealer(JobLines jobs, long[] partsRevenue) {
            this.jobs = jobs;
            this.partsRevenue = partsRevenue;
            ofLine = new long[jobs.size()];
            ofTicket = new long[jobs.ledger().tickets().size()];
        }

        PartsCosts deal() {
            PartUses uses = jobs.ledger().partUses();
            for (int use = 0; use < uses.size(); use++) {
                place(uses, use);
            }
            dealTickets();
            List<Balance.Term> terms = List.of(
                    new Balance.Term("lines", Arrays.stream(ofLine).reduce(0, Math::addExact)),
                    new Balance.Term(
                            "tickets without an accepted line",
                            Arrays.stream(ofTicket).reduce(0, Math::addExact)),
                    new Balance.Term("shop supplies", supplies));
            return new PartsCosts(ofLine, new Balance("parts and outside work", "ten-thousandths", read, terms));
        }

        private void place(PartUses uses, int use) {
            long cost = uses.get(use).cost();
            read = Math.addExact(read, cost);
            if (uses.line(use) != Absent.INDEX) {
                ofLine[uses.line(use)] += cost;
            } else if (uses.ticket(use) != Absent.INDEX) {
                ofTicket[uses.ticket(use)] += cost;
            } else {
                supplies += cost;
            }
        }

        private void dealTickets() {
            QuotedLines lines = jobs.ledger().lines();
            for (int from = 0, to; from < jobs.size(); from = to) {
                int ticket = lines.ticket(from);
                for (to = from + 1; to < jobs.size() && lines.ticket(to) == ticket; ) {
                    to++;
                }
                if (ofTicket[ticket] != 0) {
                    dealTicket(ticket, from, to);
                }
            }
        }

        private void dealTicket(int ticket, int from, int to) {
            int[] accepted = IntStream.range(from, to)
                    .filter(line -> jobs.state(line) == LineState.CLOSED || jobs.state(line) == LineState.OPEN)
                    .toArray();
            if (accepted.length == 0) {
                return;
            }
            long[] weights = Arrays.stream(accepted)
                    .mapToLong(line -> Math.max(0, Absent.firstOf(partsRevenue[line], 0)))
                    .toArray();
            long[] shares = Shares.deal(ofTicket[ticket], weights);
            for (int i = 0; i < accepted.length; i++) {
                ofLine[accepted[i]] += shares[i];
            }
            ofTicket[ticket] = 0;
        }
    }
}
