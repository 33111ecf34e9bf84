package benchtrue.shop;

import java.util.Collection;
import java.util.List;

/**
 * All tickets, in the order of their keys.
 *
 * <p>An accessor with the name of a part of {@link Ticket} returns that part of a row.
 */
public final class Tickets {
    private final Ticket[] rows;

    public Tickets(Collection<Ticket> rows) {
        this.rows = rows.toArray(Ticket[]::new);
    }

    public int size() {
        return rows.length;
    }

    public Ticket get(int row) {
        return rows[row];
    }

    public String ticket(int row) {
        return rows[row].ticket();
    }

    public int opened(int row) {
        return rows[row].opened();
    }

    public int promised(int row) {
        return rows[row].promised();
    }

    public int closed(int row) {
        return rows[row].closed();
    }

    public int finished(int row) {
        return rows[row].finished();
    }

    public TicketStatus status(int row) {
        return rows[row].status();
    }

    public String instrumentClass(int row) {
        return rows[row].instrumentClass();
    }

    public int builtYear(int row) {
        return rows[row].builtYear();
    }

    public List<String> traits(int row) {
        return rows[row].traits();
    }

    public String quotedBy(int row) {
        return rows[row].quotedBy();
    }

    public int reworkOf(int row) {
        return rows[row].reworkOf();
    }
}
