package benchtrue.reconcile;

import benchtrue.intake.TableRows;
import benchtrue.intake.TextColumn;
import benchtrue.intake.columns.TimeColumn;
import benchtrue.shop.TimeEntries;
import java.util.HashMap;
import java.util.Map;
import java.util.stream.Stream;

/** The tickets that entries name: none, one, or several that share one stretch. */
final class EntryTickets {
    private final TicketKeys keys;
    private final TextColumn column;
    private final int[] ticketOf;
    private final Map<Integer, int[]> shared = new HashMap<>();

    EntryTickets(TableRows rows, TicketKeys keys) {
        this.keys = keys;
        column = rows.column(TimeColumn.TICKET);
        ticketOf = keys.find(column);
        for (int code = 0; code < ticketOf.length; code++) {
            if (ticketOf[code] == TicketKeys.UNKNOWN) {
                ticketOf[code] = several(code);
            }
        }
    }

    private int several(int code) {
        int[] tickets = parts(code).mapToInt(keys::find).distinct().sorted().toArray();
        if (tickets.length == 0) {
            return TicketKeys.UNKNOWN;
        }
        if (tickets.length == 1 || tickets[0] < 0) {
            return tickets[0];
        }
        shared.put(code, tickets);
        return TimeEntries.SHARED;
    }

    private Stream<String> parts(int code) {
        return Stream.of(column.text(code).split(";")).map(String::strip).filter(key -> !key.isEmpty());
    }

    /** Returns a ticket's index, absent, {@link TimeEntries#SHARED}, or what {@link TicketKeys#find} says of a bad one. */
    int ticket(int row) {
        return ticketOf[column.code(row)];
    }

    int[] shared(int row) {
        return shared.get(column.code(row));
    }

    /** Returns the first of a row's keys that is unknown. */
    String unknown(int row) {
        int code = column.code(row);
        return parts(code)
                .filter(key -> keys.find(key) == TicketKeys.UNKNOWN)
                .findFirst()
                .orElse(column.text(code));
    }
}
