package benchtrue.shop;

import java.util.ArrayList;
import java.util.List;

/** All tickets as columns, in the order of their keys. */
public final class Tickets {
    private static final TicketStatus[] TICKET_STATUSS = TicketStatus.values();
    private final String[] ticket;
    private final int[] opened;
    private final int[] promised;
    private final int[] closed;
    private final int[] finished;
    private final byte[] status;
    private final String[] instrumentClass;
    private final int[] builtYear;
    private final List<List<String>> traits;
    private final String[] quotedBy;
    private final int[] reworkOf;

    private Tickets(Builder rows) {
        ticket = rows.ticket.toArray(String[]::new);
        opened = rows.opened.toArray();
        promised = rows.promised.toArray();
        closed = rows.closed.toArray();
        finished = rows.finished.toArray();
        status = rows.status.toArray();
        instrumentClass = rows.instrumentClass.toArray(String[]::new);
        builtYear = rows.builtYear.toArray();
        traits = rows.traits;
        quotedBy = rows.quotedBy.toArray(String[]::new);
        reworkOf = rows.reworkOf.toArray();
    }

    /** Returns how many rows there are. */
    public int size() {
        return ticket.length;
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
        return ticket[row];
    }

    /** Returns {@link Ticket#opened} of a row. */
    public int opened(int row) {
        return opened[row];
    }

    /** Returns {@link Ticket#promised} of a row. */
    public int promised(int row) {
        return promised[row];
    }

    /** Returns {@link Ticket#closed} of a row. */
    public int closed(int row) {
        return closed[row];
    }

    /** Returns {@link Ticket#finished} of a row. */
    public int finished(int row) {
        return finished[row];
    }

    /** Returns {@link Ticket#status} of a row. */
    public TicketStatus status(int row) {
        return TICKET_STATUSS[status[row]];
    }

    /** Returns {@link Ticket#instrumentClass} of a row. */
    public String instrumentClass(int row) {
        return instrumentClass[row];
    }

    /** Returns {@link Ticket#builtYear} of a row. */
    public int builtYear(int row) {
        return builtYear[row];
    }

    /** Returns {@link Ticket#traits} of a row. */
    public List<String> traits(int row) {
        return traits.get(row);
    }

    /** Returns {@link Ticket#quotedBy} of a row. */
    public String quotedBy(int row) {
        return quotedBy[row];
    }

    /** Returns {@link Ticket#reworkOf} of a row. */
    public int reworkOf(int row) {
        return reworkOf[row];
    }

    /** Takes rows in the order of their keys. */
    public static final class Builder {
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

        /** Appends a row and returns this builder. */
        public Builder add(Ticket row) {
            ticket.add(row.ticket());
            opened.add(row.opened());
            promised.add(row.promised());
            closed.add(row.closed());
            finished.add(row.finished());
            status.add((byte) row.status().ordinal());
            instrumentClass.add(row.instrumentClass());
            builtYear.add(row.builtYear());
            traits.add(row.traits());
            quotedBy.add(row.quotedBy());
            reworkOf.add(row.reworkOf());
            return this;
        }

        /** Returns how many rows were taken. */
        public int size() {
            return ticket.size();
        }

        /** Returns the rows as columns. */
        public Tickets build() {
            return new Tickets(this);
        }
    }
}
