package benchtrue.findings;

import benchtrue.hours.JobLines;
import benchtrue.shop.Absent;
import benchtrue.shop.Hours;
import benchtrue.shop.LineState;
import benchtrue.shop.Tickets;

/**
 * Judged lines summed by repair type; every array has one value a repair-type code.
 *
 * @param lines judged lines
 * @param tickets tickets that hold at least one of them
 * @param quotedHours their quoted hours against today's book
 * @param actualSeconds their hours, without rework
 * @param reworkSeconds hours spent putting them right
 * @param yearlyHours quoted hours a year, from the lines closed in the last 365 days
 */
record TypeTotals(
        int[] lines,
        int[] tickets,
        double[] quotedHours,
        long[] actualSeconds,
        long[] reworkSeconds,
        double[] yearlyHours) {
    private static final int YEAR = 365;
    /** A younger shop's volume is scaled up to a year, but never by more than four times. */
    private static final int SHORTEST_SPAN = 91;

    /** Returns the sums over all judged lines. */
    static TypeTotals of(JobLines jobs) {
        int types = jobs.ledger().repairTypes().size();
        TypeTotals sums = new TypeTotals(
                new int[types], new int[types], new double[types], new long[types], new long[types], new double[types]);
        int[] lastTicket = new int[types];
        java.util.Arrays.fill(lastTicket, Absent.INDEX);
        for (int line = 0; line < jobs.size(); line++) {
            if (jobs.judged(line)) {
                sums.add(jobs, line, lastTicket);
            }
        }
        sums.toOneYear(span(jobs));
        return sums;
    }

    /** Returns hours per quoted hour, rework included; NaN without judged lines. */
    double load(int type) {
        return Hours.of(actualSeconds[type] + reworkSeconds[type]) / quotedHours[type];
    }

    private void add(JobLines jobs, int line, int[] lastTicket) {
        int type = jobs.ledger().lines().repairType(line);
        int ticket = jobs.ledger().lines().ticket(line);
        lines[type]++;
        if (lastTicket[type] != ticket) {
            lastTicket[type] = ticket;
            tickets[type]++;
        }
        quotedHours[type] += jobs.todayQuotedHours(line);
        actualSeconds[type] += jobs.actualSeconds(line);
        reworkSeconds[type] += jobs.reworkSeconds(line);
        if (ended(jobs.ledger().tickets(), ticket) > jobs.ledger().asOf() - YEAR) {
            yearlyHours[type] += jobs.todayQuotedHours(line);
        }
    }

    private void toOneYear(double span) {
        for (int type = 0; type < yearlyHours.length; type++) {
            yearlyHours[type] *= YEAR / span;
        }
    }

    /** Days of the last year that the records cover. */
    private static double span(JobLines jobs) {
        Tickets tickets = jobs.ledger().tickets();
        int first = jobs.ledger().asOf();
        for (int line = 0; line < jobs.size(); line++) {
            if (jobs.state(line) == LineState.CLOSED) {
                first = StrictMath.min(
                        first, tickets.opened(jobs.ledger().lines().ticket(line)));
            }
        }
        return StrictMath.max(SHORTEST_SPAN, StrictMath.min(YEAR, jobs.ledger().asOf() - first));
    }

    private static int ended(Tickets tickets, int ticket) {
        return Absent.firstOf(tickets.closed(ticket), tickets.opened(ticket));
    }
}
