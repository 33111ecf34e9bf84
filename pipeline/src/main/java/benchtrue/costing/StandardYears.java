package benchtrue.costing;

/** Which year's jobs set the standard of a year: the year before where enough of its months have jobs, else its own. */
final class StandardYears {
    private static final int ENOUGH_MONTHS = 6;
    private final MonthSpan span;
    private final TypeTotals[] totals;

    StandardYears(MonthSpan span, TypeTotals[] totals) {
        this.span = span;
        this.totals = totals;
    }

    /** Returns the year whose jobs set the standard. */
    int basis(int year) {
        int months = 0;
        for (int month = (year - 1) * 12; month < year * 12; month++) {
            if (month >= span.first()
                    && month <= span.last()
                    && TypeTotals.sum(totals[month - span.first()].lines()) > 0) {
                months++;
            }
        }
        return months >= ENOUGH_MONTHS ? year - 1 : year;
    }
}
