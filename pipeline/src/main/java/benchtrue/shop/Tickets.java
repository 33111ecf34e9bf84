package benchtrue.shop;

import java.util.ArrayList;
import java.util.List;

/** All tickets as columns, in the order of their keys. */
public final class Tickets {
    private static final TicketStatus[] TICKET_STATUSS = TicketStatus.values();

    private final List<String> ticket = new ArrayList<>();
    private final Ints opened = new Ints();
    private final Ints promised = new Ints();
    private final Ints closed = new Ints();
    private final Ints finished = new Ints();
    private final Bytes status = new Bytes();
    private final List<String> instrumentClass = new ArrayList<>();
    private final Ints builtYear = new Ints();
    private final List<List<String>> traits = new ArrayList<>();
    private final List<String> quotedBy = new ArrayList<>();
    private final Ints reworkOf = new Ints();

    private Tickets() {}

    /** Returns how many rows there are. */
    public int size() {
        return ticket.size();
    }

    /** Returns a row as a value; for reading a few, not for loops over millions. */
    public Ticket get(int row) {
        return new Ticket(
                ticket(row),
                opened(row),
                promised(row),
                closed(row),
                finished(row),
                status(row),
                instrumentClass(row),
                builtYear(row),
                traits(row),
                quotedBy(row),
                reworkOf(row));
    }

    /** Returns {@link Ticket#ticket} of a row. */
    public String ticket(int row) {
        return ticket.get(row);
    }

    /** Returns {@link Ticket#opened} of a row. */
    public int opened(int row) {
        return opened.get(row);
    }

    /** Returns {@link Ticket#promised} of a row. */
    public int promised(int row) {
        return promised.get(row);
    }

    /** Returns {@link Ticket#closed} of a row. */
    public int closed(int row) {
        return closed.get(row);
    }

    /** Returns {@link Ticket#finished} of a row. */
    public int finished(int row) {
        return finished.get(row);
    }

    /** Returns {@link Ticket#status} of a row. */
    public TicketStatus status(int row) {
        return TICKET_STATUSS[status.get(row)];
    }

    /** Returns {@link Ticket#instrumentClass} of a row. */
    public String instrumentClass(int row) {
        return instrumentClass.get(row);
    }

    /** Returns {@link Ticket#builtYear} of a row. */
    public int builtYear(int row) {
        return builtYear.get(row);
    }

    /** Returns {@link Ticket#traits} of a row. */
    public List<String> traits(int row) {
        return traits.get(row);
    }

    /** Returns {@link Ticket#quotedBy} of a row. */
    public String quotedBy(int row) {
        return quotedBy.get(row);
    }

    /** Returns {@link Ticket#reworkOf} of a row. */
    public int reworkOf(int row) {
        return reworkOf.get(row);
    }

    /** Takes rows in the order of their keys, until they are built. */
    public static final class Builder {
        private final Tickets rows = new Tickets();

        /** Appends a row and returns this builder. */
        public Builder add(Ticket row) {
            rows.ticket.add(row.ticket());
            rows.opened.add(row.opened());
            rows.promised.add(row.promised());
            rows.closed.add(row.closed());
            rows.finished.add(row.finished());
            rows.status.add((byte) row.status().ordinal());
            rows.instrumentClass.add(row.instrumentClass());
            rows.builtYear.add(row.builtYear());
            rows.traits.add(row.traits());
            rows.quotedBy.add(row.quotedBy());
            rows.reworkOf.add(row.reworkOf());
            return this;
        }

        /** Returns the rows as columns. */
        public Tickets build() {
            return rows;
        }
    }
}
