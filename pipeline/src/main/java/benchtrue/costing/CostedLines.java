package benchtrue.costing;

import benchtrue.hours.JobLines;
import benchtrue.shop.Absent;

/** Every quoted line with its money, in ten-thousandths; {@link Absent#AMOUNT} where the shop's files can't tell. */
public final class CostedLines {
    private final JobLines jobs;
    private final LineMoney money;
    private final long shopRate;
    private final long overheadRate;

    CostedLines(JobLines jobs, LineMoney money, long shopRate, long overheadRate) {
        this.jobs = jobs;
        this.money = money;
        this.shopRate = shopRate;
        this.overheadRate = overheadRate;
    }

    /** Columns of {@link CostedLines}, one value a line; handed over, not shared. */
    record LineMoney(
            long[] labourRevenue, long[] partsRevenue, long[] labourCost, long[] partsCost, long[] overheadCost) {}

    /** Returns the job lines the money belongs to. */
    public JobLines jobs() {
        return jobs;
    }

    /** Returns the posted price of a bench hour, from the settings or today's book. */
    public long shopRate() {
        return shopRate;
    }

    /** Returns the overhead that one bench hour carries, or absent. */
    public long overheadRate() {
        return overheadRate;
    }

    /** Returns labour billed, else quoted. */
    public long labourRevenue(int line) {
        return money.labourRevenue[line];
    }

    /** Returns parts billed, else quoted. */
    public long partsRevenue(int line) {
        return money.partsRevenue[line];
    }

    /** Returns wages and payroll on-costs of the hours on the line. */
    public long labourCost(int line) {
        return money.labourCost[line];
    }

    /** Returns the cost of parts drawn for the line. */
    public long partsCost(int line) {
        return money.partsCost[line];
    }

    /** Returns the overhead carried by the line. */
    public long overheadCost(int line) {
        return money.overheadCost[line];
    }

    /** Returns revenue less all costs; absent where a part of it is. */
    public long margin(int line) {
        long labour = labourRevenue(line);
        if (!Absent.has(labour) || !Absent.has(labourCost(line)) || !Absent.has(overheadCost(line))) {
            return Absent.AMOUNT;
        }
        return labour
                + Absent.firstOf(partsRevenue(line), 0)
                - labourCost(line)
                - Absent.firstOf(partsCost(line), 0)
                - overheadCost(line);
    }
}
