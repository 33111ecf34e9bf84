package benchtrue.calendar;

import benchtrue.shop.Balance;
import java.util.List;

/**
 * The shop's calendar on the as-of date.
 *
 * @param open every open ticket once, in the order of states, those that stand there longest first
 * @param calls whom to call, what saves most first
 * @param callOn the next day on which the shop is at work
 * @param backlog work in the shop
 * @param waiting waiting time by reason and the money tied up
 * @param balance open tickets against the states in which they stand
 */
public record Calendar(
        List<OpenTicket> open, List<Call> calls, int callOn, Backlog backlog, List<Waiting> waiting, Balance balance) {
    public Calendar {
        open = List.copyOf(open);
        calls = List.copyOf(calls);
        waiting = List.copyOf(waiting);
    }
}
