package benchtrue.findings;

import benchtrue.hours.JobLines;
import benchtrue.shop.Absent;
import benchtrue.shop.LineState;
import benchtrue.shop.Tickets;

/**
 * What one year holds: sums over the tickets closed in the 365 days up to the as-of date. A younger shop's volume is scaled
 * up to a year, but never by more than four times.
 *
 * @param tickets the shop's tickets
 * @param asOf last day of the year
 * @param scale what a sum is multiplied by to make a whole year
 */
record LastYear(Tickets tickets, int asOf, double scale) {
    private static final int DAYS = 365;
    private static final int SHORTEST_SPAN = 91;

    static LastYear of(JobLines jobs) {
        Tickets tickets = jobs.ledger().tickets();
        int asOf = jobs.ledger().asOf();
        int first = asOf;
        for (int line = 0; line < jobs.size(); line++) {
            if (jobs.state(line) == LineState.CLOSED) {
                first = StrictMath.min(
                        first, tickets.opened(jobs.ledger().lines().ticket(line)));
            }
        }
        double span = StrictMath.max(SHORTEST_SPAN, StrictMath.min(DAYS, asOf - first));
        return new LastYear(tickets, asOf, DAYS / span);
    }

    /** Returns whether a ticket was closed in the year. */
    boolean holds(int ticket) {
        return Absent.firstOf(tickets.closed(ticket), tickets.opened(ticket)) > asOf - DAYS;
    }
}
