package benchtrue.costing;

import benchtrue.shop.Absent;

/**
 * What the jobs of one kind earned in a year. Money in ten-thousandths; a cost is absent where no table tells it, and
 * margin and contribution are then before that cost.
 *
 * @param name repair type, family, instrument class, quote writer, payer or ticket
 * @param lines jobs counted
 * @param leftOut jobs whose revenue or one of whose costs is not known, in no other figure
 * @param quotedSeconds hours quoted
 * @param actualSeconds hours taken
 * @param labourCost wages and payroll on-costs
 * @param overheadCost overhead carried
 * @param variableOverhead the part of it that follows bench hours
 * @param discounts labour billed below the quote
 * @param extras labour billed above the quote
 */
public record GroupMoney(
        String name,
        int lines,
        int leftOut,
        long quotedSeconds,
        long actualSeconds,
        long labourRevenue,
        long partsRevenue,
        long labourCost,
        long partsCost,
        long overheadCost,
        long variableOverhead,
        long discounts,
        long extras) {

    /** Returns revenue less all costs that are known; absent without a wage list. */
    public long margin() {
        return Absent.has(labourCost) ? beforeOverhead() - Absent.firstOf(overheadCost, 0) : Absent.AMOUNT;
    }

    /** Returns revenue less the costs that follow the job: labour, parts, variable overhead; absent without a wage list. */
    public long contribution() {
        return Absent.has(labourCost) ? beforeOverhead() - Absent.firstOf(variableOverhead, 0) : Absent.AMOUNT;
    }

    private long beforeOverhead() {
        return labourRevenue + (Absent.has(partsCost) ? partsRevenue - partsCost : 0) - labourCost;
    }

    /** Returns contribution over hours taken as money an hour: what to rank by while the bench is full. */
    public long contributionPerHour() {
        return Rate.hourly(contribution(), actualSeconds);
    }

    /** Returns labour revenue over hours taken as money an hour. */
    public long effectiveRate() {
        return Rate.hourly(labourRevenue, actualSeconds);
    }
}
