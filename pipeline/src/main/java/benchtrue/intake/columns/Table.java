package benchtrue.intake.columns;

import java.util.List;

/** The canonical tables of the data contract: the one place where columns, kinds, needs and keys are written down. */
public enum Table {
    TICKETS("tickets", Need.DERIVED, "one visit of one instrument", TicketColumn.values(), TicketColumn.TICKET),
    QUOTED_LINES(
            "quoted-lines",
            Need.REQUIRED,
            "one repair type quoted on a ticket",
            LineColumn.values(),
            LineColumn.TICKET,
            LineColumn.LINE),
    TIME_LOG("time-log", Need.REQUIRED, "one stretch of one technician's time", TimeColumn.values(), TimeColumn.ENTRY),
    PARTS_USAGE(
            "parts-usage",
            Need.OPTIONAL,
            "one part, material or piece of outside work",
            PartColumn.values(),
            PartColumn.USE),
    PRICE_BOOK(
            "price-book",
            Need.DERIVED,
            "one repair type at its standard hours and price",
            BookColumn.values(),
            BookColumn.REPAIR_TYPE),
    SURCHARGES(
            "surcharges",
            Need.EXTRA,
            "one line of the price book that holds on a condition",
            SurchargeColumn.values(),
            SurchargeColumn.REPAIR_TYPE,
            SurchargeColumn.WHEN),
    TECHNICIANS(
            "technicians",
            Need.OPTIONAL,
            "one wage from a date on",
            WageColumn.values(),
            WageColumn.TECHNICIAN,
            WageColumn.EFFECTIVE_FROM),
    PAID_HOURS(
            "paid-hours",
            Need.OPTIONAL,
            "hours paid in a month",
            PaidColumn.values(),
            PaidColumn.TECHNICIAN,
            PaidColumn.MONTH),
    OVERHEADS(
            "overheads",
            Need.OPTIONAL,
            "one cost of keeping the doors open",
            OverheadColumn.values(),
            OverheadColumn.MONTH,
            OverheadColumn.ACCOUNT),
    WAITS(
            "waits",
            Need.OPTIONAL,
            "one stretch of calendar time in which the instrument waited",
            WaitColumn.values(),
            WaitColumn.TICKET,
            WaitColumn.FROM,
            WaitColumn.REASON);

    private final String title;
    private final Need need;
    private final String oneRow;
    private final List<Column> columns;
    private final List<Column> key;

    Table(String title, Need need, String oneRow, Column[] columns, Column... key) {
        this.title = title;
        this.need = need;
        this.oneRow = oneRow;
        this.columns = List.of(columns);
        this.key = List.of(key);
    }

    /** Returns the table's name, with which the names of its files begin. */
    public String title() {
        return title;
    }

    /** Returns whether a run needs the table. */
    public Need need() {
        return need;
    }

    /** Returns what one row is, in words. */
    public String oneRow() {
        return oneRow;
    }

    /** Returns whether each of its files is a version of its own, in a folder of its own, named by its first day. */
    public boolean versioned() {
        return this == PRICE_BOOK || this == SURCHARGES;
    }

    /** Returns the columns in the contract's order; a column's place is its ordinal. */
    public List<Column> columns() {
        return columns;
    }

    /** Returns the columns whose texts together are a row's key; a row that lacks one is known by all its fields. */
    public List<Column> key() {
        return key;
    }
}
