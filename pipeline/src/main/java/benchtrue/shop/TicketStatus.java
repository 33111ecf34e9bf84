package benchtrue.shop;

/** Where a ticket stands, as recorded or derived on the as-of date. */
public enum TicketStatus {
    OPEN,
    CLOSED,
    VOID
}
