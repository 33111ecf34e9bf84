package benchtrue.hours;

import benchtrue.hours.EntryPlaces.Place;
import benchtrue.reconcile.Ledger;
import benchtrue.shop.Absent;
import benchtrue.shop.TimeEntries;
import benchtrue.shop.TimeKind;
import java.util.BitSet;
import java.util.Map;
import java.util.TreeMap;

/**
 * Sends each time entry where it belongs.
 *
 * <p>Handling, quoting and shop time stay apart. An entry that names a line is that line's, whatever became of it: that is
 * what the bench wrote down. One that names a repair type is of the accepted line with that type, else of the declined
 * one, else unquoted work. Time on the ticket as a whole is split over its accepted lines; a ticket without one keeps it
 * as a term of the balance.
 */
final class PlaceEntries {
    private final Ledger ledger;
    private final LineFacts facts;
    private final TicketLines ticketLines;
    private final Returns returns;
    private final PlacedTime placed;
    private final TreeMap<Long, Long> severalLines = new TreeMap<>();
    private final BitSet corrected = new BitSet();

    PlaceEntries(Ledger ledger, LineFacts facts, TicketLines ticketLines, Returns returns) {
        this.ledger = ledger;
        this.facts = facts;
        this.ticketLines = ticketLines;
        this.returns = returns;
        placed = new PlacedTime(
                ledger.time().size(), ledger.lines().size(), ledger.tickets().size());
    }

    PlacedTime place() {
        TimeEntries time = ledger.time();
        for (int entry = 0; entry < time.size(); entry++) {
            Place place = place(entry, time.ticket(entry), time.seconds(entry));
            placed.place[entry] = (byte) place.ordinal();
            if (time.seconds(entry) < 0 && time.ticket(entry) >= 0) {
                corrected.set(time.ticket(entry));
            }
        }
        dealOverSeveralLines();
        CancelCorrections cancel = new CancelCorrections(facts, placed);
        corrected.stream().forEach(cancel::cancel);
        return placed;
    }

    private Place place(int entry, int ticket, long seconds) {
        placed.line[entry] = Absent.INDEX;
        TimeKind kind = ledger.time().kind(entry);
        if (kind != TimeKind.BENCH) {
            placed.kindSeconds[kind.ordinal()] += seconds;
            return Place.BY_KIND;
        }
        if (ticket == TimeEntries.SHARED) {
            return Place.OVER_TICKETS;
        }
        if (ticket < 0) {
            placed.kindSeconds[TimeKind.SHOP.ordinal()] += seconds;
            return Place.BY_KIND;
        }
        int named = ledger.time().line(entry);
        if (named >= 0 && ledger.lines().ticket(named) == ticket) {
            return onLine(entry, named, seconds);
        }
        int type = ledger.time().repairType(entry);
        return type >= 0 ? byType(entry, ticket, type, seconds) : asAWhole(ticket, seconds);
    }

    private Place onLine(int entry, int line, long seconds) {
        placed.line[entry] = line;
        placed.labelledSeconds[line] += seconds;
        return Place.ON_LINE;
    }

    private Place asAWhole(int ticket, long seconds) {
        if (ticketLines.takers(ticket) > 0) {
            placed.wholeSeconds[ticket] += seconds;
            return Place.OVER_TICKET;
        }
        placed.withoutLineSeconds[ticket] += seconds;
        return Place.WITHOUT_LINE;
    }

    private Place byType(int entry, int ticket, int type, long seconds) {
        int accepted = ticketLines.accepted(ticket, type);
        if (accepted > 1) {
            severalLines.merge(PlacedTime.key(ticket, type), seconds, Math::addExact);
            return Place.OVER_TICKET;
        }
        int line = ticketLines.first(ticket, type);
        if (line >= 0) {
            return onLine(entry, line, seconds);
        }
        if (returns.earlierTicketOfVisit(ticket) >= 0 && ticketLines.takers(ticket) == 0) {
            placed.withoutLineSeconds[ticket] += seconds;
            return Place.WITHOUT_LINE;
        }
        placed.addUnquoted(ticket, type, seconds);
        return Place.UNQUOTED;
    }

    private void dealOverSeveralLines() {
        for (Map.Entry<Long, Long> sum : severalLines.entrySet()) {
            int ticket = (int) (sum.getKey() >> Integer.SIZE);
            ticketLines.dealByQuote(ticket, sum.getKey().intValue(), sum.getValue(), placed.dealtSeconds);
        }
    }
}
