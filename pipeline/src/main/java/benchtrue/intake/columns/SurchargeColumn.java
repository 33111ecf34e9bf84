package benchtrue.intake.columns;

/** A column of {@code surcharges}. */
public enum SurchargeColumn implements Column {
    REPAIR_TYPE(Cell.needed(Kind.TEXT, "the shop's own key of the repair type")),
    WHEN(Cell.needed(Kind.TEXT, "a class of instrument, a trait, or built-before- and a year")),
    HOURS(Cell.needed(Kind.HOURS, "hours beside the standard ones")),
    PRICE(Cell.needed(Kind.MONEY, "labour price beside the standard one")),
    TITLE(Cell.maybe(Kind.TEXT, "what the bench calls it"));

    private final Cell cell;

    SurchargeColumn(Cell cell) {
        this.cell = cell;
    }

    @Override
    public Cell cell() {
        return cell;
    }
}
