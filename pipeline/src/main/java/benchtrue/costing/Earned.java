package benchtrue.costing;

import benchtrue.hours.JobLines;
import benchtrue.shop.Absent;
import benchtrue.shop.LineState;
import benchtrue.shop.PaidBy;
import benchtrue.shop.Tickets;
import java.util.Arrays;
import java.util.BitSet;

/**
 * When each line's money is earned: on the day its ticket's bench work was finished, else the day it was closed. Until then
 * it is carried at cost; so is work on the shop's own stock, until the instrument is sold, which these records don't tell.
 */
final class Earned {
    private final int[] day;
    private final BitSet ownStock = new BitSet();

    Earned(JobLines jobs) {
        day = new int[jobs.size()];
        Arrays.setAll(day, line -> finishedOn(jobs, line));
        for (int line = 0; line < day.length; line++) {
            ownStock.set(line, jobs.ledger().lines().paidBy(line) == PaidBy.HOUSE);
        }
    }

    private static int finishedOn(JobLines jobs, int line) {
        LineState state = jobs.state(line);
        if (!state.accepted()) {
            return Absent.DAY;
        }
        Tickets tickets = jobs.ledger().tickets();
        int ticket = jobs.ledger().lines().ticket(line);
        int finished = tickets.finished(ticket);
        if (Absent.has(finished) && finished <= jobs.ledger().asOf()) {
            return finished;
        }
        return state == LineState.CLOSED ? Absent.firstOf(tickets.closed(ticket), tickets.opened(ticket)) : Absent.DAY;
    }

    /** Returns the day a line's work was done, or {@link Absent#DAY} where it is not or nobody wanted it. */
    int day(int line) {
        return day[line];
    }

    /** Returns whether a line's money is earned. */
    boolean is(int line) {
        return Absent.has(day[line]) && !ownStock.get(line);
    }

    /** Returns whether a line is finished work on the shop's own stock. */
    boolean isOwnStock(int line) {
        return Absent.has(day[line]) && ownStock.get(line);
    }
}
