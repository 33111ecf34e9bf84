package benchtrue.hours;

import benchtrue.shop.Hours;
import benchtrue.shop.Ints;

/**
 * What the split is estimated from, as columns by line and by ticket. Hours are in double hours.
 *
 * <p>A known line's hours stand outright: it was logged by name, on a ticket without other time or as its only line. A line
 * that its ticket's other time can go to is bare where it has no hours of its own, named where it has some.
 */
final class SplitData {
    static final byte OUT = 0;
    static final byte KNOWN = 1;
    static final byte BARE = 2;
    static final byte NAMED = 3;
    /** No hours although its ticket was logged: counts as none, but says nothing about how long such a job takes. */
    static final byte IDLE = 4;

    final Cells cells;
    final LineFacts facts;
    final TicketTraits traits;
    final Workers workers;
    /** Tickets that count: closed, with bench time, in order. */
    final int[] tickets;
    /** By ticket: hours to split. */
    final double[] wholeHours;
    /** By line. */
    final byte[] role;
    /** By line: hours that are the line's outright. */
    final double[] ownHours;
    /** Most lines of one ticket. */
    final int mostLines;
    /** By line: whether its hours count in its repair type's load factor. */
    final boolean[] judged;

    SplitData(
            Cells cells,
            LineFacts facts,
            TicketLines ticketLines,
            TicketTraits traits,
            Workers workers,
            PlacedTime placed) {
        this.cells = cells;
        this.facts = facts;
        this.traits = traits;
        this.workers = workers;
        int lines = facts.ticket.length;
        role = new byte[lines];
        ownHours = new double[lines];
        judged = DescribeLines.judged(facts, placed);
        mostLines = most(facts.starts);
        wholeHours = new double[placed.wholeSeconds.length];
        Ints counting = new Ints();
        for (int ticket = 0; ticket < wholeHours.length; ticket++) {
            wholeHours[ticket] = Hours.of(placed.wholeSeconds[ticket]);
            roles(ticket, ticketLines.takers(ticket), placed);
            if (ticketLines.closed(ticket) && placed.logged(facts, ticket)) {
                counting.add(ticket);
            }
        }
        tickets = counting.toArray();
    }

    private void roles(int ticket, int takers, PlacedTime placed) {
        boolean whole = placed.wholeSeconds[ticket] > 0;
        for (int line = facts.starts[ticket]; line < facts.starts[ticket + 1]; line++) {
            ownHours[line] = Hours.of(placed.floorSeconds(line));
            boolean named = ownHours[line] > 0;
            if (whole && facts.takesHours[line] && !(named && takers == 1)) {
                role[line] = named ? NAMED : BARE;
            } else if (facts.takesHours[line] || (facts.accepted(line) && named)) {
                ownHours[line] += facts.takesHours[line] ? wholeHours[ticket] : 0;
                role[line] = ownHours[line] > 0 ? KNOWN : IDLE;
            }
        }
    }

    private static int most(int[] starts) {
        int most = 0;
        for (int ticket = 0; ticket + 1 < starts.length; ticket++) {
            most = Math.max(most, starts[ticket + 1] - starts[ticket]);
        }
        return most;
    }
}
