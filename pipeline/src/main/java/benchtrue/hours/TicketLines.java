package benchtrue.hours;

import benchtrue.reconcile.Ledger;
import benchtrue.shop.Absent;
import benchtrue.shop.TicketStatus;
import benchtrue.statistics.LargestRemainder;

/** Answers about the lines of one ticket. */
final class TicketLines {
    private final Ledger ledger;
    private final LineFacts facts;

    TicketLines(Ledger ledger, LineFacts facts) {
        this.ledger = ledger;
        this.facts = facts;
    }

    boolean closed(int ticket) {
        return ledger.tickets().status(ticket) == TicketStatus.CLOSED;
    }

    /** Returns how many lines may take hours of the ticket as a whole. */
    int takers(int ticket) {
        int count = 0;
        for (int line = facts.starts[ticket]; line < facts.starts[ticket + 1]; line++) {
            count += facts.takesHours[line] ? 1 : 0;
        }
        return count;
    }

    /** Returns how many accepted lines of the ticket are of a repair type. */
    int accepted(int ticket, int type) {
        int count = 0;
        for (int line = facts.starts[ticket]; line < facts.starts[ticket + 1]; line++) {
            count += facts.accepted(line) && facts.type[line] == type ? 1 : 0;
        }
        return count;
    }

    /** Returns the first accepted line of a type, else the first declined or void one, else {@link Absent#INDEX}. */
    int first(int ticket, int type) {
        int first = Absent.INDEX;
        for (int line = facts.starts[ticket + 1] - 1; line >= facts.starts[ticket]; line--) {
            boolean better = first < 0 || facts.accepted(line) || !facts.accepted(first);
            if (facts.type[line] == type && better) {
                first = line;
            }
        }
        return first;
    }

    /** Deals seconds to the accepted lines of a type by their quotes; a negative sum is taken back likewise. */
    void dealByQuote(int ticket, int type, long seconds, long[] into) {
        int from = facts.starts[ticket];
        double[] weights = new double[facts.starts[ticket + 1] - from];
        for (int i = 0; i < weights.length; i++) {
            boolean of = facts.accepted(from + i) && facts.type[from + i] == type;
            weights[i] = of ? facts.quoteHours[from + i] : 0;
        }
        long[] parts = LargestRemainder.deal(Math.abs(seconds), weights);
        for (int i = 0; i < parts.length; i++) {
            into[from + i] += Long.signum(seconds) * parts[i];
        }
    }
}
