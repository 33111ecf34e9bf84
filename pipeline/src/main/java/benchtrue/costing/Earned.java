package benchtrue.costing;

import benchtrue.hours.JobLines;
import benchtrue.shop.Absent;
import benchtrue.shop.LineState;
import benchtrue.shop.Tickets;
import java.util.Arrays;

/**
 * When each line's money is earned: on the day its ticket's bench work was finished, else the day it was closed. Until then
 * it is carried at cost.
 */
final class Earned {
    private final int[] day;

    Earned(JobLines jobs) {
        day = new int[jobs.size()];
        Arrays.setAll(day, line -> earnedOn(jobs, line));
    }

    private static int earnedOn(JobLines jobs, int line) {
        LineState state = jobs.state(line);
        if (state == LineState.VOID || state == LineState.DECLINED) {
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

    /** Returns the day a line's money is earned, or {@link Absent#DAY}. */
    int day(int line) {
        return day[line];
    }

    /** Returns whether a line's money is earned. */
    boolean is(int line) {
        return Absent.has(day[line]);
    }
}
