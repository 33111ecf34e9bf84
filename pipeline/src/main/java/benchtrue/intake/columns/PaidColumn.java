package benchtrue.intake.columns;

/** A column of {@code paid-hours}. */
public enum PaidColumn implements Column {
    TECHNICIAN(Cell.needed(Kind.TEXT, "who was paid")),
    MONTH(Cell.needed(Kind.MONTH, "the month")),
    HOURS(Cell.needed(Kind.HOURS, "hours paid"));

    private final Cell cell;

    PaidColumn(Cell cell) {
        this.cell = cell;
    }

    @Override
    public Cell cell() {
        return cell;
    }
}
