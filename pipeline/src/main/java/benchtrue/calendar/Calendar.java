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
 * @param byWeek its hours by the week in which they are due: overdue, eight weeks, later, without a day
 * @param byFamily its hours by kind of work, the most weeks of work first
 * @param waiting waiting time by reason and the money tied up
 * @param weeks how long visits take, kind by kind and repair by repair, and what to promise today
 * @param trial how such promises would have done on past visits, given when they came in
 * @param openTrial how they would have done on visits that stood in the shop at the beginning of a month
 * @param balance open tickets against the states in which they stand
 */
public record Calendar(
        List<OpenTicket> open,
        List<Call> calls,
        int callOn,
        Backlog backlog,
        List<WorkAhead> byWeek,
        List<WorkAhead> byFamily,
        List<Waiting> waiting,
        List<RepairWeeks> weeks,
        PromiseTrial trial,
        PromiseTrial openTrial,
        Balance balance) {
    public Calendar {
        open = List.copyOf(open);
        calls = List.copyOf(calls);
        byWeek = List.copyOf(byWeek);
        byFamily = List.copyOf(byFamily);
        waiting = List.copyOf(waiting);
        weeks = List.copyOf(weeks);
    }
}
