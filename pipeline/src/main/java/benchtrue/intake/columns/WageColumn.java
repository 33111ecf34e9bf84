package benchtrue.intake.columns;

import benchtrue.shop.PayBasis;

/** A column of {@code technicians}. */
public enum WageColumn implements Column {
    TECHNICIAN(Cell.needed(Kind.TEXT, "who is paid")),
    HOURLY_WAGE(Cell.needed(Kind.MONEY, "money an hour")),
    EFFECTIVE_FROM(Cell.needed(Kind.DAY, "first day the wage holds")),
    WEEKLY_BENCH_HOURS(Cell.maybe(Kind.HOURS, "bench time a week")),
    GRADE(Cell.maybe(Kind.TEXT, "trainee, technician, senior, ...")),
    PAY_BASIS(Cell.word(PayBasis.values(), Need.OPTIONAL, "how the technician is paid"));

    private final Cell cell;

    WageColumn(Cell cell) {
        this.cell = cell;
    }

    @Override
    public Cell cell() {
        return cell;
    }
}
