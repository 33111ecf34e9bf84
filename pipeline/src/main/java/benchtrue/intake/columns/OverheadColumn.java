package benchtrue.intake.columns;

import benchtrue.shop.CostBehaviour;

/** A column of {@code overheads}. */
public enum OverheadColumn implements Column {
    MONTH(Cell.needed(Kind.MONTH, "the month")),
    ACCOUNT(Cell.needed(Kind.TEXT, "what it was for")),
    AMOUNT(Cell.needed(Kind.SIGNED_MONEY, "what it cost")),
    BEHAVIOUR(Cell.word(CostBehaviour.values(), Need.OPTIONAL, "whether it follows the bench hours; empty is fixed"));

    private final Cell cell;

    OverheadColumn(Cell cell) {
        this.cell = cell;
    }

    @Override
    public Cell cell() {
        return cell;
    }
}
