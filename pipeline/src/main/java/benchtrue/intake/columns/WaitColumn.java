package benchtrue.intake.columns;

import benchtrue.shop.WaitReason;

/** A column of {@code waits}. */
public enum WaitColumn implements Column {
    TICKET(Cell.needed(Kind.TEXT, "the ticket that waited")),
    FROM(Cell.needed(Kind.DAY, "first day")),
    TO(Cell.maybe(Kind.DAY, "last day; empty while it still waits")),
    REASON(Cell.word(WaitReason.values(), Need.REQUIRED, "why"));

    private final Cell cell;

    WaitColumn(Cell cell) {
        this.cell = cell;
    }

    @Override
    public Cell cell() {
        return cell;
    }
}
