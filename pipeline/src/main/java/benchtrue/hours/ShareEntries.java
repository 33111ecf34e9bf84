package benchtrue.hours;

import benchtrue.hours.EntryPlaces.Place;
import benchtrue.shop.TimeEntries;
import benchtrue.statistics.LargestRemainder;
import java.util.BitSet;

/** Shares an entry over several tickets by their lines' expected hours, equally where none of them has any. */
final class ShareEntries {
    private final TimeEntries time;
    private final LineFacts facts;
    private final TicketLines ticketLines;
    private final PlacedTime placed;
    private final double[] expectedHours;
    private final BitSet touched = new BitSet();

    /** Takes the expected hours of each line as fitted without the shared entries. */
    ShareEntries(
            TimeEntries time, LineFacts facts, TicketLines ticketLines, PlacedTime placed, double[] expectedHours) {
        this.time = time;
        this.facts = facts;
        this.ticketLines = ticketLines;
        this.placed = placed;
        this.expectedHours = expectedHours;
    }

    static boolean any(PlacedTime placed) {
        for (byte place : placed.place) {
            if (place == Place.OVER_TICKETS.ordinal()) {
                return true;
            }
        }
        return false;
    }

    void share() {
        for (int entry = 0; entry < placed.place.length; entry++) {
            if (placed.place[entry] == Place.OVER_TICKETS.ordinal()) {
                share(entry);
            }
        }
        CancelCorrections cancel = new CancelCorrections(facts, placed);
        touched.stream().forEach(cancel::cancel);
    }

    private void share(int entry) {
        int[] tickets = time.sharedTickets(entry);
        int type = time.repairType(entry);
        double[] expected = new double[tickets.length];
        for (int i = 0; i < tickets.length; i++) {
            expected[i] = expected(tickets[i], type);
        }
        long[] parts = LargestRemainder.deal(Math.abs(time.seconds(entry)), expected);
        for (int i = 0; i < tickets.length; i++) {
            parts[i] *= Long.signum(time.seconds(entry));
            give(tickets[i], type, parts[i]);
            touched.set(tickets[i]);
        }
        placed.sharedSeconds.put(entry, parts);
    }

    private double expected(int ticket, int type) {
        double sum = 0;
        for (int line = facts.starts[ticket]; line < facts.starts[ticket + 1]; line++) {
            boolean counts = type < 0 ? facts.takesHours[line] : facts.accepted(line) && facts.type[line] == type;
            sum += counts ? expectedHours[line] : 0;
        }
        return sum;
    }

    private void give(int ticket, int type, long seconds) {
        if (type >= 0 && ticketLines.accepted(ticket, type) > 0) {
            ticketLines.dealByQuote(ticket, type, seconds, placed.dealtSeconds);
        } else if (type >= 0 && seconds != 0) {
            placed.addUnquoted(ticket, type, seconds);
        } else if (ticketLines.takers(ticket) > 0) {
            placed.wholeSeconds[ticket] += seconds;
        } else {
            placed.withoutLineSeconds[ticket] += seconds;
        }
    }
}
