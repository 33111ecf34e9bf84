package benchtrue.hours;

import benchtrue.shop.Hours;
import benchtrue.shop.Ints;
import java.util.Arrays;

/**
 * Closed tickets as the split sees them: lines whose hours are known outright, and tickets whose hours are still to be split.
 * Hours are in double hours; cells group lines that share one load factor.
 */
final class SplitProblem {
    final int tickets;
    final int[] knownTicket;
    final int[] knownCell;
    final double[] knownHours;
    final double[] knownBase;

    final int[] openTicket;
    /** Slots of the ticket at place i: {@code start[i]} up to and without {@code start[i + 1]}. */
    final int[] start;

    final double[] wholeHours;
    final int[] slotCell;
    final double[] slotBase;
    final double[] slotFloor;

    SplitProblem(LineFacts facts, TicketLines ticketLines, PlacedTime placed, int tickets) {
        this.tickets = tickets;
        Ints known = new Ints();
        Ints toSplit = new Ints();
        Ints slots = new Ints();
        Ints starts = new Ints();
        for (int ticket = 0; ticket < tickets; ticket++) {
            if (!ticketLines.closed(ticket) || !logged(facts, placed, ticket)) {
                continue;
            }
            boolean split = placed.wholeSeconds[ticket] > 0 && ticketLines.takers(ticket) > 1;
            if (split) {
                toSplit.add(ticket);
                starts.add(slots.size());
            }
            for (int line = facts.starts[ticket]; line < facts.starts[ticket + 1]; line++) {
                if (facts.takesHours[line] || (facts.accepted(line) && placed.floorSeconds(line) > 0)) {
                    (split && facts.takesHours[line] ? slots : known).add(line);
                }
            }
        }
        starts.add(slots.size());
        start = starts.toArray();
        openTicket = toSplit.toArray();
        wholeHours = Arrays.stream(openTicket)
                .mapToDouble(t -> Hours.of(placed.wholeSeconds[t]))
                .toArray();
        int[] slotLine = slots.toArray();
        slotCell = gather(facts.cell, slotLine);
        slotBase = gather(facts.baseHours, slotLine);
        slotFloor = Arrays.stream(slotLine)
                .mapToDouble(l -> Hours.of(placed.floorSeconds(l)))
                .toArray();
        int[] knownLine = known.toArray();
        knownTicket = gather(facts.ticket, knownLine);
        knownCell = gather(facts.cell, knownLine);
        knownBase = gather(facts.baseHours, knownLine);
        knownHours = Arrays.stream(knownLine)
                .mapToDouble(l -> Hours.of(
                        placed.floorSeconds(l) + (facts.takesHours[l] ? placed.wholeSeconds[facts.ticket[l]] : 0)))
                .toArray();
    }

    /** Returns whether a ticket has a minute of bench time on or for its lines. */
    static boolean logged(LineFacts facts, PlacedTime placed, int ticket) {
        long seconds = placed.wholeSeconds[ticket];
        for (int line = facts.starts[ticket]; line < facts.starts[ticket + 1]; line++) {
            seconds += placed.floorSeconds(line);
        }
        return seconds > 0;
    }

    private static int[] gather(int[] column, int[] rows) {
        return Arrays.stream(rows).map(row -> column[row]).toArray();
    }

    private static double[] gather(double[] column, int[] rows) {
        return Arrays.stream(rows).mapToDouble(row -> column[row]).toArray();
    }

    int slots() {
        return start[start.length - 1];
    }
}
