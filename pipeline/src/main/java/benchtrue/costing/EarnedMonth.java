package benchtrue.costing;

import benchtrue.shop.Absent;

/**
 * The jobs finished in one month, with all their hours and costs whenever they arose. Money in ten-thousandths; a cost is
 * absent where no table tells it, and the margin is then before that cost.
 *
 * @param month {@code year * 12 + month - 1}
 * @param lines jobs counted
 * @param leftOut jobs whose revenue or one of whose costs is not known, in no other figure
 * @param standardSeconds hours that the book in force at the quote allows
 * @param quotedSeconds hours quoted, else those the book allows
 * @param actualSeconds hours they took
 * @param labourCost wages and payroll on-costs
 * @param overheadCost overhead carried
 * @param labour labour variances against the book's hours at the wage set for the year; price is the rate variance and
 *     quantity the efficiency variance
 * @param materials materials variances against what the year's standard allows for the jobs
 * @param withoutStandard cost of parts that no standard knows; {@code partsCost} = allowed + {@code materials} + this
 */
public record EarnedMonth(
        int month,
        int lines,
        int leftOut,
        long standardSeconds,
        long quotedSeconds,
        long actualSeconds,
        long labourRevenue,
        long partsRevenue,
        long labourCost,
        long partsCost,
        long overheadCost,
        CostVariance labour,
        CostVariance materials,
        long withoutStandard) {

    /** Returns revenue less the costs that are known; absent without a wage list. */
    public long margin() {
        return Absent.has(labourCost)
                ? labourRevenue
                        + (Absent.has(partsCost) ? partsRevenue - partsCost : 0)
                        - labourCost
                        - Absent.firstOf(overheadCost, 0)
                : Absent.AMOUNT;
    }

    /** Returns labour revenue over the hours taken as money an hour, absent without hours. */
    public long effectiveRate() {
        return Rate.hourly(labourRevenue, actualSeconds);
    }
}
