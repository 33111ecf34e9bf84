package benchtrue.intake.columns;

import benchtrue.shop.TicketStatus;

/** A column of {@code tickets}. */
public enum TicketColumn implements Column {
    TICKET(Cell.needed(Kind.TEXT, "the shop's own key of one visit of one instrument")),
    OPENED(Cell.derived(Kind.DAY, "day it came in")),
    PROMISED(Cell.maybe(Kind.DAY, "day it was promised for")),
    CLOSED(Cell.maybe(Kind.DAY, "day it was closed")),
    STATUS(Cell.word(TicketStatus.values(), Need.OPTIONAL, "where it stands; empty is derived from the closing day")),
    INSTRUMENT_CLASS(Cell.derived(Kind.TEXT, "class of instrument, never a make")),
    BUILT_YEAR(Cell.maybe(Kind.YEAR, "year built")),
    TRAITS(Cell.maybe(Kind.WORDS, "what makes the job longer, such as bound-board")),
    QUOTED_BY(Cell.maybe(Kind.TEXT, "who wrote the quote")),
    REWORK_OF(Cell.maybe(Kind.TEXT, "the earlier ticket this visit puts right")),
    FINISHED(Cell.maybe(Kind.DAY, "day the bench work was done"));

    private final Cell cell;

    TicketColumn(Cell cell) {
        this.cell = cell;
    }

    @Override
    public Cell cell() {
        return cell;
    }
}
