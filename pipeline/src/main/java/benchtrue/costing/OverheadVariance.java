package benchtrue.costing;

import benchtrue.shop.Absent;
import benchtrue.shop.Money;

/**
 * Why overhead differs from what was carried: actual less standard, negative where favourable (OpenStax, Principles of
 * Accounting 2, sections 8.4 and 4.6). The parts add up to actual overhead less carried overhead exactly.
 *
 * @param variableSpending actual variable overhead less the variable rate on actual hours
 * @param variableEfficiency the variable rate on actual less allowed hours
 * @param fixedSpending actual less budgeted fixed overhead
 * @param volume budgeted fixed overhead less what the allowed hours carried of it
 */
public record OverheadVariance(long variableSpending, long variableEfficiency, long fixedSpending, long volume) {
    /** Variances of a month whose overheads or rate are not known. */
    static final OverheadVariance UNKNOWN =
            new OverheadVariance(Absent.AMOUNT, Absent.AMOUNT, Absent.AMOUNT, Absent.AMOUNT);

    /**
     * What is compared.
     *
     * @param fixed actual fixed overhead
     * @param variable actual variable overhead
     * @param actualSeconds hours worked
     * @param allowedSeconds hours that the standard allows for what was done; the hours worked where overhead is carried by
     *     hours worked
     */
    record Actual(long fixed, long variable, long actualSeconds, long allowedSeconds) {}

    /**
     * Returns the variances against a year's rates.
     *
     * @param carried what was carried in all; what its roundings differ from the rates is volume
     */
    static OverheadVariance of(Actual actual, OverheadRates.YearRate rate, long carried) {
        long variableWorked = Money.perHour(rate.variableRate(), actual.actualSeconds);
        long variableAllowed = Money.perHour(rate.variableRate(), actual.allowedSeconds);
        return new OverheadVariance(
                actual.variable - variableWorked,
                variableWorked - variableAllowed,
                actual.fixed - rate.monthlyFixed(),
                rate.monthlyFixed() - (carried - variableAllowed));
    }
}
