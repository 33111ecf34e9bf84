package benchtrue.reconcile;

import benchtrue.shop.Absent;
import benchtrue.shop.Ints;
import benchtrue.shop.Outcome;
import benchtrue.shop.QuotedLines;
import benchtrue.shop.TicketStatus;
import benchtrue.shop.Tickets;
import benchtrue.shop.TimeEntries;
import java.util.Arrays;
import java.util.OptionalInt;
import java.util.TreeMap;

/**
 * Seconds quoted and logged by ticket, so that one without any hours is seen beside one with twice as many.
 *
 * @param tickets what they are sums of
 * @param quoted seconds quoted and not declined
 * @param logged seconds logged to the ticket alone
 * @param last its last entry of those
 * @param empty closed tickets that were quoted and have no time, by the day that they were opened
 */
record TicketSums(Tickets tickets, long[] quoted, long[] logged, int[] last, TreeMap<Integer, Ints> empty) {
    private static final int LONGEST_STAY = 60;
    /** What is too much on one ticket is at most so many times what the other lacks, and the other way round. */
    private static final double ALIKE = 2;

    static TicketSums of(Tickets tickets, QuotedLines lines, TimeEntries time) {
        int size = tickets.size();
        TicketSums sums = new TicketSums(tickets, new long[size], new long[size], new int[size], new TreeMap<>());
        Arrays.fill(sums.last, Absent.INDEX);
        for (int line = 0; line < lines.size(); line++) {
            boolean counts = lines.outcome(line) != Outcome.DECLINED && Absent.has(lines.judgedSeconds(line));
            sums.quoted[lines.ticket(line)] += counts ? lines.judgedSeconds(line) : 0;
        }
        boolean[] any = new boolean[size];
        for (int entry = 0; entry < time.size(); entry++) {
            int ticket = time.ticket(entry);
            if (ticket >= 0) {
                sums.logged[ticket] += time.seconds(entry);
                sums.last[ticket] = entry;
                any[ticket] = true;
            } else if (ticket == TimeEntries.SHARED) {
                Arrays.stream(time.sharedTickets(entry)).forEach(shared -> any[shared] = true);
            }
        }
        sums.findEmpty(any);
        return sums;
    }

    private void findEmpty(boolean[] any) {
        for (int ticket = 0; ticket < any.length; ticket++) {
            if (!any[ticket] && quoted[ticket] > 0 && tickets.status(ticket) == TicketStatus.CLOSED) {
                empty.computeIfAbsent(tickets.opened(ticket), day -> new Ints()).add(ticket);
            }
        }
    }

    /** Returns a ticket that lacks about what another has beyond twice its quote, and that was in the shop on a day. */
    OptionalInt lacking(int ticket, int day) {
        long beyond = logged[ticket] - quoted[ticket];
        if (quoted[ticket] == 0 || beyond < quoted[ticket]) {
            return OptionalInt.empty();
        }
        return empty.subMap(day - LONGEST_STAY, true, day, true).values().stream()
                .flatMapToInt(found -> Arrays.stream(found.toArray()))
                .filter(other -> tickets.closed(other) >= day)
                .filter(other -> beyond <= ALIKE * quoted[other] && quoted[other] <= ALIKE * beyond)
                .findFirst();
    }
}
