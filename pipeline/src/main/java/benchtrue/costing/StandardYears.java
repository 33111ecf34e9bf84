package benchtrue.costing;

import benchtrue.shop.Months;
import java.util.Arrays;

/** Which year's jobs set the standard of a year: the year before where enough of its months have jobs, else its own. */
final class StandardYears {
    private static final int ENOUGH_MONTHS = 6;
    private final int firstYear;
    private final int[] basis;

    StandardYears(MonthSpan span, TypeMoney[] totals) {
        firstYear = Months.year(span.first());
        basis = new int[span.months() == 0 ? 0 : Months.year(span.last()) - firstYear + 1];
        Arrays.setAll(basis, i -> basis(firstYear + i, span, totals));
    }

    /** Returns the year whose jobs set the standard of a year in which jobs were finished. */
    int basis(int year) {
        return basis[year - firstYear];
    }

    private static int basis(int year, MonthSpan span, TypeMoney[] totals) {
        int months = 0;
        for (int month = (year - 1) * 12; month < year * 12; month++) {
            if (month >= span.first()
                    && month <= span.last()
                    && TypeMoney.sum(totals[month - span.first()].lines()) > 0) {
                months++;
            }
        }
        return months >= ENOUGH_MONTHS ? year - 1 : year;
    }
}
