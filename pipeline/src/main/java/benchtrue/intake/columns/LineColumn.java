package benchtrue.intake.columns;

import benchtrue.shop.ChargeKind;
import benchtrue.shop.Outcome;
import benchtrue.shop.PaidBy;
import benchtrue.shop.QuoteBasis;
import benchtrue.shop.ReturnReason;

/** A column of {@code quoted-lines}. */
public enum LineColumn implements Column {
    TICKET(Cell.needed(Kind.TEXT, "the ticket the line stands on")),
    LINE(Cell.derived(Kind.TEXT, "the line's key within its ticket")),
    REPAIR_TYPE(Cell.needed(Kind.TEXT, "a repair type of the price book, or one-off")),
    QUOTED_HOURS(Cell.maybe(Kind.HOURS, "hours quoted")),
    QUOTED_LABOUR(Cell.maybe(Kind.MONEY, "labour price quoted")),
    QUOTED_PARTS(Cell.maybe(Kind.MONEY, "parts price quoted")),
    OUTCOME(Cell.word(Outcome.values(), Need.OPTIONAL, "what the customer said; empty is accepted")),
    QUOTED_ON(Cell.maybe(Kind.DAY, "day quoted where later than the ticket's first lines")),
    FIRST_QUOTED_HOURS(Cell.maybe(Kind.HOURS, "hours of the first accepted quote")),
    FIRST_QUOTED_LABOUR(Cell.maybe(Kind.MONEY, "labour price of the first accepted quote")),
    BILLED_LABOUR(Cell.maybe(Kind.SIGNED_MONEY, "labour billed")),
    BILLED_PARTS(Cell.maybe(Kind.SIGNED_MONEY, "parts billed")),
    CHARGE_KIND(Cell.word(ChargeKind.values(), Need.OPTIONAL, "what is charged for; empty is repair")),
    QUOTE_BASIS(Cell.word(QuoteBasis.values(), Need.OPTIONAL, "what the quote promises; empty is fixed")),
    PAID_BY(Cell.word(PaidBy.values(), Need.OPTIONAL, "who pays; empty is customer")),
    REWORK_OF(Cell.maybe(Kind.TEXT, "the earlier ticket this line puts right")),
    REWORK_OF_LINE(Cell.maybe(Kind.TEXT, "the line of that ticket")),
    RETURN_REASON(Cell.word(ReturnReason.values(), Need.OPTIONAL, "why it came back"));

    private final Cell cell;

    LineColumn(Cell cell) {
        this.cell = cell;
    }

    @Override
    public Cell cell() {
        return cell;
    }
}
