package benchtrue.reconcile;

import benchtrue.intake.TableRows;
import benchtrue.intake.TextColumn;
import benchtrue.intake.columns.TicketColumn;
import benchtrue.shop.Absent;
import benchtrue.shop.Ticket;
import benchtrue.shop.TicketStatus;
import benchtrue.shop.Tickets;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** Builds the tickets as they stood on the as-of date. */
final class BuildTickets {
    private static final TicketStatus[] STATUSES = TicketStatus.values();
    private final RowDispositions table;
    private final TableRows rows;
    private final int asOf;
    private final UntoldTickets untold;
    private final List<List<String>> traits;
    private final String[] classes;
    private final String[] writers;
    private final Map<String, Integer> places = new HashMap<>();

    /**
     * Takes the tickets' rows.
     *
     * @param untold tells what the rows leave out
     */
    BuildTickets(RowDispositions table, int asOf, UntoldTickets untold) {
        this.table = table;
        rows = table.rows();
        this.asOf = asOf;
        this.untold = untold;
        classes = texts(rows.column(TicketColumn.INSTRUMENT_CLASS));
        writers = texts(rows.column(TicketColumn.QUOTED_BY));
        TextColumn words = rows.column(TicketColumn.TRAITS);
        traits = IntStream.range(0, words.distinct())
                .mapToObj(code -> Traits.of(words.text(code)))
                .toList();
    }

    /** Each text once, however many tickets share it. */
    private static String[] texts(TextColumn column) {
        return IntStream.range(0, column.distinct()).mapToObj(column::text).toArray(String[]::new);
    }

    /** A ticket's key and the row it stands in. */
    private record Key(String text, int row) {}

    Tickets build() {
        for (int row = 0; row < table.size(); row++) {
            if (rows.day(TicketColumn.OPENED, row) > asOf) {
                table.after(row);
            }
        }
        List<Key> order = Stream.concat(
                        IntStream.of(RowOrder.accepted(table))
                                .mapToObj(row -> new Key(rows.text(TicketColumn.TICKET, row), row)),
                        untold.keys().stream().map(key -> new Key(key, Absent.INDEX)))
                .sorted(Comparator.comparing(Key::text))
                .toList();
        for (int ticket = 0; ticket < order.size(); ticket++) {
            places.put(order.get(ticket).text(), ticket);
        }
        List<Ticket> tickets = new ArrayList<>();
        int[] reworkOf = order.stream()
                .mapToInt(key -> key.row() == Absent.INDEX ? Absent.INDEX : earlier(key.row()))
                .toArray();
        for (int ticket = 0; ticket < reworkOf.length; ticket++) {
            if (leadsBack(reworkOf, ticket)) {
                reworkOf[ticket] = Absent.INDEX;
                table.doubt(Doubt.CIRCULAR_REWORK, order.get(ticket).row());
            }
        }
        for (int ticket = 0; ticket < reworkOf.length; ticket++) {
            Key key = order.get(ticket);
            tickets.add(key.row() == Absent.INDEX ? untold.ticket(key.text()) : ticket(key.row(), reworkOf[ticket]));
        }
        return new Tickets(tickets);
    }

    /** Returns whether the earlier tickets of a ticket lead back to it. */
    private static boolean leadsBack(int[] reworkOf, int ticket) {
        int at = reworkOf[ticket];
        for (int step = 0; step < reworkOf.length && at != Absent.INDEX && at != ticket; step++) {
            at = reworkOf[at];
        }
        return at == ticket;
    }

    private Ticket ticket(int row, int reworkOf) {
        String key = rows.text(TicketColumn.TICKET, row);
        int opened = opened(key, row);
        int closed = upToAsOf(rows.day(TicketColumn.CLOSED, row));
        int finished = upToAsOf(rows.day(TicketColumn.FINISHED, row));
        if (!rows.has(TicketColumn.CLOSED)) {
            closed = closed(key, row, opened, finished);
            finished = Absent.has(finished) || !Absent.has(closed) ? finished : Math.max(opened, untold.last(key));
        }
        if (Absent.has(closed) && closed < opened || Absent.has(finished) && finished < opened) {
            table.doubt(Doubt.CLOSED_BEFORE_OPENED, row);
        }
        return new Ticket(
                key,
                opened,
                rows.day(TicketColumn.PROMISED, row),
                closed,
                finished,
                status(row, closed),
                instrumentClass(row),
                rows.day(TicketColumn.BUILT_YEAR, row),
                traits.get(rows.code(TicketColumn.TRAITS, row)),
                writers[rows.code(TicketColumn.QUOTED_BY, row)],
                reworkOf);
    }

    private int opened(String key, int row) {
        int stated = rows.day(TicketColumn.OPENED, row);
        if (Absent.has(stated)) {
            return stated;
        }
        if (rows.has(TicketColumn.OPENED)) {
            table.doubt(Doubt.NO_OPENING_DAY, row);
        }
        return untold.opened(key);
    }

    private String instrumentClass(int row) {
        int code = rows.code(TicketColumn.INSTRUMENT_CLASS, row);
        if (code == 0 && rows.has(TicketColumn.INSTRUMENT_CLASS)) {
            table.doubt(Doubt.NO_CLASS, row);
        }
        return code == 0 ? UntoldTickets.CLASS : classes[code];
    }

    /** Returns the day on which a ticket counts as closed where no file has a column for it. */
    private int closed(String key, int row, int opened, int finished) {
        if (rows.has(TicketColumn.FINISHED)) {
            return finished;
        }
        if (!rows.has(TicketColumn.STATUS)) {
            return untold.closed(key);
        }
        long word = rows.value(TicketColumn.STATUS, row);
        boolean closed = Absent.has(word) && STATUSES[(int) word] == TicketStatus.CLOSED;
        return closed ? Math.max(opened, untold.last(key)) : Absent.DAY;
    }

    private int upToAsOf(int day) {
        return day > asOf ? Absent.DAY : day;
    }

    private TicketStatus status(int row, int closed) {
        TicketStatus dated = Absent.has(closed) ? TicketStatus.CLOSED : TicketStatus.OPEN;
        long word = rows.value(TicketColumn.STATUS, row);
        if (!Absent.has(word)
                || rows.day(TicketColumn.CLOSED, row) > asOf && STATUSES[(int) word] != TicketStatus.VOID) {
            return dated;
        }
        TicketStatus status = STATUSES[(int) word];
        if (status != TicketStatus.VOID && status != dated) {
            table.doubt(Doubt.STATUS_AGAINST_DATES, row);
        }
        return status;
    }

    private int earlier(int row) {
        String key = rows.text(TicketColumn.REWORK_OF, row);
        Integer place = places.get(key);
        if (!key.isEmpty() && place == null) {
            table.doubt(Doubt.UNKNOWN_EARLIER_TICKET, row);
        }
        return place == null ? Absent.INDEX : place;
    }
}
