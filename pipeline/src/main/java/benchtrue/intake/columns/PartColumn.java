package benchtrue.intake.columns;

import benchtrue.shop.PartKind;

/** A column of {@code parts-usage}. */
public enum PartColumn implements Column {
    USE(Cell.maybe(Kind.TEXT, "the shop's own key of the use")),
    TICKET(Cell.maybe(Kind.TEXT, "the ticket it was drawn for; empty is shop supplies")),
    LINE(Cell.maybe(Kind.TEXT, "the line it was drawn for")),
    PART(Cell.needed(Kind.TEXT, "what was drawn")),
    QUANTITY(Cell.needed(Kind.QUANTITY, "how much")),
    UNIT_COST(Cell.needed(Kind.MONEY, "cost of one")),
    UNIT_CHARGE(Cell.maybe(Kind.MONEY, "charge for one")),
    USED_ON(Cell.needed(Kind.DAY, "day drawn")),
    KIND(Cell.word(PartKind.values(), Need.OPTIONAL, "what it is; empty is part"));

    private final Cell cell;

    PartColumn(Cell cell) {
        this.cell = cell;
    }

    @Override
    public Cell cell() {
        return cell;
    }
}
